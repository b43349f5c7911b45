using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Can this item be done when these are done already?</summary>
/// <param name="item">The item; all it needs is done.</param>
/// <param name="done">What is done.</param>
/// <param name="stays">What will not be done for now. A wall made of such things lasts longer: name them where there is a choice.</param>
public delegate Reply Question(int item, ItemSet done, ItemSet stays);

/// <summary>Items with prices, and the question whether an item can be done when others are done.</summary>
/// <param name="Costs">Price of each item, whole and not negative; the planner uses tenths of a second.</param>
/// <param name="Needs">For each item those that must be done before it in every plan.</param>
/// <param name="Ask">The question; must be monotone.</param>
public sealed record Puzzle(IReadOnlyList<long> Costs, IReadOnlyList<ItemSet> Needs, Question Ask)
{
    /// <summary>How many items there are.</summary>
    public int Count => Costs.Count;

    /// <summary>The same at other prices, and with some items done already: they cost nothing and wait for nothing.</summary>
    /// <param name="costs">Price of each item.</param>
    /// <param name="given">What is done already.</param>
    public Puzzle With(IReadOnlyList<long> costs, ItemSet given)
    {
        if (given.IsEmpty) return this with { Costs = costs };
        var nothing = new ItemSet(Count);
        return new(
            [.. costs.Select((cost, item) => given.Has(item) ? 0 : cost)],
            [.. Needs.Select((needs, item) => given.Has(item) ? nothing : needs)],
            (item, done, stays) => given.Has(item) ? new Free(nothing) : Ask(item, done, stays));
    }

    /// <summary>A puzzle whose items wait for one complete way out of a list each; an item with an empty way is free at once.</summary>
    /// <param name="costs">Price of each item.</param>
    /// <param name="ways">The ways of each item; an item without any can never be done.</param>
    public static Puzzle OfWays(IReadOnlyList<long> costs, IReadOnlyList<IReadOnlyList<ItemSet>> ways) =>
        new(costs, [.. costs.Select(_ => new ItemSet(costs.Count))], (item, done, _) =>
        {
            if (ways[item].FirstOrDefault(w => w.IsWithin(done)) is { } way) return new Free(way);
            // one missing item of every way is a wall
            return new Held(ItemSet.Of(costs.Count, ways[item].Select(w => w.Without(done).First())));
        });
}

/// <summary>How much may be spent on a search. Counts, not time: the same question then gives the same answer everywhere.</summary>
/// <param name="Questions">Answers that had to be worked out rather than recalled.</param>
/// <param name="MasterSolves">Covering problems solved.</param>
public sealed record SearchBudget(int Questions, int MasterSolves)
{
    /// <summary>Enough for a van of a hundred parts.</summary>
    public static SearchBudget Usual { get; } = new(200_000, 400);
}
