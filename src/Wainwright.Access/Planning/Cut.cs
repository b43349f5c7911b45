using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>A proved sentence: whoever does this item must also do one of those.</summary>
/// <remarks>
/// Holds when the item stays undone in the closure of everything except those. Proof: a plan with the item and none of those
/// lies within everything except those, so its own closure, which is the plan, would contain the item.
/// </remarks>
/// <param name="Item">The item.</param>
/// <param name="OneOf">Those of which one is needed.</param>
public sealed record Cut(int Item, ItemSet OneOf);
