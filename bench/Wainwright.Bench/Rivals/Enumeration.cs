using Wainwright.Access;
using Wainwright.Geometry;

namespace Wainwright.Bench.Rivals;

/// <summary>Every set that can be done one item after another, cheapest first, until one holds the targets.</summary>
/// <remarks>Asks the room itself of each set; nothing that was answered for one set is used for another.</remarks>
static class Enumeration
{
    /// <summary>The price of the cheapest plan; nothing when there is none.</summary>
    public static long? Cheapest(Puzzle puzzle, IReadOnlyList<int> targets)
    {
        var queue = new PriorityQueue<ItemSet, long>();
        var seen = new HashSet<ItemSet>();
        var wanted = ItemSet.Of(puzzle.Count, targets);
        var nothing = new ItemSet(puzzle.Count);
        queue.Enqueue(nothing, 0);
        while (queue.TryDequeue(out var done, out var price))
        {
            if (!seen.Add(done)) continue;
            if (wanted.IsWithin(done)) return price;
            for (var item = 0; item < puzzle.Count; item++)
            {
                if (done.Has(item) || seen.Contains(done.With(item))) continue;
                if (puzzle.Needs[item].IsWithin(done) && puzzle.Ask(item, done, nothing) is Free) queue.Enqueue(done.With(item), price + puzzle.Costs[item]);
            }
        }
        return null;
    }
}
