namespace Wainwright.Fitout;

/// <summary>The base vehicle as the workshop measures it.</summary>
public sealed record Vehicle
{
    /// <summary>A generic description, for example <c>medium high-roof panel van</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Load space.</summary>
    public required LoadSpace LoadSpace { get; init; }

    /// <summary>Ribs, bows, pillars and rails that can carry a fixing.</summary>
    public IReadOnlyList<Frame> Frames { get; init; } = [];

    /// <summary>Doors and other ways in and out, the cab front among them.</summary>
    public IReadOnlyList<Opening> Openings { get; init; } = [];

    /// <summary>Floor build-up from the metal upwards, as far as it is known.</summary>
    public IReadOnlyList<Layer> Floor { get; init; } = [];

    /// <summary>Axles, front first.</summary>
    public IReadOnlyList<Axle> Axles { get; init; } = [];

    /// <summary>Seats, those in the cab included.</summary>
    public IReadOnlyList<Seat> Seats { get; init; } = [];

    /// <summary>Factory tie-down points [mm].</summary>
    public IReadOnlyList<Place> TieDowns { get; init; } = [];

    /// <summary>Greatest mass on the plate [kg].</summary>
    [Limits(500, 20_000)]
    public Measured? PlatedMassKg { get; init; }

    /// <summary>Distance between front and rear wheels on one axle, middle to middle [mm].</summary>
    [Limits(500, 3_000)]
    public Measured? TrackMm { get; init; }

    /// <summary>Distance travelled so far [km].</summary>
    [Limits(0, 5_000_000)]
    public double? OdometerKm { get; init; }

    /// <summary>What else should be known of the base vehicle.</summary>
    public string? Note { get; init; }
}

/// <summary>The room between the inner skins.</summary>
public sealed record LoadSpace
{
    /// <summary>Length on the floor, from the front end to the rear doors [mm].</summary>
    [Limits(800, 8_000)]
    public required Measured LengthMm { get; init; }

    /// <summary>Greatest width between the inner skins [mm].</summary>
    [Limits(700, 2_600)]
    public required Measured WidthMm { get; init; }

    /// <summary>Height from the metal floor to the roof skin [mm].</summary>
    [Limits(700, 3_000)]
    public required Measured HeightMm { get; init; }

    /// <summary>Wheel arches.</summary>
    public IReadOnlyList<WheelArch> WheelArches { get; init; } = [];

    /// <summary>How the side walls lean in; absent when nobody measured it.</summary>
    public WallTaper? Taper { get; init; }

    /// <summary>Depth of the pressed ribs in the roof skin [mm].</summary>
    [Limits(0, 60)]
    public double? RoofSwageDepthMm { get; init; }

    /// <summary>Depth of the pressed ribs in the floor [mm].</summary>
    [Limits(0, 60)]
    public double? FloorSwageDepthMm { get; init; }
}

/// <summary>A wheel arch, taken as a box on the floor against one wall.</summary>
public sealed record WheelArch
{
    /// <summary>The wall it stands against: <see cref="Direction.Left"/> or <see cref="Direction.Right"/>.</summary>
    public required Direction Side { get; init; }

    /// <summary>Its front end [mm].</summary>
    [Limits(-1_000, 8_000)]
    public required double FromXMm { get; init; }

    /// <summary>Its rear end [mm].</summary>
    [Limits(-1_000, 8_000)]
    public required double ToXMm { get; init; }

    /// <summary>How far it stands into the room [mm].</summary>
    [Limits(1, 800)]
    public required double WidthMm { get; init; }

    /// <summary>Its height [mm].</summary>
    [Limits(1, 1_200)]
    public required double HeightMm { get; init; }
}

/// <summary>Walls that lean in from a height upwards, the same on both sides.</summary>
public sealed record WallTaper
{
    /// <summary>Height where the walls begin to lean [mm].</summary>
    [Limits(0, 3_000)]
    public required double FromZMm { get; init; }

    /// <summary>How far each wall has come in at the roof [mm].</summary>
    [Limits(0, 600)]
    public required double InAtRoofMm { get; init; }
}

/// <summary>What kind of framing it is.</summary>
public enum FrameKind
{
    /// <summary>Upright in a side wall.</summary>
    Rib,

    /// <summary>Across the roof.</summary>
    Bow,

    /// <summary>Door or corner pillar.</summary>
    Pillar,

    /// <summary>Along the van: cant rail, waist rail, sill.</summary>
    Rail,

    /// <summary>Across or along the floor.</summary>
    FloorMember,
}

/// <summary>Framing that can carry a fixing.</summary>
public sealed record Frame
{
    /// <summary>Its name in this van, for example <c>bow 3</c>; unique.</summary>
    public required string Name { get; init; }

