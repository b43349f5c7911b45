using CsCheck;
using Wainwright.Methods.Moisture;

namespace Wainwright.Methods.Tests.Moisture;

public sealed class MoistureTests
{
    [Fact]
    public void Saturated_air_dews_at_its_own_temperature() =>
        Gen.Double[-30, 60].Sample(airC => Assert.Equal(airC, DewPoint.Of(new(airC, 1)).DewPointC, tolerance: 1e-9));

    [Fact]
    public void Drier_air_dews_lower() =>
        Gen.Select(Gen.Double[-20, 50], Gen.Double[0.05, 0.9]).Sample((airC, rh) =>
            Assert.True(DewPoint.Of(new(airC, rh)).DewPointC < DewPoint.Of(new(airC, rh + 0.05)).DewPointC));

    [Fact]
    public void Warmer_air_holds_more() =>
        Gen.Select(Gen.Double[-30, 59], Gen.Double[0.01, 1]).Sample((airC, more) =>
            Assert.True(SaturationPressure.Of(new(airC + more)).PressurePa > SaturationPressure.Of(new(airC)).PressurePa));

    // regression
    [Theory]
    [InlineData(20, 0.50, 9.269)]
    [InlineData(18, 0.80, 14.500)]
    [InlineData(15, 0.60, 7.307)]
    public void Dew_points_keep_their_numbers(double airC, double rh, double dewC) => Assert.Equal(dewC, DewPoint.Of(new(airC, rh)).DewPointC, tolerance: 0.001);

    [Fact]
    public void Beyond_sixty_degrees_it_says_so() => Assert.NotEmpty(DewPoint.Of(new(70, 0.5)).OutsideRange);

    [Theory]
    [InlineData(20, 0)]
    [InlineData(20, 1.01)]
    [InlineData(double.NaN, 0.5)]
    public void Nonsense_is_refused(double airC, double rh) => Assert.Throws<ArgumentOutOfRangeException>(() => DewPoint.Of(new(airC, rh)));

    [Fact]
    public void Two_sleepers_giving_off_eighty_grams_an_hour_need_this_much_airing() =>
        Assert.Equal(17.64, VapourInAir.AiringM3PerH(80, VapourInAir.GramPerM3(16, 0.70), VapourInAir.GramPerM3(2, 0.90)), tolerance: 0.01);

    [Fact]
    public void Outside_air_as_wet_as_inside_dries_nothing() => Assert.Equal(double.PositiveInfinity, VapourInAir.AiringM3PerH(80, 9, 9));

    [Fact]
    public void Wood_is_wetter_in_wetter_air() =>
        Gen.Select(Gen.Double[0, 60], Gen.Double[0, 0.9]).Sample((airC, rh) =>
            Assert.True(WoodEquilibrium.Of(new(airC, rh + 0.05)).MoisturePercent > WoodEquilibrium.Of(new(airC, rh)).MoisturePercent));

    [Fact]
    public void In_dry_air_wood_is_dry() => Assert.Equal(0, WoodEquilibrium.Of(new(20, 0)).MoisturePercent);

    [Fact]
    public void Saturated_air_is_an_extrapolation() => Assert.NotEmpty(WoodEquilibrium.Of(new(20, 1)).OutsideRange);

    [Theory]
    [InlineData(1, 14.9, "normal")]
    [InlineData(2, 14.9, "no concern")]
    [InlineData(1, 30, "structural damage going on: strip the area")]
    [InlineData(2, 30, "moisture evident: remedial work; strip only where stained, pimpled or soft")]
    [InlineData(2, 31, "structural damage going on: strip the area")]
    public void A_reading_falls_into_its_band(int scale, double reading, string means) => Assert.Equal(means, MeterBands.Of(scale, reading).Means);

    [Fact]
    public void The_bands_of_a_scale_leave_no_gap() =>
        Assert.All(MeterBands.All.GroupBy(b => b.Scale), scale => Assert.All(scale.Zip(scale.Skip(1)), pair => Assert.Equal(pair.First.ToPercent, pair.Second.FromPercent)));
}
