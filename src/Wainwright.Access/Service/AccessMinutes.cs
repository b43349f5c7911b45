using System.Globalization;
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
    /// <summary>More that hold a part than stand in a cell of a table.</summary>
    private const int MostNamed = 3;

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

    /// <summary>The plan behind it, or what holds it; absent when nothing is in the way or it was not asked.</summary>
    public RemovalPlan? Plan { get; init; }

    /// <summary>Parts that come out on the way, the part itself among them where it is taken out.</summary>
    public IReadOnlyList<PartId> PartsOut { get; init; } = [];

    /// <summary>What the search came to; absent when it was not asked.</summary>
    internal Outcome? Outcome { get; init; }

    internal static AccessMinutes NotAsked(ServiceAccess how) => new() { How = how, Sureness = Sureness.NotAsked, Because = "stopped before it was asked" };

    internal static AccessMinutes NotMeasured(ServiceAccess how, Part part) =>
        new() { How = how, Sureness = Sureness.CannotTell, LowMinutes = 0, Because = $"{Wording.Name(part)} has no size and place: measure it" };

    /// <summary>Why there is no plan, in words.</summary>
    internal static string Stuck(RemovalPlan plan, bool tooClose) => plan switch
    {
        { Proof: Proof.CannotTell } => plan.ToMeasure is [.., var last] ? last : plan.WhyNotTold[^1],
        _ when tooClose => RemovalPlan.TrialFitTells,
        { HeldForGood: [var held, ..] } => held.Told(MostNamed, mm => string.Create(CultureInfo.InvariantCulture, $"{mm} mm")),
        _ => "no way by these moves",
    };
}