    /// <summary>Kind of framing.</summary>
    public required FrameKind Kind { get; init; }

    /// <summary>Wall it is in; absent for what spans both.</summary>
    public Direction? Side { get; init; }

    /// <summary>Middle of it along the van [mm]; for a rail, its front end.</summary>
    [Limits(-1_000, 8_000)]
    public required double XMm { get; init; }

    /// <summary>Its rear end, for a rail [mm].</summary>
    [Limits(-1_000, 8_000)]
    public double? ToXMm { get; init; }

    /// <summary>Height of a rail, or where a rib begins [mm].</summary>
    [Limits(-500, 3_000)]
    public double? ZMm { get; init; }

    /// <summary>Width of the face that takes a fixing [mm].</summary>
    [Limits(1, 500)]
    public double? FaceMm { get; init; }

    /// <summary>Thickness of the metal [mm]; absent when not measured.</summary>
    [Limits(0.3, 12)]
    public Measured? MetalMm { get; init; }

    /// <summary>How it is known.</summary>
    public required Known Known { get; init; }
}

/// <summary>The wall an opening is in.</summary>
public enum Face
{
    /// <summary>Between load space and cab.</summary>
    Front,

    /// <summary>Rear doors.</summary>
    Rear,

    /// <summary>Left side.</summary>
    Left,

    /// <summary>Right side.</summary>
    Right,

    /// <summary>Roof hatch.</summary>
    Roof,
}

/// <summary>A door or other opening, by its clear size.</summary>
public sealed record Opening
{
    /// <summary>Its name in this van, for example <c>sliding door</c>; unique.</summary>
    public required string Name { get; init; }

    /// <summary>The wall it is in.</summary>
    public required Face Face { get; init; }

    /// <summary>Where it begins along its wall: x for a side or the roof, y for front and rear [mm].</summary>
    [Limits(-1_000, 8_000)]
    public required Measured FromMm { get; init; }

    /// <summary>Clear width along its wall [mm].</summary>
    [Limits(50, 4_000)]
    public required Measured WidthMm { get; init; }

    /// <summary>Height of the sill above the metal floor [mm]; for the roof, where it begins across the van (y).</summary>
    [Limits(-500, 3_000)]
    public required Measured SillMm { get; init; }

    /// <summary>Clear height above the sill [mm]; for the roof, clear width across the van.</summary>
    [Limits(50, 3_000)]
    public required Measured HeightMm { get; init; }

    /// <summary>Whether a part can be carried out this way. A cab front that nothing leaves by is not passable.</summary>
    public required bool Passable { get; init; }

    /// <summary>Clear ground outside, square to the wall [mm]; absent when it depends on where the van stands.</summary>
    [Limits(0, 20_000)]
    public double? LandingMm { get; init; }

    /// <summary>How it is known.</summary>
    public required Known Known { get; init; }
}

/// <summary>One layer of a build-up.</summary>
public sealed record Layer
{
    /// <summary>What it is made of.</summary>
    public required string Material { get; init; }

    /// <summary>Thickness [mm].</summary>
    [Limits(0.01, 500)]
    public Measured? ThicknessMm { get; init; }

    /// <summary>How it is held to the layer below.</summary>
    public string? HeldBy { get; init; }
}

/// <summary>An axle.</summary>
public sealed record Axle
{
    /// <summary>Its name, for example <c>front</c>; unique.</summary>
    public required string Name { get; init; }

    /// <summary>Its place along the van [mm], negative ahead of the load floor.</summary>
    [Limits(-5_000, 10_000)]
    public required Measured XMm { get; init; }

    /// <summary>Greatest load on the plate [kg].</summary>
    [Limits(100, 10_000)]
    public Measured? RatingKg { get; init; }

    /// <summary>Load of the bare base vehicle on it [kg].</summary>
    [Limits(0, 10_000)]
    public Measured? BareKg { get; init; }
}

/// <summary>A seat. The tool never judges seats or belts; it counts their mass.</summary>
public sealed record Seat
{
    /// <summary>Its name, for example <c>driver</c>; unique.</summary>
    public required string Name { get; init; }

    /// <summary>Place along the van [mm].</summary>
    [Limits(-5_000, 10_000)]
    public required double XMm { get; init; }

    /// <summary>Place across the van [mm].</summary>
    [Limits(-1_000, 4_000)]
    public double? YMm { get; init; }

    /// <summary>Whether somebody may sit there on the road, by the vehicle's papers; absent when the papers were not seen.</summary>
    public bool? UsedOnRoad { get; init; }
}
