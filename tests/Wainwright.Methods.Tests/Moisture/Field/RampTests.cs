using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Field;
using Xunit;

namespace Wainwright.Methods.Tests.Moisture.Field;

/// <summary>The dry board and the ramp on it, held against plain sums over fine grids.</summary>
public class RampTests
{
    const double Dry = 12, Size = 16, Level = 2;

    // how uneven the dry board is, before anything tells [points], and how likely each
    static readonly (double Points, double Weight)[] Uneven = [(0.1, 1 / 4.5), (0.3, 2 / 4.5), (0.6, 1 / 4.5), (1.2, 0.5 / 4.5)];

    static readonly double Doubt = Math.Sqrt(Uneven.Sum(u => u.Weight * u.Points * u.Points));

    static readonly FieldPriors Only = new() { RangesMm = [600], RangeWeights = [1], Spreads = [Size], SpreadWeights = [1], Levels = [Level], LevelWeights = [1], DryPercent = [Dry], DrySigmaPoints = 1e-4 };

    static double Height(double z) => Math.Exp(-z * z / 2) / Math.Sqrt(2 * Math.PI);

    /// <summary>Sum over the field at one place before any reading.</summary>
    static double Over(Func<double, double> of)
    {
        const int Steps = 20000;
        double sum = 0;
        for (var k = 0; k < Steps; k++)
        {
            var z = -9 + (18 * (k + 0.5) / Steps);
            sum += Height(z) * 18 / Steps * of(Math.Max(0, Size * (z - Level)));
        }
        return sum;
    }

    static double Below(double z)
    {
        double sum = 0;
        for (var k = 0; k < 2000; k++) sum += Height(-9 + ((Math.Clamp(z, -9, 9) + 9) * (k + 0.5) / 2000));
        return sum * (Math.Clamp(z, -9, 9) + 9) / 2000;
    }

    [Theory]
    [InlineData(11.5)]
    [InlineData(12)]
    [InlineData(12.8)]
    [InlineData(16)]
    [InlineData(28)]
    public void Before_any_reading_the_chances_are_those_of_a_board_that_is_mostly_dry(double percent)
    {
        var map = DampField.Fit(Sheets.Flat(5, 4), [], Only);
        var over = Over(up => Below((Dry + up - percent) / Doubt));
        // the board's doubt is summed over seven points
        Assert.Equal(over, map.ProbabilityOver(7, percent), 0.004);
        if (over is > 0.01 and < 0.9) Assert.Equal(percent, map.QuantilePercent(7, 1 - over), percent > 13 ? 0.3 : 0.1);
    }

    [Fact]
    public void Before_any_reading_mean_and_spread_are_those_of_the_ramp()
    {
        var map = DampField.Fit(Sheets.Flat(5, 4), [], Only);
        var mean = Over(up => up);
        Assert.Equal(Dry + mean, map.MeanPercent(3), 6);
        Assert.Equal(Math.Sqrt(Over(up => up * up) - (mean * mean) + (Doubt * Doubt)), map.SpreadOfPoints(3), 6);
    }

    [Theory]
    [InlineData(12.2, MeterReading.Bound.About)]
    [InlineData(19, MeterReading.Bound.About)]
    [InlineData(28, MeterReading.Bound.AtLeast)]
    [InlineData(7, MeterReading.Bound.AtMost)]
    public void Two_readings_leave_a_place_between_them_as_wet_as_a_sum_over_all_values_says(double second, MeterReading.Bound bound)
    {
        var net = Sheets.Flat(9, 5);
        FieldObservation[] seen = [new(20, 22, 1), new(24, second, 1, bound)];
        var map = DampField.Fit(net, seen, Only);
        var field = new DenseField(net, 600, Size).Covariance;
        const int Steps = 300, Cell = 22;
        double a = field[20, 20], b = field[24, 24], c = field[20, 24], det = (a * b) - (c * c);
        double sum = 0, over = 0;
        // the dry board's unevenness as the map leaves it goes into both readings alike; its mean square is what the map holds
        var rough = map.SpreadOfPoints(Cell) > 0 ? Math.Sqrt(1 + (Doubt * Doubt)) : 1;
        for (var i = 0; i < Steps; i++)
            for (var j = 0; j < Steps; j++)
            {
                double u = 6 * Size * ((2.0 * i / (Steps - 1)) - 1), v = 6 * Size * ((2.0 * j / (Steps - 1)) - 1);
                double pu = ((b * u) - (c * v)) / det, pv = ((a * v) - (c * u)) / det;
                var w = Math.Exp(-0.5 * ((u * pu) + (v * pv))) * Told(seen[0], u - (Level * Size), rough) * Told(seen[1], v - (Level * Size), rough);
                double ku = ((b * field[Cell, 20]) - (c * field[Cell, 24])) / det, kv = ((a * field[Cell, 24]) - (c * field[Cell, 20])) / det;
                var rest = Math.Sqrt(field[Cell, Cell] - (ku * field[Cell, 20]) - (kv * field[Cell, 24]));
                sum += w;
                over += w * Below((-(Level * Size) + (field[Cell, 20] * pu) + (field[Cell, 24] * pv) - (16 - Dry)) / rest);
            }
        // a bell curve matched to a reading that is dry or beyond the end is not the thing itself
        Assert.Equal(over / sum, map.ProbabilityOver(Cell, 16), 0.03);
    }

