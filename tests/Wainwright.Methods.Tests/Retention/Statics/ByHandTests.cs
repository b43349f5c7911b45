using Wainwright.Methods.Retention;

namespace Wainwright.Methods.Tests.Retention.Statics;

/// <summary>Cases that a person can work out on paper.</summary>
public sealed class ByHandTests
{
    const double Weight = Some.GravityMPerS2;

    // A locker of 18 kg hung by its top rail: the foot swings out about the top edge z = 600. Each screw carries half the weight in
    // shear, which leaves N = 1500 (1 - V/1000) of pull at an arm of 50 mm:  a W 300 = 2 N 50 + W 200.
    [Fact]
    public void A_locker_hung_by_its_top_rail_swings_off_the_wall_at_three_g_and_not_at_seventeen()
    {
        var screw = Some.Strength(1500, 1000);
        var locker = Some.One(18, new(0, 200, 300), [Some.Screw(-300, 550, screw), Some.Screw(300, 550, screw)],
            [Some.Rest(-400, 0), Some.Rest(400, 0), Some.Rest(-400, 600), Some.Rest(400, 600)]);
        var pull = 1500 * (1 - 9 * Weight / 1000);
        var byHand = (2 * pull * 50 + 18 * Weight * 200) / (18 * Weight * 300);
        var factor = LoadFactor.Of(locker, Some.OffWall);
        Assert.Equal(byHand, factor.LowG, tolerance: 1e-7);
        Assert.Equal(byHand, factor.HighG, tolerance: 1e-7);
    }

    // A box 400 wide and 600 high to its centre, against a stop at its foot, tips at 200/600 g with nothing to hold it.
    [Fact]
    public void A_tall_box_against_a_stop_at_its_foot_tips_at_half_its_width_over_the_height_of_its_centre()
    {
        Contact Floor(double x, double y) => new("floor", new(x, y, 0), Some.Up, 0);
        Contact[] contacts = [Floor(-200, -200), Floor(-200, 200), Floor(200, -200), Floor(200, 200), new("stop", new(-200, -200, 0), Some.Rearward, 0), new("stop", new(-200, 200, 0), Some.Rearward, 0)];
        var factor = LoadFactor.Of(Some.One(40, new(0, 0, 600), [], contacts), Some.Forward);
        Assert.Equal(200.0 / 600, factor.LowG, tolerance: 1e-9);
        Assert.Equal(200.0 / 600, factor.HighG, tolerance: 1e-9);
        Assert.True(factor.CarriesItself);
        Assert.Null(factor.GoverningFixing);
    }

    [Fact]
    public void A_box_that_only_stands_on_the_floor_slides_at_once_lifts_at_one_g_and_cannot_be_thrown_through_the_floor()
    {
        Contact Floor(double x, double y) => new("floor", new(x, y, 0), Some.Up, 0);
        var box = Some.One(40, new(0, 0, 300), [], [Floor(-200, -200), Floor(-200, 200), Floor(200, -200), Floor(200, 200)]);
        Assert.Equal(0, LoadFactor.Of(box, Some.Forward).HighG, tolerance: 1e-9);
        Assert.Equal(1, LoadFactor.Of(box, Some.Up).HighG, tolerance: 1e-9);
        Assert.Equal(double.PositiveInfinity, LoadFactor.Of(box, Some.Down).LowG);
    }

    // One screw at the centre of mass of a plate lying flat under a ceiling: pull alone.
    [Fact]
    public void A_plate_hung_by_one_screw_above_its_centre_holds_its_pull_less_its_weight()
    {
        var plate = Some.One(5, new(0, 0, -10), [new("screw", default, Some.Down, Some.Strength(400, 100), 0)], []);
        Assert.Equal(400 / (5 * Weight) - 1, LoadFactor.Of(plate, Some.Down).HighG, tolerance: 1e-7);
    }

    [Fact]
    public void A_part_that_nothing_holds_says_so_in_every_direction()
    {
        var loose = Some.One(5, default, [], []);
        Assert.All(LoadFactor.Of(loose, ThrowDirections.All), f => Assert.True(f is { LowG: -1, HighG: -1, CarriesItself: false, FirstYieldG: -1 }));
    }

    [Fact]
    public void A_plate_whose_screw_carries_half_its_weight_is_half_a_g_below_rest()
    {
        var plate = Some.One(10, new(0, 0, -10), [new("screw", default, Some.Down, Some.Strength(5 * Weight, 100), 0)], []);
        Assert.All(LoadFactor.Of(plate, ThrowDirections.All), f =>
        {
            Assert.Equal(-0.5, f.LowG, tolerance: 1e-7);
            Assert.False(f.CarriesItself);
        });
    }

    [Fact]
    public void A_part_thrown_into_the_wall_it_stands_against_never_comes_loose()
    {
        var cupboard = Some.Cupboard(1, 4);
        var factor = LoadFactor.Of(cupboard, Some.IntoWall);
        Assert.Equal(double.PositiveInfinity, factor.LowG);
        Assert.Empty(factor.Mechanism);
        Assert.Null(factor.GoverningFixing);
    }

    // A cupboard of 10 kg on a panel of 2 kg: four screws of 5 kN, and the panel on two brads of 80 N under a ceiling.
    [Fact]
    public void A_part_on_a_panel_is_only_as_good_as_the_brads_of_the_panel()
    {
        var strong = new FixingStrength(5000, 5000, Sharing.Apart, 1000, 1000);
        var brad = new FixingStrength(80, 80, Sharing.Apart, 1000, 1000);
        Held chain = new(
            [new("panel", 2, new(0, 0, -5)), new("cupboard", 10, new(0, 0, -150))],
            [new("brad", new(-300, 0, 0), Some.Down, brad, 0), new("brad", new(300, 0, 0), Some.Down, brad, 0),
             .. from x in (double[])[-100, 100] from y in (double[])[-100, 100] select new HeldFixing("screw", new(x, y, -10), Some.Down, strong, 1, 0)],
            []);
        var factor = LoadFactor.Of(chain, Some.Down);
        Assert.Equal(160 / (12 * Weight) - 1, factor.HighG, tolerance: 1e-7);
        Assert.InRange(factor.GoverningFixing!.Value, 0, 1);
        Assert.Equal(20_000 / (10 * Weight) - 1, LoadFactor.Of(chain with { Fixings = [.. chain.Fixings.Skip(2).Select(f => f with { Body = 1, To = null })], Bodies = [new("nothing", 0, default), chain.Bodies[1]] }, Some.Down).HighG, tolerance: 1e-6);
    }
}
