using Wainwright.Methods.Combustion;

namespace Wainwright.Published.Combustion;

public sealed class BloodUptakeTests
{
    // Source:    UL 2034: an alarm must sound within 50 min at 150 ppm, a point chosen for about 10 % carboxyhaemoglobin under heavy work.
    // Seen:      point and basis quoted on an alarm-safety page; the standard was not opened.
    // Tolerance: "about 10 %": the start value (none) and the breathing of heavy work are the standard's, 0.2 covers its rounding of B to 0.0404.
    [Fact]
    public void Fifty_minutes_at_150_ppm_bring_the_ten_percent_the_alarm_standard_is_built_on() =>
        Assert.Equal(10, BloodUptake.OfLinear(new(150, 50, BloodUptake.Breathing.Heavy, StartPercent: 0)).Percent, tolerance: 0.2);

    // Source:    WHO Air quality guidelines for Europe, second edition: 90 ppm for 15 min, 25 ppm for 1 h keep carboxyhaemoglobin at 2.5 % or below.
    // Seen:      quoted in a review article, table 1.
    // Tolerance: the guideline names light to moderate activity without figures: light work must stay below 2.5, heavy work may pass it by 0.4.
    [Theory]
    [InlineData(90, 15)]
    [InlineData(25, 60)]
    public void The_guideline_exposures_stay_about_two_and_a_half_percent(double ppm, double minutes)
    {
        Assert.InRange(BloodUptake.Of(new(ppm, minutes, new(15_000, 40))).Percent, 1.5, 2.5);
        Assert.InRange(BloodUptake.Of(new(ppm, minutes, BloodUptake.Breathing.Heavy)).Percent, 2.1, 2.9);
    }
}
