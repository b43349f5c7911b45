using Wainwright.Methods.Moisture;

namespace Wainwright.Published.Moisture;

public sealed class MeterTests
{
    // Source:    Handbooks of two makers of pin meters: add half a point for each 5 K below 20 °C, subtract it above; needed only beyond 5 K.
    // Seen:      in both.
    // Tolerance: the rule itself: nothing but rounding.
    [Theory]
    [InlineData(18, 10, 19.0)]
    [InlineData(18, 35, 16.5)]
    [InlineData(18, 23, 18.0)]
    public void A_reading_is_corrected_as_the_handbooks_say(double reading, double woodC, double percent) =>
        Assert.Equal(percent, MeterTemperature.TradeRule(reading, woodC), tolerance: 1e-9);

    // Source:    A second maker's chart: 15 becomes 17 at 10 °C, 12 at 40, 11 at 50.
    // Seen:      on that chart, rounded to whole points.
    // Tolerance: the printed points.
    [Theory]
    [InlineData(15, 10, 17)]
    [InlineData(15, 40, 12)]
    [InlineData(15, 50, 11)]
    public void The_chart_is_kept(double reading, double woodC, double percent) =>
        Assert.Equal(percent, MeterTemperature.RoundedChart(reading, woodC)!.Value, tolerance: 1e-9);

    // Source:    The same chart beside the rule of the two other makers.
    // Seen:      as above.
    // Tolerance: a point: the chart is in whole points, and the makers disagree by one.
    [Theory]
    [InlineData(10, 17)]
    [InlineData(40, 12)]
    [InlineData(50, 11)]
    public void Two_makers_agree_within_a_point(double woodC, double chart) =>
        Assert.InRange(Math.Abs(chart - MeterTemperature.TradeRule(15, woodC)), 0, 1 + 1e-9);

    // Source:    The same maker, order of corrections: reads 24, by its species 20, at 10 °C 22.
    // Seen:      in its handbook.
    // Tolerance: whole points.
    [Fact]
    public void Species_comes_first_then_temperature() => Assert.Equal(22, MeterTemperature.RoundedChart(24 - 4, 10)!.Value, tolerance: 0.5);

    // Source:    A third maker: 10 K wrong makes about 1.5 points about the middle of the range.
    // Seen:      in its handbook.
    // Tolerance: the two other makers within half a point of it.
    [Fact]
    public void Ten_kelvin_make_a_point_and_a_half()
    {
        Assert.Equal(1.5, MeterTemperature.TenKelvinRule(15, 10) - 15, tolerance: 1e-9);
        Assert.Equal(1.5, MeterTemperature.TradeRule(15, 10) - 15, tolerance: 0.5 + 1e-9);
        Assert.Equal(1.5, MeterTemperature.RoundedChart(15, 10)!.Value - 15, tolerance: 0.5 + 1e-9);
    }

    // Source:    A third maker: best from 6 to 28 %, below 6 practically impossible; two others: 7 % to fibre saturation, rough above.
    // Seen:      in their handbooks.
    // Tolerance: limits.
    [Theory]
    [InlineData(28.5, MeterReading.Bound.AtLeast, 28)]
    [InlineData(60, MeterReading.Bound.AtLeast, 28)]
    [InlineData(5, MeterReading.Bound.AtMost, 6)]
    [InlineData(18, MeterReading.Bound.About, 18)]
    public void Beyond_its_limits_a_meter_gives_a_bound(double reading, MeterReading.Bound bound, double percent)
    {
        var result = MeterReading.Of(new(reading, 20, IsPanel: true));
        Assert.Equal(bound, result.Bound);
        Assert.Equal(percent, result.Percent, tolerance: 1e-9);
        Assert.Equal(2, result.SpreadPoints);
    }

    // Source:    Notes of an open moisture meter: 22 GΩ at 7 %, 500 kΩ at 25 %.
    // Seen:      in its README.
    // Tolerance: printed to two figures and to one: 0.5 of the last place.
    [Theory]
    [InlineData(7, 22_000, 500)]
    [InlineData(25, 0.5, 0.05)]
    public void The_resistance_table_ends_where_the_notes_say(int moisture, double megohm, double tolerance) =>
        Assert.Equal(megohm, WoodResistance.DouglasFir.Single(c => c.MoisturePercent == moisture).Megohm, tolerance);
}
