using Wainwright.Methods.Retention;

namespace Wainwright.Methods.Tests.Retention;

public sealed class WoodTests
{
    [Fact]
    public void A_mean_breaking_load_is_four_and_a_half_to_six_times_a_working_value()
    {
        foreach (var (fixing, ratio) in (ReadOnlySpan<(WoodFixing, double)>)[(WoodFixing.WoodScrew, 5.5), (WoodFixing.LagScrew, 4.5), (WoodFixing.SmoothNail, 5.7)])
            Assert.Equal(ratio, WoodHandbookWithdrawal.Of(new(fixing, 0.5, 6, 30)).MeanUltimateN / NdsWithdrawal.Of(new(fixing, 0.5, 6, 30)).AllowableN, tolerance: 0.05);
    }

    [Theory]
    [InlineData(WoodFixing.WoodScrew, 0)]
    [InlineData(WoodFixing.SmoothNail, 0)]
    [InlineData(WoodFixing.LagScrew, 0.75)]
    public void End_grain_holds_a_lag_screw_and_nothing_else(WoodFixing fixing, double part)
    {
        NdsWithdrawal.Input side = new(fixing, 0.5, 6, 30);
        var end = NdsWithdrawal.Of(side with { IsInEndGrain = true });
        Assert.Equal(part * NdsWithdrawal.Of(side).AllowableN, end.AllowableN, tolerance: 1e-9);
        Assert.Equal(part == 0, end.OutsideRange.Count > 0);
    }

    [Fact]
    public void Heavy_furniture_plywood_holds_twice_what_light_holds()
    {
        double Pull(WoodDensity.Wood wood) => NdsWithdrawal.Of(new(WoodFixing.WoodScrew, WoodDensity.SpecificGravity(wood).Likely, 4, 12)).AllowableN;
        Assert.InRange(Pull(WoodDensity.Wood.BirchPlywood) / Pull(WoodDensity.Wood.PoplarPlywood), 2, 2.6);
    }

    [Fact]
    public void Roots_lie_between_the_tabled_ones_and_keep_their_ratio_beyond()
    {
        Assert.Equal(0.131 * 25.4, ScrewSteel.RootMm(WoodFixing.WoodScrew, ScrewSteel.NominalMm(8)), tolerance: 1e-9);
        Assert.InRange(ScrewSteel.RootMm(WoodFixing.WoodScrew, 4.3), 0.131 * 25.4, 0.142 * 25.4);
        Assert.Equal(0.113 / 0.138, ScrewSteel.RootMm(WoodFixing.WoodScrew, 3) / 3, tolerance: 1e-9);
        Assert.Equal(0.196 / 0.242, ScrewSteel.RootMm(WoodFixing.WoodScrew, 7) / 7, tolerance: 1e-9);
        Assert.True(ScrewSteel.ChipboardRootMm(4) < ScrewSteel.RootMm(WoodFixing.WoodScrew, 4));
        Assert.Equal(8, ScrewSteel.UsualHeadMm(4));
        Assert.True(ScrewSteel.BendingYieldMPa(WoodFixing.WoodScrew, 6) < ScrewSteel.BendingYieldMPa(WoodFixing.WoodScrew, 3.5));
    }

    [Fact]
    public void An_offcut_tells_its_density() => Assert.Equal(0.5, WoodDensity.OfOffcut(0.55, 1_000, 100, 10, 0.10), tolerance: 1e-9);

    [Fact]
    public void Two_planes_of_a_fixing_carry_twice_its_fourth_mode_and_know_no_second()
    {
        NdsLateral.Input one = new(4, 40, 20, 30, 30, 600);
        var (single, twice) = (NdsLateral.Of(one), NdsLateral.Of(one with { IsDoubleShear = true }));
        Assert.Equal(2 * single.AllowableByModeN[NdsLateral.Mode.IV], twice.AllowableByModeN[NdsLateral.Mode.IV], tolerance: 1e-9);
        Assert.Equal(single.AllowableByModeN[NdsLateral.Mode.Im], twice.AllowableByModeN[NdsLateral.Mode.Im], tolerance: 1e-9);
        Assert.DoesNotContain(NdsLateral.Mode.II, twice.AllowableByModeN.Keys);
        Assert.DoesNotContain(NdsLateral.Mode.IIIm, twice.AllowableByModeN.Keys);
    }

