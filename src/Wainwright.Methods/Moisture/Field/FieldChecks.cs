namespace Wainwright.Methods.Moisture.Field;

/// <summary>Refuses readings and priors that make no sense.</summary>
static class FieldChecks
{
    public static void Check(SurfaceNet net, IReadOnlyList<FieldObservation> observations, FieldPriors priors)
    {
        foreach (var o in observations)
        {
            Must.BeWithin(o.Cell, 0, net.Cells.Count - 1);
            Must.BeWithin(o.Percent, 0, 300);
            Must.BePositive(o.SigmaPoints);
        }
        Grid(priors.RangesMm, priors.RangeWeights);
        Grid(priors.Spreads, priors.SpreadWeights);
        ArgumentOutOfRangeException.ThrowIfZero(priors.Levels.Count);
        ArgumentOutOfRangeException.ThrowIfNotEqual(priors.LevelWeights.Count, priors.Levels.Count);
        foreach (var level in priors.Levels) Must.BeWithin(level, -10, 10);
        foreach (var weight in priors.LevelWeights) Must.BePositive(weight);
        Must.BePositive(priors.DrySigmaPoints);
        foreach (var dry in priors.DryPercent) Must.BeWithin(dry, 0, 100);
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

    static void Grid(IReadOnlyList<double> values, IReadOnlyList<double> weights)
    {
        ArgumentOutOfRangeException.ThrowIfZero(values.Count);
        ArgumentOutOfRangeException.ThrowIfNotEqual(weights.Count, values.Count);
        foreach (var v in values.Concat(weights)) Must.BePositive(v);
    }
}
