using Wainwright.Fitout;
using Wainwright.Web.Entry;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Tests.Entry;

/// <summary>Lines, devices, doors and wheel arches fact by fact: what is typed stands in the model, and nothing else changes.</summary>
public sealed class FactsTests
{
    private static readonly Line Drain = SmallVan.Job.Lines[0];

    [Fact]
    public void Typing_what_stands_there_leaves_every_device_as_it_is()
    {
        foreach (var device in DeviceFacts.Begun)
            foreach (var fact in DeviceFacts.Of(device, Measures.Metric).Concat(DeviceHoles.Of(device, Measures.Metric).SelectMany(h => h.Facts)))
                Assert.Equal(Written(device), Written(Assert.IsAssignableFrom<Device>(fact.With(fact.Value).Next)));
    }

    [Fact]
    public void Every_kind_of_device_can_be_begun_and_stored()
    {
        Assert.Equal(typeof(Device).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Device))).OrderBy(t => t.Name), DeviceFacts.Begun.Select(d => d.GetType()).OrderBy(t => t.Name));
        foreach (var device in DeviceFacts.Begun)
        {
            var job = SmallVan.Job;
            var part = job.Parts[0] with { Devices = [device] };
            Assert.DoesNotContain(new Change("look", [Edit.Put(job, "parts", "A20", part)]).On(job).Issues, i => i.Weight == Weight.Error);
        }
    }

    [Fact]
    public void A_figure_may_carry_its_doubt()
    {
        var tank = DeviceFacts.Begun.OfType<Tank>().Single();
        var typed = DeviceFacts.Of(tank, Measures.Metric).Single(f => f.Label.StartsWith("Volume", StringComparison.Ordinal)).With("82,5 +- 2");
        Assert.Equal(new Measured(82.5, 2), Assert.IsType<Tank>(typed.Next).VolumeL);
    }

    [Theory]
    [InlineData("Volume", "", "It needs a number.")]
    [InlineData("Volume", "plenty", "“plenty” is not a number.")]
    [InlineData("In it", "12 ± x", "“12 ± x” is not a number.")]
    public void What_cannot_be_read_is_said(string label, string text, string fault)
    {
        var tank = DeviceFacts.Begun.OfType<Tank>().Single();
        var typed = DeviceFacts.Of(tank, Measures.Metric).Single(f => f.Label.StartsWith(label, StringComparison.Ordinal)).With(text);
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

    private static string Written(Device device) => System.Text.Encoding.UTF8.GetString(JobFile.Write(SmallVan.Job with { Parts = [SmallVan.Job.Parts[0] with { Devices = [device] }] }));
}
