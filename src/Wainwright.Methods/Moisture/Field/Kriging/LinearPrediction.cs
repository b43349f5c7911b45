namespace Wainwright.Methods.Moisture.Field.Kriging;

/// <summary>The best linear unbiased prediction from measurements of known covariance: ordinary and universal kriging, generalised least squares.</summary>
/// <remarks>The slow, full way, for flat sheets and for checking the field on a net. The variance is that of a new measurement: the nugget counts.</remarks>
public sealed class LinearPrediction
{
    readonly double[,] inverse;
    readonly double[] values;
    readonly int drift;

    /// <summary>Takes measurements with their covariance and drift.</summary>
    /// <param name="covariance">Covariance of the measurements, positive definite.</param>
    /// <param name="values">The measurements, one or more.</param>
    /// <param name="drift">Regressors of each measurement, first among them 1 for a mean; independent of each other.</param>
    /// <exception cref="ArgumentOutOfRangeException">Sizes that do not fit.</exception>
    /// <exception cref="ArithmeticException">The system has no single answer: equal places without a nugget, or regressors that depend on each other.</exception>
    public LinearPrediction(double[,] covariance, IReadOnlyList<double> values, IReadOnlyList<double[]> drift)
    {
        var n = values.Count;
        ArgumentOutOfRangeException.ThrowIfZero(n);
        ArgumentOutOfRangeException.ThrowIfNotEqual(covariance.GetLength(0), n);
        ArgumentOutOfRangeException.ThrowIfNotEqual(covariance.GetLength(1), n);
        ArgumentOutOfRangeException.ThrowIfNotEqual(drift.Count, n);
        this.drift = drift[0].Length;
        this.values = [.. values];
        var system = new double[n + this.drift, n + this.drift];
        for (var i = 0; i < n; i++)
        {
            for (var j = 0; j < n; j++) system[i, j] = covariance[i, j];
            for (var d = 0; d < this.drift; d++) system[i, n + d] = system[n + d, i] = drift[i][d];
        }
        inverse = Inverse(system);
    }

    /// <summary>Kriging with a curve, unknown mean, and further regressors where given.</summary>
    /// <param name="places">Places of the measurements.</param>
    /// <param name="values">A value each.</param>
    /// <param name="model">The curve.</param>
    /// <param name="regressors">Further regressors of each measurement; null for none.</param>
    public static LinearPrediction Kriging(IReadOnlyList<(double X, double Y)> places, IReadOnlyList<double> values, VariogramModel model, IReadOnlyList<double[]>? regressors = null)
    {
        var c = new double[places.Count, places.Count];
        for (var i = 0; i < places.Count; i++)
            for (var j = 0; j < places.Count; j++) c[i, j] = i == j ? model.Nugget + model.Sill : model.Covariance(Distance(places[i], places[j]));
        return new(c, values, [.. places.Select((_, i) => (double[])[1, .. regressors?[i] ?? []])]);
    }

    /// <param name="Value">Best prediction.</param>
    /// <param name="Variance">Variance of a new measurement about it.</param>
    /// <param name="Weights">Weight of each measurement; they sum to 1 with a mean.</param>
    public sealed record Result(double Value, double Variance, IReadOnlyList<double> Weights);

    /// <summary>Prediction for something of given covariance with the measurements.</summary>
    /// <param name="own">Its own variance.</param>
    /// <param name="with">Its covariance with each measurement.</param>
    /// <param name="driftThere">Its regressors.</param>
    public Result At(double own, IReadOnlyList<double> with, IReadOnlyList<double> driftThere)
    {
        double[] right = [.. with, .. driftThere];
        ArgumentOutOfRangeException.ThrowIfNotEqual(right.Length, inverse.GetLength(0));
        var solved = new double[right.Length];
        double value = 0, variance = own;
        for (var i = 0; i < right.Length; i++)
        {
            for (var j = 0; j < right.Length; j++) solved[i] += inverse[i, j] * right[j];
            if (i < values.Length) value += solved[i] * values[i];
            variance -= solved[i] * right[i];
        }
        return new(value, variance, solved[..values.Length]);
    }

    /// <summary>Kriging at a place.</summary>
    /// <param name="places">The places given before.</param>
    /// <param name="model">The curve given before.</param>
    /// <param name="x">The place.</param>
    /// <param name="y">The place.</param>
    /// <param name="regressors">Its further regressors.</param>
    public Result At(IReadOnlyList<(double X, double Y)> places, VariogramModel model, double x, double y, params double[] regressors) =>
        At(model.Nugget + model.Sill, [.. places.Select(p => model.Covariance(Distance(p, (x, y))))], [1, .. regressors]);

    /// <summary>Prediction and variance of each measurement from all the others, in closed form from one inverse.</summary>
    public IReadOnlyList<(double Value, double Variance)> LeaveOneOut()
    {
        var all = new (double, double)[values.Length];
        for (var i = 0; i < values.Length; i++)
        {
            double pull = 0;
            for (var j = 0; j < values.Length; j++) pull += inverse[i, j] * values[j];
            all[i] = (values[i] - (pull / inverse[i, i]), 1 / inverse[i, i]);
        }
        return all;
    }

    /// <summary>Coefficient of a regressor by generalised least squares, and its variance; of the first one, the mean.</summary>
    /// <param name="regressor">Which, from 0.</param>
    public (double Value, double Variance) Coefficient(int regressor)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(regressor, drift);
        var row = values.Length + regressor;
        double value = 0;
        for (var j = 0; j < values.Length; j++) value += inverse[row, j] * values[j];
        return (value, -inverse[row, row]);
    }

    internal static double Distance((double X, double Y) a, (double X, double Y) b) => Math.Sqrt(((a.X - b.X) * (a.X - b.X)) + ((a.Y - b.Y) * (a.Y - b.Y)));

    /// <summary>Gauss and Jordan with the largest pivot of the column.</summary>
    static double[,] Inverse(double[,] a)
    {
        var n = a.GetLength(0);
        var b = new double[n, n];
        for (var i = 0; i < n; i++) b[i, i] = 1;
        for (var c = 0; c < n; c++)
        {
            var p = c;
            for (var r = c + 1; r < n; r++) if (Math.Abs(a[r, c]) > Math.Abs(a[p, c])) p = r;
            if (Math.Abs(a[p, c]) < 1e-13) throw new ArithmeticException("the kriging system has no single answer: equal places without a nugget, or regressors that depend on each other");
            for (var j = 0; j < n; j++) ((a[c, j], a[p, j]), (b[c, j], b[p, j])) = ((a[p, j], a[c, j]), (b[p, j], b[c, j]));
            var pivot = a[c, c];
            for (var j = 0; j < n; j++) (a[c, j], b[c, j]) = (a[c, j] / pivot, b[c, j] / pivot);
            for (var r = 0; r < n; r++)
            {
                var f = a[r, c];
                if (r == c || f == 0) continue;
                for (var j = 0; j < n; j++) (a[r, j], b[r, j]) = (a[r, j] - (f * a[c, j]), b[r, j] - (f * b[c, j]));
            }
        }
        return b;
    }
}
