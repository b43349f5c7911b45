namespace Wainwright.Fitout;

/// <summary>How the van came in.</summary>
public sealed record Intake
{
    /// <summary>The day.</summary>
    public DateOnly? On { get; init; }

    /// <summary>The owner as the workshop refers to them; no need of a name.</summary>
    public string? Owner { get; init; }

    /// <summary>Complaints in the owner's own words.</summary>
    public IReadOnlyList<string> OwnersWords { get; init; } = [];

    /// <summary>Limits the owner has set.</summary>
    public IReadOnlyList<string> Limits { get; init; } = [];

    /// <summary>State as presented: fuel, water, keys, contents.</summary>
    public string? AsPresented { get; init; }

    /// <summary>History as far as told.</summary>
    public string? History { get; init; }
}

/// <summary>One step of making the van safe to work in.</summary>
public sealed record IsolationStep
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>What was isolated and how.</summary>
    public required string What { get; init; }

    /// <summary>What it belongs to; absent for the whole van.</summary>
    public Medium? Medium { get; init; }

    /// <summary>When; absent while it is still to do.</summary>
    public DateTimeOffset? DoneAt { get; init; }

    /// <summary>By whom: a role or initials.</summary>
    public string? By { get; init; }

    /// <summary>Number of lock or tag.</summary>
    public string? Tag { get; init; }

    /// <summary>What stays live or dangerous in spite of it.</summary>
    public string? Remains { get; init; }
}

/// <summary>A weighing, axle by axle.</summary>
public sealed record Weighing
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>When.</summary>
    public DateOnly? On { get; init; }

    /// <summary>Loads of the axles.</summary>
    public required IReadOnlyList<AxleLoad> Axles { get; init; }

    /// <summary>All wheels of the left side [kg].</summary>
    [Limits(0, 20_000)]
    public Measured? LeftKg { get; init; }

    /// <summary>All wheels of the right side [kg].</summary>
    [Limits(0, 20_000)]
    public Measured? RightKg { get; init; }

    /// <summary>People in the van.</summary>
    [Limits(0, 20)]
    public required int PeopleAboard { get; init; }

    /// <summary>Goods aboard that no part lists [kg].</summary>
    [Limits(0, 5_000)]
    public Measured? UnlistedKg { get; init; }

    /// <summary>Tanks, load and ground, in words.</summary>
    public required string State { get; init; }
}

/// <summary>The load of one axle.</summary>
public sealed record AxleLoad
{
    /// <summary>Name of the axle.</summary>
    public required string Axle { get; init; }

    /// <summary>Load [kg].</summary>
    [Limits(0, 20_000)]
    public required Measured LoadKg { get; init; }
}

/// <summary>What an owner was asked and what they said.</summary>
public sealed record Approval
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>What was asked, with why.</summary>
    public required string What { get; init; }

    /// <summary>Limit of money [money of the job].</summary>
    [Limits(0, 10_000_000)]
    public decimal? Limit { get; init; }

    /// <summary>Whether they said yes; absent while open.</summary>
    public bool? Approved { get; init; }

    /// <summary>When.</summary>
    public DateTimeOffset? At { get; init; }

    /// <summary>By telephone, in writing, in person.</summary>
    public string? Channel { get; init; }

    /// <summary>Effect on time and price, in words.</summary>
    public string? Effect { get; init; }
}

/// <summary>One line of an estimate.</summary>
public sealed record EstimateLine
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>What is done.</summary>
    public required string What { get; init; }

    /// <summary>Hours if all goes well [h].</summary>
    [Limits(0, 10_000)]
    public double? EasyHours { get; init; }

    /// <summary>Hours as expected [h].</summary>
    [Limits(0, 10_000)]
    public double? LikelyHours { get; init; }

    /// <summary>Hours if it goes hard [h].</summary>
    [Limits(0, 10_000)]
    public double? HardHours { get; init; }

    /// <summary>Materials and outside work [money of the job].</summary>
    [Limits(0, 10_000_000)]
    public decimal? Materials { get; init; }

    /// <summary>Smallest judged chance that it is needed [0–1]; absent for certain.</summary>
    [Limits(0, 1)]
    public double? ChanceLow { get; init; }

    /// <summary>Greatest judged chance that it is needed [0–1].</summary>
    [Limits(0, 1)]
    public double? ChanceHigh { get; init; }

    /// <summary>Findings it settles.</summary>
    public IReadOnlyList<FindingId> Findings { get; init; } = [];

    /// <summary>The option it belongs to; absent for all.</summary>
    public string? Option { get; init; }
}

/// <summary>A bag of fixings or a tagged part.</summary>
public sealed record Bag
{
    /// <summary>Its id, the same on bag, part and log.</summary>
    public required string Id { get; init; }

    /// <summary>The part it belongs to.</summary>
    public PartId? Part { get; init; }

    /// <summary>The joint it belongs to.</summary>
    public JointId? Joint { get; init; }

    /// <summary>What is in it, counted and typed.</summary>
    public required string Holds { get; init; }

    /// <summary>Where it is kept.</summary>
    public string? KeptAt { get; init; }
}

/// <summary>Where a failed part kept as evidence has been.</summary>
public sealed record Custody
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>The part.</summary>
    public required PartId Part { get; init; }

    /// <summary>When it changed hands.</summary>
    public required DateTimeOffset At { get; init; }

    /// <summary>From whom to whom, roles.</summary>
    public required string Handed { get; init; }
}

/// <summary>A test with its limit and its result.</summary>
public sealed record TestSheet
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>What was tested.</summary>
    public required string What { get; init; }

    /// <summary>The limit, with unit and where it comes from.</summary>
    public string? Limit { get; init; }

    /// <summary>The result, with unit.</summary>
    public required string Result { get; init; }

    /// <summary>Readings it rests on.</summary>
    public IReadOnlyList<ReadingId> Readings { get; init; } = [];

    /// <summary>Who did it, a role, with licence where it takes one.</summary>
    public string? By { get; init; }

    /// <summary>When.</summary>
    public DateTimeOffset? At { get; init; }
}

/// <summary>A certificate from somebody licensed.</summary>
public sealed record Certificate
{
    /// <summary>Its id.</summary>
    public required string Id { get; init; }

    /// <summary>What it covers.</summary>
    public required string Covers { get; init; }

    /// <summary>Number on it.</summary>
    public string? Number { get; init; }

    /// <summary>The day it was given.</summary>
    public DateOnly? On { get; init; }

    /// <summary>The day it runs out.</summary>
    public DateOnly? Until { get; init; }
}
