using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>A hole or fitting of a device, with its facts.</summary>
/// <param name="What">What it is, in words.</param>
/// <param name="Facts">Its facts, as facts of the device.</param>
/// <param name="Without">The device without it; absent where it cannot be without.</param>
public sealed record DeviceHole(string What, IReadOnlyList<Fact<Device>> Facts, Device? Without);

/// <summary>Holes that air passes, and fittings of a tank: a device may have several.</summary>
public static class DeviceHoles
{
    /// <summary>The holes and fittings there are.</summary>
    public static IReadOnlyList<DeviceHole> Of(Device device, Measures measures) => device switch
    {
        AirHeater h =>
        [
            .. h.CirculationInlets.Select((a, i) => Hole("Hole for circulation air", a, next => h with { CirculationInlets = Put(h.CirculationInlets, i, next) }, h with { CirculationInlets = Without(h.CirculationInlets, i) }, measures)),
            .. h.HotAirOutlets.Select((a, i) => Hole("Hot-air outlet", a, next => h with { HotAirOutlets = Put(h.HotAirOutlets, i, next) }, h with { HotAirOutlets = Without(h.HotAirOutlets, i) }, measures)),
        ],
        Vent v => [Hole("The hole", v.Opening, next => v with { Opening = next }, null, measures)],
        Tank t => [.. t.Fittings.Select((f, i) => Fitting(f, next => t with { Fittings = Put(t.Fittings, i, next) }, t with { Fittings = Without(t.Fittings, i) }, measures))],
        _ => [],
    };

    /// <summary>What can be added to a device.</summary>
    public static IReadOnlyList<(string What, Device With)> ToAdd(Device device) => device switch
    {
        AirHeater h =>
        [
            ("a hole for circulation air", h with { CirculationInlets = [.. h.CirculationInlets, new() { Name = "hole" }] }),
            ("a hot-air outlet", h with { HotAirOutlets = [.. h.HotAirOutlets, new() { Name = "outlet" }] }),
        ],
        Tank t => [("a fitting", t with { Fittings = [.. t.Fittings, new() { Name = "fitting" }] })],
        _ => [],
    };

    private static DeviceHole Hole(string what, Aperture hole, Func<Aperture, Device> with, Device? without, Measures measures)
    {
        var f = new FactsOf<Device>(measures);
        f.Text("Name", hole.Name, t => with(hole with { Name = t! }), needed: true);
        f.Length("Diameter if round", hole.DiameterMm, v => with(hole with { DiameterMm = v }));
        f.Length("Width if not", hole.WidthMm, v => with(hole with { WidthMm = v }));
        f.Length("Height if not", hole.HeightMm, v => with(hole with { HeightMm = v }));
        f.Whole("How many alike", hole.Count, v => with(hole with { Count = v!.Value }), needed: true);
        f.Number("Open share under grille or mesh, 0 to 1", hole.OpenFraction, v => with(hole with { OpenFraction = v }));
        return new($"{what}: {hole.Name}", [.. f], without);
    }

    private static DeviceHole Fitting(TankFitting fitting, Func<TankFitting, Device> with, Device without, Measures measures)
    {
        var f = new FactsOf<Device>(measures);
        f.Text("Name", fitting.Name, t => with(fitting with { Name = t! }), needed: true);
        f.Place("Where", fitting.At, v => with(fitting with { At = v }));
        return new($"Fitting: {fitting.Name}", [.. f], without);
    }

    private static IReadOnlyList<T> Put<T>(IReadOnlyList<T> all, int at, T next) => [.. all.Select((one, i) => i == at ? next : one)];

    private static IReadOnlyList<T> Without<T>(IReadOnlyList<T> all, int at) => [.. all.Where((_, i) => i != at)];
}
