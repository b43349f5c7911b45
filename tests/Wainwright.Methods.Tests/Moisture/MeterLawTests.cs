using CsCheck;
using Wainwright.Methods.Moisture;

namespace Wainwright.Methods.Tests.Moisture;

public sealed class MeterLawTests
{
    // regression: the equation is from memory, its values are our own arithmetic
    [Theory]
    [InlineData(15, 0, 17.670)]
    [InlineData(15, 30, 14.239)]
    [InlineData(20, 5, 22.560)]
    [InlineData(15, 10, 16.436)]
    public void The_regression_keeps_its_numbers(double reading, double woodC, double percent) =>
        Assert.Equal(percent, MeterTemperature.Regression(reading, woodC), tolerance: 0.002);

    [Fact]
    public void All_forms_agree_within_a_point_and_a_half_between_ten_and_thirty_degrees() =>
        Gen.Select(Gen.Double[10, 18], Gen.Double[10, 30]).Sample((reading, woodC) =>
        {
            double[] all = [MeterTemperature.TradeRule(reading, woodC), MeterTemperature.RoundedChart(reading, woodC)!.Value, MeterTemperature.TenKelvinRule(reading, woodC), MeterTemperature.Regression(reading, woodC)];
            Assert.InRange(all.Max() - all.Min(), 0, 1.5);
        });

    [Fact]
    public void Colder_wood_is_wetter_than_it_reads() =>
        Gen.Select(Gen.Double[8, 25], Gen.Double[-10, 14]).Sample((reading, woodC) =>
        {
            Assert.True(MeterTemperature.TradeRule(reading, woodC) > reading);
            Assert.True(MeterTemperature.TenKelvinRule(reading, woodC) > reading);
            Assert.True(MeterTemperature.Regression(reading, woodC) > MeterTemperature.Regression(reading, woodC + 5));
        });

    [Fact]
    public void The_chart_says_nothing_where_nothing_is_printed() => Assert.Null(MeterTemperature.RoundedChart(15, 5));

    [Fact]
    public void A_species_constant_is_taken_off_and_divided_out() =>
        Assert.Equal((MeterTemperature.Regression(15, 20) - 1) / 2, MeterTemperature.Regression(15, 20, 2, 1), tolerance: 1e-12);

    [Fact]
    public void A_reading_without_a_temperature_is_wider_and_says_so()
    {
        var unknown = MeterReading.Of(new(18, null, IsPanel: true));
        Assert.Equal(3, unknown.SpreadPoints);
        Assert.NotEmpty(unknown.OutsideRange);
    }

    [Fact]
    public void A_meter_that_corrects_itself_is_not_corrected_twice() =>
        Assert.Equal(18, MeterReading.Of(new(18, 5, IsPanel: true, CorrectsItself: true)).Percent);

    [Fact]
    public void A_meter_at_its_end_says_at_least() =>
        Assert.Equal((20.0, MeterReading.Bound.AtLeast), (MeterReading.Of(new(20, 20, false, IsAtLeast: true)).Percent, MeterReading.Of(new(20, 20, false, IsAtLeast: true)).Bound));

    [Fact]
    public void Frozen_wood_is_out_of_range() => Assert.NotEmpty(MeterReading.Of(new(18, -2, IsPanel: false)).OutsideRange);

    // regression: table and fit from memory
    [Fact]
    public void The_fit_keeps_its_number() => Assert.Equal(12.07, WoodResistance.MoisturePercent(120), tolerance: 0.02);

    [Fact]
    public void The_fit_is_as_close_to_the_table_as_it_says()
    {
        Assert.All(WoodResistance.DouglasFir, c => Assert.Equal(c.MoisturePercent, WoodResistance.MoisturePercent(c.Megohm), tolerance: c.MoisturePercent <= 22 ? 0.4 : 0.91));
        Assert.Equal(25.9, WoodResistance.MoisturePercent(0.46), tolerance: 0.05);
    }

    [Fact]
    public void Resistance_and_moisture_are_inverse() =>
        Gen.Double[6, 28].Sample(percent => Assert.Equal(percent, WoodResistance.MoisturePercent(WoodResistance.Megohm(percent)), tolerance: 1e-9));

    [Theory]
    [InlineData(0.1)]
    [InlineData(0)]
    [InlineData(double.NaN)]
    public void Resistance_beyond_the_form_is_refused(double megohm) => Assert.Throws<ArgumentOutOfRangeException>(() => WoodResistance.MoisturePercent(megohm));
}
