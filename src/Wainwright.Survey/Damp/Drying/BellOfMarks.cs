namespace Wainwright.Survey.Damp.Drying;

/// <summary>A bell curve over marks: mean and covariance of weighed draws. It only proposes: what it proposes is weighed like everything else.</summary>
internal sealed class BellOfMarks
{
    // wider than the draws say, so that what lies round them is found too: own rules
    private const double Wider = 1.2, LeastSpread = 0.1;

    private readonly double[] mean;

    private readonly double[,] lower;

    private readonly double logHeight;

    private BellOfMarks(double[] mean, double[,] lower)
    {
        (this.mean, this.lower) = (mean, lower);
        logHeight = -(mean.Length * 0.5 * Math.Log(2 * Math.PI)) - Enumerable.Range(0, mean.Length).Sum(i => Math.Log(lower[i, i]));
    }

    /// <param name="marks">Marks of every draw.</param>
    /// <param name="weights">Weight of each draw, summing to 1.</param>
    public static BellOfMarks Of(IReadOnlyList<double[]> marks, IReadOnlyList<double> weights)
    {
        var n = marks[0].Length;
        var mean = new double[n];
        for (var i = 0; i < marks.Count; i++)
            for (var p = 0; p < n; p++) mean[p] += weights[i] * marks[i][p];
        var own = new double[n, n];
        for (var i = 0; i < marks.Count; i++)
        {
            if (weights[i] < 1e-9) continue;
            for (var p = 0; p < n; p++)
                for (var q = 0; q <= p; q++) own[p, q] += weights[i] * (marks[i][p] - mean[p]) * (marks[i][q] - mean[q]);
        }
        for (var p = 0; p < n; p++)
            for (var q = 0; q <= p; q++) own[q, p] = own[p, q] = (Wider * Wider * own[p, q]) + (p == q ? LeastSpread * LeastSpread : 0);
        return new(mean, Cholesky.Of(own));
    }

    /// <summary>Draws from it.</summary>
    /// <param name="normal">Gives a standard normal figure each time.</param>
    public double[] Draw(Func<double> normal)
    {
        var z = mean.Select(_ => normal()).ToArray();
        var marks = mean.ToArray();
        for (var p = 0; p < z.Length; p++)
            for (var q = 0; q <= p; q++) marks[p] += lower[p, q] * z[q];
        return marks;
    }

    /// <summary>Logarithm of its density.</summary>
    /// <param name="marks">Where.</param>
    public double LogDensity(double[] marks)
    {
        var z = new double[mean.Length];
        for (var p = 0; p < z.Length; p++) z[p] = marks[p] - mean[p];
        Cholesky.Forward(lower, z);
        return logHeight - (0.5 * Cholesky.Dot(z, z, z.Length));
    }
}
