using System.Diagnostics;
using System.Globalization;

namespace Wainwright.Bench;

/// <summary>Runs something several times and prints the median beside the fastest and the slowest.</summary>
static class Median
{
    /// <param name="what">What is measured, as a person says it.</param>
    /// <param name="times">How often; the first runs, before the code is compiled, are not counted.</param>
    /// <param name="run">The thing; its result is summed so that nothing is optimised away.</param>
    /// <param name="limitMs">What it should take at most [ms]; absent where nothing was promised.</param>
    public static void Of(string what, int times, Func<int> run, double? limitMs = null)
    {
        var sum = 0;
        for (var i = 0; i < Math.Max(1, times / 5); i++) sum += run();
        var ms = new double[times];
        for (var i = 0; i < times; i++)
        {
            var started = Stopwatch.GetTimestamp();
            sum += run();
            ms[i] = Stopwatch.GetElapsedTime(started).TotalMilliseconds;
        }
        Array.Sort(ms);
        var promise = limitMs is { } limit ? string.Create(CultureInfo.InvariantCulture, $"   promised {limit:0} ms: {(ms[times / 2] <= limit ? "kept" : "NOT KEPT")}") : "";
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-52} {ms[times / 2],9:0.0} ms   ({ms[0]:0.0} to {ms[^1]:0.0}, {times} runs, sum {sum}){promise}"));
    }
}