    [Fact]
    public void The_yield_load_is_the_working_value_times_its_reduction()
    {
        var nail = NdsLateral.Of(new(3.3, 40, 12, 30, 30, 700));
        Assert.Equal(nail.AllowableN * NdsLateral.SmallReduction(3.3), nail.YieldN, tolerance: 1e-9);
        Assert.Equal(nail.AllowableByModeN.Values.Min(), nail.AllowableN);
    }

    [Fact]
    public void Members_that_change_places_change_the_names_of_the_modes_only()
    {
        NdsLateral.Input joint = new(4, 40, 15, 25, 40, 600), turned = new(4, 15, 40, 40, 25, 600);
        var (a, b) = (NdsLateral.Of(joint).AllowableByModeN, NdsLateral.Of(turned).AllowableByModeN);
        Assert.Equal(a[NdsLateral.Mode.IIIs], b[NdsLateral.Mode.IIIm], tolerance: 1e-9);
        Assert.Equal(a[NdsLateral.Mode.II], b[NdsLateral.Mode.II], tolerance: 1e-9);
        Assert.Equal(a[NdsLateral.Mode.IV], b[NdsLateral.Mode.IV], tolerance: 1e-9);
    }

    [Theory]
    [InlineData(60, 1)]
    [InlineData(48, 0.8)]
    [InlineData(36, 0.6)]
    [InlineData(35, 0)]
    public void A_short_screw_carries_less_and_a_very_short_one_nothing(double depthMm, double part) =>
        Assert.Equal(part, NdsPenetration.Factor(WoodFixing.WoodScrew, 6, depthMm), tolerance: 1e-9);

    [Fact]
    public void A_slanting_load_lies_between_the_two_and_a_nail_loses_more_than_a_screw()
    {
        Assert.Equal(400, NdsCombined.AllowableN(WoodFixing.WoodScrew, 800, 400, 0), tolerance: 1e-9);
        Assert.Equal(800, NdsCombined.AllowableN(WoodFixing.WoodScrew, 800, 400, 90), tolerance: 1e-9);
        Assert.Equal(800 * 400 / 600.0, NdsCombined.AllowableN(WoodFixing.WoodScrew, 800, 400, 45), tolerance: 1e-9);
        var nail = NdsCombined.AllowableN(WoodFixing.SmoothNail, 800, 400, 45);
        Assert.Equal(1, (nail * Math.Sqrt(0.5) / 800) + (nail * Math.Sqrt(0.5) / 400), tolerance: 1e-9);
        Assert.True(nail < 800 * 400 / 600.0);
    }

    [Theory]
    [InlineData(0, 8_000)]
    [InlineData(90, 2_000)]
    [InlineData(45, 3_200)]
    public void Hankinson_goes_from_along_to_across(double degrees, double mpa) => Assert.Equal(mpa, Hankinson.Of(8_000, 2_000, degrees), tolerance: 1e-6);

    [Fact]
    public void A_head_pulls_through_thin_board_in_step_with_its_thickness_and_thick_board_no_further()
    {
        Assert.Equal(2 * HeadPullThrough.AllowableN(0.42, 8, 6), HeadPullThrough.AllowableN(0.42, 8, 12), tolerance: 1e-9);
        Assert.Equal(HeadPullThrough.AllowableN(0.42, 8, 20), HeadPullThrough.AllowableN(0.42, 8, 40), tolerance: 1e-9);
        Assert.Equal(70e-6 * 350 * 350 * 64, HeadPullThrough.CharacteristicN(350, 8), tolerance: 1e-9);
    }

