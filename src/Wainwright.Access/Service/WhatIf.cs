using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Kinds of single change a builder can make so that service costs less.</summary>
public enum WhatIfKind
{
    /// <summary>Held by hand knobs instead of screws.</summary>
    ByHand,

    /// <summary>Hung on lift-off hinges with a catch instead of screwed.</summary>
    Hinged,

    /// <summary>Fixings undone from another side.</summary>
    OtherSide,

    /// <summary>A service hatch in a board.</summary>
    Hatch,

    /// <summary>Plugs or quick couplings on lines.</summary>
    Plugs,

    /// <summary>A part cut back on one side.</summary>
    CutBack,
}

/// <summary>One change, planned through: what it saves a year, and for whom.</summary>
public sealed record WhatIf
{
    /// <summary>Rank, from 1.</summary>
    public required int Number { get; init; }

    /// <summary>Of what kind.</summary>
    public required WhatIfKind Kind { get; init; }

    /// <summary>In words, imperative.</summary>
    public required string What { get; init; }

    /// <summary>The change as edits of the job: made, it gives the van that was planned.</summary>
    public required Change Change { get; init; }

    /// <summary>Saved a year, by the plans found before and after [min].</summary>
    public required double SavedMinutesPerYear { get; init; }

    /// <summary>Whether every plan behind that number is proved cheapest.</summary>
    public required bool IsProved { get; init; }

    /// <summary>The visits that change, those that gain most first.</summary>
    public required IReadOnlyList<WhatIfGain> Gains { get; init; }

    /// <summary>What to look at before it is built.</summary>
    public required string Heed { get; init; }
}

/// <summary>What a change does to one visit.</summary>
/// <param name="Visit">The visit as the van is built.</param>
/// <param name="WasMinutes">Each time, as built [min]; absent when there was no way.</param>
/// <param name="NowMinutes">Each time, after the change [min].</param>
public sealed record WhatIfGain(UpkeepVisit Visit, double? WasMinutes, double NowMinutes)
{
    /// <summary>Saved a year [min]; 0 for a visit that had no way before.</summary>
    public double SavedMinutesPerYear => WasMinutes is { } was ? (was - NowMinutes) * Visit.TimesPerYear : 0;
}

/// <summary>Changes ranked.</summary>
/// <param name="Ranked">Those that open a way where there was none, then by minutes saved a year.</param>
/// <param name="Thought">How many changes were thought of.</param>
/// <param name="Planned">How many of them were planned through.</param>
/// <param name="RestSavesAtMost">None of those not planned saves more [min per year]: proved for plans as priced here.</param>
/// <param name="IsWhole">Whether it ran to its end.</param>
public sealed record WhatIfs(IReadOnlyList<WhatIf> Ranked, int Thought, int Planned, double RestSavesAtMost, bool IsWhole);
