using Google.OrTools.Sat;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Checks a plan and its proof from the questions alone; shares no code with the search.</summary>
public static class CertificateCheck
{
    /// <summary>All that is wrong with a plan and its proof; nothing when both hold.</summary>
    /// <param name="puzzle">Items, prices and the question, made afresh.</param>
    /// <param name="allowed">What may be done at all.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="name">Names of items for the faults; absent for their numbers.</param>
    public static IReadOnlyList<string> Faults(Puzzle puzzle, ItemSet allowed, Solved plan, Func<int, string>? name = null)
    {
        name ??= item => $"{item}";
        var faults = new List<string>();
        faults.AddRange(FaultsOfOrder(puzzle, allowed, plan, name));
        // the cuts speak of cheaper plans only: they may well contradict one another, and then any bound would follow
        if (plan.LowerBound > plan.Cost) faults.Add($"the bound {plan.LowerBound} is above the price");
        var sure = new List<int>(plan.Proof.Targets);
        foreach (var item in plan.Proof.Necessary)
        {
            if (ItemSet.Of(puzzle.Count, plan.Proof.Targets).IsWithin(Doable(puzzle, NotTooDear(puzzle, allowed, sure, plan).Without(item))))
                faults.Add($"item {name(item)} is called necessary and is not");
            sure.Add(item);
        }
        foreach (var item in NotTooDear(puzzle, allowed, sure, plan).Without(plan.Proof.Useful)) faults.Add($"item {name(item)} is left out of the proof and might be worth its price");
        var left = plan.Proof.Useful.Copy();
        foreach (var cut in plan.Proof.Cuts)
        {
            if (Doable(puzzle, NotTooDear(puzzle, left, [.. sure, cut.Item], plan).Without(cut.OneOf)).Has(cut.Item))
                faults.Add($"item {name(cut.Item)} can be done without any of {string.Join(' ', cut.OneOf.Select(name))}");
            if (cut.OneOf.IsEmpty) left.Remove(cut.Item);
        }
        if (Cheapest(puzzle, plan.Proof) < plan.LowerBound) faults.Add($"a choice cheaper than {plan.LowerBound} obeys all cuts");
        return faults;
    }

    private static IEnumerable<string> FaultsOfOrder(Puzzle puzzle, ItemSet allowed, Solved plan, Func<int, string> name)
    {
        var done = new ItemSet(puzzle.Count);
        foreach (var item in plan.Order)
        {
            if (!allowed.Has(item)) yield return $"item {name(item)} is not allowed";
            if (done.Has(item)) yield return $"item {name(item)} is done twice";
            if (!Can(puzzle, item, done)) yield return $"item {name(item)} cannot be done when it is its turn";
            done.Add(item);
        }
        foreach (var target in plan.Proof.Targets)
            if (!done.Has(target)) yield return $"target {name(target)} is not done";
        if (plan.Order.Sum(i => puzzle.Costs[i]) != plan.Cost) yield return "the price is not the sum of its items";
    }

    /// <summary>What can be in one plan with all of some items that costs less than the plan.</summary>
    private static ItemSet NotTooDear(Puzzle puzzle, ItemSet some, IReadOnlyList<int> with, Solved plan) =>
        ItemSet.Of(puzzle.Count, some.Where(q => Needed(puzzle, with.Append(q)) < plan.Cost));

    /// <summary>The price of items with all that they need in every plan.</summary>
    private static long Needed(Puzzle puzzle, IEnumerable<int> items)
    {
        var all = ItemSet.Of(puzzle.Count, items);
        for (var before = 0; before < all.Count;)
        {
            before = all.Count;
            foreach (var item in all.ToList()) all.AddAll(puzzle.Needs[item]);
        }
        return all.Sum(i => puzzle.Costs[i]);
    }

    private static bool Can(Puzzle puzzle, int item, ItemSet done) => puzzle.Needs[item].IsWithin(done) && puzzle.Ask(item, done, new(puzzle.Count)) is Free;

    private static ItemSet Doable(Puzzle puzzle, ItemSet allowed)
    {
        var done = new ItemSet(puzzle.Count);
        for (var more = true; more;)
        {
            more = false;
            foreach (var item in allowed.Where(i => !done.Has(i) && Can(puzzle, i, done)).ToList())
            {
                done.Add(item);
                more = true;
            }
        }
        return done;
    }

    private static long Cheapest(Puzzle puzzle, Certificate proof)
    {
        var model = new CpModel();
        var chosen = puzzle.Costs.Select((_, i) => model.NewBoolVar($"x{i}")).ToArray();
        for (var i = 0; i < chosen.Length; i++)
            if (!proof.Useful.Has(i)) model.Add(chosen[i] == 0);
        foreach (var target in proof.Targets) model.Add(chosen[target] == 1);
        foreach (var cut in proof.Cuts) model.Add(LinearExpr.Sum(cut.OneOf.Select(q => chosen[q])) >= chosen[cut.Item]);
        model.Minimize(LinearExpr.WeightedSum(chosen, puzzle.Costs));
        var solver = new CpSolver { StringParameters = "num_workers:1,linearization_level:2" };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal => (long)Math.Round(solver.ObjectiveValue),
            CpSolverStatus.Infeasible => long.MaxValue,
            var status => throw new InvalidOperationException($"The covering problem was not solved ({status})."),
        };
    }
}