    [Fact]
    public void A_brad_holds_by_the_weaker_board_and_by_nothing_once_wetted()
    {
        var dry = BradsAndStaples.BradAllowableN(0.42, 0.42, 1.2, 20, 4, false);
        Assert.Equal(NdsWithdrawal.Of(new(WoodFixing.SmoothNail, 0.42, 1.2, 4)).AllowableN, dry, tolerance: 1e-9);
        Assert.Equal(0, BradsAndStaples.BradAllowableN(0.42, 0.42, 1.2, 20, 4, true));
        Assert.InRange(BradsAndStaples.BradMeanUltimateN(0.42, 0.42, 1.2, 20, 4, false) / dry, 5.6, 5.8);
        Assert.Equal(20, BradsAndStaples.StapleN(10, 90));
        Assert.Equal(14, BradsAndStaples.StapleN(10, 0), tolerance: 1e-9);
    }

    [Fact]
    public void Particleboard_holds_less_in_its_edge()
    {
        double edge = ParticleboardScrew.MeanUltimateN(0.65, 4.2, 15, true), face = ParticleboardScrew.MeanUltimateN(0.65, 4.2, 15, false);
        Assert.Equal(2055.0 / 2655, edge / face, tolerance: 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => ParticleboardScrew.MeanUltimateN(0.65, 6, 1, true));
    }

    [Fact]
    public void Steel_plates_of_eurocode_are_thin_thick_or_between()
    {
        Ec5SteelPlate.Input thin = new(5, 1, 30, 20, 5_000);
        double a = Ec5SteelPlate.CharacteristicN(thin), b = Ec5SteelPlate.CharacteristicN(thin with { PlateMm = 5 });
        Assert.Equal(Math.Min(0.4 * 20 * 30 * 5, 1.15 * Math.Sqrt(2 * 5_000 * 20 * 5)), a, tolerance: 1e-9);
        Assert.Equal((a + b) / 2, Ec5SteelPlate.CharacteristicN(thin with { PlateMm = 3.75 }), tolerance: 1e-9);
        Assert.True(Ec5SteelPlate.CharacteristicN(thin with { AxialN = 1_000, RopeShare = 1 }) >= a);
    }

    [Fact]
    public void The_rope_effect_stops_at_its_share()
    {
        Ec5Lateral.Input bare = new(4, 12, 40, 25, 25, 4_000);
        var none = Ec5Lateral.Of(bare).ByModeN[Ec5Lateral.Mode.F];
        Assert.Equal(none + 100, Ec5Lateral.Of(bare with { AxialN = 400, RopeShare = 1 }).ByModeN[Ec5Lateral.Mode.F], tolerance: 1e-9);
        Assert.Equal(1.15 * none, Ec5Lateral.Of(bare with { AxialN = 1e6, RopeShare = 0.15 }).ByModeN[Ec5Lateral.Mode.F], tolerance: 1e-9);
        Assert.Equal(Ec5Lateral.Of(bare).ByModeN[Ec5Lateral.Mode.A], Ec5Lateral.Of(bare with { AxialN = 400, RopeShare = 1 }).ByModeN[Ec5Lateral.Mode.A], tolerance: 1e-9);
    }

    [Fact]
    public void A_furniture_screw_leaves_the_range_of_eurocode() => Assert.Equal(2, Ec5Axial.Of(new(4, 2.6, 12, 350)).OutsideRange.Count);

    [Theory]
    [InlineData(36, 1)]
    [InlineData(30, 0.5)]
    [InlineData(24, 0)]
    [InlineData(10, 0)]
    public void A_short_smooth_nail_holds_less_and_a_very_short_one_nothing(double depthMm, double part) =>
        Assert.Equal(part * 20e-6 * 350 * 350 * 3 * depthMm, Ec5Axial.SmoothNailN(3, depthMm, 350), tolerance: 1e-9);

