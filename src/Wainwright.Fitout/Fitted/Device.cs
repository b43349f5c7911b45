using System.Text.Json.Serialization;

namespace Wainwright.Fitout;

/// <summary>What a part does, where it is more than a panel. A part may do several things.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "does")]
[JsonDerivedType(typeof(Battery), "battery")]
[JsonDerivedType(typeof(MainsInlet), "mainsInlet")]
[JsonDerivedType(typeof(ResidualCurrentDevice), "residualCurrent")]
[JsonDerivedType(typeof(Overcurrent), "overcurrent")]
[JsonDerivedType(typeof(Isolator), "isolator")]
[JsonDerivedType(typeof(Converter), "converter")]
[JsonDerivedType(typeof(Outlet), "outlet")]
[JsonDerivedType(typeof(WetFitting), "wetFitting")]
[JsonDerivedType(typeof(Tank), "tank")]
[JsonDerivedType(typeof(AirHeater), "airHeater")]
[JsonDerivedType(typeof(WaterHeater), "waterHeater")]
[JsonDerivedType(typeof(GasStore), "gasStore")]
[JsonDerivedType(typeof(GasAppliance), "gasAppliance")]
[JsonDerivedType(typeof(Alarm), "alarm")]
[JsonDerivedType(typeof(Extinguisher), "extinguisher")]
[JsonDerivedType(typeof(Vent), "vent")]
[JsonDerivedType(typeof(Consumer), "consumer")]
public abstract record Device;

/// <summary>A battery.</summary>
public sealed record Battery : Device
{
    /// <summary>Nominal voltage [V].</summary>
    [Limits(1, 1_000)]
    public required double Volts { get; init; }

    /// <summary>Capacity [Ah].</summary>
    [Limits(0.1, 10_000)]
    public Measured? CapacityAh { get; init; }

    /// <summary>Chemistry in words, for example <c>lithium iron phosphate</c>.</summary>
    public string? Chemistry { get; init; }
}

/// <summary>Inlet for mains from outside.</summary>
public sealed record MainsInlet : Device
{
    /// <summary>Nominal voltage [V].</summary>
    [Limits(100, 500)]
    public required double Volts { get; init; }
}

/// <summary>Residual-current protection.</summary>
public sealed record ResidualCurrentDevice : Device
{
    /// <summary>Rated residual current [mA]; absent when the label was not read.</summary>
    [Limits(1, 1_000)]
    public double? RatedMa { get; init; }

    /// <summary>Trip time measured at the rated current [ms].</summary>
    [Limits(0.1, 10_000)]
    public Measured? TripAtRatedMs { get; init; }

    /// <summary>Trip time measured at five times the rated current [ms].</summary>
    [Limits(0.1, 10_000)]
    public Measured? TripAtFiveTimesMs { get; init; }

    /// <summary>Whether it breaks all live conductors.</summary>
    public bool? BreaksAllPoles { get; init; }

    /// <summary>The parts it protects; none when nobody has traced it.</summary>
    public IReadOnlyList<PartId> Protects { get; init; } = [];

    /// <summary>When it was last tested with an instrument.</summary>
    public DateOnly? TestedOn { get; init; }
}

/// <summary>Fuse or circuit breaker.</summary>
public sealed record Overcurrent : Device
{
    /// <summary>Rating [A]; absent when not read.</summary>
    [Limits(0.1, 2_000)]
    public double? RatedA { get; init; }

    /// <summary>Number of ways, for a board.</summary>
    [Limits(1, 200)]
    public int? Ways { get; init; }

    /// <summary>How many of them are labelled.</summary>
    [Limits(0, 200)]
    public int? WaysLabelled { get; init; }
}

/// <summary>A switch or valve that isolates something.</summary>
public sealed record Isolator : Device
{
    /// <summary>What it isolates.</summary>
    public required Medium Medium { get; init; }
}

/// <summary>Charger, inverter or other converter.</summary>
public sealed record Converter : Device
{
    /// <summary>What it takes.</summary>
    public required Medium From { get; init; }

