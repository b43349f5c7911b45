using Wainwright.Fitout;
using Wainwright.Methods.Retention;
using Wainwright.Survey.Retention;

namespace Wainwright.Survey.Tests.Retention;

public sealed class HoldingTests
{
    const double G = 9.80665;

    static Joint Joint(string id, string part, string? to, Direction? axis, double ratedN, params Place[] points) => new()
    {
        Id = new(id), Part = new(part), To = to is null ? null : new PartId(to), Type = FixingType.Bolt, Size = "M8", Count = points.Length, Points = points, Axis = axis, Base = "side rib, steel", RatedN = new(ratedN, 0),
        State = FixingState.Sound, Release = new() { Way = ReleaseWay.Unscrew }, Known = Known.Measured,
    };

    static Part Box(string id, double x, double y, double z, double kg) => A.Part(id).At(x, y, z, 400, 300, 300) with { MassKg = new(kg, 0) };

    static Thrown Thrown(PartHolding held, double x, double y, double z) => Assert.Single(held.Directions, d => (d.Way - new Vector3D(x, y, z).Unit()).Length < 1e-9);

    [Fact]
    public void A_box_hung_from_the_roof_by_four_rated_bolts_drops_at_their_strength_over_its_weight()
    {
        // pulled straight down all four share alike: 4 × 500 N over 20 kg, less the 1 g that hangs there already
        Place[] corners = [new(100, 500, 1_900), new(500, 500, 1_900), new(100, 800, 1_900), new(500, 800, 1_900)];
        var job = A.Van(Box("box", 100, 500, 1_600, 20)) with { Joints = [Joint("bolts", "box", null, Direction.Up, 500, corners)] };
        var down = Thrown(Holding.Of(job, new PartId("box")), 0, 0, -1);
        Assert.Equal(4 * 500 / (20 * G) - 1, down.FactorG!.Value.Likely, tolerance: 1e-6);
        Assert.True(double.IsPositiveInfinity(Thrown(Holding.Of(job, new PartId("box")), 0, 0, 1).FactorG!.Value.Low));
    }

    [Fact]
    public void A_cupboard_on_a_panel_is_only_as_good_as_what_holds_the_panel()
    {
        Place[] onPanel = [new(120, 30, 1_020), new(480, 30, 1_020), new(120, 30, 1_280), new(480, 30, 1_280)];
        Place[] panel = [new(110, 15, 1_010), new(490, 15, 1_010), new(110, 15, 1_290), new(490, 15, 1_290)];
        Job Van(double panelN) => A.Van(A.Part("panel").At(100, 0, 1_000, 400, 30, 300) with { System = PartSystem.Lining, MassKg = new(2, 0) }, Box("box", 100, 30, 1_000, 20)) with
        {
            Joints = [Joint("strong", "box", "panel", Direction.Left, 5_000, onPanel), Joint("weak", "panel", null, Direction.Left, panelN, panel)],
        };
        double Stop(double panelN) => Holding.Of(Van(panelN), new PartId("box")).InG(ThrownWord.Stop)!.Value.Likely;
        Assert.True(Stop(300) < Stop(600) && Stop(600) < Stop(5_000));
        var held = Holding.Of(Van(300), new PartId("box"));
        Assert.Equal(["panel"], held.Through.Select(p => p.Text));
        Assert.Equal("weak", held.Weakest!.Value.Text);
        // no more than the shear of the four weak bolts over both masses
        Assert.True(Stop(300) <= 4 * 300 / (22 * G) + 1e-9);
    }

    [Fact]
    public void What_rides_on_a_part_is_held_by_its_fixings()
    {
        Place[] feet = [new(110, 510, 5), new(490, 510, 5), new(110, 790, 5), new(490, 790, 5)];
        var box = Box("box", 100, 500, 0, 20);
        var alone = A.Van(box) with { Joints = [Joint("feet", "box", null, Direction.Down, 2_000, feet)] };
        var loaded = alone with { Parts = [box, Box("load", 100, 500, 300, 20) with { StandsOn = [new("box")], LooseGoods = true }] };
        Assert.Equal(20, Holding.Of(alone, new PartId("box")).LadenKg!.Value.Likely, tolerance: 1e-9);
        Assert.Equal(40, Holding.Of(loaded, new PartId("box")).LadenKg!.Value.Likely, tolerance: 1e-9);
        Assert.True(Holding.Of(loaded, new PartId("box")).InG(ThrownWord.Stop)!.Value.Likely < Holding.Of(alone, new PartId("box")).InG(ThrownWord.Stop)!.Value.Likely / 2);
    }

