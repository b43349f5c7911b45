using CsCheck;
using Wainwright.Methods.Electrics;

namespace Wainwright.Methods.Tests.Electrics;

public sealed class ProtectionTests
{
    // regression of the formula
    [Theory]
    [InlineData(6, 5.594)]
    [InlineData(8, 3.707)]
    [InlineData(20, 1.000)]
    [InlineData(264, 0.02498)]
    public void A_ground_fault_interrupter_has_this_long(double milliamp, double seconds) =>
        Assert.Equal(seconds, GfciTripTime.Of(new(milliamp)).LimitSeconds!.Value, tolerance: 0.001);

    [Fact]
    public void Below_four_milliamps_it_may_not_trip_and_the_formula_is_not_used()
    {
        var quiet = GfciTripTime.Of(new(3.9));
        Assert.False(quiet.MustTrip);
        Assert.Null(quiet.LimitSeconds);
        Assert.Empty(quiet.OutsideRange);
    }

    [Fact]
    public void Between_four_and_six_it_says_that_either_is_right() => Assert.NotEmpty(GfciTripTime.Of(new(5)).OutsideRange);

    [Fact]
    public void More_current_never_allows_more_time() =>
        Gen.Select(Gen.Double[6, 1_000], Gen.Double[0, 1_000]).Sample((i, more) =>
            Assert.True(GfciTripTime.Of(new(i + more)).LimitSeconds <= GfciTripTime.Of(new(i)).LimitSeconds));

    [Theory]
    [InlineData("IEC 61008/61009", 1, 210.0, true)]
    [InlineData("IEC 61008/61009", 5, 38.0, true)]
    [InlineData("IEC 61008/61009", 5, 45.0, false)]
    [InlineData("IEC 61008/61009", 1, 240.0, true)]
    [InlineData("BS 4293", 1, 240.0, false)]
    [InlineData("IEC 61008/61009", 1, null, false)]
    [InlineData("IEC 61008/61009", 0.5, null, true)]
    [InlineData("IEC 61008/61009", 0.5, 100.0, false)]
    public void A_general_device_is_judged_by_its_own_standard(string standard, double times, double? ms, bool within) =>
        Assert.Equal(within, ResidualCurrentLimits.Of(new(standard, "general", times, ms)).WithinLimits);

    [Fact]
    public void A_delayed_device_may_not_be_too_quick() => Assert.False(ResidualCurrentLimits.Of(new("IEC 61008/61009", "type S", 1, 100)).WithinLimits);

    [Fact]
    public void A_point_that_no_table_holds_is_not_judged()
    {
        var unknown = ResidualCurrentLimits.Of(new("IEC 61008/61009", "general", 3, 20));
        Assert.Null(unknown.WithinLimits);
        Assert.NotEmpty(unknown.OutsideRange);
    }

    [Theory]
    [InlineData(12, true, 250, 0.5)]
    [InlineData(230, false, 500, 1.0)]
    [InlineData(120, false, 500, 1.0)]
    [InlineData(700, false, 1_000, 1.0)]
    public void Insulation_is_tested_by_voltage_class(double volt, bool low, double testVolt, double megohm)
    {
        var rule = InsulationResistance.Of(new(volt, low));
        Assert.Equal(testVolt, rule.TestVoltDc);
        Assert.Equal(megohm, rule.LeastMegohm);
    }

    [Fact]
    public void Six_feet_are_eighteen_hundred_and_more_millimetres() => Assert.InRange(WetPlace.WithinMm, 6 * 304.8 - 50, 6 * 304.8);

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => GfciTripTime.Of(new(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ResidualCurrentLimits.Of(new("IEC 61008/61009", "general", 1, -5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => InsulationResistance.Of(new(0, false)));
    }
}
