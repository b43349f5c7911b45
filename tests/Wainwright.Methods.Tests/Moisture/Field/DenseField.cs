using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Methods.Tests.Moisture.Field;

/// <summary>The same field the slow way: full matrices, no ordering, no trick.</summary>
sealed class DenseField
{
    public DenseField(SurfaceNet net, double rangeMm, double spreadPoints)
    {
        var n = net.Cells.Count;
        var k = new double[n, n];
        for (var i = 0; i < n; i++) k[i, i] = 16 / (rangeMm * rangeMm) * net.Cells[i].AreaMm2;
        foreach (var l in net.Links)
        {
            k[l.A, l.A] += l.Conductance;
            k[l.B, l.B] += l.Conductance;
            k[l.A, l.B] -= l.Conductance;
            k[l.B, l.A] -= l.Conductance;
        }
        var inverse = Inverse(k);
        Covariance = Times(Times(inverse, inverse, net), inverse, net);
        var spread = Enumerable.Range(0, n).Select(i => Math.Sqrt(Covariance[i, i])).ToArray();
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++)
                Covariance[i, j] = spreadPoints * spreadPoints * Covariance[i, j] / (spread[i] * spread[j]);
    }

    /// <summary>a · areas · b.</summary>
    static double[,] Times(double[,] a, double[,] b, SurfaceNet net)
    {
        var n = a.GetLength(0);
        var c = new double[n, n];
        for (var i = 0; i < n; i++)
            for (var m = 0; m < n; m++)
            {
                var f = a[i, m] * net.Cells[m].AreaMm2;
                for (var j = 0; j < n; j++) c[i, j] += f * b[m, j];
            }
        return c;
    }

    /// <summary>Of the field before any reading.</summary>
    public double[,] Covariance { get; }

    /// <summary>Mean and variance of every cell after plain readings.</summary>
    public (double[] Mean, double[] Variance, double LogEvidence) After(double dry, IReadOnlyList<FieldObservation> seen)
    {
        var (n, m) = (Covariance.GetLength(0), seen.Count);
        var s = new double[m, m];
        for (var a = 0; a < m; a++)
            for (var b = 0; b < m; b++) s[a, b] = Covariance[seen[a].Cell, seen[b].Cell] + (a == b ? seen[a].SigmaPoints * seen[a].SigmaPoints : 0);
        var p = Inverse(s);
        var mean = new double[n];
        var variance = new double[n];
        for (var i = 0; i < n; i++)
        {
            (mean[i], variance[i]) = (dry, Covariance[i, i]);
            for (var a = 0; a < m; a++)
                for (var b = 0; b < m; b++)
                {
                    mean[i] += Covariance[i, seen[a].Cell] * p[a, b] * (seen[b].Percent - dry);
                    variance[i] -= Covariance[i, seen[a].Cell] * p[a, b] * Covariance[seen[b].Cell, i];
                }
        }
        var log = -0.5 * m * Math.Log(2 * Math.PI) - (0.5 * LogDeterminant(s));
        for (var a = 0; a < m; a++)
            for (var b = 0; b < m; b++) log -= 0.5 * (seen[a].Percent - dry) * p[a, b] * (seen[b].Percent - dry);
        return (mean, variance, log);
    }

    public static double[,] Inverse(double[,] of)
    {
        var n = of.GetLength(0);
        var a = (double[,])of.Clone();
        var b = new double[n, n];
        for (var i = 0; i < n; i++) b[i, i] = 1;
        for (var c = 0; c < n; c++)
        {
            var pivot = a[c, c];
            for (var j = 0; j < n; j++) (a[c, j], b[c, j]) = (a[c, j] / pivot, b[c, j] / pivot);
            for (var r = 0; r < n; r++)
            {
                if (r == c) continue;
                var f = a[r, c];
                for (var j = 0; j < n; j++) (a[r, j], b[r, j]) = (a[r, j] - (f * a[c, j]), b[r, j] - (f * b[c, j]));
            }
        }
        return b;
    }

    static double LogDeterminant(double[,] of)
    {
        var n = of.GetLength(0);
        var a = (double[,])of.Clone();
        double log = 0;
        for (var c = 0; c < n; c++)
        {
            log += Math.Log(a[c, c]);
            for (var r = c + 1; r < n; r++)
            {
                var f = a[r, c] / a[c, c];
                for (var j = c; j < n; j++) a[r, j] -= f * a[c, j];
            }
        }
        return log;
    }
}
