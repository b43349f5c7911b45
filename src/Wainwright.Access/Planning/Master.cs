using Google.OrTools.Sat;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>The cheapest choice of items that obeys all cuts so far: a lower bound for every plan.</summary>
internal sealed class Master
{
    private readonly CpModel model = new();
    private readonly BoolVar[] chosen;
    private readonly HashSet<int> left = [];
    private readonly Puzzle puzzle;

    public Master(Puzzle puzzle, ItemSet universe, IEnumerable<int> targets)
    {
        this.puzzle = puzzle;
        chosen = [.. puzzle.Costs.Select((_, i) => model.NewBoolVar(""))];
        KeepTo(universe);
        foreach (var target in targets) model.Add(chosen[target] == 1);
        model.Minimize(LinearExpr.WeightedSum(chosen, puzzle.Costs));
    }

    /// <summary>Nothing outside this set is chosen any more.</summary>
    public void KeepTo(ItemSet universe)
    {
        for (var i = 0; i < chosen.Length; i++)
            if (!universe.Has(i) && left.Add(i)) model.Add(chosen[i] == 0);
    }

    public void Add(Cut cut) => model.AddBoolOr([chosen[cut.Item].Not(), .. cut.OneOf.Select(q => chosen[q])]);

    /// <summary>The best choice found, and a bound below which there is none.</summary>
    public (ItemSet Chosen, long LowerBound, bool IsOptimal) Solve(ItemSet hint, CancellationToken stop)
    {
        model.ClearHints();
        for (var i = 0; i < chosen.Length; i++) model.AddHint(chosen[i], hint.Has(i));
        // one worker and a full linear relaxation: several workers with default settings stall on covering problems of a
        // hundred items, and would not give the same answer twice
        var solver = new CpSolver { StringParameters = "num_workers:1,linearization_level:2,random_seed:1" };
        using var stopping = stop.Register(solver.StopSearch);
        var status = solver.Solve(model);
        return status switch
        {
            CpSolverStatus.Optimal => (Choice(solver), (long)Math.Round(solver.ObjectiveValue), true),
            CpSolverStatus.Feasible => (Choice(solver), (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6), false),
            CpSolverStatus.Unknown when stop.IsCancellationRequested => (hint, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6), false),
            // the cuts speak of plans cheaper than the best one
            CpSolverStatus.Infeasible => (hint, long.MaxValue, true),
            _ => throw new InvalidOperationException($"The covering problem has no answer ({status}), yet a plan is known."),
        };
    }

    private ItemSet Choice(CpSolver solver) => ItemSet.Of(puzzle.Count, Enumerable.Range(0, chosen.Length).Where(i => solver.BooleanValue(chosen[i])));
}
