using Wainwright.Access;
using Wainwright.Bench.Rivals;
using Wainwright.Bench.Vans;
using Wainwright.Geometry;

namespace Wainwright.Bench;

/// <summary>Small puzzles, abstract and of room, against enumeration; every proof is checked on a puzzle made afresh.</summary>
static class Checking
{
    /// <returns>1 when anything differs, 0 otherwise.</returns>
    public static int Run(int count)
    {
        var (random, faults, solved, unreachable) = (new Random(20260601), 0, 0, 0);
        for (var n = 0; n < count; n++)
        {
            // three of ten are of room
            var (afresh, targets, name) = n % 10 < 3 ? OfRoom(random, n) : Abstract(random, n);
            var outcome = new Planner(afresh()).Plan(targets, null, SearchBudget.Usual, CancellationToken.None);
            var best = Enumeration.Cheapest(afresh(), targets);
            if (best is null) unreachable++;
            else solved++;
            var wrong = outcome switch
            {
                Solved plan when plan.Cost != best || !plan.IsProved => FormattableString.Invariant($"price {plan.Cost} bound {plan.LowerBound}, enumeration {best}"),
                Solved plan => CertificateCheck.Faults(afresh(), ItemSet.All(afresh().Count), plan) is [var first, ..] ? first : null,
                _ => best is null ? null : FormattableString.Invariant($"called unreachable, enumeration {best}"),
            };
            if (wrong is null) continue;
            faults++;
            Console.WriteLine($"{name}: {wrong}");
        }
        Console.WriteLine(FormattableString.Invariant($"{count} puzzles, {solved} solved, {unreachable} unreachable, {faults} differences"));
        return faults == 0 ? 0 : 1;
    }

    private static (Func<Puzzle>, IReadOnlyList<int>, string) OfRoom(Random random, int n)
    {
        var family = (Family)random.Next(3);
        var van = BoxVan.Make(family, random.Next(4, 11), 100_000 + n);
        return (() => new VanPuzzle(van).Puzzle, van.Targets, van.Name);
    }

    private static (Func<Puzzle>, IReadOnlyList<int>, string) Abstract(Random random, int n)
    {
        var count = random.Next(4, 11);
        var ways = Enumerable.Range(0, count).Select(item => (IReadOnlyList<ItemSet>)[.. Enumerable.Range(0, random.Next(1, 4)).Select(_ =>
            ItemSet.Of(count, Enumerable.Range(0, random.Next(item < 2 ? 1 : 0, 4)).Select(_ => random.Next(count)).Where(q => q != item)))]).ToList();
        var costs = ways.Select(_ => (long)random.Next(0, 20)).ToList();
        return (() => Puzzle.OfWays(costs, ways), random.Next(3) == 0 ? [0, 1] : [0], FormattableString.Invariant($"abstract {n}"));
    }
}
