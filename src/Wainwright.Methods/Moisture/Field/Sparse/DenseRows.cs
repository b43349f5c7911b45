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
}
