using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using System.Runtime.Intrinsics.X86;

namespace Wainwright.Methods.Moisture.Drying;

/// <summary>Columns through the thickness, solved exactly, four cells at a time: within one column each slice waits for the one before it.</summary>
sealed partial class LineSystem
{
    // by four of the cells chosen, then slice, then cell
    readonly double[] _pivot = new double[(cells + 3) * slices], _lower = new double[(cells + 3) * slices], _column = new double[4 * slices], _right = new double[4 * slices];

    /// <summary>Pivots of every column: the diagonal with what leaves along the sheet, less what the node above takes.</summary>
    void Factor()
    {
        Moves(8);
        ref double storage = ref MemoryMarshal.GetArrayDataReference(Storage), outward = ref MemoryMarshal.GetArrayDataReference(Outward), diagonal = ref MemoryMarshal.GetArrayDataReference(_diagonal);
        ref double sums = ref MemoryMarshal.GetArrayDataReference(_fixed), downs = ref MemoryMarshal.GetArrayDataReference(Down);
        ref double pivots = ref MemoryMarshal.GetArrayDataReference(_pivot), lowers = ref MemoryMarshal.GetArrayDataReference(_lower);
        foreach (var cell in Cells)
            for (nuint i = (nuint)(cell * slices), end = i + (nuint)slices; i < end; i += 4)
                (Vector256.LoadUnsafe(ref storage, i) + Vector256.LoadUnsafe(ref outward, i)).StoreUnsafe(ref diagonal, i);
        for (var four = 0; four < _cellCount; four += 4)
        {
            nuint a = First(four), b = First(four + 1), c = First(four + 2), d = First(four + 3), at = (nuint)(four * slices);
            Vector256<double> pivot = default, above = default;
            for (nuint k = 0; k < (nuint)slices; k += 4)
            {
                var (s0, s1, s2, s3) = Turned(ref storage, a + k, b + k, c + k, d + k);
                var (f0, f1, f2, f3) = Turned(ref sums, a + k, b + k, c + k, d + k);
                var (d0, d1, d2, d3) = Turned(ref downs, a + k, b + k, c + k, d + k);
                Next(s0 + f0, d0, ref lowers, ref pivots, at);
                Next(s1 + f1, d1, ref lowers, ref pivots, at + 4);
                Next(s2 + f2, d2, ref lowers, ref pivots, at + 8);
                Next(s3 + f3, d3, ref lowers, ref pivots, at + 12);
                at += 16;
            }

            void Next(Vector256<double> whole, Vector256<double> down, ref double lowers, ref double pivots, nuint at)
            {
                var lower = above * pivot; // 0 at the top, where nothing is above
                pivot = Vector256<double>.One / (whole - (above * lower));
                above = down;
                lower.StoreUnsafe(ref lowers, at);
                pivot.StoreUnsafe(ref pivots, at);
            }
        }
    }