    [Fact]
    public void A_box_that_only_stands_slides_where_friction_gives_out_and_lifts_at_one_g()
    {
        var held = Holding.Of(A.Van(Box("box", 1_000, 700, 0, 20) with { LooseGoods = true, Friction = new(0.5, 0.05) }), new PartId("box"));
        Assert.Equal(HeldBy.Nothing, held.HeldBy);
        Assert.Equal(0.5, held.InG(ThrownWord.Stop)!.Value.Likely, tolerance: 1e-9);
        Assert.Equal(1, held.InG(ThrownWord.Bump)!.Value.Likely, tolerance: 1e-6);
        // half its depth over the height of its middle: 200/150 above the friction, so it slides before it tips
        Assert.Equal(Verdict.FallsShort, held.Verdict);
    }

    [Fact]
    public void Plugs_and_hose_ends_hold_nothing()
    {
        var job = A.Van(Box("box", 1_000, 700, 500, 5)) with { Joints = [Joint("plug", "box", null, Direction.Down, 500, new Place(1_100, 800, 500)) with { Type = FixingType.Plug }] };
        var held = Holding.Of(job, new PartId("box"));
        Assert.Equal((HeldBy.NotRecorded, Verdict.CannotTell), (held.HeldBy, held.Verdict));
        Assert.NotNull(held.NextLook);
    }

    [Fact]
    public void Fixings_that_nobody_has_seen_count_for_nothing_at_worst_and_the_look_is_at_them()
    {
        Place[] feet = [new(1_010, 710, 5), new(1_390, 710, 5), new(1_010, 990, 5), new(1_390, 990, 5)];
        var job = A.Van(Box("box", 1_000, 700, 0, 20)) with { Joints = [Joint("feet", "box", null, Direction.Down, 5_000, feet) with { Known = Known.NotInspected, State = FixingState.NotSeen, Hidden = true }] };
        var held = Holding.Of(job, new PartId("box"));
        Assert.Equal(0, held.InG(ThrownWord.Stop)!.Value.Low, tolerance: 1e-6);
        Assert.Equal(Verdict.CannotTell, held.Verdict);
        Assert.Contains("take off what covers it", held.NextLook!, StringComparison.Ordinal);
        Assert.Equal(Verdict.Holds, Holding.Of(job with { Joints = [job.Joints[0] with { Known = Known.Measured, State = FixingState.Sound }] }, new PartId("box")).Verdict);
    }

    [Fact]
    public void A_mass_that_nobody_weighed_cannot_be_told_and_is_asked_for()
    {
        var held = Holding.Of(A.Van(A.Part("box").At(1_000, 700, 0) with { LooseGoods = true }), new PartId("box"));
        Assert.Equal(Verdict.CannotTell, held.Verdict);
        Assert.Contains("weigh it", held.NextLook!, StringComparison.Ordinal);
    }

    [Fact]
    public void The_load_case_that_is_asked_for_decides()
    {
        Place[] feet = [new(1_010, 710, 5), new(1_390, 710, 5), new(1_010, 990, 5), new(1_390, 990, 5)];
        var job = A.Van(Box("box", 1_000, 700, 0, 20)) with { Joints = [Joint("feet", "box", null, Direction.Down, 700, feet)] };
        Assert.Equal(Verdict.Holds, Holding.Of(job, new PartId("box"), LoadCase.DrivingLightVan).Verdict);
        Assert.Equal(Verdict.FallsShort, Holding.Of(job, new PartId("box"), LoadCase.TwentyForward).Verdict);
        Assert.Equal([LoadCase.DrivingLightVan, LoadCase.NineThreeCab], Holding.Chosen(job, []));
        Assert.Equal([LoadCase.TenAllRound], Holding.Chosen(job with { JudgedAgainst = [LoadCase.TenAllRound] }, []));
    }
}
