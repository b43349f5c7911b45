using System.Numerics;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>The lower root of a small positive matrix, and sums with it.</summary>
internal static class Cholesky
{
    /// <summary>The root; a pivot that rounding has made too small is lifted to a millionth of its own place.</summary>
    public static double[,] Of(double[,] a)
    {
        var n = a.GetLength(0);
        var l = new double[n, n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j <= i; j++)
            {
                var sum = a[i, j];
                for (var k = 0; k < j; k++) sum -= l[i, k] * l[j, k];
                l[i, j] = i == j ? Math.Sqrt(Math.Max(sum, 1e-6 * a[j, j])) : sum / l[j, j];
            }
        return l;
    }

    /// <summary>Sum of products of the first so many.</summary>
    public static double Dot(double[] a, double[] b, int count)
    {
        var sum = Vector<double>.Zero;
        var i = 0;
        for (; i <= count - Vector<double>.Count; i += Vector<double>.Count) sum += new Vector<double>(a, i) * new Vector<double>(b, i);
        var all = Vector.Sum(sum);
        for (; i < count; i++) all += a[i] * b[i];
        return all;
    }

    /// <summary>Solves root · x = b; b is overwritten.</summary>
    public static double[] Forward(double[,] l, double[] b)
    {
        for (var i = 0; i < b.Length; i++)
        {
            var sum = b[i];
            for (var k = 0; k < i; k++) sum -= l[i, k] * b[k];
            b[i] = sum / l[i, i];
        }
        return b;
    }

    /// <summary>Solves transposed root · x = b; b is overwritten.</summary>
    public static double[] Back(double[,] l, double[] b)
    {
        for (var i = b.Length - 1; i >= 0; i--)
        {
            var sum = b[i];
            for (var k = i + 1; k < b.Length; k++) sum -= l[k, i] * b[k];
            b[i] = sum / l[i, i];
        }
        return b;
    }
}
