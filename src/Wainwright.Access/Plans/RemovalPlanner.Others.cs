using Wainwright.Fitout;

namespace Wainwright.Access;

public sealed partial class RemovalPlanner
{
    // enough for three plans of twenty parts each; beyond it the list says that it is not proved
    private const int MostSearches = 120;

    /// <summary>The best plan and the next best really different ones.</summary>
    /// <param name="wanted">What is wanted.</param>
    /// <param name="most">How many others at most, 1 or more.</param>
    /// <exception cref="ArgumentException">A part is not in the job.</exception>
    public OtherPlans Others(IReadOnlyList<Wanted> wanted, int most = 3)
    {
        var best = Plan(wanted);
        var question = Question(wanted);
        if (best.Proved!.Outcome is not Solved first) return new(best, [], AreAll: true, AreProved: true);
        var parts = Staying.Leaving(scene, first.Order);
        var ranked = new Ranked(Search, p => Staying.Leaving(scene, p.Order), wanted.Where(w => w.Kind == AccessKind.Remove).Select(w => w.Part).ToHashSet(), MostSearches);
        var found = ranked.After(new(question, first)).Take(most + 1).ToList();
        return new(best, [.. found.Take(most).Select(Told)], AreAll: found.Count <= most && ranked.IsProved, ranked.IsProved);

        OtherPlan Told(Ranked.Found other)
        {
            var its = Staying.Leaving(scene, other.Plan.Order);
            return new(Written(best.Targets, other.Question, other.Plan, best.Kind), More(other.Plan, first), [.. parts.Where(p => !its.Contains(p))], [.. its.Where(p => !parts.Contains(p))]);
        }
    }

    /// <summary>What it costs to keep each of some parts in.</summary>
    /// <param name="wanted">What is wanted.</param>
    /// <param name="keep">The parts, one at a time.</param>
    /// <exception cref="ArgumentException">A part is not in the job.</exception>
    public IReadOnlyList<KeepingPrice> PricesOfKeeping(IReadOnlyList<Wanted> wanted, IReadOnlyList<PartId> keep)
    {
        if (keep.FirstOrDefault(p => scene.PartOf(p) is null) is { Text: not null } unknown) throw new ArgumentException($"No part {unknown} in this job.", nameof(keep));
        var question = Question(wanted);
        var best = Search(question) as Solved;
        return [.. keep.Select(part =>
        {
            if (best is null || Search(question.Keeping([part])) is not Solved other) return new KeepingPrice(part, null, true, null);
            return new(part, More(other, best), best.IsProved && other.IsProved, Written([.. wanted.Select(w => w.Part).Distinct()], question.Keeping([part]), other, wanted.Max(w => w.Kind)));
        })];
    }

    private double More(Solved other, Solved best) => prices.Of(other.Cost) - prices.Of(best.Cost);
}
