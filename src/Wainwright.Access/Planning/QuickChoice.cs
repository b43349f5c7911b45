using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>
/// Choices that obey all cuts, cheap though not the cheapest, found in no time. One that cannot be done teaches as much as the
/// cheapest would; only when none is found has the covering problem to be solved.
/// </summary>
internal sealed class QuickChoice
{
    private const int Tries = 12, Mends = 12, Remembered = 4, Sweeps = 4;

    private readonly Puzzle puzzle;
    private readonly IReadOnlyList<int> targets;
    private readonly List<int[]> cuts = [];
    private readonly List<int> owner = [];
    private readonly List<int>[] of;
    private readonly List<int>[] with;
    private readonly double[] estimate;
    private readonly int[] hits;
    private readonly Random random = new(1);
    private readonly List<ItemSet> recent = [];

    public QuickChoice(Puzzle puzzle, IEnumerable<int> targets)
    {
        this.puzzle = puzzle;
        this.targets = [.. targets];
        of = [.. puzzle.Costs.Select(_ => new List<int>())];
        with = [.. puzzle.Costs.Select(_ => new List<int>())];
        (estimate, hits) = (new double[puzzle.Count], new int[puzzle.Count]);
    }

    public void Add(Cut cut)
    {
        of[cut.Item].Add(cuts.Count);
        int[] oneOf = [.. cut.OneOf];
        foreach (var q in oneOf) with[q].Add(cuts.Count);
        cuts.Add(oneOf);
        owner.Add(cut.Item);
    }

    /// <summary>A choice out of those that may be, cheaper than a price; nothing when none was found.</summary>
    public ItemSet? Below(long price, ItemSet may)
    {
        Estimate(may);
        (ItemSet? best, var least) = (null, price);
        void Try(IEnumerable<int> start, double noise)
        {
            if (Greedy(start, may, noise, price) is not { } choice) return;
            var cost = Pruned(choice);
            if (cost < least) (best, least) = (choice, cost);
        }
        for (var n = 0; n < Tries; n++) Try([], n == 0 ? 0 : 0.6);
        // what obeyed all cuts but the newest is soon mended
        foreach (var one in recent)
            for (var n = 0; n < Mends; n++) Try(one.Where(i => may.Has(i) && (n == 0 || random.Next(5) > 0)).ToList(), n == 0 ? 0 : 0.6);
        if (best is not null) Remember(best);
        return best;
    }

    /// <summary>A choice that obeyed all cuts so far.</summary>
    public void Remember(ItemSet choice)
    {
        recent.Insert(0, choice.Copy());
        if (recent.Count > Remembered) recent.RemoveAt(Remembered);
    }

    /// <summary>What an item drags along at least, one of each of its cuts, some steps deep; a guess and no bound, for what is shared counts twice.</summary>
    private void Estimate(ItemSet may)
    {
        for (var i = 0; i < estimate.Length; i++) estimate[i] = may.Has(i) ? puzzle.Costs[i] + 1 : double.PositiveInfinity;
        for (var sweep = 0; sweep < Sweeps; sweep++)
            foreach (var i in may)
            {
                var most = 0.0;
                foreach (var cut in of[i])
                {
                    var least = double.PositiveInfinity;
                    foreach (var q in cuts[cut]) least = Math.Min(least, estimate[q]);
                    most = Math.Max(most, least);
                }
                estimate[i] = puzzle.Costs[i] + 1 + most;
            }
    }

    private ItemSet? Greedy(IEnumerable<int> start, ItemSet may, double noise, long price)
    {
        var (choice, open, cost) = (new ItemSet(puzzle.Count), new List<int>(), 0L);
        var weight = new double[estimate.Length];
        foreach (var i in may) weight[i] = estimate[i] * (1 + noise * random.NextDouble());
        void Take(int item)
        {
            choice.Add(item);
            cost += puzzle.Costs[item];
            open.RemoveAll(cut => Array.IndexOf(cuts[cut], item) >= 0);
            foreach (var cut in of[item])
                if (!Array.Exists(cuts[cut], choice.Has)) open.Add(cut);
        }
        foreach (var item in targets.Concat(start)) if (!choice.Has(item)) Take(item);
        while (open.Count > 0)
        {
            Array.Clear(hits);
            foreach (var cut in open)
                foreach (var q in cuts[cut]) hits[q]++;
            var (pick, share) = (-1, 0.0);
            foreach (var q in may)
                if (hits[q] > 0 && hits[q] / weight[q] > share) (pick, share) = (q, hits[q] / weight[q]);
            // a cut without any that may be: no choice has what it speaks of
            if (pick < 0 || cost > 2 * price) return null;
            Take(pick);
        }
        return choice;
    }

    /// <summary>Leaves out what no cut of the rest asks for, dearest first; the price of what is left.</summary>
    private long Pruned(ItemSet choice)
    {
        for (var more = true; more;)
        {
            more = false;
            foreach (var q in choice.OrderByDescending(i => puzzle.Costs[i]).ThenBy(i => i).ToList())
            {
                if (targets.Contains(q) || IsAsked(q, choice)) continue;
                choice.Remove(q);
                more = true;
            }
        }
        return choice.Sum(i => puzzle.Costs[i]);
    }

    private bool IsAsked(int item, ItemSet choice)
    {
        foreach (var cut in with[item])
            if (choice.Has(owner[cut]) && owner[cut] != item && !Array.Exists(cuts[cut], q => q != item && choice.Has(q))) return true;
        return false;
    }
}