    [Theory]
    [InlineData(4, 90, 28, 20)]
    [InlineData(4, 0, 20, 20)]
    [InlineData(6, 90, 60, 30)]
    public void Edges_of_eurocode_grow_with_a_load_towards_them(double d, double degrees, double loadedMm, double otherMm)
    {
        var least = Ec5Distances.Of(d, degrees);
        Assert.Equal(loadedMm, least.LoadedEdgeMm, tolerance: 1e-9);
        Assert.Equal(otherMm, least.OtherEdgeMm, tolerance: 1e-9);
        Assert.Equal(0.85 * least.AlongGrainMm, Ec5Distances.Of(d, degrees, isPanelToTimber: true).AlongGrainMm, tolerance: 1e-9);
    }

    [Fact]
    public void Six_millimetres_from_an_edge_is_too_near_for_a_four_millimetre_screw()
    {
        var least = SplittingDistance.Of(4, isBored: false, pullsTowardsEnd: true);
        Assert.Equal((10.0, 60.0, 60.0, 40.0), (least.EdgeMm, least.EndMm, least.AlongGrainMm, least.AcrossGrainMm));
        var left = SplittingDistance.Left(6, least.EdgeMm);
        Assert.Equal(0.36, left.Low, tolerance: 1e-9);
        Assert.Equal(0.6, left.Likely, tolerance: 1e-9);
        Assert.Equal(Spread.Exactly(1), SplittingDistance.Left(10, least.EdgeMm));
        Assert.Equal(Spread.Exactly(0), SplittingDistance.Left(0, least.EdgeMm));
    }

    [Fact]
    public void Wetting_takes_three_quarters_of_a_nail_and_a_third_of_a_screw()
    {
        Assert.Equal(0.25, WetWood.Withdrawal(WoodFixing.SmoothNail, drivenWet: true, loadedWet: false));
        Assert.Equal(1, WetWood.Withdrawal(WoodFixing.SmoothNail, drivenWet: true, loadedWet: true));
        Assert.Equal(0.7, WetWood.Withdrawal(WoodFixing.WoodScrew, drivenWet: false, loadedWet: true));
        Assert.Equal(0.4, WetWood.Lateral(8, drivenWet: true, loadedWet: false));
        Assert.Equal(1.6, LoadDuration.Factor(LoadDuration.Lasting.Impact));
    }

    [Fact]
    public void Eurocode_shares_pull_and_shear_round_for_screws_and_straight_for_nails()
    {
        Assert.Equal(0.72, Ec5Design.Used(WoodFixing.WoodScrew, 0.6, 0.6), tolerance: 1e-9);
        Assert.Equal(1.2, Ec5Design.Used(WoodFixing.SmoothNail, 0.6, 0.6), tolerance: 1e-9);
        Assert.Equal(1.1 / 1.3, Ec5Design.Factor(isInstantaneous: true), tolerance: 1e-9);
        Assert.Equal(0.9 / 1.3, Ec5Design.Factor(isInstantaneous: true, isWetService: true), tolerance: 1e-9);
        Assert.Equal(0.7 / 1.3, Ec5Design.Factor(isInstantaneous: false, isWetService: true), tolerance: 1e-9);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => NdsWithdrawal.Of(new(WoodFixing.WoodScrew, 0, 4, 20)));
        Assert.Throws<ArgumentOutOfRangeException>(() => NdsWithdrawal.Of(new(WoodFixing.WoodScrew, 0.5, double.NaN, 20)));
        Assert.Throws<ArgumentOutOfRangeException>(() => NdsLateral.Of(new(4, 0, 20, 30, 30, 600)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Ec5Lateral.Of(new(4, 12, 40, 25, 25, 4_000, 100, 1.5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Ec5Axial.Of(new(6, 4, 60, 350, Count: 0)));
        Assert.NotEmpty(NdsWithdrawal.Of(new(WoodFixing.WoodScrew, 0.9, 4, 20)).OutsideRange);
    }
}
