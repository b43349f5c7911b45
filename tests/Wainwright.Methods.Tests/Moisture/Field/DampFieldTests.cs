using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Field;
using Xunit;

namespace Wainwright.Methods.Tests.Moisture.Field;

public class DampFieldTests
{
    const double Dry = 12, DrySigma = 2;

    static readonly FieldObservation[] Plain = [new(3, 30, 1), new(60, 13, 1), new(61, 12.5, 0.5), new(110, 18, 2), new(3, 28, 1)];

    static FieldPriors Only(double rangeMm, double spreadPoints) => new()
    {
        RangesMm = [rangeMm], RangeWeights = [1], Spreads = [spreadPoints], SpreadWeights = [1], DryPercent = [Dry], DrySigmaPoints = DrySigma,
    };

    [Fact]
    public void The_sparse_way_gives_mean_and_spread_of_the_full_matrices()
    {
        var net = Sheets.Flat(13, 11);
        var map = DampField.Fit(net, Plain, Only(400, 6));
        var (mean, variance, _) = new DenseField(net, 400, 6, DrySigma).After(Dry, Plain);
        for (var i = 0; i < net.Cells.Count; i++)
        {
            Assert.Equal(mean[i], map.MeanPercent(i), 7);
            Assert.Equal(Math.Sqrt(variance[i]), map.SpreadOfPoints(i), 7);
        }
    }

    [Fact]
    public void Ranges_and_spreads_are_weighed_as_the_full_matrices_weigh_them()
    {
        var net = Sheets.Flat(13, 11);
        var priors = Only(400, 6) with { RangesMm = [200, 700], RangeWeights = [1, 3], Spreads = [4, 9], SpreadWeights = [2, 1] };
        var map = DampField.Fit(net, Plain, priors);
        double total = 0, expected = 0;
        var best = double.NegativeInfinity;
        var all = new List<(double Log, double Mean)>();
        foreach (var (range, rw) in priors.RangesMm.Zip(priors.RangeWeights))
            foreach (var (spread, sw) in priors.Spreads.Zip(priors.SpreadWeights))
            {
                var (mean, _, log) = new DenseField(net, range, spread, DrySigma).After(Dry, Plain);
                all.Add((log + Math.Log(rw * sw), mean[17]));
                best = Math.Max(best, all[^1].Log);
            }
        foreach (var (log, mean) in all.Where(a => a.Log > best + Math.Log(0.01)))
        {
            total += Math.Exp(log - best);
            expected += Math.Exp(log - best) * mean;
        }
        Assert.Equal(expected / total, map.MeanPercent(17), 6);
    }

    [Fact]
    public void Leaving_a_reading_out_in_closed_form_is_fitting_without_it()
    {
        var net = Sheets.Flat(13, 11);
        var map = DampField.Fit(net, Plain, Only(400, 6));
        for (var o = 0; o < Plain.Length; o++)
        {
            var without = DampField.Fit(net, [.. Plain.Where((_, i) => i != o)], Only(400, 6));
            foreach (var share in (double[])[0.05, 0.5, 0.95])
                Assert.Equal(without.QuantilePercent(Plain[o].Cell, share), map.LeftOutQuantilePercent(o, share), 7);
        }
    }

    [Theory]
    [InlineData(MeterReading.Bound.AtLeast, 28)]
    [InlineData(MeterReading.Bound.AtMost, 6)]
    public void Two_bounds_agree_with_summing_over_all_the_pairs_of_values(MeterReading.Bound bound, double limit)
    {
        var net = Sheets.Flat(9, 5);
        FieldObservation[] plain = [new(0, 14, 1), new(30, 12, 1)];
        FieldObservation[] bounds = [new(20, limit, 1.5, bound), new(23, limit, 1.5, bound)];
        var map = DampField.Fit(net, [.. plain, .. bounds], Only(500, 7));
        var (mean, variance) = Summed(new DenseField(net, 500, 7, DrySigma), plain, bounds, 22);
        // expectation propagation matches two moments of each bound; with two bounds it is not exact
        Assert.Equal(mean, map.MeanPercent(22), 0.02 * Math.Sqrt(variance));
        Assert.Equal(Math.Sqrt(variance), map.SpreadOfPoints(22), 0.02 * Math.Sqrt(variance));
    }

