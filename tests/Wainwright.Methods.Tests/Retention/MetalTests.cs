using Wainwright.Methods.Retention;
using static Wainwright.Methods.Retention.SheetScrewAisi;

namespace Wainwright.Methods.Tests.Retention;

public sealed class MetalTests
{
    const double Mpa = 270;

    [Fact]
    public void Shear_between_the_two_rules_lies_on_a_straight_line()
    {
        double At(double farMm) => ShearN(0.8, Mpa, farMm, Mpa, 4.8);
        double tilting = Math.Min(TiltingN(1.4, Mpa, 4.8), BearingN(0.8, Mpa, 4.8)), bearing = BearingN(0.8, Mpa, 4.8);
        Assert.Equal(tilting + ((bearing - tilting) * ((1.4 / 0.8) - 1) / 1.5), At(1.4), tolerance: 1e-9);
        Assert.Equal(bearing, At(2), tolerance: 1e-9);
        Assert.Equal(At(0.8), At(0.8 + 1e-12), tolerance: 1e-6);
    }

    [Fact]
    public void The_newer_text_counts_thin_sheet_less_and_thick_sheet_no_more()
    {
        Assert.True(PullOutN(Edition.S100Of2016, 0.8, Mpa, 4.8) < PullOutN(Edition.S100Of2012, 0.8, Mpa, 4.8));
        Assert.Equal(PullOutN(Edition.S100Of2012, 2, Mpa, 4.8), PullOutN(Edition.S100Of2016, 2, Mpa, 4.8), tolerance: 1e-9);
    }

    [Fact]
    public void Allowable_pull_over_fell_by_more_than_a_third()
    {
        double Allowable(Edition edition) => PullOverN(edition, 0.8, Mpa, 10) / SafetyFactor(edition, Limit.PullOver);
        Assert.Equal(1 - 0.38, Allowable(Edition.S100Of2016) / Allowable(Edition.S100Of2012), tolerance: 0.005);
        Assert.Equal(PullOverN(Edition.S100Of2012, 0.8, Mpa, 12.7), PullOverN(Edition.S100Of2012, 0.8, Mpa, 30), tolerance: 1e-9);
    }

    [Fact]
    public void A_big_screw_leaves_the_range() => Assert.NotEmpty(SheetScrewAisi.OutsideRange(8));

    [Fact]
    public void Pull_and_shear_together_use_more_than_each_alone()
    {
        Assert.Equal(1.0 / 1.15 * 1.4, SheetScrewCombined.Used(SheetScrewCombined.PullOut, 700, 1_000, 700, 1_000), tolerance: 1e-9);
        Assert.Equal(0.7 * 1.71 / 1.10, SheetScrewCombined.Used(SheetScrewCombined.PullOver, 700, 1_000, 700, 1_000), tolerance: 1e-9);
        Assert.Equal(1.2, SheetScrewCombined.Used(SheetScrewCombined.Screw, 1_200, 1_000, 0, 1_000), tolerance: 1e-9);
    }

    [Fact]
    public void European_sheet_rules_change_where_they_say()
    {
        Assert.Equal(0.45 * 4.8 * 0.8 * Mpa, SheetScrewEn.PullOutN(4.8, 0.8, Mpa, 1.6), tolerance: 1e-9);
        Assert.Equal(0.65 * 4.8 * 2 * Mpa, SheetScrewEn.PullOutN(4.8, 2, Mpa, 1.6), tolerance: 1e-9);
        Assert.Equal(10 * 0.8 * Mpa / 2, SheetScrewEn.PullThroughN(10, 0.8, Mpa, isRepeated: true), tolerance: 1e-9);
        var equal = SheetScrewEn.BearingN(4.8, 1.2, 1.2, Mpa) / (4.8 * 1.2 * Mpa);
        Assert.Equal(3.2 * 0.5, equal, tolerance: 1e-9);
        Assert.Equal(2.1, SheetScrewEn.BearingN(4.8, 1.2, 3, Mpa) / (4.8 * 1.2 * Mpa), tolerance: 1e-9);
        Assert.Equal((equal + 2.1) / 2, SheetScrewEn.BearingN(4.8, 1.2, 1.2 * 1.75, Mpa) / (4.8 * 1.2 * Mpa), tolerance: 1e-9);
        Assert.Throws<ArgumentOutOfRangeException>(() => SheetScrewEn.BearingN(4.8, 1.2, 1, Mpa));
    }

