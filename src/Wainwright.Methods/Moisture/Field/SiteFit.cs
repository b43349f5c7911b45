using Wainwright.Methods.Moisture.Field.Sparse;

namespace Wainwright.Methods.Moisture.Field;

/// <summary>The readings of one range, size and level, each matched by a bell curve on the field (expectation propagation, Minka 2001, in the space of the readings).</summary>
/// <remarks>With B = 1 + √T K √T, T the curves' precisions and K the covariance of the readings' places: all that is needed is B's factor.</remarks>
sealed class SiteFit
{
    const int MostSweeps = 40;
    const double Settled = 3e-3;

    // sweeps go most of the way; where many do not settle, half of it
    const double Damped = 0.85, MoreDamped = 0.5;
    const int Many = 12;

    // no curve is wider than this many sizes; below it nothing is said
    const double Weakest = 1e-6, LeastLeft = 1e-4;

    readonly double[,] covariance;
    readonly double[] precision, pull, begin;
    readonly double size;
    double[] root = [], factor = [];

    SiteFit(double[,] covariance, double size, double[] begin)
    {
        (this.covariance, this.size, this.begin) = (covariance, size, begin);
        Count = begin.Length;
        (precision, pull, Mean, Variance) = (new double[Count], new double[Count], new double[Count], new double[Count]);
        Without = new (double, double)[Count];
    }

    public int Count { get; }

    /// <summary>Mean and variance of the field at the readings.</summary>
    public double[] Mean { get; }

    public double[] Variance { get; }

    /// <summary>Mean and variance there without the reading itself.</summary>
    public (double Mean, double Variance)[] Without { get; }

    /// <summary>Logarithm of how well the readings were foretold.</summary>
    public double LogWeight { get; private set; }

    /// <summary>What each reading pulls: the mean of any place is what it began with plus its covariances (of spread 1) times these.</summary>
    public double[] Pulls { get; private set; } = [];

    /// <summary>Value and standard deviation of each matched curve.</summary>
    public (double At, double Spread) Curve(int reading) => (pull[reading] / precision[reading], 1 / Math.Sqrt(precision[reading]));

    /// <summary>Fits.</summary>
    /// <param name="covariance">Of the readings' places, at spread 1.</param>
    /// <param name="size">Standard deviation of the field [points].</param>
    /// <param name="begin">Mean of the field at each reading beforehand [points].</param>
    /// <param name="given">What a reading leaves of a bell curve of the field there: logarithm of its chance, mean, variance.</param>
    public static SiteFit Of(double[,] covariance, double size, double[] begin, Func<int, double, double, (double LogChance, double Mean, double Variance)> given)
    {
        var fit = new SiteFit(covariance, size, begin);
        Array.Fill(fit.precision, Weakest / (size * size));
        for (var o = 0; o < fit.Count; o++) fit.pull[o] = fit.precision[o] * begin[o];
        fit.Settle();
        for (var sweep = 0; sweep < MostSweeps; sweep++)
        {
            // the first is whole: a plain value is then matched exactly
            var moved = fit.Sweep(given, sweep == 0 ? 1 : sweep < Many ? Damped : MoreDamped);
            fit.Settle();
            if (moved < Settled) break;
        }
        fit.Weigh(given);
        return fit;
    }

    double Sweep(Func<int, double, double, (double LogChance, double Mean, double Variance)> given, double damping)
    {
        double moved = 0;
        for (var o = 0; o < Count; o++)
        {
            var left = (1 / Variance[o]) - precision[o];
            if (!(left > LeastLeft / (size * size))) continue;
            var (mean, variance) = (((Mean[o] / Variance[o]) - pull[o]) / left, 1 / left);
            var (_, newMean, newVariance) = given(o, mean, variance);
            var newPrecision = Math.Max(Weakest / (size * size), (1 / newVariance) - left);
            var newPull = (newMean * (newPrecision + left)) - (mean * left);
            moved = Math.Max(moved, (Math.Abs(newPrecision - precision[o]) * Variance[o]) + (Math.Abs(newPull - pull[o]) * Math.Sqrt(Variance[o])));
            precision[o] += damping * (newPrecision - precision[o]);
            pull[o] += damping * (newPull - pull[o]);
        }
        return moved;
    }

