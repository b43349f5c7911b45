namespace Wainwright.Survey.Damp.Drying;

/// <summary>Guesses from the courses that were computed where another one would be off the readings, and how far that guess may be wrong.</summary>
/// <remarks>
/// Regression by a Gaussian process (Rasmussen and Williams 2006, Gaussian Processes for Machine Learning, ch. 2 and 5, from memory): straight in the marks and the place,
/// with a smooth rest; how far each mark reaches is found by the likelihood of the courses. It only tells where to compute; no range is read from it.
/// </remarks>
internal sealed class CourseGuess
{
    // variance of the level, of the straight part and of what no mark explains, against the smooth rest; reach of a mark at first [standard deviations]: own rules
    private const double Level = 9, Straight = 1, Rest = 0.01, Reach = 4, ShortestReach = 1.2, LongestReach = 24;

    // places count in steps of this [mm]: where water comes in tells more than any mark
    private const double PlaceStepMm = 100;

    private readonly double[][] known;

    private readonly double[] reach;

    private readonly double[][] root;

    private readonly double[][] pull;

    private readonly double[] slope, level, spread;

    private CourseGuess(double[][] known, double[] reach, double[,] lower, double[][] pull, double[] slope, double[] level, double[] spread)
    {
        (this.known, this.reach, this.pull, this.slope, this.level, this.spread) = (known, reach, pull, slope, level, spread);
        root = [.. Enumerable.Range(0, known.Length).Select(i => Enumerable.Range(0, i + 1).Select(k => lower[i, k]).ToArray())];
    }

    /// <summary>How far each mark, and the place after them, reaches.</summary>
    public double[] Reaches => reach;

    /// <summary>What the guess is made from: marks, then the place.</summary>
    /// <param name="draw">What is drawn.</param>
    /// <param name="place">Where it comes in [mm].</param>
    public static double[] Point(WaterDraw draw, Fitout.Place place) => [.. draw.Marks.Select(m => Math.Clamp(m, -2.5, 2.5)), place.XMm / PlaceStepMm, place.YMm / PlaceStepMm, place.ZMm / PlaceStepMm];

    /// <summary>Learns from courses.</summary>
    /// <param name="points">A point for each course.</param>
    /// <param name="hints">What is expected at each reading, roughly, for each course.</param>
    /// <param name="offs">How far each course is off at each reading [standard deviations].</param>
    /// <param name="begin">Reaches to begin with; null for the usual.</param>
    /// <param name="round">Which round of courses it is.</param>
    public static CourseGuess Of(IReadOnlyList<double[]> points, IReadOnlyList<double[]> hints, IReadOnlyList<double[]> offs, double[]? begin, int round)
    {
        double[][] known = [.. points];
        int n = known.Length, readings = offs[0].Length;
        double[] slope = new double[readings], level = new double[readings];
        var rests = new double[readings][];
        for (var r = 0; r < readings; r++)
        {
            double hint = hints.Average(h => h[r]), off = offs.Average(o => o[r]);
            var wide = hints.Sum(h => Math.Pow(h[r] - hint, 2));
            slope[r] = Math.Max(0, Enumerable.Range(0, n).Sum(i => (hints[i][r] - hint) * (offs[i][r] - off)) / (wide + 1));
            level[r] = off - (slope[r] * hint);
            rests[r] = [.. Enumerable.Range(0, n).Select(i => offs[i][r] - level[r] - (slope[r] * hints[i][r]))];
        }
        var reach = begin?.ToArray() ?? [.. Enumerable.Repeat(Reach, WaterCourse.Marks + 1)];
        var best = Fit(known, reach, rests);
        // every other mark in turn, the others in the next round
        for (var d = round % 2; d < reach.Length; d += 2)
            foreach (var factor in (double[])[2, 0.5])
            {
                double[] other = [.. reach.Select((v, i) => i == d ? Math.Clamp(v * factor, ShortestReach, LongestReach) : v)];
                if (other[d] == reach[d]) continue;
                var fit = Fit(known, other, rests);
                if (fit.LogLikelihood <= best.LogLikelihood) continue;
                (best, reach) = (fit, other);
                break;
            }
        return new(known, reach, best.Lower, best.Pull, slope, level, best.Spread);
    }

    private static (double LogLikelihood, double[,] Lower, double[][] Pull, double[] Spread) Fit(double[][] known, double[] reach, double[][] rests)
    {
        var n = known.Length;
        var alike = new double[n, n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j <= i; j++) alike[i, j] = alike[j, i] = Alike(known[i], known[j], reach) + (i == j ? Rest : 0);
        var lower = Cholesky.Of(alike);
        var half = Enumerable.Range(0, n).Sum(i => Math.Log(lower[i, i]));
        double sum = 0;
        var pull = new double[rests.Length][];
        var spread = new double[rests.Length];
        for (var r = 0; r < rests.Length; r++)
        {
            var z = Cholesky.Forward(lower, [.. rests[r]]);
            // a little is added lest a reading that no course moves is held for certain
            var variance = (z.Sum(v => v * v) + 0.05) / n;
            spread[r] = variance;
            sum -= (0.5 * n * Math.Log(variance)) + half;
            pull[r] = Cholesky.Back(lower, z);
        }
        return (sum, lower, pull, spread);
    }

    private static double Alike(double[] a, double[] b, double[] reach)
    {
        double apart = 0, along = 0;
        for (var d = 0; d < a.Length; d++)
        {
            var reaches = reach[Math.Min(d, reach.Length - 1)];
            var (gap, per) = (a[d] - b[d], 1 / (reaches * reaches));
            apart += gap * gap * per;
            if (d < WaterCourse.Marks) along += a[d] * b[d] * per;
        }
        return Level + (Straight * along) + Math.Exp(-0.5 * apart);
    }

    /// <summary>The guess at a point: how far off at each reading, and the variance of that.</summary>
    /// <param name="point">Marks and place.</param>
    /// <param name="hint">What is expected at each reading.</param>
    public (double[] Off, double[] Variance) At(double[] point, double[] hint)
    {
        var n = known.Length;
        var near = new double[n];
        for (var i = 0; i < n; i++) near[i] = Alike(point, known[i], reach);
        var off = new double[pull.Length];
        for (var r = 0; r < off.Length; r++)
        {
            off[r] = level[r] + (slope[r] * hint[r]) + Cholesky.Dot(pull[r], near, n);
        }
        var left = Alike(point, point, reach);
        for (var i = 0; i < n; i++)
        {
            var row = root[i];
            near[i] = (near[i] - Cholesky.Dot(row, near, i)) / row[i];
            left -= near[i] * near[i];
        }
        left = Math.Max(0, left) + Rest;
        return (off, [.. spread.Select(s => s * left)]);
    }
}