    static double Told(FieldObservation seen, double field, double sigma)
    {
        var z = (Dry + Math.Max(0, field) - seen.Percent) / sigma;
        return seen.Bound switch
        {
            MeterReading.Bound.AtLeast => z > 8 ? 1 : z < -8 ? 0 : Fast(z),
            MeterReading.Bound.AtMost => z > 8 ? 0 : z < -8 ? 1 : Fast(-z),
            _ => Height(z),
        };
    }

    static double Fast(double z)
    {
        double sum = 0;
        for (var k = 0; k < 60; k++) sum += Height(-9 + ((z + 9) * (k + 0.5) / 60));
        return sum * (z + 9) / 60;
    }

    [Fact]
    public void The_dry_board_follows_what_reads_low_and_not_what_reads_wet()
    {
        var priors = Only with { DrySigmaPoints = 2 };
        FieldObservation[] low = [.. Enumerable.Range(0, 8).Select(i => new FieldObservation(i, 10 + (0.2 * (i % 3)), 1))];
        FieldObservation[] wet = [new(40, 27, 1), new(41, 28, 1, MeterReading.Bound.AtLeast)];
        var net = Sheets.Flat(9, 5);
        Assert.Equal(10.25, DampField.Fit(net, low, priors).DryPercent(0), 0.15);
        Assert.Equal(DampField.Fit(net, low, priors).DryPercent(0), DampField.Fit(net, [.. low, .. wet], priors).DryPercent(0), 0.1);
        Assert.Equal(Dry, DampField.Fit(net, [], priors).DryPercent(0), 9);
    }

    [Fact]
    public void A_dry_reading_makes_its_surroundings_dry_but_says_nothing_of_a_board_out_of_reach()
    {
        var net = Sheets.Flat(30, 5);
        var (read, unread) = (DampField.Fit(net, [new(60, 12, 1)], Only), DampField.Fit(net, [], Only));
        // a bell curve cannot end where the dry side ends, so a little is left
        Assert.True(read.ProbabilityOver(60, 16) < 0.7 * unread.ProbabilityOver(60, 16), $"{read.ProbabilityOver(60, 16)} of {unread.ProbabilityOver(60, 16)}");
        Assert.Equal(unread.ProbabilityOver(89, 16), read.ProbabilityOver(89, 16), 0.002);
        Assert.True(read.Ignorance(60) < 0.2 && read.Ignorance(89) > 0.99);
    }

    [Fact]
    public void A_reading_over_the_meters_end_leaves_room_above_and_little_below()
    {
        var net = Sheets.Flat(9, 5);
        var (value, bound) = (DampField.Fit(net, [new(20, 28, 1)], Only), DampField.Fit(net, [new(20, 28, 1, MeterReading.Bound.AtLeast)], Only));
        Assert.True(bound.MeanPercent(20) > value.MeanPercent(20));
        Assert.True(bound.SpreadOfPoints(20) > value.SpreadOfPoints(20));
        // the bound is matched by a bell curve, which leaves a little too much below it
        Assert.True(bound.ProbabilityOver(20, 26) > 0.85);
    }
}