    /// <summary>Means and variances that follow from the curves.</summary>
    void Settle()
    {
        var n = Count;
        root = [.. precision.Select(Math.Sqrt)];
        factor = new double[n * n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j <= i; j++) factor[(i * n) + j] = (root[i] * root[j] * size * size * covariance[i, j]) + (i == j ? 1 : 0);
        DenseRows.Factor(factor, n);
        var w = new double[n];
        for (var o = 0; o < n; o++) w[o] = root[o] * ((pull[o] / precision[o]) - begin[o]);
        DenseRows.Forward(factor, n, w);
        DenseRows.Backward(factor, n, w);
        Pulls = new double[n];
        for (var o = 0; o < n; o++) Pulls[o] = size * size * root[o] * w[o];
        var inverse = DenseRows.InverseDiagonal(factor, n);
        for (var o = 0; o < n; o++)
        {
            // mean = curve's place less what the system leaves of it; variance = (1 − B⁻¹)/precision, both per reading
            Mean[o] = (pull[o] / precision[o]) - (w[o] / root[o]);
            Variance[o] = Math.Max(1e-12, (1 - inverse[o]) / precision[o]);
        }
    }

    void Weigh(Func<int, double, double, (double LogChance, double Mean, double Variance)> given)
    {
        double log = 0;
        for (var o = 0; o < Count; o++)
        {
            var left = Math.Max((1 / Variance[o]) - precision[o], LeastLeft / (size * size));
            var (mean, variance) = (((Mean[o] / Variance[o]) - pull[o]) / left, 1 / left);
            Without[o] = (mean, variance);
            var at = pull[o] / precision[o];
            log += given(o, mean, variance).LogChance + (0.5 * Math.Log(1 + (precision[o] * variance))) + (0.5 * (mean - at) * (mean - at) / (variance + (1 / precision[o])));
            log -= Math.Log(factor[(o * Count) + o]) + (0.5 * (at - begin[o]) * Pulls[o] / (size * size));
        }
        LogWeight = log;
    }

    /// <summary>√T K(readings, place) carried through B's factor: its square is what the readings take off the place's variance, products of two places' what they take off the covariance.</summary>
    /// <param name="withReadings">Covariance of the place with each reading, at spread 1; turned in place.</param>
    public void Carry(double[] withReadings)
    {
        for (var o = 0; o < Count; o++) withReadings[o] *= root[o] * size * size;
        DenseRows.Forward(factor, Count, withReadings);
    }

    /// <summary>The carried taken back: pulls whose covariances (of spread 1) are taken off the place's own.</summary>
    public void CarryBack(double[] carried)
    {
        DenseRows.Backward(factor, Count, carried);
        for (var o = 0; o < Count; o++) carried[o] *= root[o] * size * size;
    }

    /// <summary>Four places at once, one after another in one array.</summary>
    public void CarryFour(double[] four)
    {
        var n = Count;
        for (var k = 0; k < 4; k++)
            for (var o = 0; o < n; o++) four[(k * n) + o] *= root[o] * size * size;
        for (var i = 0; i < n; i++)
        {
            var (a, b, c, d) = DenseRows.FourDots(factor.AsSpan(i * n, i), four, n);
            var by = 1 / factor[(i * n) + i];
            four[i] = (four[i] - a) * by;
            four[n + i] = (four[n + i] - b) * by;
            four[(2 * n) + i] = (four[(2 * n) + i] - c) * by;
            four[(3 * n) + i] = (four[(3 * n) + i] - d) * by;
        }
    }

    /// <summary>Pulls that lead a draw of the field before the readings to one after them.</summary>
    /// <param name="off">At each reading, a value of its curve less the draw [points]; turned in place.</param>
    public void Lead(double[] off)
    {
        for (var o = 0; o < Count; o++) off[o] *= root[o];
        DenseRows.Forward(factor, Count, off);
        DenseRows.Backward(factor, Count, off);
        for (var o = 0; o < Count; o++) off[o] *= root[o] * size * size;
    }
}
