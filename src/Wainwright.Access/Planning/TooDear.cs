using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>
/// What cannot be part of a cheaper plan: with all that it and the targets need in every plan it costs as much already.
/// </summary>
internal sealed class TooDear
{
    private readonly Puzzle puzzle;
    private readonly ItemSet?[] withNeeds;
    private readonly ItemSet own;

    public TooDear(Puzzle puzzle, IEnumerable<int> targets)
    {
        this.puzzle = puzzle;
        withNeeds = new ItemSet?[puzzle.Count];
        own = new(puzzle.Count);
        foreach (var target in targets) Own(target);
    }

    /// <summary>From now on the item counts as needed by the targets.</summary>
    public void Own(int item) => own.AddAll(WithNeeds(item));

    /// <summary>Whether the item is needed by the targets as far as is known.</summary>
    public bool IsOwn(int item) => own.Has(item);

    /// <summary>The price that a cheaper plan stays below.</summary>
    public long Limit { get; set; } = long.MaxValue;

    /// <summary>Whether no cheaper plan has the item.</summary>
    public bool Alone(int item)
    {
        var together = own.Copy();
        together.AddAll(WithNeeds(item));
        return Cost(together) >= Limit;
    }

    /// <summary>Those of some items that can be in one cheaper plan with an item.</summary>
    public ItemSet Beside(int item, ItemSet some)
    {
        var first = own.Copy();
        first.AddAll(WithNeeds(item));
        var left = Limit - Cost(first);
        return ItemSet.Of(puzzle.Count, some.Where(i => CostBeside(first, WithNeeds(i)) < left));
    }

    /// <summary>An item and all it needs in every plan.</summary>
    public ItemSet WithNeeds(int item)
    {
        if (withNeeds[item] is { } known) return known;
        var all = ItemSet.Of(puzzle.Count, item);
        var open = new Stack<int>([item]);
        while (open.TryPop(out var next))
            foreach (var need in puzzle.Needs[next])
            {
                if (all.Has(need)) continue;
                all.Add(need);
                open.Push(need);
            }
        return withNeeds[item] = all;
    }

    private long CostBeside(ItemSet first, ItemSet items)
    {
        var sum = 0L;
        foreach (var item in items)
            if (!first.Has(item)) sum += puzzle.Costs[item];
        return sum;
    }

    private long Cost(ItemSet items)
    {
        var sum = 0L;
        foreach (var item in items) sum += puzzle.Costs[item];
        return sum;
    }
}
