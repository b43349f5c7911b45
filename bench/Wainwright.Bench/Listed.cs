using Wainwright.Access;
using Wainwright.Bench.Rivals;
using Wainwright.Geometry;

namespace Wainwright.Bench;

/// <summary>Puzzles whose ways are listed, where one model of everything is at its best: the planner beside it, alternating.</summary>
static class Listed
{
    private static readonly string[] Settings = ["num_workers:1,linearization_level:2", "num_workers:8"];

    /// <returns>1 when two that proved it differ in the price, 0 otherwise.</returns>
    public static int Run(int items, int seeds, double seconds)
    {
        var differ = 0;
        for (var seed = 1; seed <= seeds; seed++)
        {
            var (costs, ways) = Made(items, new Random(seed * 977 + items));
            var limit = FormattableString.Invariant($",max_time_in_seconds:{seconds}");
            Func<Result>[] contestants =
            [
                () => new Planner(Puzzle.OfWays(costs, ways)).Plan([0, 1], null, SearchBudget.Usual, CancellationToken.None) is Solved p ? new(p.Cost, p.IsProved, p.LowerBound) : new(null, true, 0),
                .. Settings.Select<string, Func<Result>>(s => () => Monolith.Run(costs, ways, [0, 1], s + limit)),
            ];
            var laps = contestants.Select(_ => new List<(Result Result, double CpuS)>()).ToList();
            for (var n = 0; n < 3; n++)
                foreach (var i in n % 2 == 0 ? Enumerable.Range(0, 3) : [2, 1, 0])
                {
                    var (result, spent) = Spent.On(contestants[i]);
                    laps[i].Add((result, spent.CpuS));
                }
            var middle = laps.Select(own => own.OrderBy(l => l.CpuS).ElementAt(1)).ToList();
            if (middle.Where(l => l.Result.IsProved).Select(l => l.Result.Price).Distinct().Count() > 1) differ++;
            Console.WriteLine($"| {items} items, seed {seed} | {string.Join(" | ", middle.Select(l => FormattableString.Invariant($"{l.CpuS:0.000}{(l.Result.IsProved ? "" : " (not proved)")}")))} | {middle[0].Result.Price} |");
        }
        return differ == 0 ? 0 : 1;
    }

    /// <summary>Items wait for one of one to three ways of one to three others each; one in eight is free.</summary>
    private static (IReadOnlyList<long> Costs, IReadOnlyList<IReadOnlyList<ItemSet>> Ways) Made(int items, Random random) =>
        ([.. Enumerable.Range(0, items).Select(_ => (long)random.Next(5, 61))], [.. Enumerable.Range(0, items).Select(i => i > 1 && random.Next(8) == 0
            ? (IReadOnlyList<ItemSet>)[new ItemSet(items)]
            : [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => ItemSet.Of(items, Enumerable.Range(0, random.Next(1, 4)).Select(_ => random.Next(items)).Where(q => q != i)))])]);
}
