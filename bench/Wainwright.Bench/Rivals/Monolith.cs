using Google.OrTools.Sat;
using Wainwright.Geometry;

namespace Wainwright.Bench.Rivals;

/// <summary>One model with every way listed: an item takes one of its ways, and all of the way comes before it.</summary>
static class Monolith
{
    /// <param name="costs">Price of each item.</param>
    /// <param name="ways">The ways of each item.</param>
    /// <param name="targets">What must be done.</param>
    /// <param name="settings">Of the solver.</param>
    public static Result Run(IReadOnlyList<long> costs, IReadOnlyList<IReadOnlyList<ItemSet>> ways, IReadOnlyList<int> targets, string settings)
    {
        var model = new CpModel();
        var chosen = costs.Select(_ => model.NewBoolVar("")).ToArray();
        var rank = costs.Select(_ => model.NewIntVar(0, costs.Count, "")).ToArray();
        foreach (var target in targets) model.Add(chosen[target] == 1);
        for (var i = 0; i < costs.Count; i++)
        {
            var taken = ways[i].Select(_ => model.NewBoolVar("")).ToArray();
            model.AddBoolOr([chosen[i].Not(), .. taken]);
            foreach (var (way, w) in ways[i].Zip(taken))
                foreach (var q in way)
                {
                    model.AddImplication(w, chosen[q]);
                    model.Add(rank[i] >= rank[q] + 1).OnlyEnforceIf(w);
                }
        }
        model.Minimize(LinearExpr.WeightedSum(chosen, costs));
        var solver = new CpSolver { StringParameters = settings };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal => new((long)Math.Round(solver.ObjectiveValue), true, (long)Math.Round(solver.ObjectiveValue)),
            CpSolverStatus.Feasible => new((long)Math.Round(solver.ObjectiveValue), false, (long)Math.Ceiling(solver.BestObjectiveBound - 1e-6)),
            CpSolverStatus.Infeasible => new(null, true, 0),
            _ => new(null, false, 0),
        };
    }
}
