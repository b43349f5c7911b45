using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>A puzzle whose question is asked once for each answer that settles many; for the check of a proof, apart from the search.</summary>
internal static class Remembered
{
    public static Puzzle Of(Puzzle puzzle)
    {
        var ways = puzzle.Costs.Select(_ => new List<ItemSet>()).ToArray();
        var walls = puzzle.Costs.Select(_ => new List<ItemSet>()).ToArray();
        return puzzle with
        {
            Ask = (item, done, stays) =>
            {
                if (ways[item].Find(w => w.IsWithin(done)) is { } way) return new Free(way);
                if (walls[item].Find(w => !w.Meets(done)) is { } wall) return new Held(wall);
                var reply = puzzle.Ask(item, done, stays);
                if (reply is Free free) ways[item].Add(free.Way);
                else walls[item].Add(((Held)reply).Wall);
                return reply;
            },
        };
    }
}
