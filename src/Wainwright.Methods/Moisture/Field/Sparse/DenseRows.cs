using System.Numerics;
using System.Runtime.InteropServices;

namespace Wainwright.Methods.Moisture.Field.Sparse;

/// <summary>Dense blocks by rows: products of rows, several numbers at a time.</summary>
static class DenseRows
{
    /// <summary>Σ aᵢ·bᵢ over two rows of one length.</summary>
    public static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var wide = Vector<double>.Count;
        Vector<double> s0 = Vector<double>.Zero, s1 = Vector<double>.Zero;
        var i = 0;
        for (; i <= a.Length - (2 * wide); i += 2 * wide)
        {
            s0 += new Vector<double>(a[i..]) * new Vector<double>(b[i..]);
            s1 += new Vector<double>(a[(i + wide)..]) * new Vector<double>(b[(i + wide)..]);
        }
        var sum = Vector.Sum(s0 + s1);
        for (; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }

    /// <summary>Four dots of one row against four rows that follow each other at a stride.</summary>
    public static (double, double, double, double) FourDots(ReadOnlySpan<double> a, ReadOnlySpan<double> b, int stride)
    {
        var wide = Vector<double>.Count;
        ref var pa = ref MemoryMarshal.GetReference(a);
        ref var pb = ref MemoryMarshal.GetReference(b);
        Vector<double> s0 = default, s1 = default, s2 = default, s3 = default;
        var i = 0;
        for (; i <= a.Length - wide; i += wide)
        {
            var x = Vector.LoadUnsafe(ref pa, (nuint)i);
            s0 += x * Vector.LoadUnsafe(ref pb, (nuint)i);
            s1 += x * Vector.LoadUnsafe(ref pb, (nuint)(i + stride));
            s2 += x * Vector.LoadUnsafe(ref pb, (nuint)(i + (2 * stride)));
            s3 += x * Vector.LoadUnsafe(ref pb, (nuint)(i + (3 * stride)));
        }
        double t0 = Vector.Sum(s0), t1 = Vector.Sum(s1), t2 = Vector.Sum(s2), t3 = Vector.Sum(s3);
        for (; i < a.Length; i++)
        {
            t0 += a[i] * b[i];
            t1 += a[i] * b[i + stride];
            t2 += a[i] * b[i + (2 * stride)];
            t3 += a[i] * b[i + (3 * stride)];
        }
        return (t0, t1, t2, t3);
    }

    /// <summary>into += scale · a, as long as into is.</summary>
    public static void Add(Span<double> into, ReadOnlySpan<double> a, double scale)
    {
        var wide = Vector<double>.Count;
        var i = 0;
        for (; i <= into.Length - wide; i += wide) (new Vector<double>(into[i..]) + (scale * new Vector<double>(a[i..]))).CopyTo(into[i..]);
        for (; i < into.Length; i++) into[i] += scale * a[i];
    }

    /// <summary>out[j] += scale · (row a · row j of b), for j below count.</summary>
    public static void AddProducts(Span<double> into, ReadOnlySpan<double> a, ReadOnlySpan<double> b, int stride, int count, double scale)
    {
        var j = 0;
        for (; j <= count - 4; j += 4)
        {
            var (t0, t1, t2, t3) = FourDots(a, b[(j * stride)..], stride);
            into[j] += scale * t0;
            into[j + 1] += scale * t1;
            into[j + 2] += scale * t2;
            into[j + 3] += scale * t3;
        }
        for (; j < count; j++) into[j] += scale * Dot(a, b.Slice(j * stride, a.Length));
    }

    /// <summary>Cholesky factor of a positive definite matrix kept by rows, its lower half turned in place.</summary>
    /// <exception cref="ArithmeticException">A pivot is not above 0.</exception>
    public static void Factor(double[] matrix, int size)
    {
        for (var from = 0; from < size; from += 4)
        {
            var four = Math.Min(4, size - from);
            if (four == 4)
                for (var j = 0; j < from; j++)
                {
                    var (t0, t1, t2, t3) = FourDots(matrix.AsSpan(j * size, j), matrix.AsSpan(from * size), size);
                    var (at, by) = ((from * size) + j, 1 / matrix[(j * size) + j]);
                    matrix[at] = (matrix[at] - t0) * by;
                    matrix[at + size] = (matrix[at + size] - t1) * by;
                    matrix[at + (2 * size)] = (matrix[at + (2 * size)] - t2) * by;
                    matrix[at + (3 * size)] = (matrix[at + (3 * size)] - t3) * by;
                }
            for (var i = from; i < from + four; i++)
            {
                var row = matrix.AsSpan(i * size, size);
                for (var j = four == 4 ? from : 0; j < i; j++) row[j] = (row[j] - Dot(row[..j], matrix.AsSpan(j * size, j))) / matrix[(j * size) + j];
                var pivot = row[i] - Dot(row[..i], row[..i]);
                if (!(pivot > 0)) throw new ArithmeticException("the matrix is not positive definite");
                row[i] = Math.Sqrt(pivot);
            }
        }
    }

    /// <summary>Solution of L x = b in place.</summary>
    public static void Forward(double[] factor, int size, Span<double> x)
    {
        for (var i = 0; i < size; i++) x[i] = (x[i] - Dot(factor.AsSpan(i * size, i), x[..i])) / factor[(i * size) + i];
    }

    /// <summary>Solution of Lᵀ x = b in place.</summary>
    public static void Backward(double[] factor, int size, Span<double> x)
    {
        for (var i = size - 1; i >= 0; i--)
        {
            x[i] /= factor[(i * size) + i];
            Add(x[..i], factor.AsSpan(i * size, i), -x[i]);
        }
    }

    /// <summary>Diagonal of the inverse of L·Lᵀ.</summary>
    public static double[] InverseDiagonal(double[] factor, int size)
    {
        var diagonal = new double[size];
        // columns of L⁻¹, four at a time, each kept as a row
        var four = new double[4 * size];
        for (var c = 0; c < size; c += 4)
        {
            Array.Clear(four);
            var wide = Math.Min(4, size - c);
            for (var k = 0; k < wide; k++) four[(k * size) + c + k] = 1;
            for (var i = c; i < size; i++)
            {
                var (t0, t1, t2, t3) = FourDots(factor.AsSpan((i * size) + c, i - c), four.AsSpan(c), size);
                var by = 1 / factor[(i * size) + i];
                four[i] = (four[i] - t0) * by;
                four[size + i] = (four[size + i] - t1) * by;
                four[(2 * size) + i] = (four[(2 * size) + i] - t2) * by;
                four[(3 * size) + i] = (four[(3 * size) + i] - t3) * by;
            }
            for (var k = 0; k < wide; k++) diagonal[c + k] = Dot(four.AsSpan((k * size) + c, size - c), four.AsSpan((k * size) + c, size - c));
        }
        return diagonal;
    }
}
