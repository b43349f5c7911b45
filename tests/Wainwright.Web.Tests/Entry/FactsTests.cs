using Wainwright.Fitout;
using Wainwright.Web.Entry;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Tests.Entry;

/// <summary>Lines, devices, doors and wheel arches fact by fact: what is typed stands in the model, and nothing else changes.</summary>
public sealed class FactsTests
{
    private static readonly Line Drain = SmallVan.Job.Lines[0];

    private static readonly Tank Tank = new() { Holds = Medium.Water, VolumeL = 82 };

    /// <summary>One of each kind with what it cannot be without, said in words nobody would take for a default.</summary>
    private static readonly IReadOnlyList<Device> Devices =
    [
        .. DeviceKind.All.Select(k => k.Begun(k.Asked(Measures.Metric).ToDictionary(f => f.Label, Said), Measures.Metric).Next!),
    ];

    [Fact]
    public void Typing_what_stands_there_leaves_every_device_as_it_is()
    {
        Assert.Equal(17, Devices.Count);
        foreach (var device in Devices)
            foreach (var fact in DeviceFacts.Of(device, Measures.Metric).Concat(DeviceHoles.Of(device, Measures.Metric).SelectMany(h => h.Facts)))
                Assert.Equal(Written(device), Written(Assert.IsAssignableFrom<Device>(fact.With(fact.Value).Next)));
    }

    [Fact]
    public void Every_fact_of_a_device_is_stored_as_typed_and_can_be_taken_back()
    {
        var typed = 0;
        foreach (var device in Devices)
            foreach (var fact in DeviceFacts.Of(device, Measures.Metric))
            {
                var other = fact.Options is { } options ? options.Last(o => o.Value != fact.Value).Value : Other(fact);
                var next = Assert.IsAssignableFrom<Device>(fact.With(other).Next);
                Assert.NotEqual(Written(device), Written(next));
                var again = DeviceFacts.Of(next, Measures.Metric).Single(f => f.Label == fact.Label);
                Assert.Equal(other, again.Value);
                Assert.Equal(Written(device), Written(Assert.IsAssignableFrom<Device>(again.With(fact.Value).Next)));
                typed++;
            }
        Assert.True(typed > 40, $"only {typed} facts were tried");
    }

