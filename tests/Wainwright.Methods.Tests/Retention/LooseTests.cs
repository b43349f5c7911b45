using Wainwright.Methods.Retention;

namespace Wainwright.Methods.Tests.Retention;

public sealed class LooseTests
{
    [Fact]
    public void A_drop_of_the_equivalent_height_gives_the_same_energy()
    {
        var loose = LooseEnergy.Of(3, 14);
        Assert.Equal(3 * Pulse.GravityMPerS2 * loose.DropMm / 1000, loose.EnergyJ, tolerance: 1e-9);
        Assert.Equal(loose.EnergyJ / 0.05, LooseEnergy.MeanForceN(loose.EnergyJ, 50), tolerance: 1e-9);
        Assert.Equal(3 * Pulse.GravityMPerS2 * Pulse.MeanG(14, 50), LooseEnergy.MeanForceN(loose.EnergyJ, 50), tolerance: 1e-6);
    }

    [Fact]
    public void A_magnet_lets_a_drawer_of_five_kilograms_go_below_one_g()
    {
        Assert.Equal(49, LatchDemand.ForceN(new(5), 1), tolerance: 0.05);
        Assert.Equal(40 / (5 * Pulse.GravityMPerS2), LatchDemand.HoldsToG(new(5), 40), tolerance: 1e-9);
        Assert.True(LatchDemand.HoldsToG(new(5), LatchDemand.UsualCatchN.Likely) < 0.9);
        Assert.Equal(0, LatchDemand.ForceN(new(5, FrictionN: 60), 1));
        Assert.Equal(double.PositiveInfinity, LatchDemand.HoldsToG(new(0), 10));
    }

    [Fact]
    public void A_catch_far_from_the_hinge_has_the_longer_arm() =>
        Assert.Equal(LatchDemand.ForceN(new(4), 2) / 2, LatchDemand.ForceN(new(4, 0, 200, 400), 2), tolerance: 1e-9);

    [Fact]
    public void A_tin_slides_off_a_shelf_without_lip_and_turns_over_a_low_one()
    {
        var bare = ShelfLip.Of(new(0.3, 60, 80));
        Assert.Equal(0.3, bare.LeavesAtG, tolerance: 1e-9);
        Assert.Equal(40.0 / 60, bare.TipsAtG, tolerance: 1e-9);
        var low = ShelfLip.Of(new(0.3, 60, 80, 20));
        Assert.Equal(1, low.LeavesAtG, tolerance: 1e-9);
        Assert.Equal(double.PositiveInfinity, ShelfLip.Of(new(0.3, 60, 80, 60)).LeavesAtG);
        Assert.Equal(60, low.LeastLipMm);
    }

    [Fact]
    public void A_bump_takes_the_weight_off_and_the_hold_with_it()
    {
        Assert.Equal(0.5 * ShelfLip.Of(new(0.3, 60, 80, 20)).LeavesAtG, ShelfLip.Of(new(0.3, 60, 80, 20, 0.5)).LeavesAtG, tolerance: 1e-9);
        Assert.Equal(0, ShelfLip.Of(new(0.3, 60, 80, 60, 1)).LeavesAtG);
        Assert.Equal(0.3, ShelfLip.FrictionHoldsToG(0.6, 0.5), tolerance: 1e-9);
        Assert.Equal(0, ShelfLip.FrictionHoldsToG(0.6, 1.2));
    }

    [Fact]
    public void Water_stands_at_45_degrees_under_one_g() => Assert.Equal(45, LiquidTilt.Of(new(500, 300, 0, 150, 1)).TiltDegrees, tolerance: 1e-9);

    [Fact]
    public void A_fitting_in_the_middle_is_wetted_at_the_same_fill_however_it_tilts_while_the_surface_is_whole()
    {
        var tank = LiquidTilt.Of(new(400, 300, 0, 150, 0.5));
        Assert.Equal(tank.WetsLevelFill, tank.WetsFromFill, tolerance: 1e-9);
    }

