using System.Diagnostics;

namespace Wainwright.Bench;

/// <summary>What a piece of work took.</summary>
/// <param name="WallS">Time on the clock [s].</param>
/// <param name="CpuS">Time of all this process's processors [s]: the better figure while others use the machine.</param>
readonly record struct Spent(double WallS, double CpuS)
{
    public static (T Result, Spent Spent) On<T>(Func<T> work)
    {
        var (cpu, started) = (Environment.CpuUsage.TotalTime, Stopwatch.GetTimestamp());
        var result = work();
        var wallS = Stopwatch.GetElapsedTime(started).TotalSeconds;
        return (result, new(wallS, (Environment.CpuUsage.TotalTime - cpu).TotalSeconds));
    }
}
