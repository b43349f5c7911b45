using Wainwright.Access;
using Wainwright.Geometry;

namespace Wainwright.Bench.Rivals;

/// <summary>Takes out what is easiest of what can go until the targets are out, then puts back what was not needed, dearest first.</summary>
static class CarefulPerson
{
    public static long? Price(Puzzle puzzle, IReadOnlyList<int> targets)
    {
        var wanted = ItemSet.Of(puzzle.Count, targets);
        if (Done(puzzle, ItemSet.All(puzzle.Count), wanted) is not { } kept) return null;
        foreach (var item in kept.OrderByDescending(i => puzzle.Costs[i]).ThenBy(i => i).ToList())
            if (kept.Has(item) && !wanted.Has(item) && Done(puzzle, kept.Without(item), wanted) is { } without) kept = without;
        return kept.Sum(i => puzzle.Costs[i]);
    }

    /// <summary>What is done out of those allowed, cheapest first, until the wanted ones are; nothing when they cannot be.</summary>
    private static ItemSet? Done(Puzzle puzzle, ItemSet allowed, ItemSet wanted)
    {
        var (done, nothing) = (new ItemSet(puzzle.Count), new ItemSet(puzzle.Count));
        var order = allowed.OrderBy(i => wanted.Has(i) ? -1 : puzzle.Costs[i]).ThenBy(i => i).ToList();
        while (!wanted.IsWithin(done))
        {
            var next = order.FindIndex(i => !done.Has(i) && puzzle.Needs[i].IsWithin(done) && puzzle.Ask(i, done, nothing) is Free);
            if (next < 0) return null;
            done.Add(order[next]);
        }
        return done;
    }
}
