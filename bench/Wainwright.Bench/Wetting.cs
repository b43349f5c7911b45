using Wainwright.Fitout;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Bench;

/// <summary>How the demo camper got wet, worked out from its readings as found, and how it dries.</summary>
static class Wetting
{
    /// <param name="edgeMm">Edge of a piece [mm].</param>
    /// <param name="members">Courses for each wet patch.</param>
    public static int Run(double edgeMm, int members)
    {
        var camper = JobFile.Read(File.ReadAllBytes(Demo.File("touring-camper.wain.json"))).Job!;
        var (map, mapped) = Spent.On(() => DampMapping.Of(camper, new DateOnly(2026, 3, 2), cellMm: edgeMm)!);
        Console.WriteLine(FormattableString.Invariant($"map: {map.Net.Cells.Count} pieces of {edgeMm} mm, {mapped.CpuS:0.0} s cpu, {mapped.WallS:0.0} s by the clock"));
        var (history, spent) = Spent.On(() => Histories.Of(map, members));
        Console.WriteLine(FormattableString.Invariant(
            $"history: {members} courses for each of its wet patches, {spent.CpuS:0} s cpu on {Environment.ProcessorCount} processors, {spent.WallS:0} s by the clock, promised 120 s: {(spent.WallS <= 120 ? "kept" : "NOT KEPT")}; {history.Effective:0.0} count"));
        foreach (var care in Enum.GetValues<DryingCare>())
        {
            var (forecast, dried) = Spent.On(() => Forecasting.Of(map, care, 90));
            Console.WriteLine(FormattableString.Invariant($"forecast {care}, 90 days, nine courses: {dried.CpuS:0.0} s cpu, {dried.WallS:0.0} s by the clock; {forecast.Sheets.Count(s => double.IsFinite(s.Days.Likely))} of {forecast.Sheets.Count} boards likely dry"));
        }
        return 0;
    }
}