    /// <summary>What it gives.</summary>
    public required Medium To { get; init; }

    /// <summary>Power [W]; absent when not read.</summary>
    [Limits(0.1, 100_000)]
    public double? PowerW { get; init; }

    /// <summary>Output current [A].</summary>
    [Limits(0.1, 2_000)]
    public double? CurrentA { get; init; }
}

/// <summary>An outlet one can plug into.</summary>
public sealed record Outlet : Device
{
    /// <summary>What it gives.</summary>
    public required Medium Medium { get; init; }

    /// <summary>Nominal voltage [V].</summary>
    [Limits(1, 500)]
    public required double Volts { get; init; }

    /// <summary>Where its front is [mm]; absent to take the part's solids.</summary>
    public Place? At { get; init; }

    /// <summary>The part that feeds it; absent when nobody has traced it.</summary>
    public PartId? FedBy { get; init; }
}

/// <summary>What kind of wet fitting.</summary>
public enum WetKind
{
    /// <summary>Sink.</summary>
    Sink,

    /// <summary>Basin.</summary>
    Basin,

    /// <summary>Shower or shower tray.</summary>
    Shower,

    /// <summary>Tap or mixer.</summary>
    Tap,

    /// <summary>Toilet.</summary>
    Toilet,

    /// <summary>Pump, accumulator or valve with joints that can weep.</summary>
    Pump,

    /// <summary>Trap or waste joint.</summary>
    Trap,

    /// <summary>Open bath: parts washer, bucket stand.</summary>
    Bath,
}

/// <summary>A fitting that wets its surroundings or can leak.</summary>
public sealed record WetFitting : Device
{
    /// <summary>What kind.</summary>
    public required WetKind Wet { get; init; }

    /// <summary>Where it wets or can leak [mm]; absent to take the part's solids.</summary>
    public Place? At { get; init; }
}

/// <summary>A tank or can.</summary>
public sealed record Tank : Device
{
    /// <summary>What it holds.</summary>
    public required Medium Holds { get; init; }

    /// <summary>Volume when full [l].</summary>
    [Limits(0.1, 5_000)]
    public required Measured VolumeL { get; init; }

    /// <summary>Filled as found or as weighed [l]; absent when not read.</summary>
    [Limits(0, 5_000)]
    public Measured? FilledL { get; init; }

    /// <summary>Its fittings.</summary>
    public IReadOnlyList<TankFitting> Fittings { get; init; } = [];
}

/// <summary>A fitting of a tank.</summary>
public sealed record TankFitting
{
    /// <summary>What it is, for example <c>inspection lid</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Where [mm].</summary>
    public Place? At { get; init; }
}

/// <summary>A hole that air passes.</summary>
public sealed record Aperture
{
    /// <summary>What it is, for example <c>hole in the seat box</c>.</summary>
    public required string Name { get; init; }

    /// <summary>Diameter of a round one [mm].</summary>
    [Limits(1, 1_000)]
    public Measured? DiameterMm { get; init; }

    /// <summary>Width of a rectangular one [mm].</summary>
    [Limits(1, 3_000)]
    public Measured? WidthMm { get; init; }

    /// <summary>Height of a rectangular one [mm].</summary>
    [Limits(1, 3_000)]
    public Measured? HeightMm { get; init; }

    /// <summary>How many alike.</summary>
    [Limits(1, 1_000)]
    public int Count { get; init; } = 1;

    /// <summary>Open share where a grille, mesh or covering lies over it [0–1]; absent when nothing does.</summary>
    [Limits(0, 1)]
    public Measured? OpenFraction { get; init; }
}

/// <summary>Where a burner takes its air.</summary>
public enum AirFrom
{
    /// <summary>Nobody has seen.</summary>
    NotSeen,

    /// <summary>From outside, by its own pipe.</summary>
    Outside,

    /// <summary>From the room.</summary>
    Room,
}