    /// <summary>_z = columns solved for r, and the product of both.</summary>
    double Precondition(double[] r)
    {
        Moves(4);
        ref double rs = ref MemoryMarshal.GetArrayDataReference(r), zs = ref MemoryMarshal.GetArrayDataReference(_z);
        ref double pivots = ref MemoryMarshal.GetArrayDataReference(_pivot), lowers = ref MemoryMarshal.GetArrayDataReference(_lower);
        ref double column = ref MemoryMarshal.GetArrayDataReference(_column), right = ref MemoryMarshal.GetArrayDataReference(_right);
        var product = Vector256<double>.Zero;
        for (var four = 0; four < _cellCount; four += 4)
        {
            nuint a = First(four), b = First(four + 1), c = First(four + 2), d = First(four + 3), at = (nuint)(four * slices), end = 4 * (nuint)slices;
            var z = Vector256<double>.Zero;
            for (nuint k = 0; k < end; k += 16)
            {
                var (r0, r1, r2, r3) = Turned(ref rs, a + (k / 4), b + (k / 4), c + (k / 4), d + (k / 4));
                var z0 = r0 + (Vector256.LoadUnsafe(ref lowers, at + k) * z);
                var z1 = r1 + (Vector256.LoadUnsafe(ref lowers, at + k + 4) * z0);
                var z2 = r2 + (Vector256.LoadUnsafe(ref lowers, at + k + 8) * z1);
                z = r3 + (Vector256.LoadUnsafe(ref lowers, at + k + 12) * z2);
                Keep(ref right, k, r0, r1, r2, r3);
                Keep(ref column, k, z0, z1, z2, z);
            }
            z = Vector256<double>.Zero;
            var lower = Vector256<double>.Zero;
            var own = Vector256<double>.Zero;
            for (var k = end; k > 0;)
            {
                k -= 16;
                var z3 = Back(k + 12, ref column, ref right, ref pivots, ref lowers);
                var z2 = Back(k + 8, ref column, ref right, ref pivots, ref lowers);
                var z1 = Back(k + 4, ref column, ref right, ref pivots, ref lowers);
                var z0 = Back(k, ref column, ref right, ref pivots, ref lowers);
                var (za, zb, zc, zd) = Turned(z0, z1, z2, z3);
                za.StoreUnsafe(ref zs, a + (k / 4));
                zb.StoreUnsafe(ref zs, b + (k / 4));
                zc.StoreUnsafe(ref zs, c + (k / 4));
                zd.StoreUnsafe(ref zs, d + (k / 4));
            }
            product += four + 4 <= _cellCount ? own : Vector256.ConditionalSelect(Vector256.LessThan(Vector256.Create(0.0, 1, 2, 3), Vector256.Create((double)(_cellCount - four))), own, Vector256<double>.Zero);

            [MethodImpl(MethodImplOptions.AggressiveInlining)]
            Vector256<double> Back(nuint k, ref double column, ref double right, ref double pivots, ref double lowers)
            {
                z = (Vector256.LoadUnsafe(ref pivots, at + k) * Vector256.LoadUnsafe(ref column, k)) + (lower * z);
                lower = Vector256.LoadUnsafe(ref lowers, at + k);
                own += z * Vector256.LoadUnsafe(ref right, k);
                return z;
            }
        }
        return Vector256.Sum(product);
    }

    nuint First(int number) => (nuint)(_cells[number] * slices);

    static void Keep(ref double to, nuint at, Vector256<double> a, Vector256<double> b, Vector256<double> c, Vector256<double> d)
    {
        a.StoreUnsafe(ref to, at);
        b.StoreUnsafe(ref to, at + 4);
        c.StoreUnsafe(ref to, at + 8);
        d.StoreUnsafe(ref to, at + 12);
    }

    /// <summary>Four slices of four cells: slices across, cells along.</summary>
    static (Vector256<double>, Vector256<double>, Vector256<double>, Vector256<double>) Turned(ref double from, nuint a, nuint b, nuint c, nuint d) =>
        Turned(Vector256.LoadUnsafe(ref from, a), Vector256.LoadUnsafe(ref from, b), Vector256.LoadUnsafe(ref from, c), Vector256.LoadUnsafe(ref from, d));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static (Vector256<double>, Vector256<double>, Vector256<double>, Vector256<double>) Turned(Vector256<double> a, Vector256<double> b, Vector256<double> c, Vector256<double> d)
    {
        if (!Avx.IsSupported)
            return (Vector256.Create(a[0], b[0], c[0], d[0]), Vector256.Create(a[1], b[1], c[1], d[1]), Vector256.Create(a[2], b[2], c[2], d[2]), Vector256.Create(a[3], b[3], c[3], d[3]));
        Vector256<double> even = Avx.UnpackLow(a, b), odd = Avx.UnpackHigh(a, b), evenNext = Avx.UnpackLow(c, d), oddNext = Avx.UnpackHigh(c, d);
        return (Avx.Permute2x128(even, evenNext, 0x20), Avx.Permute2x128(odd, oddNext, 0x20), Avx.Permute2x128(even, evenNext, 0x31), Avx.Permute2x128(odd, oddNext, 0x31));
    }
}
