using Wainwright.Fitout;
using Wainwright.Web.Entry;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Tests.Entry;

/// <summary>What decides whether something holds, as it is typed on the sheet of its part.</summary>
public sealed class HoldFactsTests
{
    private static readonly Joint Bolts = SmallVan.Job.Joints[0];
    private static readonly MovingThing Drawer = new() { Name = "top drawer", Kind = MovingKind.Drawer, Opens = Direction.Forward };
    private static readonly OpenShelf Shelf = new() { Name = "long shelf" };

    [Theory]
    [InlineData("Length that bites", "18 ± 2", nameof(Joint.PenetrationMm), 18, 2.0)]
    [InlineData("Nearest edge", "6", nameof(Joint.EdgeMm), 6, null)]
    [InlineData("Head or washer", "8,4", nameof(Joint.HeadMm), 8.4, null)]
    [InlineData("One carries", "1200", nameof(Joint.RatedN), 1200, null)]
    public void A_measure_of_a_fixing_is_stored_as_typed_and_nothing_else_changes(string label, string typed, string field, double value, double? doubt)
    {
        var next = HoldFacts.Of(Bolts, Measures.Metric).Single(f => f.Label.StartsWith(label, StringComparison.Ordinal)).With(typed).Next!;
        var property = typeof(Joint).GetProperty(field)!;
        Assert.Equal(new Measured(value, doubt), property.GetValue(next));
        property.SetValue(next, null);
        Assert.Equal(Written(Bolts), Written(next));
    }

    [Fact]
    public void Every_fact_typed_as_it_stands_leaves_the_joint_as_it_is()
    {
        var known = Bolts with
        {
            Base = "steel sheet", BaseMm = 1.5, PenetrationMm = new(18, 2), UnderHead = "birch plywood", UnderHeadMm = 12, HeadMm = 9, EdgeMm = 6, Grade = "8.8", BondedMm2 = 400, RatedN = 900,
            Axis = Direction.Left, Points = [new(1, 2, 3), new(4, 5, 6)], Flaws = [FixingFlaw.Wetted, FixingFlaw.BoardEdge],
        };
        foreach (var fact in HoldFacts.Of(known, Measures.Metric)) Assert.Equal(Written(known), Written(fact.With(fact.Value).Next!));
    }

    [Fact]
    public void A_flaw_is_ticked_and_unticked()
    {
        Fact<Joint> Flaw(Joint of, string label) => HoldFacts.Of(of, Measures.Metric).Single(f => f.Label.StartsWith(label, StringComparison.Ordinal));
        Assert.True(Flaw(Bolts, "Rusted").Tick);
        var rusted = Flaw(Bolts, "Rusted").With("yes").Next!;
        Assert.Equal([FixingFlaw.Rusted], rusted.Flaws);
        Assert.Equal([FixingFlaw.OverDriven, FixingFlaw.Rusted], Flaw(rusted, "Over-driven").With("yes").Next!.Flaws);
        Assert.Empty(Flaw(rusted, "Rusted").With("no").Next!.Flaws);
        Assert.Equal(Enum.GetValues<FixingFlaw>().Length, HoldFacts.Of(Bolts, Measures.Metric).Count(f => f.Tick));
    }

    [Fact]
    public void A_force_is_typed_in_the_units_of_the_bench()
    {
        var us = MovingFacts.Of(Drawer, Measures.Us).Single(f => f.Label == "Force at the catch that opens it, lbf");
        // 1 lbf = 4.4482216152605 N by definition
        Assert.Equal(44.482216152605, us.With("10").Next!.HoldsN!.Value.Value, 9);
        var shown = MovingFacts.Of(us.With("10 ± 1").Next!, Measures.Us).Single(f => f.Label == us.Label).Value;
        Assert.Equal("10 ± 1", shown);
        Assert.Equal("“firm” is not a force.", us.With("firm").Fault);
    }

    [Fact]
    public void What_slides_is_asked_for_no_hinge_and_what_turns_is()
    {
        Assert.DoesNotContain(MovingFacts.Of(Drawer, Measures.Metric), f => f.Label.Contains("hinge", StringComparison.Ordinal));
        var lid = Drawer with { Kind = MovingKind.Lid };
        Assert.Equal(new Place(100, 200, 300), MovingFacts.Of(lid, Measures.Metric).Single(f => f.Label.StartsWith("Middle of its hinge", StringComparison.Ordinal)).With("100, 200, 300").Next!.Hinge);
    }

    [Fact]
    public void No_lip_is_nought_and_not_unknown()
    {
        var lip = ShelfFacts.Of(Shelf, Measures.Metric).Single(f => f.Label.StartsWith("Height of its lip", StringComparison.Ordinal));
        Assert.Equal(0, lip.With("0").Next!.LipMm!.Value.Value);
        Assert.Contains("no lip", ShelfFacts.About(lip.With("0").Next!, Measures.Metric), StringComparison.Ordinal);
        Assert.Contains("lip not measured", ShelfFacts.About(Shelf, Measures.Metric), StringComparison.Ordinal);
        Assert.Equal([Direction.Right], ShelfFacts.Of(Shelf, Measures.Metric).Single(f => f.Label == "Open right").With("yes").Next!.OpenSides);
    }

    private static string Written(Joint joint) => System.Text.Encoding.UTF8.GetString(JobFile.Write(SmallVan.Job with { Joints = [joint, SmallVan.Job.Joints[1]] }));
}