    /// <summary>Moments of a cell by a sum over a grid of the two bounded cells' values.</summary>
    static (double Mean, double Variance) Summed(DenseField field, FieldObservation[] plain, FieldObservation[] bounds, int cell)
    {
        const int Steps = 400;
        int a = bounds[0].Cell, b = bounds[1].Cell;
        var c = Conditioned(field, plain, [a, b, cell]);
        double sum = 0, first = 0, second = 0;
        var det = (c.S[0, 0] * c.S[1, 1]) - (c.S[0, 1] * c.S[0, 1]);
        for (var i = 0; i < Steps; i++)
            for (var j = 0; j < Steps; j++)
            {
                var u = 6 * Math.Sqrt(c.S[0, 0]) * ((2.0 * i / (Steps - 1)) - 1);
                var v = 6 * Math.Sqrt(c.S[1, 1]) * ((2.0 * j / (Steps - 1)) - 1);
                var pu = ((c.S[1, 1] * u) - (c.S[0, 1] * v)) / det;
                var pv = ((c.S[0, 0] * v) - (c.S[0, 1] * u)) / det;
                var w = Math.Exp(-0.5 * ((u * pu) + (v * pv))) * Chance(bounds[0], c.M[0] + u) * Chance(bounds[1], c.M[1] + v);
                var mean = c.M[2] + (c.S[2, 0] * pu) + (c.S[2, 1] * pv);
                sum += w;
                first += w * mean;
                second += w * mean * mean;
            }
        var ku = ((c.S[1, 1] * c.S[2, 0]) - (c.S[0, 1] * c.S[2, 1])) / det;
        var kv = ((c.S[0, 0] * c.S[2, 1]) - (c.S[0, 1] * c.S[2, 0])) / det;
        var rest = c.S[2, 2] - (ku * c.S[2, 0]) - (kv * c.S[2, 1]);
        return (first / sum, (second / sum) - Math.Pow(first / sum, 2) + rest);
    }

    /// <summary>Chance of the bound given the value, by a sum over the meter's error.</summary>
    static double Chance(FieldObservation seen, double value)
    {
        var z = (value - seen.Percent) / seen.SigmaPoints * (seen.Bound == MeterReading.Bound.AtLeast ? 1 : -1);
        if (Math.Abs(z) > 8) return z > 0 ? 1 : 0;
        double sum = 0;
        const int Steps = 64;
        for (var k = 0; k < Steps; k++) sum += Math.Exp(-0.5 * Math.Pow(-9 + ((z + 9) * (k + 0.5) / Steps), 2));
        return sum * (z + 9) / Steps / Math.Sqrt(2 * Math.PI);
    }

    static (double[] M, double[,] S) Conditioned(DenseField field, FieldObservation[] plain, int[] cells)
    {
        var s = new double[plain.Length, plain.Length];
        for (var a = 0; a < plain.Length; a++)
            for (var b = 0; b < plain.Length; b++) s[a, b] = field.Covariance[plain[a].Cell, plain[b].Cell] + (a == b ? Math.Pow(plain[a].SigmaPoints, 2) : 0);
        var p = DenseField.Inverse(s);
        var mean = cells.Select(_ => Dry).ToArray();
        var cov = new double[cells.Length, cells.Length];
        for (var i = 0; i < cells.Length; i++)
            for (var j = 0; j < cells.Length; j++)
            {
                cov[i, j] = field.Covariance[cells[i], cells[j]];
                for (var a = 0; a < plain.Length; a++)
                    for (var b = 0; b < plain.Length; b++)
                    {
                        cov[i, j] -= field.Covariance[cells[i], plain[a].Cell] * p[a, b] * field.Covariance[plain[b].Cell, cells[j]];
                        if (j == 0) mean[i] += field.Covariance[cells[i], plain[a].Cell] * p[a, b] * (plain[b].Percent - Dry);
                    }
            }
        return (mean, cov);
    }