    [Theory]
    [InlineData(4.8, 1.6)]
    [InlineData(5, 1.6)]
    [InlineData(6.3, 1.8)]
    public void A_tapping_screw_has_the_pitch_of_the_nearest_size(double nominalMm, double pitchMm) => Assert.Equal(pitchMm, SheetScrewEn.UsualPitchMm(nominalMm));

    [Fact]
    public void A_bolt_shears_at_six_tenths()
    {
        var bolt = BoltStrength.Of(new(6, BoltStrength.PropertyClass.C88));
        Assert.Equal(0.6 * bolt.BreakingN, bolt.ShearN, tolerance: 1e-9);
        Assert.True(bolt.ProofN < bolt.BreakingN);
        Assert.Throws<ArgumentOutOfRangeException>(() => BoltStrength.Of(new(7, BoltStrength.PropertyClass.C88)));
    }

    [Fact]
    public void Rivets_and_rivet_nuts_say_ranges_and_refuse_sizes_they_do_not_know()
    {
        var rivet = BlindRivet.Of(4.0, BlindRivet.Body.Steel);
        Assert.True(rivet.ShearN.Low < rivet.ShearN.Likely && rivet.ShearN.Likely < rivet.ShearN.High);
        Assert.Equal(16_500, RivetNut.ThreadProofN(6, isSteel: true));
        Assert.True(RivetNut.OutOfSheetN.High < RivetNut.ThreadProofN(6, isSteel: true));
        Assert.Throws<ArgumentOutOfRangeException>(() => BlindRivet.Of(5, BlindRivet.Body.Steel));
        Assert.Throws<ArgumentOutOfRangeException>(() => RivetNut.ThreadProofN(10, isSteel: false));
    }

    [Fact]
    public void A_thick_bracket_does_not_pry_and_a_thin_one_nearly_doubles_the_pull()
    {
        BracketPrying.Input bracket = new(2_000, 20, 15, 30, 20, 5, 5.5, 360);
        var thick = BracketPrying.Of(bracket);
        Assert.Equal((2_000.0, 1.0), (thick.CarriesN, thick.PullForEachLoad));
        var thin = BracketPrying.Of(bracket with { ThicknessMm = 1.5 });
        Assert.True(thin.Prying > 1);
        Assert.InRange(thin.PullForEachLoad, 1.3, 2);
        Assert.True(thin.CarriesN * thin.PullForEachLoad < 2_000);
    }

    [Fact]
    public void Between_thick_and_thin_bracket_and_screw_reach_their_limits_together()
    {
        BracketPrying.Input bracket = new(2_000, 20, 15, 30, 3.2, 5, 5.5, 360);
        var both = BracketPrying.Of(bracket);
        Assert.InRange(both.Prying, 0, 1);
        Assert.Equal(2_000, both.CarriesN * both.PullForEachLoad, tolerance: 1e-6);
        // on the border to the thin bracket both rules give the same
        var border = both.FullThicknessMm / Math.Sqrt(1 + ((1 - (5.5 / 30)) * (1 + (17.5 / 17.5))));
        Assert.Equal(BracketPrying.Of(bracket with { ThicknessMm = border * 1.0001 }).PullForEachLoad, BracketPrying.Of(bracket with { ThicknessMm = border * 0.9999 }).PullForEachLoad, tolerance: 1e-3);
    }
}
