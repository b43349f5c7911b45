using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>A kind of device as one begins it: what a device of the kind cannot be without is asked, and nothing is stored that nobody said.</summary>
public sealed class DeviceKind
{
    // what a blank says is typed over before a device is made of it
    private readonly Device blank;

    private DeviceKind(Device blank) => this.blank = blank;

    /// <summary>Every kind.</summary>
    public static IReadOnlyList<DeviceKind> All { get; } =
    [
        .. new Device[]
        {
            new Battery { Volts = 0 }, new Overcurrent(), new Converter { From = default, To = default }, new Outlet { Medium = default, Volts = 0 }, new Consumer { Medium = default },
            new MainsInlet { Volts = 0 }, new ResidualCurrentDevice(), new Isolator { Medium = default },
            new WetFitting { Wet = default }, new Tank { Holds = default, VolumeL = 0 }, new WaterHeater { HeatedBy = default },
            new AirHeater(), new GasStore(), new GasAppliance { Kind = "" }, new Vent { Opening = new() { Name = "vent" } },
            new Alarm { Senses = default }, new Extinguisher(),
        }.Select(d => new DeviceKind(d)),
    ];

    /// <summary>What it is called.</summary>
    public string Name => blank is WetFitting ? "wet fitting" : DeviceWords.Name(blank);

    /// <summary>What has to be said before there is such a device, nothing of it said yet.</summary>
    public IReadOnlyList<Fact<Device>> Asked(Measures measures) =>
        [.. Needed(blank, measures).Select(f => f with { Value = "", Options = f.Options is { } all ? [("", "Choose"), .. all] : null })];

    /// <summary>A device of the kind with what was said of it, or what is still to say.</summary>
    /// <param name="said">What was said, by the label of each fact asked.</param>
    /// <param name="measures">Units that it was said in.</param>
    public Typed<Device> Begun(IReadOnlyDictionary<string, string> said, Measures measures)
    {
        ArgumentNullException.ThrowIfNull(said);
        var device = blank;
        foreach (var label in Needed(blank, measures).Select(f => f.Label))
        {
            var typed = Needed(device, measures).Single(f => f.Label == label).With(said.GetValueOrDefault(label, ""));
            if (typed.Next is null) return new(null, $"{label}: {typed.Fault}");
            device = typed.Next;
        }
        return new(device, null);
    }

    private static IEnumerable<Fact<Device>> Needed(Device device, Measures measures) => DeviceFacts.Of(device, measures).Where(f => f.Needed);
}
