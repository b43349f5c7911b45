using CsCheck;
using Wainwright.Methods.Labour;

namespace Wainwright.Methods.Tests.Labour;

public sealed class LiftingTests
{
    static LiftingEquation.Input Ideal => new(250, 750, 250, 0, 1, LiftingEquation.Grip.Good);

    [Fact]
    public void The_ideal_lift_is_the_load_constant() => Assert.Equal(23, LiftingEquation.Of(Ideal).RecommendedKg, tolerance: 1e-9);

    [Fact]
    public void Nothing_makes_it_more_than_the_ideal_lift() =>
        Gen.Select(Gen.Double[0, 800], Gen.Double[0, 2_000], Gen.Double[0, 2_000], Gen.Double[0, 180], Gen.Double[0, 1]).Sample((h, v, d, a, fm) =>
            Assert.InRange(LiftingEquation.Of(new(h, v, d, a, fm, LiftingEquation.Grip.Fair)).RecommendedKg, 0, 23 + 1e-9));

    // regression
    [Fact]
    public void Two_lifts_of_our_own_keep_their_numbers()
    {
        Assert.Equal(10.206, LiftingEquation.Of(new(400, 200, 600, 0, 1, LiftingEquation.Grip.Fair)).RecommendedKg, tolerance: 0.0005);
        Assert.Equal(8.655, LiftingEquation.Of(new(500, 1_000, 250, 30, 1, LiftingEquation.Grip.Poor)).RecommendedKg, tolerance: 0.0005);
    }

    [Fact]
    public void Closer_than_the_ankles_counts_as_at_the_ankles() =>
        Assert.Equal(LiftingEquation.Of(Ideal), LiftingEquation.Of(Ideal with { HorizontalMm = 180, TravelMm = 100 }), (a, b) => a.RecommendedKg == b.RecommendedKg);

    [Theory]
    [InlineData(640, 750, 250, 0)]
    [InlineData(250, 1_760, 250, 0)]
    [InlineData(250, 750, 1_760, 0)]
    [InlineData(250, 750, 250, 136)]
    public void Out_of_reach_nothing_may_be_lifted(double h, double v, double d, double a) =>
        Assert.Equal(0, LiftingEquation.Of(new(h, v, d, a, 1, LiftingEquation.Grip.Good)).RecommendedKg);

    [Fact]
    public void A_cramped_lift_leaves_the_method() => Assert.NotEmpty(LiftingEquation.Of(Ideal with { Cramped = true }).OutsideRange);

    [Fact]
    public void The_load_index_is_one_at_the_limit() => Assert.Equal(1, LiftingEquation.Of(Ideal).LoadIndex(23), tolerance: 1e-12);

    [Theory]
    [InlineData(0.1, 1.00)]
    [InlineData(3, 0.88)]
    [InlineData(3.1, 0.84)]
    [InlineData(12.1, 0)]
    public void Frequency_takes_the_next_row(double perMin, double multiplier) => Assert.Equal(multiplier, LiftingEquation.FrequencyUpToOneHour(perMin));

    [Theory]
    [InlineData(20, 25, 1)]
    [InlineData(30, 25, 2)]
    [InlineData(35, 25, 3)]
    [InlineData(40, 25, null)]
    public void A_load_asks_for_people(double loadKg, double eachKg, int? people) => Assert.Equal(people, TeamLift.PeopleFor(loadKg, eachKg));

    [Fact]
    public void Four_people_are_not_covered() => Assert.Throws<ArgumentOutOfRangeException>(() => TeamLift.Of(new([25, 25, 25, 25])));

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LiftingEquation.Of(Ideal with { HorizontalMm = -1 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => LiftingEquation.Of(Ideal with { FrequencyMultiplier = 1.1 }));
        Assert.Throws<ArgumentOutOfRangeException>(() => LiftingEquationUs.Of(new(double.NaN, 22, 37, 0, 1, LiftingEquation.Grip.Good)));
    }
}
