using Wainwright.Methods;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention.Fix;

/// <summary>A fixing that could be added.</summary>
/// <param name="Fixing">Where, which way, how strong.</param>
/// <param name="Cost">What it costs, in any one unit, 0 or more.</param>
public sealed record AddedFixing(HeldFixing Fixing, long Cost);

/// <summary>The cheapest added fixings with which a part holds all that is asked, proved.</summary>
/// <remarks>
/// A choice is proposed, the demands that it misses give rules that every good choice obeys, and the cheapest choice that obeys
/// all rules is proposed next. The first that misses nothing is the cheapest: what was proposed before was cheaper or as cheap.
/// </remarks>
public static class CheapestFixings
{
    /// <summary>Where it comes from.</summary>
    public static readonly Basis Basis = FixingCuts.Basis;

    /// <param name="Chosen">Candidates to add; empty when none is needed or none suffices.</param>
    /// <param name="Cost">What they cost; absent when none suffices.</param>
    /// <param name="LowerBound">No choice that holds costs less.</param>
    /// <param name="IsProved">True when it is the cheapest, or when none suffices.</param>
    /// <param name="NotHeld">Demands that even all candidates together do not hold; the number of demands stands for resting under its own weight.</param>
    /// <param name="Rounds">How many choices were proposed.</param>
    public sealed record Result(IReadOnlyList<int> Chosen, long? Cost, long LowerBound, bool IsProved, IReadOnlyList<int> NotHeld, int Rounds);

    /// <param name="held">What is held now.</param>
    /// <param name="candidates">What could be added, up to some sixty.</param>
    /// <param name="throws">What must be held.</param>
    /// <param name="mostRounds">When to stop and give the best found with its lower bound.</param>
    /// <param name="stop">Stops it likewise.</param>
    /// <exception cref="ArgumentException">No demand, or a value that the limit analysis refuses.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A cost below 0.</exception>
    public static Result Of(Held held, IReadOnlyList<AddedFixing> candidates, IReadOnlyList<Throw> throws, int mostRounds = 500, CancellationToken stop = default)
    {
        if (candidates.FirstOrDefault(c => c.Cost < 0) is { } cheap) throw new ArgumentOutOfRangeException(nameof(candidates), cheap.Cost, $"{cheap.Fixing.Name}: a cost is 0 or more");
        var cuts = new FixingCuts(held, [.. candidates.Select(c => c.Fixing)], throws);
        int[] dearLast = [.. Enumerable.Range(0, candidates.Count).OrderBy(i => candidates[i].Cost)];
        var all = Enumerable.Repeat(true, candidates.Count).ToArray();
        if (cuts.Missing(all, dearLast) is { Count: > 0 } never) return new([], null, 0, true, [.. never.Select(c => c.Throw)], 0);
        var best = Thinned(cuts, all, [.. dearLast.Reverse()]);
        var cover = new FixingCover([.. candidates.Select(c => c.Cost)]);
        var bound = 0L;
        for (var round = 1; round <= mostRounds && !stop.IsCancellationRequested; round++)
        {
            var choice = cover.Cheapest(out bound, stop);
            if (choice is null || Cost(choice) >= Cost(best)) break;
            // each round fills up in another order, so that the rules differ
            var missing = cuts.Missing(choice, [.. dearLast.Skip(round % candidates.Count), .. dearLast.Take(round % candidates.Count)]);
            if (missing.Count == 0)
            {
                best = choice;
                break;
            }
            foreach (var cut in missing) cover.Add(cut);
            if (Thinned(cuts, Filled(choice, missing), [.. dearLast.Reverse()]) is var other && Cost(other) < Cost(best)) best = other;
        }
        return new([.. Enumerable.Range(0, best.Length).Where(i => best[i])], Cost(best), Math.Min(bound, Cost(best)), bound >= Cost(best), [], cover.Rounds);

        long Cost(bool[] choice) => choice.Select((c, i) => c ? candidates[i].Cost : 0).Sum();

        // a choice that fails, with what its rules ask for, until it holds
        bool[] Filled(bool[] choice, IReadOnlyList<FixingCuts.Cut> missing)
        {
            bool[] fuller = [.. choice];
            while (missing.Count > 0)
            {
                var add = missing[0].Outside.Concat(dearLast).Where(i => !fuller[i]).MaxBy(i => missing.Sum(m => m.Share[i]) / (1 + candidates[i].Cost));
                fuller[add] = true;
                missing = cuts.Missing(fuller, dearLast);
            }
            return fuller;
        }
    }

    /// <summary>Takes away, dearest first, what is not needed.</summary>
    private static bool[] Thinned(FixingCuts cuts, bool[] choice, int[] order)
    {
        bool[] thin = [.. choice];
        foreach (var i in order.Where(i => thin[i]))
        {
            thin[i] = false;
            if (!cuts.Holds(thin)) thin[i] = true;
        }
        return thin;
    }
}
