using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Plans for one puzzle after another target; what was learned for one plan serves the next.</summary>
public sealed class Planner
{
    private readonly Puzzle puzzle;
    private readonly Learned learned;

    /// <param name="puzzle">Items, prices and the question.</param>
    public Planner(Puzzle puzzle) : this(puzzle, new(puzzle))
    {
    }

    private Planner(Puzzle puzzle, Learned learned) => (this.puzzle, this.learned) = (puzzle, learned);

    /// <summary>Plans the same items at other prices, or with some done already; what one learns serves the other.</summary>
    /// <param name="costs">Price of each item.</param>
    /// <param name="given">What is done already.</param>
    public Planner With(IReadOnlyList<long> costs, ItemSet given)
    {
        var other = puzzle.With(costs, given);
        return new(other, new(other, learned, given));
    }

    /// <summary>Everything learned about an item.</summary>
    internal IEnumerable<Reply> Known(int item) => learned.Of(item);

    /// <summary>Tells the planner an answer that is known to hold.</summary>
    internal void Know(int item, Reply reply) => learned.Know(item, reply);

    /// <summary>The cheapest plan, or the best one found with its lower bound, or the proof that there is none.</summary>
    /// <param name="targets">What must be done.</param>
    /// <param name="forbidden">What must not be done.</param>
    /// <param name="budget">How much may be spent.</param>
    /// <param name="stop">Ends the search early with the best found so far.</param>
    /// <param name="hear">Told now and then how far the search has come; on the thread that searches.</param>
    public Outcome Plan(IEnumerable<int> targets, ItemSet? forbidden, SearchBudget budget, CancellationToken stop, Action<SearchState>? hear = null) =>
        Plan(targets, forbidden, budget, hear, null, stop);

    /// <summary>The same, begun with the plan and the proof of a question like it.</summary>
    internal Outcome Plan(IEnumerable<int> targets, ItemSet? forbidden, SearchBudget budget, Action<SearchState>? hear, Precedent? precedent, CancellationToken stop) =>
        new PlanSearch(puzzle, learned, targets, forbidden, budget, hear, precedent, stop).Run();

    /// <summary>What holds an item when these are done; nothing when it can be done.</summary>
    public ItemSet? WallOf(int item, ItemSet done) => learned.WallOf(item, done, new(puzzle.Count));

    /// <summary>Whether the targets can be done with those allowed.</summary>
    public bool CanReach(ItemSet targets, ItemSet allowed) => new Closure(learned, puzzle.Count).Reaches(targets, allowed);

    /// <summary>Everything that can be done out of those allowed.</summary>
    public ItemSet Doable(ItemSet allowed)
    {
        var closure = new Closure(learned, puzzle.Count);
        closure.Reaches(allowed, allowed);
        return closure.Done;
    }
}
