using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Wainwright.Bench;

/// <summary>What this machine's memory gives one processor at the moment, by the plain loop a = b + s c over arrays far longer than any cache.</summary>
static class Bandwidth
{
    const int Length = 1 << 24, Times = 7;

    /// <returns>Median, by the process's own time [GB/s]: three arrays of 8 bytes a number, what is fetched only to be overwritten not counted.</returns>
    public static double GBPerS()
    {
        double[] a = new double[Length], b = new double[Length], c = new double[Length];
        Array.Fill(a, 1);
        Array.Fill(b, 2);
        Array.Fill(c, 3);
        ref double to = ref MemoryMarshal.GetArrayDataReference(a), one = ref MemoryMarshal.GetArrayDataReference(b), other = ref MemoryMarshal.GetArrayDataReference(c);
        var seconds = new double[Times];
        for (var time = 0; time < Times; time++)
        {
            var factor = Vector256.Create(time + 0.5);
            var started = Environment.CpuUsage.TotalTime;
            for (nuint i = 0; i < Length; i += 4) (Vector256.LoadUnsafe(ref one, i) + (factor * Vector256.LoadUnsafe(ref other, i))).StoreUnsafe(ref to, i);
            seconds[time] = (Environment.CpuUsage.TotalTime - started).TotalSeconds;
        }
        if (a[Length / 2] != 2 + (3 * (Times - 0.5))) throw new InvalidOperationException("the loop was not run");
        Array.Sort(seconds);
        return 3.0 * 8 * Length / seconds[Times / 2] / 1e9;
    }
}
