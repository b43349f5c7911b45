using Wainwright.Access;
using Wainwright.Bench.Vans;

namespace Wainwright.Bench;

/// <summary>How time and memory grow with the number of parts: medians over seeds, and the power of the number they follow.</summary>
static class Growth
{
    private const double MostCpuS = 20; // a van that takes longer counts with that
    private static readonly int[] Sizes = [20, 50, 100, 200, 300];

    public static int Run(int seeds)
    {
        foreach (var family in Enum.GetValues<Family>()) Once(family, 50, 1);
        foreach (var family in Enum.GetValues<Family>())
        {
            var points = new List<(double Parts, double Cpu)>();
            foreach (var parts in Sizes)
            {
                var runs = Enumerable.Range(1, seeds).Select(seed => Once(family, parts, seed)).ToList();
                var (cpu, tests) = (runs.Select(r => r.CpuS).Order().ToList(), runs.Select(r => r.Tests).Order().ToList());
                // where the median itself was cut short the power would be of the limit
                if (runs.Count(r => r.IsProved) > seeds / 2) points.Add((parts, Math.Max(0.001, cpu[seeds / 2])));
                Console.WriteLine(FormattableString.Invariant(
                    $"| {family.ToString().ToLowerInvariant()} | {parts} | {runs.Count(r => r.IsProved)} of {seeds} | {cpu[seeds / 2]:0.000} | {cpu[^1]:0.000} | {tests[seeds / 2]} | {runs.Max(r => r.Mb):0} |"));
            }
            Console.WriteLine(FormattableString.Invariant($"{family}: cpu grows with the power {Power(points):0.0} of the number of parts, 20 to {points[^1].Parts}"));
        }
        return 0;
    }

    private static (double CpuS, int Tests, bool IsProved, double Mb) Once(Family family, int parts, int seed)
    {
        var van = BoxVan.Make(family, parts, seed);
        var puzzle = new VanPuzzle(van);
        var planner = new Planner(puzzle.Puzzle);
        using var allowance = new Allowance(MostCpuS);
        var (outcome, spent) = Spent.On(() => planner.Plan(van.Targets, null, SearchBudget.Usual, allowance.Over));
        var mb = GC.GetTotalMemory(forceFullCollection: true) / 1e6;
        GC.KeepAlive(planner);
        return (spent.CpuS, puzzle.Tests, outcome is Unreachable or Solved { IsProved: true }, mb);
    }

    /// <summary>Least squares through the logarithms.</summary>
    private static double Power(List<(double Parts, double Cpu)> points)
    {
        var (x, y) = (points.Average(p => Math.Log(p.Parts)), points.Average(p => Math.Log(p.Cpu)));
        return points.Sum(p => (Math.Log(p.Parts) - x) * (Math.Log(p.Cpu) - y)) / points.Sum(p => Math.Pow(Math.Log(p.Parts) - x, 2));
    }
}
