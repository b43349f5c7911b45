using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Everything answered so far: a stored way or wall answers again without working it out.</summary>
internal sealed class Learned(Puzzle puzzle)
{
    private readonly List<ItemSet>[] ways = [.. puzzle.Costs.Select(_ => new List<ItemSet>())];
    private readonly List<ItemSet>[] walls = [.. puzzle.Costs.Select(_ => new List<ItemSet>())];

    /// <summary>Answers that had to be worked out.</summary>
    public int Questions { get; private set; }

    /// <summary>The walls stored for an item.</summary>
    public IReadOnlyList<ItemSet> Walls(int item) => walls[item];

    /// <summary>The wall that holds an item when these are done, or nothing when it is free.</summary>
    public ItemSet? WallOf(int item, ItemSet done)
    {
        if (!puzzle.Needs[item].IsWithin(done)) return ItemSet.Of(puzzle.Count, puzzle.Needs[item].Without(done).First());
        if (Recalled(ways[item], way => way.IsWithin(done)) is not null) return null;
        if (Recalled(walls[item], wall => !wall.Meets(done)) is { } known) return known;

        Questions++;
        switch (puzzle.Ask(item, done))
        {
            case Free free:
                ways[item].Insert(0, free.Way);
                return null;
            case Held held:
                walls[item].Insert(0, held.Wall);
                return held.Wall;
            default:
                throw new InvalidOperationException("An answer is free or held.");
        }
    }

    // what answered last is likely to answer next
    private static ItemSet? Recalled(List<ItemSet> stored, Predicate<ItemSet> fits)
    {
        var at = stored.FindIndex(fits);
        if (at < 0) return null;
        var found = stored[at];
        if (at > 0)
        {
            stored.RemoveAt(at);
            stored.Insert(0, found);
        }
        return found;
    }
}