/// <summary>A heater that burns fuel and blows room air over its heat exchanger.</summary>
public sealed record AirHeater : Device
{
    /// <summary>Heat output [kW].</summary>
    [Limits(0.1, 50)]
    public double? PowerKw { get; init; }

    /// <summary>
    /// Holes by which the room's air gets to the fan (circulation air). Not the burner's own intake.
    /// None when nobody has measured them.
    /// </summary>
    public IReadOnlyList<Aperture> CirculationInlets { get; init; } = [];

    /// <summary>Hot-air outlets of the heater.</summary>
    public IReadOnlyList<Aperture> HotAirOutlets { get; init; } = [];

    /// <summary>Where the burner takes its air.</summary>
    public AirFrom CombustionAirFrom { get; init; }

    /// <summary>Bore of the burner's air pipe where it is narrowest [mm].</summary>
    [Limits(1, 200)]
    public Measured? CombustionIntakeBoreMm { get; init; }

    /// <summary>Bore the burner's air pipe should have [mm].</summary>
    [Limits(1, 200)]
    public double? CombustionIntakeNominalMm { get; init; }

    /// <summary>Volts at its plug with the glow pin drawing.</summary>
    [Limits(0, 60)]
    public Measured? StartVolts { get; init; }
}

/// <summary>A water heater.</summary>
public sealed record WaterHeater : Device
{
    /// <summary>Volume [l].</summary>
    [Limits(0.1, 500)]
    public Measured? VolumeL { get; init; }

    /// <summary>What heats it.</summary>
    public required Medium HeatedBy { get; init; }

    /// <summary>Whether its relief valve is piped outside.</summary>
    public bool? ReliefPipedOutside { get; init; }
}

/// <summary>Gas cylinder or its locker.</summary>
public sealed record GasStore : Device
{
    /// <summary>Gas when full [kg].</summary>
    [Limits(0.1, 200)]
    public double? GasKg { get; init; }

    /// <summary>Free area of the low drop-out, for a locker [mm²].</summary>
    [Limits(0, 1e6)]
    public Measured? DropOutMm2 { get; init; }
}

/// <summary>An appliance that burns gas.</summary>
public sealed record GasAppliance : Device
{
    /// <summary>What it is, for example <c>hob</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Whether it takes air from outside and exhausts outside, sealed from the room.</summary>
    public bool? RoomSealed { get; init; }
}

/// <summary>What an alarm senses.</summary>
public enum Senses
{
    /// <summary>Carbon monoxide.</summary>
    CarbonMonoxide,

    /// <summary>Smoke.</summary>
    Smoke,

    /// <summary>Both.</summary>
    CarbonMonoxideAndSmoke,

    /// <summary>Gas.</summary>
    Gas,
}

/// <summary>An alarm.</summary>
public sealed record Alarm : Device
{
    /// <summary>What it senses.</summary>
    public required Senses Senses { get; init; }

    /// <summary>The date it runs out, as printed on it.</summary>
    public DateOnly? Expires { get; init; }

    /// <summary>Whether its test button works.</summary>
    public bool? TestButtonWorks { get; init; }
}

/// <summary>A fire extinguisher.</summary>
public sealed record Extinguisher : Device
{
    /// <summary>When it is due for service or renewal.</summary>
    public DateOnly? Due { get; init; }
}

/// <summary>A fixed opening for air.</summary>
public sealed record Vent : Device
{
    /// <summary>The hole.</summary>
    public required Aperture Opening { get; init; }

    /// <summary>Whether it can be shut.</summary>
    public bool? CanBeShut { get; init; }
}

/// <summary>Something that draws current.</summary>
public sealed record Consumer : Device
{
    /// <summary>What it is fed with.</summary>
    public required Medium Medium { get; init; }

    /// <summary>Power [W].</summary>
    [Limits(0.01, 50_000)]
    public Measured? PowerW { get; init; }

    /// <summary>Current [A].</summary>
    [Limits(0.001, 2_000)]
    public Measured? CurrentA { get; init; }
}
