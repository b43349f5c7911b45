using Google.OrTools.Sat;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>The covering problem over all cuts so far: choices that obey them, and a bound that no choice goes below.</summary>
/// <remarks>
/// It is asked for any choice cheaper than the best plan, not for the cheapest: while there is one, it is found in a tenth of the
/// time, and it is refuted by cuts just as well; that there is none is all the proof needs. Only when the budget is spent is the
/// bound itself worked out.
/// </remarks>
internal sealed class Master
{
    // One worker and a full linear relaxation: several workers with default settings stall on covering problems of a hundred
    // items, and would not give the same answer twice.
    private const string OneWorker = "num_workers:1,linearization_level:2,random_seed:1";

    // Following the relaxation finds a choice where there is one; to show that there is none the usual search is the quicker.
    private const string AnyChoice = OneWorker + ",stop_after_first_solution:true";
    private const string Glance = AnyChoice + ",search_branching:LP_SEARCH,max_deterministic_time:0.1";
    private const string Proof = AnyChoice + ",add_cg_cuts:false,add_mir_cuts:false";
    private const string Bound = OneWorker + ",max_deterministic_time:1";

    private readonly CpModel model = new();
    private readonly BoolVar[] chosen;
    private readonly HashSet<int> left = [];
    private readonly Puzzle puzzle;
    private readonly LinearExpr price;
    private Constraint? cheaper;
    private long below = long.MaxValue;

    public Master(Puzzle puzzle, ItemSet universe, IEnumerable<int> targets)
    {
        this.puzzle = puzzle;
        chosen = [.. puzzle.Costs.Select((_, i) => model.NewBoolVar(""))];
        price = LinearExpr.WeightedSum(chosen, puzzle.Costs);
        KeepTo(universe);
        foreach (var target in targets) model.Add(chosen[target] == 1);
        model.Minimize(price);
    }

    /// <summary>Nothing outside this set is chosen any more.</summary>
    public void KeepTo(ItemSet universe)
    {
        for (var i = 0; i < chosen.Length; i++)
            if (!universe.Has(i) && left.Add(i)) model.Add(chosen[i] == 0);
    }

    public void Add(Cut cut) => model.AddBoolOr([chosen[cut.Item].Not(), .. cut.OneOf.Select(q => chosen[q])]);

    /// <summary>A choice cheaper than a price; nothing, and the price as the bound, when there is none, or nothing and a lower bound when called off.</summary>
    public (ItemSet? Choice, long LowerBound) Below(long limit, CancellationToken stop)
    {
        Limit(limit);
        var (status, solver) = Solve(Glance, stop);
        if (status is CpSolverStatus.Unknown && !stop.IsCancellationRequested) (status, solver) = Solve(Proof, stop);
        return status switch
        {
            CpSolverStatus.Optimal or CpSolverStatus.Feasible => (Choice(solver), BoundOf(solver)),
            CpSolverStatus.Infeasible => (null, limit),
            CpSolverStatus.Unknown => (null, 0),
            _ => throw new InvalidOperationException($"The covering problem has no answer ({status})."),
        };
    }

    /// <summary>No choice that obeys the cuts and is cheaper than a price is cheaper than this; worked out in about a second at most, even when called off.</summary>
    public long LowerBound(long limit)
    {
        Limit(limit);
        var (status, solver) = Solve(Bound, CancellationToken.None);
        return status is CpSolverStatus.Infeasible ? limit : BoundOf(solver);
    }

    private static long BoundOf(CpSolver solver) => (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6);

    private (CpSolverStatus Status, CpSolver Solver) Solve(string how, CancellationToken stop)
    {
        var solver = new CpSolver { StringParameters = how };
        using var stopping = stop.Register(solver.StopSearch);
        return (solver.Solve(model), solver);
    }

    private void Limit(long limit)
    {
        if (limit == below) return;
        below = limit;
        if (cheaper is null) cheaper = model.AddLinearConstraint(price, 0, limit - 1);
        else cheaper.Proto.Linear.Domain[1] = limit - 1;
    }

    private ItemSet Choice(CpSolver solver) => ItemSet.Of(puzzle.Count, Enumerable.Range(0, chosen.Length).Where(i => solver.BooleanValue(chosen[i])));
}
