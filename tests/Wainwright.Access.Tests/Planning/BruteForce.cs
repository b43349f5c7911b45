using Wainwright.Geometry;

namespace Wainwright.Access.Tests.Planning;

/// <summary>The cheapest plan by trying every subset; the slow second opinion.</summary>
internal static class BruteForce
{
    public static long? Cheapest(Puzzle puzzle, IReadOnlyList<int> targets)
    {
        long? best = null;
        for (var bits = 0; bits < 1 << puzzle.Count; bits++)
        {
            if (targets.Any(t => (bits >> t & 1) == 0)) continue;
            var cost = Enumerable.Range(0, puzzle.Count).Where(i => (bits >> i & 1) != 0).Sum(i => puzzle.Costs[i]);
            if (cost < (best ?? long.MaxValue) && CanBeDone(puzzle, bits)) best = cost;
        }
        return best;
    }

    /// <summary>Every subset with the targets that can be done.</summary>
    public static IEnumerable<ItemSet> Feasible(Puzzle puzzle, IReadOnlyList<int> targets) => Enumerable.Range(0, 1 << puzzle.Count)
        .Where(bits => targets.All(t => (bits >> t & 1) != 0) && CanBeDone(puzzle, bits))
        .Select(bits => ItemSet.Of(puzzle.Count, Enumerable.Range(0, puzzle.Count).Where(i => (bits >> i & 1) != 0)));

    private static bool CanBeDone(Puzzle puzzle, int bits)
    {
        var done = new ItemSet(puzzle.Count);
        for (var more = true; more;)
        {
            more = false;
            for (var i = 0; i < puzzle.Count; i++)
            {
                if ((bits >> i & 1) == 0 || done.Has(i)) continue;
                if (!puzzle.Needs[i].IsWithin(done) || puzzle.Ask(i, done, new(puzzle.Count)) is not Free) continue;
                done.Add(i);
                more = true;
            }
        }
        return done.Count == System.Numerics.BitOperations.PopCount((uint)bits);
    }
}
