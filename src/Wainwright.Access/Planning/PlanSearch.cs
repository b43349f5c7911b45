using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Finds the cheapest set of items that contains the targets and can be done one after another, and proves it.</summary>
/// <remarks>
/// Implicit hitting set: a covering problem over the cuts known so far gives a choice and a lower bound; if the choice cannot
/// be done, at least one new cut says why. Ends because there are finitely many cuts. Parking a thing inside the van and
/// carrying on is not among the plans.
/// Method after R. M. Karp and E. Moreno-Centeno, implicit hitting set problems (2010); cuts for circular waiting and their
/// shrinking are worked out in docs/access.md.
/// </remarks>
internal sealed partial class PlanSearch
{
    private const int CutsPerGroup = 3;
    private const int ShortWall = 8;

    private readonly Puzzle puzzle;
    private readonly SearchBudget budget;
    private readonly CancellationToken stop;
    private readonly Learned learned;
    private readonly ItemSet targets;
    private readonly ItemSet allowed;
    private readonly ItemSet never;
    private readonly List<Cut> cuts = [];
    private readonly HashSet<Cut> known = [];
    private readonly int askedBefore;
    private int masterSolves;

    public PlanSearch(Puzzle puzzle, Learned learned, IEnumerable<int> targets, ItemSet? forbidden, SearchBudget budget, CancellationToken stop)
    {
        (this.puzzle, this.learned, this.budget, this.stop) = (puzzle, learned, budget, stop);
        askedBefore = learned.Questions;
        this.targets = ItemSet.Of(puzzle.Count, targets);
        (allowed, never) = (ItemSet.All(puzzle.Count), new(puzzle.Count));
        if (forbidden is not null) allowed.RemoveAll(forbidden);
    }

    private int Asked => learned.Questions - askedBefore;

    private bool IsSpent => stop.IsCancellationRequested || Asked > budget.Questions || masterSolves >= budget.MasterSolves;

    public Outcome Run()
    {
        var all = new Closure(learned, puzzle.Count);
        if (!all.Reaches(targets, allowed)) return NotReachable(all);

        var best = Reduced(Separated(targets));
        AddNecessities(best);
        foreach (var item in all.Done)
            foreach (var need in puzzle.Needs[item]) Learn(new(item, ItemSet.Of(puzzle.Count, need)));

        var master = new Master(puzzle, allowed, targets);
        var (told, bound) = (0, Cost(targets));
        while (!IsSpent)
        {
            for (; told < cuts.Count; told++) master.Add(cuts[told]);
            masterSolves++;
            var (chosen, lowerBound, isOptimal) = master.Solve(best, stop);
            bound = Math.Max(bound, lowerBound);
            if (bound >= Cost(best) || !isOptimal) break;
            var candidate = Reduced(Separated(chosen));
            if (Cost(candidate) < Cost(best)) best = candidate;
            if (bound >= Cost(best)) break;
        }
        return new Solved
        {
            Order = InOrder(best),
            Cost = Cost(best),
            LowerBound = Math.Min(bound, Cost(best)),
            Proof = new([.. targets], allowed, bound, [.. cuts.Take(told)]),
            Questions = Asked,
            MasterSolves = masterSolves,
        };
    }

    private long Cost(ItemSet items) => items.Sum(i => puzzle.Costs[i]);

    /// <summary>What of a choice is done until the targets are; nothing when they cannot be.</summary>
    private ItemSet? DoneWith(ItemSet choice)
    {
        var closure = new Closure(learned, puzzle.Count);
        return closure.Reaches(targets, choice) ? closure.Done : null;
    }

    /// <summary>Leaves out what is not needed, dearest first, and what nothing waits for without it.</summary>
    private ItemSet Reduced(ItemSet plan)
    {
        var kept = DoneWith(plan)!;
        foreach (var item in kept.OrderByDescending(i => puzzle.Costs[i]).ThenBy(i => i).ToList())
            if (!targets.Has(item) && kept.Has(item) && DoneWith(kept.Without(item)) is { } without) kept = without;
        return kept;
    }

    private List<int> InOrder(ItemSet plan)
    {
        var (order, done) = (new List<int>(), new ItemSet(puzzle.Count));
        while (order.Count < plan.Count)
        {
            // one at a time, so that the order is the doing and not the numbering
            var next = plan.First(i => !done.Has(i) && learned.WallOf(i, done) is null);
            done.Add(next);
            order.Add(next);
        }
        return order;
    }

    private Unreachable NotReachable(Closure all)
    {
        // what the search was told to leave in has no wall of its own
        var walls = all.Stuck.ToDictionary(i => i, all.Wall);
        foreach (var target in targets.Where(t => !allowed.Has(t))) walls[target] = new(puzzle.Count);
        return new() { Walls = walls, Questions = Asked, MasterSolves = 0 };
    }
}
