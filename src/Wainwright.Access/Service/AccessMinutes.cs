using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>How the minutes of an access are known.</summary>
public enum Sureness
{
    /// <summary>Proved: no plan made of these moves costs less, and exact shapes would not change it.</summary>
    Proved,

    /// <summary>Between two ends: the search stopped early, or round and slanting parts leave room for doubt.</summary>
    Bracket,

    /// <summary>Proved that there is no way by these moves.</summary>
    Unreachable,

    /// <summary>Not measured, contradictory, or too close to tell; what to measure is named.</summary>
    CannotTell,

    /// <summary>The run was stopped before it came to this.</summary>
    NotAsked,
}

/// <summary>What it takes to see, reach or take out one part as the van is built, and to bring everything back.</summary>
/// <remarks>Labour of all people together; the service work itself is not in it.</remarks>
public sealed record AccessMinutes
{
    /// <summary>How close one comes.</summary>
    public required ServiceAccess How { get; init; }

    /// <summary>How the minutes are known.</summary>
    public required Sureness Sureness { get; init; }

    /// <summary>It takes no less [min]; absent when nothing can be said.</summary>
    public double? LowMinutes { get; init; }

    /// <summary>It takes no more, by the plan found [min]; absent when there is no plan.</summary>
    public double? HighMinutes { get; init; }

    /// <summary>Why it is not proved, in words; absent when it is.</summary>
    public string? Because { get; init; }

    /// <summary>The plan behind it; absent when it was not asked or could not be.</summary>
    public RemovalPlan? Plan { get; init; }

    /// <summary>Parts that come out on the way, the part itself among them where it is taken out.</summary>
    public IReadOnlyList<PartId> PartsOut { get; init; } = [];

    internal static AccessMinutes NotAsked(ServiceAccess how) => new() { How = how, Sureness = Sureness.NotAsked, Because = "stopped before it was asked" };

    internal static AccessMinutes NotMeasured(ServiceAccess how, Part part) =>
        new() { How = how, Sureness = Sureness.CannotTell, LowMinutes = 0, Because = $"{Wording.Name(part)} has no size and place: measure it" };

    internal static AccessMinutes Of(ServiceAccess how, RemovalPlan plan)
    {
        var found = plan.Proof is Proof.ProvedCheapest or Proof.BestFound;
        var low = plan.Bracket?.LowMinutes is { } easy ? Math.Min(easy, found ? plan.LowerBoundMinutes : easy) : found ? plan.LowerBoundMinutes : (double?)null;
        return new()
        {
            How = how,
            Plan = plan,
            PartsOut = [.. plan.PartsOut.Distinct()],
            Sureness = plan switch
            {
                { Proof: Proof.CannotTell } => Sureness.CannotTell,
                // no way for the outer shapes, but one if every measure is exact: a trial fit tells
                { Proof: Proof.ProvedUnreachable } => low is null ? Sureness.Unreachable : Sureness.CannotTell,
                { Proof: Proof.BestFound } or { Bracket: not null } => Sureness.Bracket,
                _ => Sureness.Proved,
            },
            // what is proved has one value, though the covering problem counts in tenths of a second
            LowMinutes = plan is { Proof: Proof.ProvedCheapest, Bracket: null } ? plan.TotalMinutes : low,
            HighMinutes = found ? plan.TotalMinutes : null,
            Because = Doubtful(plan, low),
        };
    }

    private static string? Doubtful(RemovalPlan plan, double? low) => plan switch
    {
        { Proof: Proof.CannotTell } => plan.ToMeasure is [.., var last] ? last : "the measures contradict one another",
        { Proof: Proof.ProvedUnreachable } when low is not null => "no way with the shapes as drawn, but one if round and slanting parts are as small as they can be: a trial fit tells",
        { Proof: Proof.ProvedUnreachable } => plan.HeldForGood is [var held, ..] ? HeldWords(held) : "no way by these moves",
        { Proof: Proof.BestFound } => "the search ended before its proof",
        { Bracket.Differs: { Count: > 0 } differs } => $"a trial fit may save {string.Join(", ", differs)}",
        { Bracket: not null } => "round and slanting parts may leave an easier way",
        _ => null,
    };

    private static string HeldWords(HeldFor held) => held switch
    {
        { By: { Count: > 0 } by } => $"{held.What} is held by {string.Join(", ", by.Take(3))}",
        { NearestOpening: { } door, ShortMm: > 0 and var mm } => $"{held.What} is {mm} mm too large for {door}",
        _ => $"{held.What} is held by the van itself",
    };
}
