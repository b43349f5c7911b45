using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Web.Shown;

/// <summary>What a device is and what is known of it, in words.</summary>
public static class DeviceWords
{
    /// <summary>Its name.</summary>
    public static string Name(Device device) => device switch
    {
        ResidualCurrentDevice => "residual-current protection",
        Overcurrent => "fuse or circuit breaker",
        MainsInlet => "mains inlet",
        AirHeater => "fuel air heater",
        GasStore => "gas store",
        GasAppliance => "gas appliance",
        WaterHeater => "water heater",
        WetFitting w => Words.Of(w.Wet),
        _ => device.GetType().Name.ToLowerInvariant(),
    };

    /// <summary>What is known; what is not known is said to be so.</summary>
    public static string About(Device device, Measures m) => device switch
    {
        Battery b => Say($"{Figures.Number(b.Volts)} V", Known(b.CapacityAh?.Value, "Ah", "capacity"), b.Chemistry ?? "chemistry not known"),
        MainsInlet i => $"{Figures.Number(i.Volts)} V",
        ResidualCurrentDevice r => Say(Known(r.RatedMa, "mA", "rating"), Known(r.TripAtRatedMs?.Value, "ms at rated current", "trip time"), Known(r.TripAtFiveTimesMs?.Value, "ms at five times", "trip time at five times")),
        Overcurrent o => Say(Known(o.RatedA, "A", "rating"), o.Ways is { } w ? $"{w} ways, {o.WaysLabelled?.ToString(CultureInfo.InvariantCulture) ?? "unknown how many"} labelled" : null),
        Isolator i => $"isolates {Words.Of(i.Medium)}",
        Converter c => Say($"{Words.Of(c.From)} to {Words.Of(c.To)}", Known(c.PowerW, "W", "power")),
        Outlet o => $"{Words.Of(o.Medium)}, {Figures.Number(o.Volts)} V, {(o.FedBy is { } fed ? $"fed by {fed}" : "nobody has traced what feeds it")}",
        Tank t => Say($"{Words.Of(t.Holds)}, {m.Volume(t.VolumeL.Value)}", t.FilledL is { } full ? $"{m.Volume(full.Value)} in it" : "level not read"),
        AirHeater h => Say(Known(h.PowerKw, "kW", "output"), $"combustion air {(h.CombustionAirFrom == AirFrom.NotSeen ? "not seen" : "from " + Words.Of(h.CombustionAirFrom))}", Known(h.CombustionIntakeBoreMm?.Value, "mm intake bore", "intake bore")),
        WaterHeater h => Say(Known(h.VolumeL?.Value, "l", "volume"), $"heated by {Words.Of(h.HeatedBy)}", Told(h.ReliefPipedOutside, "relief piped outside", "relief not piped outside", "relief not seen")),
        GasStore g => Say(Known(g.GasKg, "kg of gas", "content"), Known(g.DropOutMm2?.Value, "mm² drop-out", "drop-out area")),
        GasAppliance g => Say(g.Kind, Told(g.RoomSealed, "room-sealed", "not room-sealed", "nobody knows whether room-sealed")),
        Alarm a => Say($"senses {Words.Of(a.Senses)}", a.Expires is { } until ? $"runs out {Day(until)}" : "date not read", Told(a.TestButtonWorks, "test button works", "test button does not work", "not tested")),
        Extinguisher e => e.Due is { } due ? $"due {Day(due)}" : "date not read",
        Vent v => Say(v.Opening.Name, Told(v.CanBeShut, "can be shut", "cannot be shut", "nobody knows whether it can be shut")),
        Consumer c => Say(Words.Of(c.Medium), Known(c.PowerW?.Value, "W", "power"), c.CurrentA is { } a ? $"{Figures.Number(a.Value)} A" : null),
        WetFitting => "wets or can leak",
        _ => "",
    };

    private static string Volume(this Measures m, double litres) => m == Measures.Us ? $"{Figures.Number(litres / 3.785411784)} US gal" : $"{Figures.Number(litres)} l";

    private static string Say(params string?[] pieces) => string.Join(", ", pieces.Where(p => p is not null));

    private static string Known(double? value, string unit, string what) => value is { } v ? $"{Figures.Number(v, 2)} {unit}" : $"{what} not known";

    private static string Told(bool? value, string yes, string no, string unknown) => value switch { true => yes, false => no, null => unknown };

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
