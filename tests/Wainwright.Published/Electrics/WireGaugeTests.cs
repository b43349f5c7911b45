using Wainwright.Methods.Electrics;

namespace Wainwright.Published.Electrics;

public sealed class WireGaugeTests
{
    // Source:    Published wire tables, circular mils by gauge (two sites, after the NEC's conductor table).
    // Seen:      voltdropcalc.com; sfasoft.com.
    // Tolerance: the tables square a diameter rounded to a tenth of a mil (0.05·2·d), then round to ten, above 100 000 to a hundred (half of that).
    [Theory]
    [InlineData(18, 1_620)]
    [InlineData(16, 2_580)]
    [InlineData(14, 4_110)]
    [InlineData(12, 6_530)]
    [InlineData(10, 10_380)]
    [InlineData(8, 16_510)]
    [InlineData(6, 26_240)]
    [InlineData(4, 41_740)]
    [InlineData(2, 66_360)]
    [InlineData(1, 83_690)]
    [InlineData(0, 105_600)]
    [InlineData(-1, 133_100)]
    [InlineData(-3, 211_600)]
    public void A_gauge_has_the_circular_mils_of_the_wire_table(int gauge, double mils) =>
        Assert.Equal(mils, WireGauge.CircularMils(gauge), tolerance: 0.1 * Math.Sqrt(mils) + (mils < 100_000 ? 5 : 50));

    // Source:    A marine supplier's worked case: pump 10 A, 21 ft out and back, 12 V, 3 %: 12 AWG. Its catalogue's 10 % chart: 16 AWG.
    //            Two makers' wire-size pages: 45 A, 40 ft out and back, 12 V, 10 %: 8 AWG.
    // Seen:      in those texts (addresses withheld).
    // Tolerance: a size is right or wrong: none.
    [Theory]
    [InlineData(10, 21, 0.03, 12)]
    [InlineData(10, 21, 0.10, 16)]
    [InlineData(45, 40, 0.10, 8)]
    public void The_drop_asks_for_the_gauge_of_the_worked_case(double amp, double feet, double fraction, int gauge) =>
        Assert.Equal(gauge, WireGauge.Of(new(amp, feet, 12, fraction)).Gauge);

    // Source:    A marine catalogue (2022), p. 52, 12 V, 3 %, row of 10 ft out and back.
    // Seen:      in that chart (address withheld). Other rows of it ask one size more or less than the formula: it is not monotonic.
    // Tolerance: a size is right or wrong: none.
    [Theory]
    [InlineData(5, 18)]
    [InlineData(10, 14)]
    [InlineData(20, 12)]
    [InlineData(30, 10)]
    [InlineData(50, 8)]
    [InlineData(80, 6)]
    [InlineData(100, 4)]
    public void The_ten_foot_row_of_the_chart_comes_out(double amp, int gauge) =>
        Assert.Equal(gauge, WireGauge.Of(new(amp, 10, 12, 0.03)).Gauge);
}
