using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Everything answered so far: a stored way or wall answers again without working it out.</summary>
internal sealed class Learned
{
    private const int MostStored = 400; // of each kind for each item

    private readonly Puzzle puzzle;
    private readonly List<ItemSet>[] ways;
    private readonly List<ItemSet>[] walls;

    public Learned(Puzzle puzzle)
    {
        this.puzzle = puzzle;
        ways = [.. puzzle.Costs.Select(_ => new List<ItemSet>())];
        walls = [.. puzzle.Costs.Select(_ => new List<ItemSet>())];
    }

    /// <summary>What was learned of the same items at other prices, or before some of them were done; what either learns serves both.</summary>
    public Learned(Puzzle puzzle, Learned shared, ItemSet given)
    {
        this.puzzle = puzzle;
        ways = [.. shared.ways.Select((known, item) => given.Has(item) ? [new ItemSet(puzzle.Count)] : known)];
        walls = [.. shared.walls.Select((known, item) => given.Has(item) ? [] : known)];
    }

    /// <summary>Everything stored about an item.</summary>
    public IEnumerable<Reply> Of(int item) => [.. ways[item].Select(w => new Free(w)), .. walls[item].Select(w => new Held(w))];

    /// <summary>Stores an answer that somebody knows to hold.</summary>
    public void Know(int item, Reply reply)
    {
        if (reply is Free free) Keep(ways[item], free.Way);
        else Keep(walls[item], ((Held)reply).Wall);
    }

    /// <summary>Answers that had to be worked out.</summary>
    public int Questions { get; private set; }

    /// <summary>How many walls are stored for an item.</summary>
    public int TimesHeld(int item) => walls[item].Count;

    /// <summary>The wall that holds an item when these are done, or nothing when it is free.</summary>
    public ItemSet? WallOf(int item, ItemSet done, ItemSet stays) => IsKnown(item, done, stays, out var wall) ? wall : Asked(item, done, stays);

    /// <summary>Whether a stored answer settles it, and if so the wall, or nothing when it is free.</summary>
    public bool IsKnown(int item, ItemSet done, ItemSet stays, out ItemSet? wall)
    {
        wall = null;
        if (!puzzle.Needs[item].IsWithin(done)) wall = Missing(puzzle.Needs[item].Without(done), stays);
        else if (Recalled(ways[item], way => way.IsWithin(done)) is null)
        {
            wall = Recalled(walls[item], w => w.IsWithin(stays) && !w.Meets(done)) ?? Recalled(walls[item], w => !w.Meets(done));
            return wall is not null;
        }
        return true;
    }

    /// <summary>Whether a stored way says that an item is free.</summary>
    public bool IsKnownFree(int item, ItemSet done) =>
        puzzle.Needs[item].IsWithin(done) && Recalled(ways[item], way => way.IsWithin(done)) is not null;

    private static ItemSet Missing(ItemSet needs, ItemSet stays)
    {
        var least = needs.First();
        foreach (var need in needs)
            if (stays.Has(need)) return ItemSet.Of(needs.Size, need);
        return ItemSet.Of(needs.Size, least);
    }

    private ItemSet? Asked(int item, ItemSet done, ItemSet stays)
    {
        Questions++;
        switch (puzzle.Ask(item, done, stays))
        {
            case Free free:
                Keep(ways[item], free.Way);
                return null;
            case Held held:
                Keep(walls[item], held.Wall);
                return held.Wall;
            default:
                throw new InvalidOperationException("An answer is free or held.");
        }
    }

    /// <summary>Stored in front; those that say less go.</summary>
    private static void Keep(List<ItemSet> stored, ItemSet set)
    {
        stored.RemoveAll(set.IsWithin);
        stored.Insert(0, set);
        // what has not answered for longest goes first: memory stays bounded, and it can be worked out again
        if (stored.Count > MostStored) stored.RemoveAt(MostStored);
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
