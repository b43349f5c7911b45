using Wainwright.Methods.Moisture.Field.Sparse;

namespace Wainwright.Methods.Moisture.Field;

/// <summary>Moisture over a net from a handful of readings: mean, spread and the chance of being over a threshold, cell by cell.</summary>
public static class DampField
{
    /// <summary>The field and what is thought of it beforehand.</summary>
    public static readonly Basis Basis = FieldPriors.Basis;

    // whoever foretold the readings a hundred times worse than the best is dropped, and never more than these are kept
    const double TooUnlikely = 0.01;
    const int MostKept = 24, MostKeptOfMany = 4;

    // over this many readings the combinations are first weighed by a part of them
    const int Many = 100;

    /// <summary>Fits the field: every combination of range, size and level is weighed by the readings, and the likely ones are kept together.</summary>
    /// <param name="net">The surfaces.</param>
    /// <param name="observations">Readings brought to cells; none is allowed and gives the prior. Over 100 of them, an even part first picks the four likeliest combinations, which are then fitted to all.</param>
    /// <param name="priors">What is thought beforehand.</param>
    /// <exception cref="ArgumentOutOfRangeException">A reading on no cell, a value or prior out of its range.</exception>
    public static DampPosterior Fit(SurfaceNet net, IReadOnlyList<FieldObservation> observations, FieldPriors priors)
    {
        FieldChecks.Check(net, observations, priors);
        var ground = new FieldGround(net, observations, priors);
        var all = Enumerable.Range(0, observations.Count).ToArray();
        var combinations = Enumerable.Range(0, priors.RangesMm.Count).SelectMany(r => Enumerable.Range(0, priors.Spreads.Count).SelectMany(s => Enumerable.Range(0, priors.Levels.Count).Select(l => (r, s, l)))).ToArray();
        if (all.Length > Many)
        {
            var part = Enumerable.Range(0, Many).Select(k => (int)((long)k * all.Length / Many)).ToArray();
            var first = Kept(ground.Fit(part, combinations), MostKeptOfMany);
            combinations = [.. first.Select(f => (f.Range, f.Size, f.Level))];
        }
        var kept = Kept(ground.Fit(all, combinations), all.Length > Many ? MostKeptOfMany : MostKept);
        var best = kept.Max(k => k.LogWeight);
        var total = kept.Sum(k => Math.Exp(k.LogWeight - best));
        return new(ground, ground.Members(kept, [.. kept.Select(k => Math.Exp(k.LogWeight - best) / total)]));
    }

    static List<FieldGround.Fitted> Kept(FieldGround.Fitted[] tried, int most)
    {
        var best = tried.Max(t => t.LogWeight);
        return [.. tried.Where(t => t.LogWeight > best + Math.Log(TooUnlikely)).OrderByDescending(t => t.LogWeight).Take(most)];
    }
}
