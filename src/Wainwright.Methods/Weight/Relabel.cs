namespace Wainwright.Methods.Weight;

/// <summary>Added mass above which the US rules want a vehicle's load label corrected before first sale.</summary>
/// <remarks>The lesser of 1.5 % of the gross vehicle weight rating and 100 lb (45.4 kg).</remarks>
public static class Relabel
{
    /// <summary>FMVSS 110/120 as amended 2007.</summary>
    public static readonly Basis Basis = new(
        Source: "US Federal Register 72:68442 (final rule on 49 CFR 571.110 and 571.120): 1.5 % of GVWR or 100 lb, whichever is less",
        Assumes: ["mass added after certification and before first sale"],
        Caution: "After first sale the rule does not bind; a rebuild that adds more should print new figures all the same.",
        How: Provenance.Read);

    const double Fraction = 0.015, CapLb = 100, KgPerLb = 0.45359237;

    /// <param name="GrossRatingKg">Gross vehicle weight rating [kg], above 0.</param>
    public sealed record Input(double GrossRatingKg);

    /// <param name="ThresholdKg">Added mass above which a new label is due [kg].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double ThresholdKg, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">The rating is not above 0.</exception>
    public static Result Of(Input van) => new(Math.Min(Fraction * Must.BePositive(van.GrossRatingKg), CapLb * KgPerLb), []);
}
