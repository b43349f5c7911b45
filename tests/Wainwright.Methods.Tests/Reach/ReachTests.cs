using CsCheck;
using Wainwright.Methods.Reach;
using static Wainwright.Methods.Reach.BodyMeasures;
using static Wainwright.Methods.Reach.ShareWhoCan;

namespace Wainwright.Methods.Tests.Reach;

public sealed class ReachTests
{
    // from memory
    [Theory]
    [InlineData(AccessOpening.Passing.FlatHand, AccessOpening.Wear.Light, 60, 100, true)]
    [InlineData(AccessOpening.Passing.Fist, AccessOpening.Wear.Light, 60, 100, false)]
    [InlineData(AccessOpening.Passing.ArmToElbow, AccessOpening.Wear.Light, 110, 110, false)]
    [InlineData(AccessOpening.Passing.FlatHand, AccessOpening.Wear.Gloves, 100, 140, false)]
    [InlineData(AccessOpening.Passing.RolledHand, AccessOpening.Wear.Arctic, 300, 300, null)]
    public void An_opening_passes_what_the_common_figures_say(AccessOpening.Passing passing, AccessOpening.Wear wear, double one, double other, bool? passes)
    {
        Assert.Equal(passes, AccessOpening.Passes(passing, wear, one, other));
        Assert.Equal(passes, AccessOpening.Passes(passing, wear, other, one));
    }

    [Fact]
    public void The_common_figures_are_marked_as_remembered()
    {
        Assert.Equal(Provenance.FromMemory, AccessOpening.Basis.How);
        Assert.Contains("source not checked", AccessOpening.Basis.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Both_hands_need_at_least_200_mm_and_as_much_as_they_reach_in()
    {
        Assert.Equal(200, AccessOpening.BothHandsWidthMm(150));
        Assert.Equal(400, AccessOpening.BothHandsWidthMm(400));
        Assert.Throws<ArgumentOutOfRangeException>(() => AccessOpening.BothHandsWidthMm(500));
    }

    // our arithmetic
    [Fact]
    public void A_bolt_with_35_degrees_of_swing_takes_an_open_spanner_turned_over_and_no_ring_of_six()
    {
        Assert.True(SpannerSwing.Turns(SpannerSwing.Spanner.OpenTurnedOver, 35));
        Assert.True(SpannerSwing.Turns(SpannerSwing.Spanner.RingOfTwelve, 35));
        Assert.False(SpannerSwing.Turns(SpannerSwing.Spanner.RingOfSix, 35));
        Assert.False(SpannerSwing.Turns(SpannerSwing.Spanner.Open, 35));
        Assert.Equal(5, SpannerSwing.RatchetDegrees(72));
    }

    [Fact]
    public void The_percentiles_of_the_survey_lie_where_the_normal_law_puts_them()
    {
        foreach (var measure in Enum.GetValues<Measure>())
            foreach (var whose in Enum.GetValues<People>())
            {
                var row = Find(whose, measure);
                Assert.True(row.P5 < row.P50 && row.P50 < row.P95, $"{measure} of {whose}");
                // circumferences lean to the right: two fifths of a standard deviation
                Assert.Equal(row.P5, row.At(0.05), tolerance: 0.4 * row.Deviation);
                Assert.Equal(row.P95, row.At(0.95), tolerance: 0.4 * row.Deviation);
            }
    }

    [Fact]
    public void Share_and_percentile_undo_one_another() =>
        Gen.Double[0.001, 0.999].Sample(share => Assert.Equal(share, Find(People.Men, Measure.Stature).ShareUpTo(Find(People.Men, Measure.Stature).At(share)), tolerance: 1e-9));

    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(1.6448536269514722, 0.95)]
    [InlineData(-2.3263478740408408, 0.01)]
    [InlineData(4, 0.99996832875816688)]
    public void The_normal_law_keeps_its_known_values(double z, double share)
    {
        var row = Find(People.Women, Measure.HandLength);
        Assert.Equal(share, row.ShareUpTo(row.Mean + (z * row.Deviation)), tolerance: 1e-12);
    }

    [Fact]
    public void Fewer_reach_through_a_smaller_hole_or_to_a_greater_depth() =>
        Gen.Select(Gen.Double[80, 160], Gen.Double[350, 550], Gen.Double[0, 20], Gen.Double[0, 60]).Sample((hole, depth, less, more) =>
        {
            foreach (var whose in Enum.GetValues<People>())
            {
                var easy = ShareWhoCan.Of(new(whose, Limb.ToTheElbow, hole, depth));
                var hard = ShareWhoCan.Of(new(whose, Limb.ToTheElbow, hole - less, depth + more));
                Assert.True(hard.Share <= easy.Share + 1e-9);
                Assert.True(easy.Share <= Math.Min(easy.ShareThrough, easy.ShareLongEnough) + 1e-9);
            }
        });

    [Fact]
    public void Bands_of_size_add_up_to_the_whole()
    {
        var bands = Enumerable.Range(-8, 16).Sum(z => Between(People.Men, Limb.ToTheElbow, z, z + 1, -0.5));
        Assert.Equal(1 - 0.3085375387, bands, tolerance: 1e-6);
    }

    [Fact]
    public void Clothing_counts_as_a_smaller_hole() =>
        Assert.Equal(ShareWhoCan.Of(new(People.Men, Limb.ToTheShoulder, 130, 700)).Share, ShareWhoCan.Of(new(People.Men, Limb.ToTheShoulder, 150, 700, 20)).Share, tolerance: 1e-12);

    [Fact]
    public void A_stiff_screw_overhead_asks_for_more_than_a_screwdriver()
    {
        Assert.True(HandTorque.ScrewdriverWillDo(3));
        Assert.False(HandTorque.ScrewdriverWillDo(3, isAwkward: true));
        Assert.False(HandTorque.ScrewdriverWillDo(4.5));
    }

    [Fact]
    public void A_thread_that_is_not_tabled_gets_no_answer()
    {
        Assert.Null(SpannerRoom.FreeInARow(7, 30));
        Assert.Null(SpannerRoom.AnySpannerBesideWall(14, 30));
        Assert.Equal(0, FastenerRules.ShortToDrawMm(30, 40));
    }
}
