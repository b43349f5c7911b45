using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Field;
using Xunit;

namespace Wainwright.Methods.Tests.Moisture.Field;

public class DampFieldTests
{
    // far over the dry board the ramp is a straight line, and the map is plain kriging about its course
    const double Dry = 12, Course = 40;

    // what the map adds to each reading and cell where nothing tells how uneven the dry board is [points²]: mean square of its grid
    const double Uneven = ((1 * 0.01) + (2 * 0.09) + (1 * 0.36) + (0.5 * 1.44)) / 4.5;

    static readonly FieldObservation[] Plain = [new(3, 47, 1), new(60, 41, 1), new(61, 40.5, 0.5), new(110, 37, 2), new(3, 45, 1)];

    static FieldPriors Only(double rangeMm, double spreadPoints, SurfaceNet net) => new()
    {
        RangesMm = [rangeMm], RangeWeights = [1], Spreads = [spreadPoints], SpreadWeights = [1], Levels = [2], LevelWeights = [1],
        DryPercent = [Dry], DrySigmaPoints = 1e-4, TrendPercent = [.. net.Cells.Select(_ => Course)],
    };

    static FieldObservation[] Rough(IEnumerable<FieldObservation> seen) => [.. seen.Select(s => s with { SigmaPoints = Math.Sqrt((s.SigmaPoints * s.SigmaPoints) + Uneven) })];

    [Fact]
    public void The_sparse_way_gives_mean_and_spread_of_the_full_matrices()
    {
        var net = Sheets.Flat(13, 11);
        var map = DampField.Fit(net, Plain, Only(400, 4, net));
        var (mean, variance, _) = new DenseField(net, 400, 4).After(Course, Rough(Plain));
        for (var i = 0; i < net.Cells.Count; i++)
        {
            Assert.Equal(mean[i], map.MeanPercent(i), 1e-5);
            Assert.Equal(Math.Sqrt(variance[i] + Uneven), map.SpreadOfPoints(i), 1e-5);
        }
    }

    [Fact]
    public void Ranges_and_spreads_are_weighed_as_the_full_matrices_weigh_them()
    {
        var net = Sheets.Flat(13, 11);
        var priors = Only(400, 4, net) with { RangesMm = [200, 700], RangeWeights = [1, 3], Spreads = [2.5, 4], SpreadWeights = [2, 1] };
        var map = DampField.Fit(net, Plain, priors);
        double total = 0, expected = 0;
        var best = double.NegativeInfinity;
        var all = new List<(double Log, double Mean)>();
        foreach (var (range, rw) in priors.RangesMm.Zip(priors.RangeWeights))
            foreach (var (spread, sw) in priors.Spreads.Zip(priors.SpreadWeights))
            {
                var (mean, _, log) = new DenseField(net, range, spread).After(Course, Rough(Plain));
                all.Add((log + Math.Log(rw * sw), mean[17]));
                best = Math.Max(best, all[^1].Log);
            }
        foreach (var (log, mean) in all.Where(a => a.Log > best + Math.Log(0.01)))
        {
            total += Math.Exp(log - best);
            expected += Math.Exp(log - best) * mean;
        }
        Assert.Equal(expected / total, map.MeanPercent(17), 1e-5);
    }

    [Fact]
    public void Leaving_a_reading_out_in_closed_form_is_fitting_without_it()
    {
        var net = Sheets.Flat(13, 11);
        var map = DampField.Fit(net, Plain, Only(400, 4, net));
        for (var o = 0; o < Plain.Length; o++)
        {
            var without = DampField.Fit(net, [.. Plain.Where((_, i) => i != o)], Only(400, 4, net));
            foreach (var share in (double[])[0.05, 0.5, 0.95])
                Assert.Equal(without.QuantilePercent(Plain[o].Cell, share), map.LeftOutQuantilePercent(o, share), 1e-5);
        }
    }

    [Theory]
    [InlineData(MeterReading.Bound.AtLeast, 44)]
    [InlineData(MeterReading.Bound.AtMost, 36)]
    public void Two_bounds_agree_with_summing_over_all_the_pairs_of_values(MeterReading.Bound bound, double limit)
    {
        var net = Sheets.Flat(9, 5);
        FieldObservation[] plain = [new(0, 42, 1), new(30, 40, 1)];
        FieldObservation[] bounds = [new(20, limit, 1.5, bound), new(23, limit, 1.5, bound)];
        var map = DampField.Fit(net, [.. plain, .. bounds], Only(500, 4, net));
        var (mean, variance) = Summed(new DenseField(net, 500, 4), Rough(plain), Rough(bounds), 22);
        // expectation propagation matches two moments of each bound; with two bounds it is not exact
        Assert.Equal(mean, map.MeanPercent(22), 0.02 * Math.Sqrt(variance));
        Assert.Equal(Math.Sqrt(variance + Uneven), map.SpreadOfPoints(22), 0.02 * Math.Sqrt(variance));
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
        var mean = cells.Select(_ => Course).ToArray();
        var cov = new double[cells.Length, cells.Length];
        for (var i = 0; i < cells.Length; i++)
            for (var j = 0; j < cells.Length; j++)
            {
                cov[i, j] = field.Covariance[cells[i], cells[j]];
                for (var a = 0; a < plain.Length; a++)
                    for (var b = 0; b < plain.Length; b++)
                    {
                        cov[i, j] -= field.Covariance[cells[i], plain[a].Cell] * p[a, b] * field.Covariance[plain[b].Cell, cells[j]];
                        if (j == 0) mean[i] += field.Covariance[cells[i], plain[a].Cell] * p[a, b] * (plain[b].Percent - Course);
                    }
            }
        return (mean, cov);
    }

