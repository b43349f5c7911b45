using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Finds the cheapest set of items that contains the targets and can be done one after another, and proves it.</summary>
/// <remarks>
/// Implicit hitting set: a covering problem over the cuts known so far gives a choice cheaper than the best plan; if it cannot
/// be done, at least one new cut says why. When there is no such choice any more, the best plan is the cheapest. Ends because
/// there are finitely many cuts. Parking a thing inside the van and
/// carrying on is not among the plans.
/// Method after R. M. Karp and E. Moreno-Centeno, implicit hitting set problems (2010); cuts for circular waiting and their
/// shrinking are worked out in docs/access.md.
/// </remarks>
internal sealed partial class PlanSearch
{
    private const int ShortWall = 8, ChoicesToASolve = 20;

    private readonly Puzzle puzzle;
    private readonly SearchBudget budget;
    private readonly CancellationToken stop;
    private readonly Learned learned;
    private readonly ItemSet targets;
    private readonly ItemSet allowed;
    private readonly ItemSet useful;
    private readonly ItemSet never;
    private readonly TooDear tooDear;
    private readonly List<Cut> cuts = [];
    private readonly List<int> necessary = [];
    private readonly HashSet<Cut> known = [];
    private readonly int askedBefore;
    private readonly Action<SearchState>? hear;
    private readonly Precedent? precedent;
    private SearchState said = new(null, 0, 0, 0);
    private int masterSolves, choices;

    public PlanSearch(Puzzle puzzle, Learned learned, IEnumerable<int> targets, ItemSet? forbidden, SearchBudget budget, Action<SearchState>? hear, Precedent? precedent, CancellationToken stop)
    {
        (this.puzzle, this.learned, this.budget, this.stop, this.hear, this.precedent) = (puzzle, learned, budget, stop, hear, precedent);
        askedBefore = learned.Questions;
        this.targets = ItemSet.Of(puzzle.Count, targets);
        (allowed, never) = (ItemSet.All(puzzle.Count), new(puzzle.Count));
        if (forbidden is not null) allowed.RemoveAll(forbidden);
        useful = allowed.Copy();
        tooDear = new(puzzle, this.targets);
    }

    private int Asked => learned.Questions - askedBefore;

    private bool IsSpent => stop.IsCancellationRequested || Asked > budget.Questions || masterSolves >= budget.MasterSolves || choices >= ChoicesToASolve * budget.MasterSolves;

    public Outcome Run()
    {
        var all = new Closure(learned, puzzle.Count);
        if (!all.Reaches(targets, allowed)) return NotReachable(all);

        var best = Better(null, AsBefore() ?? all.Done);
        Say(best, Cost(targets));
        FindNecessities(best);
        if (!Reuse(precedent?.Cuts ?? [])) best = Better(best, Separated(targets));
        Say(best, Cost(targets));
        FindNecessities(best);

        var master = new Master(puzzle, useful, targets);
        var quick = new QuickChoice(puzzle, targets);
        var (told, bound) = (0, Cost(targets));
        while (bound < Cost(best) && !IsSpent)
        {
            Tell();
            if (quick.Below(Cost(best), useful) is not { } choice)
            {
                masterSolves++;
                (var found, var lowerBound) = master.Below(Cost(best), stop);
                bound = Math.Max(bound, lowerBound);
                Say(best, Math.Min(bound, Cost(best)));
                if (found is null) break;
                quick.Remember(choice = found);
            }
            choices++;
            var better = Better(best, Separated(choice));
            if (!better.Equals(best)) FindNecessities(best = better);
            master.KeepTo(useful);
        }
        Tell();
        if (bound < Cost(best) && choices > 0) bound = Math.Max(bound, master.LowerBound(Cost(best)));
        return new Solved
        {
            Order = InOrder(best),
            Cost = Cost(best),
            LowerBound = Math.Min(bound, Cost(best)),
            Proof = new([.. targets], necessary, WithGivenUp(), Math.Min(bound, Cost(best)), [.. cuts]),
            Questions = Asked,
            MasterSolves = masterSolves,
        };

        void Tell()
        {
            for (; told < cuts.Count; told++)
            {
                master.Add(cuts[told]);
                quick.Add(cuts[told]);
            }
        }
    }

    /// <summary>The cheaper of the best plan and what a choice reduces to. From then on only what is cheaper still is looked for.</summary>
    private ItemSet Better(ItemSet? best, ItemSet? choice)
    {
        if (choice is null) return best!;
        var candidate = Reduced(choice);
        if (best is not null && Cost(candidate) >= Cost(best)) return best;
        tooDear.Limit = Cost(candidate);
        LeaveTooDear(candidate);
        return candidate;
    }

    private void Say(ItemSet best, long bound) => Say(said with { Best = Cost(best), LowerBound = bound });

    /// <summary>Says how far it has come while it shrinks cuts, now and then.</summary>
    private void SayAsked()
    {
        if (Asked >= said.Questions + 25) Say(said);
    }

    private void Say(SearchState state)
    {
        said = state with { Questions = Asked, Cuts = cuts.Count };
        hear?.Invoke(said);
    }

    private ItemSet WithGivenUp()
    {
        var all = useful.Copy();
        all.AddAll(never);
        return all;
    }

    private void LeaveTooDear(ItemSet best)
    {
        foreach (var item in useful.Where(i => !best.Has(i) && tooDear.Alone(i)).ToList()) useful.Remove(item);
    }

    private long Cost(ItemSet items) => items.Sum(i => puzzle.Costs[i]);

    /// <summary>The plan of the question before, where it is one here too.</summary>
    private ItemSet? AsBefore()
    {
        if (precedent?.Plan.Copy() is not { } plan) return null;
        plan.KeepOnly(allowed);
        return DoneWith(plan);
    }

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
            var next = plan.First(i => !done.Has(i) && learned.WallOf(i, done, allowed) is null);
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
