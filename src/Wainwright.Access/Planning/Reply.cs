using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>The answer to: can this item be done when these are done already?</summary>
/// <remarks>Answers must be monotone: what can be done stays possible when more is done.</remarks>
public abstract record Reply;

/// <summary>It can.</summary>
/// <param name="Way">Done items that suffice: with these done it can, whatever else is not.</param>
public sealed record Free(ItemSet Way) : Reply;

/// <summary>It cannot.</summary>
/// <param name="Wall">As long as none of these is done it cannot, whatever else is. Empty: it never can.</param>
public sealed record Held(ItemSet Wall) : Reply;
