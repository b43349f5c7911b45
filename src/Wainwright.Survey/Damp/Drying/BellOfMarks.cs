namespace Wainwright.Survey.Damp.Drying;

/// <summary>A bell curve over marks, moved to where the readings would have it: a Kalman step from weighted draws.</summary>
/// <remarks>
/// Mean and covariance of draws that are weighed by a part of the readings' weight, then the rest of it as one linear step, as ensemble smoothers do it
/// (Emerick and Reynolds 2013, Comput. Geosci. 55, from memory). It only proposes: what it proposes is weighed like everything else.
/// </remarks>
internal sealed class BellOfMarks
{
    // wider than the step says, as few draws tell too little of it; chance correlations doubted so many times over. Own rules
    private const double Wider = 1.15, Doubt = 3, LeastSpread = 0.25;

    private readonly double[] mean;

    private readonly double[,] lower;

    private readonly double logHeight;

    private BellOfMarks(double[] mean, double[,] lower)
    {
        (this.mean, this.lower) = (mean, lower);
        logHeight = -(mean.Length * 0.5 * Math.Log(2 * Math.PI)) - Enumerable.Range(0, mean.Length).Sum(i => Math.Log(lower[i, i]));
    }

    /// <param name="marks">Marks of every draw.</param>
    /// <param name="offs">How far each draw is off at each reading, in standard deviations; 0 where a bound is met.</param>
    /// <param name="weights">Weight of each draw, summing to 1.</param>
    /// <param name="power">The part of the readings' weight that is in these weights [0–1].</param>
    public static BellOfMarks Of(IReadOnlyList<double[]> marks, IReadOnlyList<double[]> offs, IReadOnlyList<double> weights, double power)
    {
        int n = marks[0].Length, m = offs[0].Length;
        double[] Mean(IReadOnlyList<double[]> of, int size) => [.. Enumerable.Range(0, size).Select(k => of.Select((v, i) => weights[i] * v[k]).Sum())];
        double[] theta = Mean(marks, n), off = Mean(offs, m);
        double[,] Cov(IReadOnlyList<double[]> a, double[] meanA, IReadOnlyList<double[]> b, double[] meanB)
        {
            var cov = new double[meanA.Length, meanB.Length];
            for (var i = 0; i < a.Count; i++)
                for (var p = 0; p < meanA.Length; p++)
                    for (var q = 0; q < meanB.Length; q++) cov[p, q] += weights[i] * (a[i][p] - meanA[p]) * (b[i][q] - meanB[q]);
            return cov;
        }
        double[,] both = Cov(marks, theta, offs, off), among = Cov(offs, off, offs, off), own = Cov(marks, theta, marks, theta);
        // what so few draws tell by chance alone counts little: a mark that the readings do not move keeps its bell curve round 0
        var noise = Doubt * weights.Sum(w => w * w);
        double Sure(double squared) => squared / (squared + noise);
        for (var p = 0; p < n; p++)
        {
            theta[p] *= Sure(theta[p] * theta[p]);
            for (var r = 0; r < m; r++) both[p, r] *= Sure(both[p, r] * both[p, r] / Math.Max(1e-12, own[p, p] * among[r, r]));
        }
        var spread = Enumerable.Range(0, n).Select(p => own[p, p]).ToArray();
        for (var p = 0; p < n; p++)
            for (var q = 0; q < n; q++)
                own[p, q] = p == q ? 1 + (Sure((own[p, p] - 1) * (own[p, p] - 1)) * (own[p, p] - 1)) : own[p, q] * Sure(own[p, q] * own[p, q] / Math.Max(1e-12, spread[p] * spread[q]));
        if (power < 0.999)
        {
            for (var r = 0; r < m; r++) among[r, r] += 1 / (1 - power);
            var factor = Factor(among);
            var gain = new double[n, m];
            for (var p = 0; p < n; p++)
            {
                var row = Solve(factor, [.. Enumerable.Range(0, m).Select(r => both[p, r])]);
                for (var r = 0; r < m; r++) gain[p, r] = row[r];
            }
            for (var p = 0; p < n; p++)
            {
                for (var r = 0; r < m; r++) theta[p] -= gain[p, r] * off[r];
                for (var q = 0; q < n; q++)
                    for (var r = 0; r < m; r++) own[p, q] -= gain[p, r] * both[q, r];
            }
        }
        for (var p = 0; p < n; p++)
            for (var q = 0; q < n; q++)
                own[p, q] = p == q ? Math.Max(LeastSpread * LeastSpread, Wider * Wider * own[p, p]) : Wider * Wider * 0.5 * (own[p, q] + own[q, p]);
        return new([.. theta.Select(t => Math.Clamp(t, -2.5, 2.5))], Factor(own));
    }

    public double[] Draw(Func<double> normal)
    {
        var z = mean.Select(_ => normal()).ToArray();
        return [.. mean.Select((m, p) => m + Enumerable.Range(0, p + 1).Sum(q => lower[p, q] * z[q]))];
    }

    public double LogDensity(double[] marks)
    {
        var z = Forward(lower, [.. marks.Select((v, p) => v - mean[p])]);
        return logHeight - (0.5 * z.Sum(v => v * v));
    }

    /// <summary>Cholesky; what is not positive by too few draws is made so.</summary>
    private static double[,] Factor(double[,] a)
    {
        var n = a.GetLength(0);
        var l = new double[n, n];
        for (var j = 0; j < n; j++)
            for (var i = j; i < n; i++)
            {
                var sum = a[i, j];
                for (var k = 0; k < j; k++) sum -= l[i, k] * l[j, k];
                l[i, j] = i == j ? Math.Sqrt(Math.Max(sum, 1e-3 * a[j, j])) : sum / l[j, j];
            }
        return l;
    }

    private static double[] Forward(double[,] l, double[] b)
    {
        for (var i = 0; i < b.Length; i++)
        {
            for (var k = 0; k < i; k++) b[i] -= l[i, k] * b[k];
            b[i] /= l[i, i];
        }
        return b;
    }

    private static double[] Solve(double[,] l, double[] b)
    {
        b = Forward(l, b);
        for (var i = b.Length - 1; i >= 0; i--)
        {
            for (var k = i + 1; k < b.Length; k++) b[i] -= l[k, i] * b[k];
            b[i] /= l[i, i];
        }
        return b;
    }
}
