using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>A part and how close one has to come to it.</summary>
/// <param name="Part">The part.</param>
/// <param name="Kind">How close.</param>
public readonly record struct Wanted(PartId Part, AccessKind Kind);

/// <summary>A question to the planner.</summary>
/// <param name="Wanted">What is wanted; nothing twice.</param>
/// <param name="Stays">Parts that must stay in beside those of the options.</param>
internal sealed record PlanQuestion(IReadOnlyList<Wanted> Wanted, IReadOnlyList<PartId> Stays)
{
    public PlanQuestion Keeping(IEnumerable<PartId> parts) => this with { Stays = [.. Stays, .. parts] };
}
