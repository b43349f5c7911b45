namespace Wainwright.Fitout;

/// <summary>What kind of moving thing a part has.</summary>
public enum MovingKind
{
    /// <summary>Drawer on runners.</summary>
    Drawer,

    /// <summary>Door on upright hinges.</summary>
    Door,

    /// <summary>Door that slides.</summary>
    SlidingDoor,

    /// <summary>Flap hinged at its lower edge, falls open.</summary>
    DropFlap,

    /// <summary>Flap hinged at its upper edge, lifts.</summary>
    LiftFlap,

    /// <summary>Lid on top.</summary>
    Lid,

    /// <summary>Table, bed or tray that slides out.</summary>
    Slide,
}

/// <summary>A drawer, door, flap, lid or slide of a part: it must stay shut on the road.</summary>
public sealed record MovingThing
{
    /// <summary>Its name within the part, for example <c>top drawer</c>; unique there.</summary>
    public required string Name { get; init; }

    /// <summary>What kind.</summary>
    public required MovingKind Kind { get; init; }

    /// <summary>The way its front goes when it opens.</summary>
    public required Direction Opens { get; init; }

    /// <summary>Mass that moves, with what is in or on it [kg]; for a hinged leaf with what leans on it. Absent when not weighed.</summary>
    [Limits(0, 500)]
    public Measured? MassKg { get; init; }

    /// <summary>What keeps it shut: <c>push latch</c>, <c>magnet</c>, <c>turn button</c>; absent when nobody looked, <c>nothing</c> when nothing does.</summary>
    public string? KeptShutBy { get; init; }

    /// <summary>Force at the catch that opens it, pulled the way it opens [N]; 0 when nothing keeps it shut, absent when not measured.</summary>
    [Limits(0, 100_000)]
    public Measured? HoldsN { get; init; }

    /// <summary>Middle of its hinge [mm]; absent for what slides, or when not measured.</summary>
    public Place? Hinge { get; init; }

    /// <summary>Its centre of mass when shut [mm]; absent when not measured.</summary>
    public Place? CentreShut { get; init; }

    /// <summary>How far it opens about its hinge [degrees]; absent for what slides, or when not measured.</summary>
    [Limits(1, 270)]
    public double? OpensDeg { get; init; }

    /// <summary>Its farthest point from the hinge when shut [mm]; absent when not measured.</summary>
    public Place? FarEdgeShut { get; init; }

    /// <summary>The gas springs that hold it up; absent when it has none or nobody looked.</summary>
    public GasSpring? Springs { get; init; }
}

/// <summary>Gas springs of a lid or flap, all alike.</summary>
public sealed record GasSpring
{
    /// <summary>Force of one drawn out, as printed on it, at 20 °C [N]; absent when it was not read.</summary>
    [Limits(1, 10_000)]
    public Measured? ForceN { get; init; }

    /// <summary>How many.</summary>
    [Limits(1, 8)]
    public required int Count { get; init; }

    /// <summary>Length drawn out, eye to eye [mm]; absent when not measured.</summary>
    [Limits(50, 2_000)]
    public double? DrawnOutMm { get; init; }

    /// <summary>Stroke [mm]; absent when not measured.</summary>
    [Limits(10, 1_000)]
    public double? StrokeMm { get; init; }

    /// <summary>The end on the part that stays [mm].</summary>
    public required Place FixedAt { get; init; }

    /// <summary>The end on the lid, when shut [mm].</summary>
    public required Place MovingAt { get; init; }
}

/// <summary>An open shelf or tray that things stand on.</summary>
public sealed record OpenShelf
{
    /// <summary>Its name within the part, for example <c>top shelf</c>; unique there.</summary>
    public required string Name { get; init; }

    /// <summary>Height of its lip or rail above the shelf [mm]; 0 when it has none, absent when not measured.</summary>
    [Limits(0, 1_000)]
    public Measured? LipMm { get; init; }

    /// <summary>Sides without wall, door or net, where only the lip keeps things.</summary>
    public IReadOnlyList<Direction> OpenSides { get; init; } = [];

    /// <summary>What stands on it, in words: <c>tins and jars</c>; absent when it is empty or nobody said.</summary>
    public string? Holds { get; init; }

    /// <summary>Height of the centre of mass of the tallest thing on it above the shelf [mm]; absent when not measured.</summary>
    [Limits(0, 2_000)]
    public Measured? CentreMm { get; init; }

    /// <summary>Depth of that thing's foot, the way it would tip [mm]; absent when not measured.</summary>
    [Limits(1, 2_000)]
    public Measured? FootMm { get; init; }

    /// <summary>Mass of the heaviest thing on it [kg]; absent when not weighed.</summary>
    [Limits(0, 200)]
    public Measured? HeaviestKg { get; init; }

    /// <summary>Height of the shelf above the floor a person stands on [mm]; absent when not measured.</summary>
    [Limits(0, 3_000)]
    public Measured? HeightMm { get; init; }

    /// <summary>Friction between thing and shelf [-]: the slope it begins to slide at, rise over run; absent when not tried.</summary>
    [Limits(0, 2)]
    public Measured? Friction { get; init; }
}
