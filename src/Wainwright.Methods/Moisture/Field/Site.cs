namespace Wainwright.Methods.Moisture.Field;

/// <summary>What one observation adds to its cell, as a bell curve: exact for a value, matched to the bound for a bound.</summary>
/// <param name="Precision">Its precision [1/points²].</param>
/// <param name="Pull">Precision times place [1/points].</param>
/// <param name="LogScale">Logarithm of what the bound's curve is worth beside a plain observation of that place and width; 0 for a value.</param>
readonly record struct Site(double Precision, double Pull, double LogScale)
{
    const double Least = 1e-6;

    public static Site Start(FieldObservation seen, double origin) => seen.Bound == MeterReading.Bound.About
        ? new(1 / (seen.SigmaPoints * seen.SigmaPoints), (seen.Percent - origin) / (seen.SigmaPoints * seen.SigmaPoints), 0)
        : new(Least, Least * (seen.Percent - origin), 0);

    /// <summary>The bound matched to mean and variance of what is left without it.</summary>
    /// <param name="seen">A bound.</param>
    /// <param name="origin">Value that the field counts from [%].</param>
    /// <param name="mean">Mean of the cell with this site in it [points from the origin].</param>
    /// <param name="variance">Its variance [points²].</param>
    public Site Matched(FieldObservation seen, double origin, double mean, double variance)
    {
        var left = Without(mean, variance);
        var sign = seen.Bound == MeterReading.Bound.AtLeast ? 1.0 : -1.0;
        var width = Math.Sqrt((seen.SigmaPoints * seen.SigmaPoints) + left.Variance);
        var z = sign * (left.Mean - (seen.Percent - origin)) / width;
        var push = NormalCurve.Push(z);
        var newMean = left.Mean + (sign * left.Variance * push / width);
        var newVariance = left.Variance - (left.Variance * left.Variance * push * (z + push) / (width * width));
        var precision = Math.Max(Least, (1 / newVariance) - (1 / left.Variance));
        var pull = (newMean * ((1 / left.Variance) + precision)) - (left.Mean / left.Variance);
        var (at, own) = (pull / precision, 1 / precision);
        var scale = NormalCurve.LogBelow(z) + (0.5 * Math.Log(2 * Math.PI * (left.Variance + own))) + (Square(left.Mean - at) / (2 * (left.Variance + own)));
        return new(precision, pull, scale);
    }

    /// <summary>What the cell is thought to be without this observation: leave-one-out in closed form.</summary>
    public (double Mean, double Variance) Without(double mean, double variance)
    {
        var rest = 1 / Math.Max((1 / variance) - Precision, 1e-12);
        return (rest * ((mean / variance) - Pull), rest);
    }

    static double Square(double x) => x * x;
}
