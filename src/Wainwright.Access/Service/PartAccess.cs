using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>One recurring visit to a part, and what getting there and back costs.</summary>
/// <param name="Part">The part.</param>
/// <param name="Need">What is done, how often and how close one has to come.</param>
/// <param name="Minutes">What it takes to get there and to bring everything back.</param>
public sealed record UpkeepVisit(PartId Part, ServiceNeed Need, AccessMinutes Minutes)
{
    /// <summary>How often in a year.</summary>
    public double TimesPerYear => 12 / Need.EveryMonths;

    /// <summary>No less in a year [min]; absent when nothing can be said.</summary>
    public double? LowMinutesPerYear => Minutes.LowMinutes * TimesPerYear;

    /// <summary>No more in a year, by the plan found [min]; absent when there is no plan.</summary>
    public double? HighMinutesPerYear => Minutes.HighMinutes * TimesPerYear;
}

/// <summary>How a part that asks for service can be got at, as the van is built.</summary>
public sealed record PartAccess
{
    /// <summary>The part.</summary>
    public required PartId Part { get; init; }

    /// <summary>Its name in the workshop.</summary>
    public required string Name { get; init; }

    /// <summary>To look at it.</summary>
    public required AccessMinutes See { get; init; }

    /// <summary>To get a hand to it.</summary>
    public required AccessMinutes Reach { get; init; }

    /// <summary>To take it out.</summary>
    public required AccessMinutes Remove { get; init; }

    /// <summary>Fewest parts that have to come out before a hand is on it; absent when that is not known.</summary>
    public int? Depth { get; init; }

    /// <summary>What it asks for, each with its minutes.</summary>
    public required IReadOnlyList<UpkeepVisit> Visits { get; init; }

    /// <summary>The access for a need.</summary>
    /// <param name="how">How close one has to come.</param>
    public AccessMinutes By(ServiceAccess how) => how switch { ServiceAccess.See => See, ServiceAccess.Reach => Reach, _ => Remove };
}
