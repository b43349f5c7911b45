namespace Wainwright.Methods.Retention;

/// <summary>What a mean breaking load leaves to count on: the value that nineteen of twenty reach.</summary>
/// <remarks>
/// Log-normal with coefficient of variation v: σ² = ln(1 + v²), median = mean/√(1 + v²), 5 % and 95 % at ±1.645 σ.
/// Low and high of the answer are those two, likely is the median.
/// </remarks>
public static class LowerTwentieth
{
    /// <summary>From a mean to its twentieth parts.</summary>
    public static readonly Basis Basis = new(
        Source: "log-normal strength as in EN 14358 and common reliability practice; the coefficients of variation are the trade's, no source",
        Assumes: ["sound fixings of one kind in one kind of wood or sheet", "damage, damp and short thread are counted apart"],
        Caution: "The variation between vans, woods and hands is larger than between laboratory tests.",
        How: Provenance.OwnRule);

    /// <summary>Withdrawal from wood [-]; common practice, no source.</summary>
    public const double WoodPullVariation = 0.25;

    /// <summary>Wood joint across the fixing [-]; common practice, no source.</summary>
    public const double WoodShearVariation = 0.20;

    /// <summary>Screw in sheet metal across, and head through sheet [-]; common practice, no source. Pull-out has tests of its own: SheetScrewAisi.Tested.</summary>
    public const double SheetVariation = 0.20;

    const double OneInTwenty = 1.6448536269514722;

    /// <summary>Low (5 %), likely (median) and high (95 %) of a strength known by its mean, in the unit of the mean.</summary>
    /// <param name="mean">Mean breaking load, 0 or more.</param>
    /// <param name="variation">Coefficient of variation [-], 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static Spread Of(double mean, double variation)
    {
        var squared = 1 + Math.Pow(Must.BeWithin(variation, 0, 1), 2);
        double median = Must.NotBeNegative(mean) / Math.Sqrt(squared), apart = Math.Exp(OneInTwenty * Math.Sqrt(Math.Log(squared)));
        return new(median / apart, median, median * apart);
    }
}
