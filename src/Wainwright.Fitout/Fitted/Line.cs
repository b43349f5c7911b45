namespace Wainwright.Fitout;

/// <summary>What flows in a line.</summary>
public enum Medium
{
    /// <summary>Fresh water, cold or hot.</summary>
    Water,

    /// <summary>Waste water.</summary>
    Waste,

    /// <summary>Gas.</summary>
    Gas,

    /// <summary>Extra-low-voltage DC.</summary>
    Dc,

    /// <summary>Mains-voltage AC.</summary>
    Mains,

    /// <summary>Liquid fuel.</summary>
    Fuel,

    /// <summary>Circulation air of a heater.</summary>
    WarmAir,

    /// <summary>Exhaust gas.</summary>
    Exhaust,

    /// <summary>Combustion air.</summary>
    CombustionAir,

    /// <summary>Signals.</summary>
    Signal,
}

/// <summary>Its build.</summary>
public enum LineBuild
{
    /// <summary>Stiff pipe.</summary>
    Pipe,

    /// <summary>Hose.</summary>
    Hose,

    /// <summary>Cable or loom.</summary>
    Cable,

    /// <summary>Air duct.</summary>
    Duct,

    /// <summary>Flue.</summary>
    Flue,
}

/// <summary>One end of a line.</summary>
public sealed record LineEnd
{
    /// <summary>The part it ends at; absent for the vehicle or outside.</summary>
    public PartId? Part { get; init; }

    /// <summary>Where, in words: <c>starter battery</c>, <c>open under the floor</c>.</summary>
    public string? Where { get; init; }

    /// <summary>The joint that connects it; absent when nobody has seen it.</summary>
    public JointId? Joint { get; init; }
}

/// <summary>Pipe, hose, cable, duct or flue between parts.</summary>
public sealed record Line
{
    /// <summary>Its id, stable for the life of the job.</summary>
    public required LineId Id { get; init; }

    /// <summary>Its name in the workshop.</summary>
    public required string Name { get; init; }

    /// <summary>What flows in it.</summary>
    public required Medium Medium { get; init; }

    /// <summary>Its build.</summary>
    public required LineBuild Build { get; init; }

    /// <summary>The part it also is, where the run itself is a numbered part.</summary>
    public PartId? Part { get; init; }

    /// <summary>Where it comes from.</summary>
    public required LineEnd From { get; init; }

    /// <summary>Where it goes.</summary>
    public required LineEnd To { get; init; }

    /// <summary>Its route as points in order [mm]; none when nobody has followed it.</summary>
    public IReadOnlyList<Place> Route { get; init; } = [];

    /// <summary>Its real length [mm], slack included; absent to take the route's.</summary>
    [Limits(1, 100_000)]
    public Measured? LengthMm { get; init; }

    /// <summary>Clear bore [mm].</summary>
    [Limits(0.5, 500)]
    public Measured? BoreMm { get; init; }

    /// <summary>Outside diameter [mm].</summary>
    [Limits(0.5, 500)]
    public Measured? OutsideMm { get; init; }

    /// <summary>Section of one conductor [mm²].</summary>
    [Limits(0.05, 500)]
    public Measured? ConductorMm2 { get; init; }

    /// <summary>How many conductors.</summary>
    [Limits(1, 200)]
    public int? Conductors { get; init; }

    /// <summary>Parts that it passes through a hole of.</summary>
    public IReadOnlyList<PartId> Through { get; init; } = [];

    /// <summary>The protective device that guards it; absent when nobody has found one.</summary>
    public PartId? ProtectedBy { get; init; }

    /// <summary>Made of.</summary>
    public string? Material { get; init; }

    /// <summary>Date of make printed on it.</summary>
    public DateOnly? MadeOn { get; init; }

    /// <summary>How it is known.</summary>
    public required Known Known { get; init; }

    /// <summary>Anything else.</summary>
    public string? Note { get; init; }
}