    [Theory]
    [InlineData(400, 300, 200, 280, 0.3)]
    [InlineData(600, 250, 300, 240, 0.8)]
    [InlineData(600, 250, -300, 240, 0.8)]
    [InlineData(600, 250, 150, 100, 2.0)]
    [InlineData(500, 300, 250, 300, 0)]
    public void The_fill_that_wets_agrees_with_slices_of_the_tank(double length, double height, double at, double fitting, double g)
    {
        const int slices = 200_000;
        double sum = 0;
        for (var i = 0; i < slices; i++) sum += Math.Clamp(fitting + (g * (((i + 0.5) / slices * length) - (length / 2) - at)), 0, height);
        Assert.Equal(sum / slices / height, LiquidTilt.Of(new(length, height, at, fitting, g)).WetsFromFill, tolerance: 1e-6);
    }

    [Fact]
    public void An_upper_fitting_at_the_end_leaks_at_half_the_fill_under_hard_braking()
    {
        // by hand: 600 long, 300 high, fitting at the end 280 high, 0.9 g: the wedge is 280/0.9 = 311.1 long, 280·311.1/2 of 600·300
        var tank = LiquidTilt.Of(new(600, 300, 300, 280, 0.9));
        Assert.Equal(280 * 280 / 0.9 / 2 / (600 * 300), tank.WetsFromFill, tolerance: 1e-9);
        Assert.Equal(280.0 / 300, tank.WetsLevelFill, tolerance: 1e-9);
    }

    [Fact]
    public void A_lid_meets_the_ceiling_where_the_circle_does()
    {
        Assert.Equal(30, LidSwing.MeetsAtDegrees(600, 0, 300)!.Value, tolerance: 1e-9);
        Assert.Null(LidSwing.MeetsAtDegrees(600, 0, 601));
        Assert.Equal(0, LidSwing.MeetsAtDegrees(600, 50, 40));
        var at = LidSwing.MeetsAtDegrees(600, -120, 300)!.Value;
        Assert.Equal(300, LidSwing.AboveHingeMm(600, -120, at), tolerance: 1e-9);
    }

    static GasSpringBalance.Lid Lid => new(12, 300, 0, 60, -250, 250, -20, 2, 250, 420, 180);

    [Fact]
    public void The_spring_does_the_work_that_its_moment_promises()
    {
        // virtual work: moment times a small turn is force times the length gained
        const double step = 1e-4;
        foreach (var degrees in (ReadOnlySpan<double>)[5, 30, 60, 80])
        {
            var at = GasSpringBalance.At(Lid, degrees);
            double gained = GasSpringBalance.At(Lid, degrees + step).LengthMm - GasSpringBalance.At(Lid, degrees - step).LengthMm;
            Assert.Equal(Lid.Count * at.SpringN * gained / 1000 / double.DegreesToRadians(2 * step), at.LiftNm, tolerance: 1e-4 * Math.Abs(at.LiftNm) + 1e-4);
        }
    }

    [Fact]
    public void A_level_lid_weighs_most_and_one_standing_up_nothing()
    {
        Assert.Equal(12 * Pulse.GravityMPerS2 * 0.3, GasSpringBalance.At(Lid, 0).WeightNm, tolerance: 1e-9);
        Assert.Equal(0, GasSpringBalance.At(Lid, 90).WeightNm, tolerance: 1e-9);
        var at = GasSpringBalance.At(Lid, 40);
        Assert.Equal(-at.BalanceNm, at.HandN(500) * 0.5, tolerance: 1e-9);
    }

    [Fact]
    public void Cold_springs_are_weaker_in_step_with_absolute_temperature()
    {
        double warm = GasSpringBalance.At(Lid, 40).LiftNm, cold = GasSpringBalance.At(Lid, 40, -10).LiftNm;
        Assert.Equal(263.15 / 293.15, cold / warm, tolerance: 1e-9);
    }

    [Fact]
    public void A_spring_too_short_or_pushed_too_far_says_so()
    {
        Assert.NotEmpty(GasSpringBalance.At(Lid with { DrawnOutMm = 200 }, 80).OutsideRange);
        Assert.NotEmpty(GasSpringBalance.At(Lid with { StrokeMm = 10 }, 0).OutsideRange);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LiquidTilt.Of(new(400, 300, 250, 150, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => LiquidTilt.Of(new(400, 300, 0, 150, 1, 1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ShelfLip.Of(new(0.3, 0, 80)));
        Assert.Throws<ArgumentOutOfRangeException>(() => GasSpringBalance.At(Lid with { Count = 0 }, 10));
        Assert.Throws<ArgumentOutOfRangeException>(() => GasSpringSizing.SpringN(10, 300, 100, 0));
    }
}
