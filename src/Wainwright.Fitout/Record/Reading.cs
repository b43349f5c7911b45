namespace Wainwright.Fitout;

/// <summary>What was measured. Each has one unit in the file, see <see cref="Units"/>.</summary>
public enum Quantity
{
    /// <summary>Wood or board moisture [%].</summary>
    Moisture,

    /// <summary>Relative humidity of air [%].</summary>
    RelativeHumidity,

    /// <summary>Temperature [°C].</summary>
    Temperature,

    /// <summary>Length, gap, movement [mm].</summary>
    Length,

    /// <summary>Mass [kg].</summary>
    Mass,

    /// <summary>Force [N].</summary>
    Force,

    /// <summary>Torque [Nm].</summary>
    Torque,

    /// <summary>Pressure over ambient [bar].</summary>
    Pressure,

    /// <summary>Voltage [V].</summary>
    Voltage,

    /// <summary>Current [A].</summary>
    Current,

    /// <summary>Power [W].</summary>
    Power,

    /// <summary>Insulation or other high resistance [MΩ].</summary>
    Insulation,

    /// <summary>Resistance [Ω].</summary>
    Resistance,

    /// <summary>Carbon monoxide in air [ppm].</summary>
    CarbonMonoxide,

    /// <summary>Flammable gas, share of the lower explosive limit [%].</summary>
    ExplosiveLimit,

    /// <summary>Time [s].</summary>
    Time,

    /// <summary>Trip time [ms].</summary>
    TripTime,

    /// <summary>Volume [l].</summary>
    Volume,

    /// <summary>Fuel volume [ml].</summary>
    FuelVolume,
}

/// <summary>The one unit of each quantity in a job file.</summary>
public static class Units
{
    /// <summary>The unit in which <paramref name="quantity"/> is written.</summary>
    public static string Of(Quantity quantity) => quantity switch
    {
        Quantity.Moisture or Quantity.RelativeHumidity or Quantity.ExplosiveLimit => "%",
        Quantity.Temperature => "°C",
        Quantity.Length => "mm",
        Quantity.Mass => "kg",
        Quantity.Force => "N",
        Quantity.Torque => "Nm",
        Quantity.Pressure => "bar",
        Quantity.Voltage => "V",
        Quantity.Current => "A",
        Quantity.Power => "W",
        Quantity.Insulation => "MΩ",
        Quantity.Resistance => "Ω",
        Quantity.CarbonMonoxide => "ppm",
        Quantity.Time => "s",
        Quantity.TripTime => "ms",
        Quantity.Volume => "l",
        Quantity.FuelVolume => "ml",
        _ => throw new ArgumentOutOfRangeException(nameof(quantity)),
    };
}

/// <summary>A numbered, fixed point that is measured again and again.</summary>
public sealed record ReadingPoint
{
    /// <summary>Its id, as chalked beside it.</summary>
    public required PointId Id { get; init; }

    /// <summary>Where it is [mm].</summary>
    public required Place At { get; init; }

    /// <summary>Where it is, in words.</summary>
    public required string Where { get; init; }

    /// <summary>The part it is on; absent when nobody said.</summary>
    public PartId? Part { get; init; }

    /// <summary>Material under the meter.</summary>
    public string? Material { get; init; }

    /// <summary>Meter and mode, for example <c>pins, wood scale</c>.</summary>
    public string? Mode { get; init; }

    /// <summary>The dry point in the same van it is compared with.</summary>
    public PointId? DryReference { get; init; }
}

/// <summary>A measurement. Once taken it is never changed: a wrong one is corrected by a later one.</summary>
public sealed record Reading
{
    /// <summary>Its id.</summary>
    public required ReadingId Id { get; init; }

    /// <summary>What was measured.</summary>
    public required Quantity Quantity { get; init; }

    /// <summary>The value.</summary>
    [Limits(-1e6, 1e6)]
    public required Measured Value { get; init; }

    /// <summary>Unit, that of the quantity; written out so that a page reads by itself.</summary>
    public required string Unit { get; init; }

    /// <summary>The meter was at the end of its range: the true value is this or more.</summary>
    public bool AtLeast { get; init; }

    /// <summary>The numbered point it was taken at.</summary>
    public PointId? Point { get; init; }

    /// <summary>The part it is about.</summary>
    public PartId? Part { get; init; }

    /// <summary>The joint it is about.</summary>
    public JointId? Joint { get; init; }

    /// <summary>The line it is about.</summary>
    public LineId? Line { get; init; }

    /// <summary>
    /// The force under which this movement was read. The movements of one part that name their force are one pull test, in the
    /// order taken; absent for a movement that belongs to none.
    /// </summary>
    public ReadingId? UnderForce { get; init; }

    /// <summary>Where a force was put on [mm]; absent when nobody said.</summary>
    public Place? At { get; init; }

    /// <summary>The way a force pulled or pushed; absent when nobody said.</summary>
    public Direction? Toward { get; init; }

    /// <summary>What exactly, in words: <c>across the fuse holder</c>.</summary>
    public string? What { get; init; }

    /// <summary>Under which conditions: <c>2 150 W load for 11 min</c>.</summary>
    public string? Conditions { get; init; }

    /// <summary>When.</summary>
    public required DateTimeOffset TakenAt { get; init; }

    /// <summary>By whom: a role or initials.</summary>
    public string? TakenBy { get; init; }

    /// <summary>Instrument, generic, with its serial where there is one.</summary>
    public string? Instrument { get; init; }

    /// <summary>Air temperature at the time [°C].</summary>
    [Limits(-60, 90)]
    public double? AirC { get; init; }

    /// <summary>Relative humidity of the air at the time [%].</summary>
    [Limits(0, 100)]
    public double? AirRhPercent { get; init; }

    /// <summary>The stage it belongs to.</summary>
    public StageId? Stage { get; init; }

    /// <summary>The reading that this one corrects.</summary>
    public ReadingId? Corrects { get; init; }

    /// <summary>Anything else.</summary>
    public string? Note { get; init; }
}
