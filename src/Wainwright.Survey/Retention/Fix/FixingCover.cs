using Google.OrTools.Sat;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention.Fix;

/// <summary>The cheapest choice that obeys all rules so far.</summary>
sealed class FixingCover
{
    // one worker gives the same answer twice
    private const string OneWorker = "num_workers:1,linearization_level:2,random_seed:1,max_deterministic_time:20";
    private const long Whole = 1_000_000;

    private readonly CpModel _model = new();
    private readonly BoolVar[] _chosen;

    public FixingCover(long[] costs)
    {
        _chosen = [.. costs.Select((_, i) => _model.NewBoolVar($"{i}"))];
        _model.Minimize(LinearExpr.WeightedSum(_chosen, costs));
    }

    public int Rounds { get; private set; }

    /// <summary>Shares are rounded up: a choice that holds is never cut off. That one of those outside is needed keeps the rounding from going round in circles.</summary>
    public void Add(FixingCuts.Cut cut)
    {
        _model.AddBoolOr(cut.Outside.Select(i => _chosen[i]));
        _model.AddLinearConstraint(LinearExpr.WeightedSum(_chosen, cut.Share.Select(s => Math.Min(Whole, (long)Math.Ceiling(s * Whole)))), Whole, long.MaxValue / 4);
    }

    /// <returns>A choice; absent when the search was called off.</returns>
    public bool[]? Cheapest(out long lowerBound, CancellationToken stop)
    {
        Rounds++;
        var solver = new CpSolver { StringParameters = OneWorker };
        using var stopping = stop.Register(solver.StopSearch);
        var status = solver.Solve(_model);
        lowerBound = Math.Max(0, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6));
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible ? [.. _chosen.Select(c => solver.BooleanValue(c))] : null;
    }
}