    [Fact]
    public void Every_cell_is_as_uncertain_as_the_prior_says_before_a_reading_rim_and_corner_too()
    {
        var net = Sheets.Flat(12, 7);
        var map = DampField.Fit(net, [], Only(600, 4, net));
        for (var i = 0; i < 84; i++)
        {
            Assert.Equal(Course, map.MeanPercent(i), 6);
            Assert.Equal(Math.Sqrt(16 + Uneven), map.SpreadOfPoints(i), 6);
            Assert.Equal(1, map.Ignorance(i), 9);
        }
    }

    [Fact]
    public void Over_a_course_thought_of_beforehand_the_readings_move_what_they_reach_and_leave_the_rest()
    {
        var net = Sheets.Flat(30, 3);
        double[] course = [.. Enumerable.Range(0, 90).Select(i => 30 + (0.2 * (i % 30)))];
        var map = DampField.Fit(net, [new(30, 35, 1)], Only(300, 2, net) with { TrendPercent = course });
        // the same as counting every figure from the course
        var (off, spread, _) = new DenseField(net, 300, 2).After(0, Rough([new(30, 35 - course[30], 1)]));
        for (var i = 0; i < 90; i++)
        {
            Assert.Equal(course[i] + off[i], map.MeanPercent(i), 1e-5);
            Assert.Equal(Math.Sqrt(spread[i] + Uneven), map.SpreadOfPoints(i), 1e-5);
        }
        Assert.Throws<ArgumentOutOfRangeException>(() => DampField.Fit(net, [], new() { TrendPercent = [12] }));
    }

    [Fact]
    public void Maps_drawn_whole_have_the_mean_and_the_spread_of_the_cells_and_go_together()
    {
        const int Count = 4000;
        var net = Sheets.Flat(9, 5);
        FieldObservation[] seen = [new(20, 44, 1), new(40, 37, 1)];
        var map = DampField.Fit(net, seen, Only(500, 3, net));
        var draws = map.Draws(Count, 3);
        for (var i = 0; i < 45; i++)
        {
            var mean = draws.Average(d => d[i]);
            Assert.Equal(map.MeanPercent(i), mean, 4 * map.SpreadOfPoints(i) / Math.Sqrt(Count));
            Assert.Equal(map.SpreadOfPoints(i), Math.Sqrt(draws.Average(d => Math.Pow(d[i] - mean, 2))), 0.06 * map.SpreadOfPoints(i));
        }
        // neighbours' covariance after both readings, by full matrices
        var (m, s) = Conditioned(new DenseField(net, 500, 3), Rough(seen), [5, 6]);
        Assert.Equal(s[0, 1], draws.Average(d => (d[5] - m[0]) * (d[6] - m[1])), 0.07 * s[0, 1]);
        Assert.Equal(draws[7], map.Draws(Count, 3)[7]);
    }

    [Fact]
    public void Where_cells_are_fine_patches_stand_for_them_roughly_at_the_shortest_range()
    {
        var net = Sheets.Flat(24, 20, 25);
        FieldObservation[] seen = [new(30, 46, 1), new(400, 36, 1), new(250, 41, 1)];
        var map = DampField.Fit(net, seen, Only(350, 4, net));
        var (mean, variance, _) = new DenseField(net, 350, 4).After(Course, Rough(seen));
        var worst = Enumerable.Range(0, net.Cells.Count).Max(i => Math.Abs(map.MeanPercent(i) - mean[i]));
        var wide = Enumerable.Range(0, net.Cells.Count).Max(i => Math.Abs(map.SpreadOfPoints(i) - Math.Sqrt(variance[i] + Uneven)));
        Assert.True(worst < 0.08 * 4, $"means part by {worst:0.000} points");
        // beside a reading the patch knows less than the cell does: the map is too wide there, not too narrow
        Assert.True(wide < 0.12 * 4, $"spreads part by {wide:0.000} points");
    }

    [Fact]
    public void Wetness_does_not_jump_a_gap_however_near()
    {
        var priors = new FieldPriors { RangesMm = [600], RangeWeights = [1], Spreads = [16], SpreadWeights = [1], Levels = [2], LevelWeights = [1], DryPercent = [Dry, Dry], GroupOfSheet = [0, 1] };
        var (read, unread) = (DampField.Fit(Sheets.TwoApart(10), [new(4, 30, 1)], priors), DampField.Fit(Sheets.TwoApart(10), [], priors));
        Assert.Equal(unread.MeanPercent(14), read.MeanPercent(14), 9);
        Assert.True(read.MeanPercent(5) > 20);
        Assert.Equal(1, read.Ignorance(14), 9);
        Assert.True(read.Ignorance(4) < 0.2);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DampField.Fit(Sheets.Flat(2, 2), [new(4, 12, 1)], new()));
        Assert.Throws<ArgumentOutOfRangeException>(() => DampField.Fit(Sheets.Flat(2, 2), [new(0, 12, 0)], new()));
        Assert.Throws<ArgumentOutOfRangeException>(() => new SurfaceNet([new(100, 0, 0, 0, 0)], [new(0, 0, 1)]));
    }
}
