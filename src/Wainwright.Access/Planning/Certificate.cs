using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>What proves a lower bound: the cuts, and that no choice cheaper than the bound obeys them all.</summary>
/// <param name="Targets">What must be done.</param>
/// <param name="Allowed">What may be done at all.</param>
/// <param name="LowerBound">The bound.</param>
/// <param name="Cuts">The cuts.</param>
public sealed record Certificate(IReadOnlyList<int> Targets, ItemSet Allowed, long LowerBound, IReadOnlyList<Cut> Cuts);
