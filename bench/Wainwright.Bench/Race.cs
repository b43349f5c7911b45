using Wainwright.Access;
using Wainwright.Bench.Rivals;
using Wainwright.Bench.Vans;

namespace Wainwright.Bench;

/// <summary>The planner beside its rivals on the same vans, in one run, in alternating order, each in a fresh room every time.</summary>
static class Race
{
    private const int Repetitions = 3;
    private const string OneWorker = "num_workers:1,linearization_level:2", EightWorkers = "num_workers:8";

    private sealed record Contestant(string Name, Func<VanPuzzle, BoxVan, Result> Run);

    private readonly record struct Lap(Result Result, Spent Spent, int Tests);

    /// <param name="families">Which vans.</param>
    /// <param name="parts">How large.</param>
    /// <param name="seeds">How many of each.</param>
    /// <param name="seconds">When a rival gives up [s of processor time].</param>
    /// <returns>1 when two that proved it differ in the price, 0 otherwise.</returns>
    public static int Run(IReadOnlyList<Family> families, int parts, int seeds, double seconds)
    {
        Contestant[] all =
        [
            new("planner", (p, v) => Planned(p, v)),
            new("lazy, 1 worker", (p, v) => new LazyMonolith(p.Puzzle, v.Targets).Run(OneWorker, seconds)),
            new("lazy, 8 workers", (p, v) => new LazyMonolith(p.Puzzle, v.Targets).Run(EightWorkers, seconds)),
            new("careful person", (p, v) => new(CarefulPerson.Price(p.Puzzle, v.Targets), false, 0)),
            .. parts <= 12 ? [new Contestant("enumeration", (p, v) => Counted(Enumeration.Cheapest(p.Puzzle, v.Targets)))] : Array.Empty<Contestant>(),
        ];
        foreach (var family in families) Planned(new(BoxVan.Make(family, parts, 1)), BoxVan.Make(family, parts, 1)); // compiled before the clock runs
        var differ = 0;
        foreach (var family in families)
        {
            var table = all.ToDictionary(c => c.Name, _ => new List<Lap>());
            for (var seed = 1; seed <= seeds; seed++)
            {
                var van = BoxVan.Make(family, parts, seed);
                var laps = all.ToDictionary(c => c.Name, _ => new List<Lap>());
                for (var n = 0; n < Repetitions; n++)
                    foreach (var contestant in n % 2 == 0 ? all : all.Reverse())
                    {
                        // who ran out of time once does so again
                        if (laps[contestant.Name] is [{ Result: { IsProved: false } }, ..] && contestant.Name.StartsWith("lazy", StringComparison.Ordinal)) continue;
                        var puzzle = new VanPuzzle(van);
                        var (result, spent) = Spent.On(() => contestant.Run(puzzle, van));
                        laps[contestant.Name].Add(new(result, spent, puzzle.Tests));
                    }
                foreach (var (name, own) in laps) table[name].Add(own.OrderBy(l => l.Spent.CpuS).ElementAt(own.Count / 2));
                var proved = table.Values.Select(t => t[^1].Result).Where(r => r.IsProved).Select(r => r.Price).Distinct().ToList();
                if (proved.Count > 1) differ++;
            }
            Tell(family, parts, table);
        }
        Console.WriteLine(differ == 0 ? "no two that proved it differ in the price" : FormattableString.Invariant($"{differ} vans with different proved prices"));
        return differ == 0 ? 0 : 1;
    }

    private static void Tell(Family family, int parts, Dictionary<string, List<Lap>> table)
    {
        var planner = table["planner"];
        foreach (var (name, laps) in table)
        {
            // ratios van by van, where the planner came to a proof; a van on which the rival gave up counts with what it had spent by then
            var pairs = laps.Zip(planner).Where(p => p.Second.Result is { IsProved: true, Price: not null }).ToList();
            if (pairs.Count == 0) continue;
            var careful = name.StartsWith("careful", StringComparison.Ordinal);
            var over = Middle(pairs.Where(p => p.First.Result.Price is not null).Select(p => (double)p.First.Result.Price!.Value / p.Second.Result.Price!.Value));
            Console.WriteLine(FormattableString.Invariant(
                $"| {family.ToString().ToLowerInvariant()} {parts} | {name} | {laps.Count(l => l.Result.IsProved)} of {laps.Count} | {Middle(laps.Select(l => l.Spent.WallS)):0.000} | {Middle(laps.Select(l => l.Spent.CpuS)):0.000} | {Middle(laps.Select(l => (double)l.Tests)):0} | {Ratio(pairs, careful, l => Math.Max(1e-4, l.Spent.CpuS))} | {Ratio(pairs, careful, l => l.Tests)} | {over:0.00} |"));
        }
    }

    /// <summary>The middle of the ratios; marked as a least one when the van it comes from, or one below it, is one that the rival gave up.</summary>
    private static string Ratio(List<(Lap Rival, Lap Planner)> pairs, bool proves, Func<Lap, double> of)
    {
        var sorted = pairs.Select(p => (Ratio: of(p.Rival) / of(p.Planner), IsLeast: !proves && !p.Rival.Result.IsProved)).OrderBy(r => r.Ratio).ToList();
        var at = sorted.Count / 2;
        return FormattableString.Invariant($"{(sorted.Take(at + 1).Any(r => r.IsLeast) ? "at least " : "")}{sorted[at].Ratio:0.0}");
    }

    private static double Middle(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted.Count == 0 ? double.NaN : sorted[sorted.Count / 2];
    }

    private static Result Planned(VanPuzzle puzzle, BoxVan van) => new Planner(puzzle.Puzzle).Plan(van.Targets, null, SearchBudget.Usual, CancellationToken.None) switch
    {
        Solved plan => new(plan.Cost, plan.IsProved, plan.LowerBound),
        _ => new(null, true, 0),
    };

    private static Result Counted(long? price) => new(price, true, price ?? 0);
}