    [Fact]
    public void Every_kind_of_device_can_be_begun_and_stored()
    {
        Assert.Equal(typeof(Device).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Device))).OrderBy(t => t.Name), Devices.Select(d => d.GetType()).OrderBy(t => t.Name));
        foreach (var device in Devices)
        {
            var job = SmallVan.Job;
            var part = job.Parts[0] with { Devices = [device] };
            var changed = new Change("look", [Edit.Put(job, "parts", "A20", part)]).On(job);
            Assert.DoesNotContain(changed.Issues, i => i.Weight == Weight.Error);
            Assert.Equal(Written(device), Written(changed.Job!.Parts[0].Devices.Single()));
        }
    }

    [Fact]
    public void Nothing_is_stored_of_a_new_device_that_nobody_said()
    {
        foreach (var kind in DeviceKind.All)
        {
            var asked = kind.Asked(Measures.Metric);
            Assert.All(asked, f => Assert.Equal("", f.Value));
            // with any one of them unsaid there is no device
            foreach (var unsaid in asked)
            {
                var begun = kind.Begun(asked.Where(f => f != unsaid).ToDictionary(f => f.Label, Said), Measures.Metric);
                Assert.Null(begun.Next);
                Assert.StartsWith(unsaid.Label, begun.Fault, StringComparison.Ordinal);
            }
            // and what was not asked is not known
            var device = kind.Begun(asked.ToDictionary(f => f.Label, Said), Measures.Metric).Next!;
            foreach (var fact in DeviceFacts.Of(device, Measures.Metric))
                if (asked.FirstOrDefault(f => f.Label == fact.Label) is { } said) Assert.Equal(Said(said), fact.Value);
                else Assert.Contains(fact.Value, (string[])["", "NotSeen"]);
        }
    }

    [Fact]
    public void A_tank_is_begun_with_what_it_holds_and_how_much_and_an_alarm_with_what_it_senses()
    {
        DeviceKind Kind(string name) => DeviceKind.All.Single(k => k.Name == name);
        Assert.Equal(["Holds", "Volume when full, l"], Kind("tank").Asked(Measures.Metric).Select(f => f.Label));
        Assert.Equal(["Senses"], Kind("alarm").Asked(Measures.Metric).Select(f => f.Label));
        Assert.Empty(Kind("extinguisher").Asked(Measures.Metric));
        Assert.Equal("Volume when full, l: It needs a number.", Kind("tank").Begun(new Dictionary<string, string> { ["Holds"] = "Waste" }, Measures.Metric).Fault);
        Assert.Equal("Senses: Choose one of the list.", Kind("alarm").Begun(new Dictionary<string, string>(), Measures.Metric).Fault);
    }

    [Fact]
    public void A_figure_may_carry_its_doubt()
    {
        var typed = DeviceFacts.Of(Tank, Measures.Metric).Single(f => f.Label.StartsWith("Volume", StringComparison.Ordinal)).With("82,5 +- 2");
        Assert.Equal(Tank with { VolumeL = new(82.5, 2) }, typed.Next);
    }

    [Theory]
    [InlineData("Volume", "", "It needs a number.")]
    [InlineData("Volume", "plenty", "“plenty” is not a number.")]
    [InlineData("In it", "12 ± x", "“12 ± x” is not a number.")]
    public void What_cannot_be_read_is_said(string label, string text, string fault)
    {
        var typed = DeviceFacts.Of(Tank, Measures.Metric).Single(f => f.Label.StartsWith(label, StringComparison.Ordinal)).With(text);
        Assert.Null(typed.Next);
        Assert.Equal(fault, typed.Fault);
    }

    [Fact]
    public void An_end_of_a_line_is_a_part_or_words()
    {
        var to = LineFacts.Of(Drain, SmallVan.Job, Measures.Metric).Single(f => f.Label == "Goes to");
        Assert.Equal(new LineEnd { Part = new("A21") }, to.With("a21").Next!.To);
        Assert.Equal(new LineEnd { Where = "open under the floor" }, to.With("open under the floor").Next!.To);
        Assert.Equal(new LineEnd(), to.With(" ").Next!.To);
        var from = LineFacts.Of(Drain, SmallVan.Job, Measures.Metric).Single(f => f.Label == "Comes from");
        Assert.Equal(new JointId("J1"), from.With("A20").Next!.From.Joint);
        Assert.Null(from.With("A21").Next!.From.Joint);
    }

    [Fact]
    public void A_route_is_typed_corner_by_corner_in_the_units_of_the_bench()
    {
        var metric = LineFacts.Of(Drain, SmallVan.Job, Measures.Metric).Single(f => f.Label.StartsWith("Route", StringComparison.Ordinal));
        Assert.Equal([new(350, 40, 120), new(900, 40, 120)], metric.With("350, 40, 120\n900; 40; 120\n").Next!.Route);
        Assert.Equal("Line 2: “900, 40” is not three measures; type 350, 40, 120.", metric.With("350, 40, 120\n900, 40").Fault);
        var us = LineFacts.Of(Drain, SmallVan.Job, Measures.Us).Single(f => f.Label.StartsWith("Route", StringComparison.Ordinal));
        Assert.Equal([new(25.4, 12.7, 0)], us.With("1, 1/2, 0").Next!.Route);
    }

    [Fact]
    public void What_is_typed_of_a_door_counts_as_measured()
    {
        var door = new Opening { Name = "sliding door", Face = Face.Right, FromMm = new(100, 100, Known.Inferred), WidthMm = 1200, SillMm = 0, HeightMm = 1700, Passable = true, Known = Known.Inferred };
        var typed = VehicleFacts.Of(door, Measures.Metric).Single(f => f.Label.StartsWith("Clear width", StringComparison.Ordinal)).With("1188").Next!;
        Assert.Equal(new Measured(1188, null, Known.Measured), typed.WidthMm);
        Assert.Equal((door.FromMm, Known.Inferred), (typed.FromMm, typed.Known));
    }

    [Fact]
    public void A_guessed_door_is_measured_once_all_four_measures_are()
    {
        var door = new Opening { Name = "rear doors", Face = Face.Rear, FromMm = 0, WidthMm = 1200, SillMm = 0, HeightMm = 1700, Passable = true, Known = Known.Inferred };
        foreach (var (label, text, known) in new[] { ("From", "210", Known.Inferred), ("Clear width", "1194", Known.Inferred), ("Sill", "-12", Known.Inferred), ("Clear height", "1690", Known.Measured) })
        {
            door = VehicleFacts.Of(door, Measures.Metric).Single(f => f.Label.StartsWith(label, StringComparison.Ordinal)).With(text).Next!;
            Assert.Equal(known, door.Known);
        }
    }

    private static string Said(Fact<Device> fact) => fact.Options is { } options ? options[^1].Value : fact.Label.StartsWith("What", StringComparison.Ordinal) ? "two-ring hob" : "137";

    private static string Other(Fact<Device> fact) =>
        fact.Placeholder is "2026-03-14" ? "2027-05-01"
        : fact.Placeholder is "350, 40, 120" ? "10, 20, 30"
        : fact.OffersParts || fact.Placeholder is "A20 A21" ? "A21"
        : "3";

    private static string Written(Device device) => System.Text.Encoding.UTF8.GetString(JobFile.Write(SmallVan.Job with { Parts = [SmallVan.Job.Parts[0] with { Devices = [device] }] }));
}
