using CsCheck;
using Wainwright.Methods.Combustion;

namespace Wainwright.Methods.Tests.Combustion;

public sealed class CarbonMonoxideTests
{
    [Fact]
    public void There_and_back_is_the_same_concentration() =>
        Gen.Double[0, 10_000].Sample(ppm => Assert.Equal(ppm, CarbonMonoxide.ToPpm(CarbonMonoxide.ToMgPerM3(ppm)), tolerance: 1e-9));

    [Fact]
    public void Without_oxygen_a_reading_is_air_free_already() => Assert.Equal(100, CarbonMonoxide.AirFreePpm(100, 0));

    [Fact]
    public void A_reading_at_fifteen_percent_oxygen_is_three_and_a_half_times_too_low() => Assert.Equal(354.24, CarbonMonoxide.AirFreePpm(100, 15), tolerance: 0.01);

    [Fact]
    public void Plain_air_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => CarbonMonoxide.AirFreePpm(10, 20.9));

    // regression: AEGL points from memory, so no published value: 420 ppm 10 min, 83 ppm 60 min, 27 ppm 480 min give about 4 %
    [Theory]
    [InlineData(420, 10, 3.980)]
    [InlineData(83, 60, 4.013)]
    [InlineData(27, 480, 4.093)]
    public void The_nonlinear_form_keeps_its_numbers(double ppm, double minutes, double percent) =>
        Assert.Equal(percent, BloodUptake.Of(new(ppm, minutes, new(13_000, 30))).Percent, tolerance: 0.002);

    [Fact]
    public void The_linear_form_runs_away_where_the_nonlinear_does_not()
    {
        var exposure = new BloodUptake.Input(450, 240, new(13_500, 30));
        Assert.Equal(40.33, BloodUptake.Of(exposure).Percent, tolerance: 0.02);
        var linear = BloodUptake.OfLinear(exposure);
        Assert.Equal(51.56, linear.Percent, tolerance: 0.05);
        Assert.NotEmpty(linear.OutsideRange);
    }

    [Fact]
    public void More_gas_longer_or_harder_work_means_more_in_the_blood() =>
        Gen.Select(Gen.Double[0, 1_000], Gen.Double[1, 480]).Sample((ppm, minutes) =>
        {
            var here = BloodUptake.Of(new(ppm, minutes, BloodUptake.Breathing.Rest)).Percent;
            Assert.True(BloodUptake.Of(new(ppm + 50, minutes, BloodUptake.Breathing.Rest)).Percent > here);
            Assert.InRange(here, 0, 100);
        }, iter: 30);

    [Fact]
    public void Low_exposures_agree_in_both_forms() =>
        Assert.Equal(
            BloodUptake.Of(new(20, 60, BloodUptake.Breathing.Rest)).Percent,
            BloodUptake.OfLinear(new(20, 60, BloodUptake.Breathing.Rest)).Percent, tolerance: 0.03);

    [Fact]
    public void Resistance_to_uptake_is_that_of_the_breathing_sets()
    {
        Assert.Equal(0.15217, BloodUptake.Breathing.Rest.Resistance, tolerance: 1e-5);
        Assert.Equal(0.04043, BloodUptake.Breathing.Heavy.Resistance, tolerance: 1e-5);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BloodUptake.Of(new(-1, 10, BloodUptake.Breathing.Rest)));
        Assert.Throws<ArgumentOutOfRangeException>(() => BloodUptake.Of(new(10, double.NaN, BloodUptake.Breathing.Rest)));
        Assert.Throws<ArgumentOutOfRangeException>(() => BloodUptake.Of(new(10, 10, new(0, 30))));
        Assert.Throws<ArgumentOutOfRangeException>(() => BloodUptake.Of(new(10, 10, BloodUptake.Breathing.Rest, StartPercent: 100)));
    }

    [Fact]
    public void An_alarm_may_not_be_late_before_it_may_sound() =>
        Assert.All(AlarmSetPoints.All, p => Assert.True(p.SoundsByMin is null || p.SoundsByMin > p.SilentForMin));

    [Fact]
    public void An_alarm_is_quicker_the_more_gas_there_is() =>
        Assert.All(AlarmSetPoints.All.GroupBy(p => p.Standard), points =>
            Assert.Equal(points.OrderBy(p => p.Ppm).Select(p => p.SilentForMin), points.Select(p => p.SilentForMin).OrderDescending()));
}
