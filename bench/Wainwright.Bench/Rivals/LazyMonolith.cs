using Google.OrTools.Sat;
using Wainwright.Access;
using Wainwright.Geometry;

namespace Wainwright.Bench.Rivals;

/// <summary>One model with an order that knows only the walls met so far; each answer is tried out, and what holds it is added.</summary>
/// <remarks>
/// A wall reads: whoever does the item has done one of those before. The cheapest choice of the model is a lower bound; when it can
/// be done it is the cheapest plan. Walls of everything that stays undone are added at once, ways and walls are remembered.
/// </remarks>
sealed class LazyMonolith
{
    private readonly CpModel model = new();
    private readonly Puzzle puzzle;
    private readonly BoolVar[] chosen;
    private readonly IntVar[] rank;
    private readonly Dictionary<(int Before, int After), BoolVar> before = [];
    private readonly List<ItemSet>[] ways, walls;

    public LazyMonolith(Puzzle puzzle, IReadOnlyList<int> targets)
    {
        this.puzzle = puzzle;
        chosen = [.. puzzle.Costs.Select(_ => model.NewBoolVar(""))];
        rank = [.. puzzle.Costs.Select(_ => model.NewIntVar(0, puzzle.Count, ""))];
        (ways, walls) = ([.. puzzle.Costs.Select(_ => new List<ItemSet>())], [.. puzzle.Costs.Select(_ => new List<ItemSet>())]);
        foreach (var target in targets) model.Add(chosen[target] == 1);
        for (var i = 0; i < puzzle.Count; i++)
            foreach (var need in puzzle.Needs[i]) model.AddImplication(chosen[i], Before(need, i));
        model.Minimize(LinearExpr.WeightedSum(chosen, puzzle.Costs));
    }

    /// <param name="settings">Of the solver.</param>
    /// <param name="cpuS">When to give up [s of processor time].</param>
    public Result Run(string settings, double cpuS)
    {
        using var allowance = new Allowance(cpuS);
        var bound = 0L;
        while (!allowance.Over.IsCancellationRequested)
        {
            // the clock is only there in case the call to stop comes while the solver is being set up
            var solver = new CpSolver { StringParameters = FormattableString.Invariant($"{settings},max_time_in_seconds:{60 * cpuS:0}") };
            using var stopping = allowance.Over.Register(solver.StopSearch);
            switch (solver.Solve(model))
            {
                case CpSolverStatus.Optimal:
                    bound = (long)Math.Round(solver.ObjectiveValue);
                    if (!Refuted(ItemSet.Of(puzzle.Count, Enumerable.Range(0, puzzle.Count).Where(i => solver.BooleanValue(chosen[i]))))) return new(bound, true, bound);
                    break;
                case CpSolverStatus.Infeasible:
                    return new(null, true, 0);
                default:
                    return new(null, false, Math.Max(bound, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6)));
            }
        }
        return new(null, false, bound);
    }

    /// <summary>Whether something of a choice stays undone; its walls then join the model.</summary>
    private bool Refuted(ItemSet choice)
    {
        var (done, stays) = (new ItemSet(puzzle.Count), ItemSet.All(puzzle.Count).Without(choice));
        var held = new ItemSet?[puzzle.Count];
        for (var more = true; more;)
        {
            more = false;
            foreach (var item in choice.Where(i => !done.Has(i)).ToList())
            {
                if (!puzzle.Needs[item].IsWithin(done) || (held[item] is { } still && !still.Meets(done))) continue;
                held[item] = WallOf(item, done, stays);
                if (held[item] is not null) continue;
                done.Add(item);
                more = true;
            }
        }
        var stuck = choice.Without(done);
        foreach (var item in stuck)
            if (held[item] is { } wall) model.AddBoolOr([chosen[item].Not(), .. wall.Select(q => Before(q, item))]);
        return !stuck.IsEmpty;
    }

    private ItemSet? WallOf(int item, ItemSet done, ItemSet stays)
    {
        if (ways[item].Exists(w => w.IsWithin(done))) return null;
        if (walls[item].Find(w => w.IsWithin(stays)) is { } known) return known;
        var reply = puzzle.Ask(item, done, stays);
        if (reply is Free free) ways[item].Add(free.Way);
        if (reply is not Held held) return null;
        walls[item].Add(held.Wall);
        return held.Wall;
    }

    private BoolVar Before(int first, int then)
    {
        if (before.TryGetValue((first, then), out var known)) return known;
        var b = model.NewBoolVar("");
        model.AddImplication(b, chosen[first]);
        model.Add(rank[then] >= rank[first] + 1).OnlyEnforceIf(b);
        return before[(first, then)] = b;
    }
}
