using CsCheck;
using Wainwright.Methods.Combustion;

namespace Wainwright.Methods.Tests.Combustion;

public sealed class AirTests
{
    [Fact]
    public void One_inch_and_a_quarter_feeding_sixty_millimetres_gives_little_more_than_a_quarter()
    {
        var air = CirculationAir.Of(new([FreeArea.OfRoundMm2(31.75)], FreeArea.OfRoundMm2(60)));
        Assert.Equal(0.28, air.Ratio, tolerance: 0.0005);
        Assert.Equal(air.ShortOfMm2 + air.InletMm2, FreeArea.OfRoundMm2(60), tolerance: 1e-9);
    }

    [Fact]
    public void Inlets_add_up_and_enough_is_short_of_nothing()
    {
        var air = CirculationAir.Of(new([2_000, 1_500], 2_827));
        Assert.Equal(3_500, air.InletMm2);
        Assert.Equal(0, air.ShortOfMm2);
        Assert.True(air.Ratio > CirculationAir.LeastRatio);
    }

    [Fact]
    public void Two_equal_openings_in_series_are_one_of_seven_tenths() =>
        Assert.Equal(100 / Math.Sqrt(2), FreeArea.InSeriesMm2(100, 100), tolerance: 1e-9);

    [Fact]
    public void Openings_in_series_are_smaller_than_either_and_do_not_care_for_order() =>
        Gen.Select(Gen.Double[1, 1e5], Gen.Double[1, 1e5]).Sample((a, b) =>
        {
            var both = FreeArea.InSeriesMm2(a, b);
            Assert.True(both < Math.Min(a, b));
            Assert.Equal(both, FreeArea.InSeriesMm2(b, a), tolerance: 1e-6);
        });

    [Fact]
    public void A_closed_opening_closes_the_pair() => Assert.Equal(0, FreeArea.InSeriesMm2(0, 500));

    [Fact]
    public void A_grille_lets_through_its_free_part() => Assert.Equal(6_000, FreeArea.OfGrilleMm2(100, 100, 0.6), tolerance: 1e-9);

    [Theory]
    [InlineData(-1)]
    [InlineData(0)]
    [InlineData(double.NaN)]
    public void A_hole_without_a_diameter_is_refused(double mm) => Assert.Throws<ArgumentOutOfRangeException>(() => FreeArea.OfRoundMm2(mm));

    [Fact]
    public void A_free_part_above_one_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => FreeArea.OfGrilleMm2(100, 100, 1.1));

    [Fact]
    public void A_heater_without_an_outlet_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => CirculationAir.Of(new([100], 0)));
}
