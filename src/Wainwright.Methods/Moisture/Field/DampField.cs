namespace Wainwright.Methods.Moisture.Field;

/// <summary>Moisture over a net from a handful of readings: mean, spread and the chance of being over a threshold, cell by cell.</summary>
public static class DampField
{
    /// <summary>The field and what is thought of it beforehand.</summary>
    public static readonly Basis Basis = FieldPriors.Basis;

    const int MostSweeps = 12;
    const double Settled = 1e-3, TooUnlikely = 0.01;

    /// <summary>Fits the field: every pair of range and spread is weighed by the readings, and the likely ones are kept together.</summary>
    /// <param name="net">The surfaces.</param>
    /// <param name="observations">Readings brought to cells; none is allowed and gives the prior.</param>
    /// <param name="priors">What is thought beforehand.</param>
    /// <exception cref="ArgumentOutOfRangeException">A reading on no cell, a value or prior out of its range.</exception>
    public static DampPosterior Fit(SurfaceNet net, IReadOnlyList<FieldObservation> observations, FieldPriors priors)
    {
        Check(net, observations, priors);
        var scale = new WetnessScale(priors.FloorPercent);
        var system = new FieldSystem(net, scale.Of(priors));
        List<FieldObservation> seen = [.. observations.Select(scale.Of)];
        var tried = new List<Fitted>();
        for (var r = 0; r < priors.RangesMm.Count; r++)
        {
            var field = system.Operator(priors.RangesMm[r]);
            Site[]? near = null;
            for (var s = 0; s < priors.Spreads.Count; s++)
            {
                var one = One(system, field, seen, priors.RangesMm[r], priors.Spreads[s], near);
                near = one.Sites;
                tried.Add(one with { LogWeight = one.LogWeight + Math.Log(priors.RangeWeights[r]) + Math.Log(priors.SpreadWeights[s]) });
            }
        }
        var best = tried.Max(t => t.LogWeight);
        var kept = tried.Where(t => t.LogWeight > best + Math.Log(TooUnlikely)).ToList();
        var total = kept.Sum(t => Math.Exp(t.LogWeight - best));
        return new(net, observations, scale, system.Priors, [.. kept.Select(t => Member(system, t, seen, Math.Exp(t.LogWeight - best) / total))]);
    }

    /// <summary>One pair of range and spread with its sites and the logarithm of how well it foretold the readings.</summary>
    sealed record Fitted(double RangeMm, double Spread, Sparse.FrontalCholesky Factor, Site[] Sites, double[] Mean, double LogWeight);

    static Fitted One(FieldSystem system, DiffusionOperator field, List<FieldObservation> seen, double rangeMm, double spread, Site[]? near)
    {
        var (prior, priorLog) = system.Prior(field, spread);
        var sites = near is null ? [.. seen.Select(o => Site.Start(o, system.Origin(o.Cell)))] : (Site[])near.Clone();
        var bounds = seen.Any(o => o.Bound != MeterReading.Bound.About);
        var factor = system.Factor(prior, seen, sites);
        var mean = Mean(system, factor, seen, sites);
        for (var sweep = 0; bounds && sweep < MostSweeps; sweep++)
        {
            double moved = 0;
            var variance = Variances(system, factor, seen);
            for (var o = 0; o < sites.Length; o++)
            {
                if (seen[o].Bound == MeterReading.Bound.About) continue;
                var next = sites[o].Matched(seen[o], system.Origin(seen[o].Cell), mean[seen[o].Cell], variance[o]);
                moved = Math.Max(moved, Math.Abs(next.Pull - sites[o].Pull) + Math.Abs(next.Precision - sites[o].Precision));
                sites[o] = next;
            }
            factor = system.Factor(prior, seen, sites);
            mean = Mean(system, factor, seen, sites);
            if (moved < Settled) break;
        }
        // how likely the sites were beforehand: determinants before and after, and the square that is left
        double weight = 0.5 * (priorLog - factor.LogDeterminant), pulled = 0;
        for (var o = 0; o < sites.Length; o++)
        {
            var (site, cell) = (sites[o], seen[o].Cell);
            weight += (0.5 * Math.Log(site.Precision / (2 * Math.PI))) - (0.5 * site.Pull * site.Pull / site.Precision) + site.LogScale;
            pulled += site.Pull * mean[cell];
        }
        return new(rangeMm, spread, factor, sites, mean, weight + (0.5 * pulled));
    }