    [Fact]
    public void Every_cell_is_as_uncertain_as_the_prior_says_before_a_reading_rim_and_corner_too()
    {
        var map = DampField.Fit(Sheets.Flat(12, 7), [], Only(600, 5));
        for (var i = 0; i < 84; i++)
        {
            Assert.Equal(Dry, map.MeanPercent(i), 9);
            Assert.Equal(Math.Sqrt(29), map.SpreadOfPoints(i), 9);
            Assert.Equal(1, map.Ignorance(i), 9);
        }
    }

    [Fact]
    public void Wetness_does_not_jump_a_gap_however_near()
    {
        var priors = Only(600, 5) with { DryPercent = [Dry, Dry], GroupOfSheet = [0, 1] };
        var map = DampField.Fit(Sheets.TwoApart(10), [new(4, 30, 1)], priors);
        Assert.Equal(Dry, map.MeanPercent(14), 9);
        Assert.True(map.MeanPercent(5) > 20);
    }

    [Fact]
    public void A_reading_over_the_meters_end_leaves_room_above_and_little_below()
    {
        var net = Sheets.Flat(9, 5);
        var value = DampField.Fit(net, [new(20, 28, 1)], Only(500, 10));
        var bound = DampField.Fit(net, [new(20, 28, 1, MeterReading.Bound.AtLeast)], Only(500, 10));
        Assert.True(bound.MeanPercent(20) > value.MeanPercent(20));
        Assert.True(bound.SpreadOfPoints(20) > value.SpreadOfPoints(20));
        // the bound is matched by a bell curve, which leaves a little too much below it
        Assert.True(bound.ProbabilityOver(20, 26) > 0.9);
    }

    [Fact]
    public void Over_a_floor_the_moments_and_chances_are_those_of_the_logarithm()
    {
        var net = Sheets.Flat(9, 5);
        var priors = Only(500, 0.8) with { FloorPercent = 8, DrySigmaPoints = 1 };
        var map = DampField.Fit(net, [new(20, 20, 1)], priors);
        // dry 12 is ln 4, its doubt a quarter; the reading ln 12, its doubt a twelfth
        var (mean, variance, _) = new DenseField(net, 500, 0.8, 0.25).After(Math.Log(4), [new(20, Math.Log(12), 1 / 12.0)]);
        Assert.Equal(8 + Math.Exp(mean[23]), map.QuantilePercent(23, 0.5), 6);
        Assert.Equal(8 + Math.Exp(mean[23] + (variance[23] / 2)), map.MeanPercent(23), 6);
        Assert.Equal(0.5, map.ProbabilityOver(23, 8 + Math.Exp(mean[23])), 6);
        Assert.True(map.QuantilePercent(44, 0.01) > 8);
    }

    [Fact]
    public void Over_a_course_thought_of_beforehand_the_readings_move_what_they_reach_and_leave_the_rest()
    {
        var net = Sheets.Flat(30, 3);
        double[] course = [.. Enumerable.Range(0, 90).Select(i => 12 + (0.2 * (i % 30)))];
        var map = DampField.Fit(net, [new(30, 17, 1)], Only(300, 5) with { TrendPercent = course, DrySigmaPoints = 0.01 });
        // the same as counting every figure from the course
        var (off, spread, _) = new DenseField(net, 300, 5, 0.01).After(0, [new(30, 17 - course[30], 1)]);
        for (var i = 0; i < 90; i++)
        {
            Assert.Equal(course[i] + off[i], map.MeanPercent(i), 6);
            Assert.Equal(Math.Sqrt(spread[i]), map.SpreadOfPoints(i), 6);
        }
        Assert.Throws<ArgumentOutOfRangeException>(() => DampField.Fit(net, [], Only(300, 5) with { TrendPercent = [12] }));
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DampField.Fit(Sheets.Flat(2, 2), [new(4, 12, 1)], Only(500, 5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => DampField.Fit(Sheets.Flat(2, 2), [new(0, 12, 0)], Only(500, 5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SurfaceNet([new(100, 0, 0, 0, 0)], [new(0, 0, 1)]));
    }
}
