using Wainwright.Methods.Retention;
using State = Wainwright.Methods.Retention.FixingCondition.State;

namespace Wainwright.Methods.Tests.Retention;

public sealed class ConditionTests
{
    public static TheoryData<State> States => [.. Enum.GetValues<State>()];

    [Theory, MemberData(nameof(States))]
    public void Nothing_makes_a_fixing_stronger(State state)
    {
        foreach (var fixing in Enum.GetValues<WoodFixing>())
        {
            var left = FixingCondition.Of(state, fixing);
            foreach (var spread in (ReadOnlySpan<Spread>)[left.Pull, left.Shear])
                Assert.True(spread is { Low: >= 0, High: <= 1 } && spread.Low <= spread.Likely && spread.Likely <= spread.High);
        }
    }

    [Fact]
    public void What_is_missing_or_sheared_holds_nothing_and_what_nobody_saw_may_hold_nothing()
    {
        Assert.Equal(Spread.Exactly(0), FixingCondition.Of(State.Missing, WoodFixing.WoodScrew).Pull);
        Assert.Equal(Spread.Exactly(0), FixingCondition.Of(State.Sheared, WoodFixing.WoodScrew).Shear);
        Assert.Equal(0, FixingCondition.Of(State.NotSeen, WoodFixing.WoodScrew).Pull.Low);
        Assert.Equal(1, FixingCondition.Of(State.NotSeen, WoodFixing.WoodScrew).Pull.High);
    }

    [Fact]
    public void Over_driving_takes_77_percent_and_wetting_three_quarters_of_a_nail()
    {
        Assert.Equal(1 - 0.77, FixingCondition.Of(State.OverDriven, WoodFixing.WoodScrew).Pull.Likely, tolerance: 1e-9);
        Assert.Equal(0.25, FixingCondition.Of(State.Wetted, WoodFixing.SmoothNail).Pull.Likely);
    }

    [Fact]
    public void A_lower_twentieth_of_nothing_uncertain_is_the_mean()
    {
        Assert.Equal(Spread.Exactly(500), LowerTwentieth.Of(500, 0));
        var wide = LowerTwentieth.Of(500, 0.25);
        Assert.Equal(wide.Likely * wide.Likely, wide.Low * wide.High, tolerance: 1e-6);
        Assert.InRange(wide.Low / 500, 0.6, 0.7);
        Assert.True(LowerTwentieth.Of(500, 0.3).Low < wide.Low);
    }

    [Fact]
    public void Spreads_multiply_and_take_the_weaker_end_by_end()
    {
        Spread a = new(1, 2, 3), b = new(2, 2, 2);
        Assert.Equal(new(2, 4, 6), a * b);
        Assert.Equal(new(0.5, 1, 1.5), a * 0.5);
        Assert.Equal(new(1, 2, 2), Spread.Least(a, b));
        Assert.Throws<ArgumentOutOfRangeException>(() => a * -1);
    }

    [Fact]
    public void Tape_that_bears_a_kilogram_for_years_takes_a_page_of_it()
    {
        // 55 to 60 cm² for each kilogram, as its makers say
        var mm2 = 9.80665 / BondStrength.LastingShearMPa(BondStrength.Bond.FoamTape).Low;
        Assert.InRange(mm2 / 100, 55, 60);
        Assert.Equal(new Spread(40, 55, 70), Rounded(BondStrength.ShortShearN(BondStrength.Bond.FoamTape, 100)));
        Assert.Equal(0, BondStrength.LastingShearMPa(BondStrength.Bond.HookAndLoop).High);
        Assert.Null(BondStrength.PeelNPerMm(BondStrength.Bond.Silicone));
        Assert.All(Enum.GetValues<BondStrength.Bond>(), b => Assert.True(BondStrength.LastingShearMPa(b).High < BondStrength.ShortShearMPa(b).Low));
    }

    [Fact]
    public void Plywood_reaches_the_equation_at_best_and_its_edge_less_than_its_face()
    {
        Assert.True(WoodHandbookWithdrawal.InPlywood is { High: <= 1, Likely: < 1 });
        Assert.True(FixingCondition.Of(State.BoardEdge, WoodFixing.WoodScrew).Pull.High < 1);
    }

    [Fact]
    public void A_rating_counts_by_what_it_says()
    {
        Assert.Equal(new Spread(1_000, 2_000, 3_000), RatedHold.StrengthN(1_000, RatedHold.Rating.WorkingLimit));
        Assert.Equal(1_000, RatedHold.StrengthN(1_000, RatedHold.Rating.HeldInTest).Low);
        Assert.True(RatedHold.StrengthN(1_000, RatedHold.Rating.Breaking).Low < 1_000);
    }

    [Fact]
    public void Stiffness_follows_its_forms()
    {
        Assert.Equal(Math.Pow(420, 1.5) * 4 / 23, FixingSlip.ScrewAcrossNPerMm(420, 4), tolerance: 1e-9);
        Assert.Equal(2 * FixingSlip.ScrewAcrossNPerMm(420, 4), FixingSlip.ScrewAcrossNPerMm(420, 4, againstSteel: true), tolerance: 1e-9);
        Assert.Equal(80.0 / 30, FixingSlip.NailAcrossNPerMm(420, 1.2) / FixingSlip.StapleAcrossNPerMm(420, 1.2), tolerance: 1e-9);
        Assert.Equal(25 * 4 * 12, FixingSlip.ScrewOutNPerMm(4, 12), tolerance: 1e-9);
    }

    static Spread Rounded(Spread spread) => new(Math.Round(spread.Low, 9), Math.Round(spread.Likely, 9), Math.Round(spread.High, 9));
}
