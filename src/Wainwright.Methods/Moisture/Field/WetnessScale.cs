namespace Wainwright.Methods.Moisture.Field;

/// <summary>The scale that a field is even on: points of moisture, or the logarithm of the moisture over a floor that no board goes below.</summary>
/// <remarks>On points a board is as likely to be ten points too dry as too wet. Over a floor, most of it is near dry and some of it is far above, as leaks are.</remarks>
/// <param name="FloorPercent">The floor [%]; null for points.</param>
readonly record struct WetnessScale(double? FloorPercent)
{
    // nearer to the floor than this everything counts alike [points]
    const double Nearest = 0.5, SteepestFrom = 1.5;

    public double To(double percent) => FloorPercent is { } floor ? Math.Log(Math.Max(Nearest, percent - floor)) : percent;

    public double From(double value) => FloorPercent is { } floor ? floor + Math.Exp(Math.Min(value, 7)) : value;

    /// <summary>A small doubt in points, on the scale.</summary>
    public double Doubt(double points, double atPercent) => FloorPercent is { } floor ? points / Math.Max(SteepestFrom, atPercent - floor) : points;

    public FieldObservation Of(FieldObservation seen) => seen with { Percent = To(seen.Percent), SigmaPoints = Doubt(seen.SigmaPoints, seen.Percent) };

    public FieldPriors Of(FieldPriors priors)
    {
        var scale = this;
        return priors with { DryPercent = [.. priors.DryPercent.Select(scale.To)], TrendPercent = priors.TrendPercent?.Select(scale.To).ToList(), DrySigmaPoints = Doubt(priors.DrySigmaPoints, priors.DryPercent.Average()) };
    }

    /// <summary>Mean and square mean in percent of a bell curve on the scale.</summary>
    public (double Mean, double Square) Moments(double mean, double spread)
    {
        if (FloorPercent is not { } floor) return (mean, (mean * mean) + (spread * spread));
        var (one, two) = (Math.Exp(mean + (spread * spread / 2)), Math.Exp((2 * mean) + (2 * spread * spread)));
        return (floor + one, (floor * floor) + (2 * floor * one) + two);
    }
}