    /// <summary>Variance of the cells with bounds, one solution each: bounds are few.</summary>
    static double[] Variances(FieldSystem system, Sparse.FrontalCholesky factor, List<FieldObservation> seen)
    {
        var variance = new double[seen.Count];
        for (var o = 0; o < seen.Count; o++)
        {
            if (seen[o].Bound == MeterReading.Bound.About) continue;
            var unit = new double[system.Size];
            unit[seen[o].Cell] = 1;
            variance[o] = factor.Solve(unit)[seen[o].Cell];
        }
        return variance;
    }

    static double[] Mean(FieldSystem system, Sparse.FrontalCholesky factor, List<FieldObservation> seen, Site[] sites)
    {
        var pull = new double[system.Size];
        for (var o = 0; o < sites.Length; o++) pull[seen[o].Cell] += sites[o].Pull;
        return factor.Solve(pull);
    }

    static DampPosterior.Member Member(FieldSystem system, Fitted fitted, List<FieldObservation> seen, double weight)
    {
        var variance = fitted.Factor.InverseDiagonal();
        var cells = system.GroupOf.Length;
        var mean = new double[cells];
        var spread = new double[cells];
        for (var i = 0; i < cells; i++) (mean[i], spread[i]) = (system.Origin(i) + fitted.Mean[i], Math.Sqrt(variance[i]));
        var without = new (double, double)[seen.Count];
        for (var o = 0; o < seen.Count; o++)
        {
            var (m, v) = fitted.Sites[o].Without(fitted.Mean[seen[o].Cell], variance[seen[o].Cell]);
            without[o] = (system.Origin(seen[o].Cell) + m, Math.Sqrt(v));
        }
        var dry = Enumerable.Range(cells, system.Size - cells).Select((u, g) => system.Priors.DryPercent[g] + fitted.Mean[u]);
        return new(weight, fitted.RangeMm, fitted.Spread, mean, spread, [.. dry], without, fitted.Factor);
    }

    static void Check(SurfaceNet net, IReadOnlyList<FieldObservation> observations, FieldPriors priors)
    {
        foreach (var o in observations)
        {
            Must.BeWithin(o.Cell, 0, net.Cells.Count - 1);
            Must.BeWithin(o.Percent, 0, 300);
            Must.BePositive(o.SigmaPoints);
        }
        foreach (var value in priors.RangesMm.Concat(priors.Spreads).Concat(priors.RangeWeights).Concat(priors.SpreadWeights).Append(priors.DrySigmaPoints)) Must.BePositive(value);
        foreach (var dry in priors.DryPercent) Must.BeWithin(dry, priors.FloorPercent ?? 0, 100);
        ArgumentOutOfRangeException.ThrowIfNotEqual(priors.RangeWeights.Count, priors.RangesMm.Count);
        ArgumentOutOfRangeException.ThrowIfNotEqual(priors.SpreadWeights.Count, priors.Spreads.Count);
        if (priors.TrendPercent is { } trend)
        {
            ArgumentOutOfRangeException.ThrowIfNotEqual(trend.Count, net.Cells.Count);
            foreach (var t in trend) Must.BeWithin(t, 0, 300);
        }
        if (priors.GroupOfSheet is { } groups)
        {
            ArgumentOutOfRangeException.ThrowIfNotEqual(groups.Count, net.Sheets);
            foreach (var g in groups) Must.BeWithin(g, 0, priors.DryPercent.Count - 1);
        }
    }
}
