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
public sealed partial class PlanSearch
{
    private const int CutsPerGroup = 3;
    private const int ShortWall = 8;

    private readonly Puzzle puzzle;
    private readonly SearchBudget budget;
    private readonly CancellationToken stop;
    private readonly Learned learned;
    private readonly ItemSet targets;
    private readonly List<Cut> cuts = [];
    private readonly HashSet<Cut> known = [];
    private ItemSet universe;
    private int masterSolves;

    private PlanSearch(Puzzle puzzle, IEnumerable<int> targets, ItemSet? forbidden, SearchBudget budget, CancellationToken stop)
    {
        (this.puzzle, this.budget, this.stop) = (puzzle, budget, stop);
        learned = new(puzzle);
        this.targets = ItemSet.Of(puzzle.Count, targets);
        universe = ItemSet.All(puzzle.Count);
        if (forbidden is not null) universe.RemoveAll(forbidden);
    }

    /// <summary>The cheapest plan, or the best one found with its lower bound, or the proof that there is none.</summary>
    /// <param name="puzzle">Items, prices and the question.</param>
    /// <param name="targets">What must be done.</param>
    /// <param name="forbidden">What must not be done.</param>
    /// <param name="budget">How much may be spent.</param>
    /// <param name="stop">Ends the search early with the best found so far.</param>
    public static Outcome Run(Puzzle puzzle, IEnumerable<int> targets, ItemSet? forbidden, SearchBudget budget, CancellationToken stop) =>
        new PlanSearch(puzzle, targets, forbidden, budget, stop).Run();

    private bool IsSpent => stop.IsCancellationRequested || learned.Questions > budget.Questions || masterSolves >= budget.MasterSolves;

    private Outcome Run()
    {
        var all = Close(universe);
        if (!targets.IsWithin(all.Done)) return NotReachable(all);
        universe = all.Done;

        Separate(targets, out var reached);
        var best = Reduced(reached);
        AddNecessities(best);

        var master = new Master(puzzle, universe, targets);
        foreach (var (item, needs) in puzzle.Needs.Index())
            if (universe.Has(item))
                foreach (var need in needs) Learn(new(item, ItemSet.Of(puzzle.Count, need)));
        var (told, bound) = (0, targets.Sum(t => puzzle.Costs[t]));
        while (!IsSpent)
        {
            for (; told < cuts.Count; told++) master.Add(cuts[told]);
            masterSolves++;
            var (chosen, lowerBound, isOptimal) = master.Solve(best, stop);
            bound = Math.Max(bound, lowerBound);
            if (bound >= Cost(best) || !isOptimal) break;
            Separate(chosen, out reached);
            var candidate = Reduced(reached);
            if (Cost(candidate) < Cost(best)) best = candidate;
            if (bound >= Cost(best)) break;
        }
        return new Solved
        {
            Order = InOrder(best),
            Cost = Cost(best),
            LowerBound = Math.Min(bound, Cost(best)),
            Proof = new([.. targets], universe, bound, [.. cuts.Take(told)]),
            Questions = learned.Questions,
            MasterSolves = masterSolves,
        };
    }

    private long Cost(ItemSet items) => items.Sum(i => puzzle.Costs[i]);

    private Closure Close(ItemSet allowed) => new Closure(learned, puzzle.Count).Grow(allowed);

    /// <summary>Leaves out what is not needed, dearest first, and what cannot be done without it.</summary>
    private ItemSet Reduced(ItemSet plan)
    {
        var kept = Close(plan).Done;
        foreach (var item in kept.OrderByDescending(i => puzzle.Costs[i]).ThenBy(i => i).ToList())
        {
            if (targets.Has(item) || !kept.Has(item)) continue;
            var without = Close(kept.Without(item)).Done;
            if (targets.IsWithin(without)) kept = without;
        }
        return kept;
    }

    private List<int> InOrder(ItemSet plan)
    {
        var order = new List<int>();
        var closure = new Closure(learned, puzzle.Count);
        while (order.Count < plan.Count)
        {
            // one at a time, so that the order is the doing and not the numbering
            var next = plan.First(i => !closure.Done.Has(i) && learned.WallOf(i, closure.Done) is null);
            closure.Done.Add(next);
            order.Add(next);
        }
        return order;
    }

    private Unreachable NotReachable(Closure all)
    {
        var walls = new Dictionary<int, ItemSet>();
        var open = new Stack<int>(targets.Where(t => !all.Done.Has(t)));
        while (open.TryPop(out var item))
        {
            // what the search was told to leave in has no wall of its own
            if (walls.ContainsKey(item) || !universe.Has(item)) continue;
            walls[item] = all.Wall(item);
            foreach (var next in walls[item]) open.Push(next);
        }
        foreach (var target in targets.Where(t => !universe.Has(t))) walls[target] = new(puzzle.Count);
        return new() { Doable = all.Done, Walls = walls, Questions = learned.Questions, MasterSolves = 0 };
    }
}
