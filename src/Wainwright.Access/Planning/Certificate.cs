using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>
/// What proves a lower bound: the cuts, and that no choice cheaper than the bound obeys them all. The cuts speak of plans
/// cheaper than the one found: each holds among what can be in one such plan with its item.
/// </summary>
/// <param name="Targets">What must be done.</param>
/// <param name="Necessary">
/// In order, items that every cheaper plan must do: the targets cannot be done without them by what is not too dear beside what
/// came before in this list.
/// </param>
/// <param name="Useful">
/// What the cuts speak of. Whatever else may be done costs, with all that it and the targets and the necessary items
/// need in every plan, no less than the plan itself.
/// </param>
/// <param name="LowerBound">The bound.</param>
/// <param name="Cuts">The cuts, in order; an item that needs one of none is out of those after it.</param>
public sealed record Certificate(IReadOnlyList<int> Targets, IReadOnlyList<int> Necessary, ItemSet Useful, long LowerBound, IReadOnlyList<Cut> Cuts);
