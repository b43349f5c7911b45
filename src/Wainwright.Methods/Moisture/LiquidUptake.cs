namespace Wainwright.Methods.Moisture;

/// <summary>Water that a face in touch with liquid drinks.</summary>
/// <remarks>m = A √t [kg/m²], until the sheet is full.</remarks>
public static class LiquidUptake
{
    /// <summary>Uptake with the root of time.</summary>
    public static readonly Basis Basis = new(
        Source: "Water absorption coefficient as ISO 15148 defines it; coefficients from memory: no table could be opened",
        Assumes: ["one face under water, the others dry", "first wetting: later cycles differ, and OSB goes on swelling"],
        Caution: "A cut edge drinks like end grain: seal it or take it as wet.",
        How: Provenance.FromMemory);

    /// <param name="Material">What drinks.</param>
    /// <param name="Low">Lowest coefficient [kg/(m²·√s)].</param>
    /// <param name="High">Highest coefficient [kg/(m²·√s)].</param>
    public sealed record Coefficient(string Material, double Low, double High);

    /// <summary>Ranges, all from memory.</summary>
    public static readonly IReadOnlyList<Coefficient> Coefficients =
    [
        new("plywood", 0.0024, 0.0042), new("OSB", 0.0016, 0.0030), new("spruce across the grain", 0.002, 0.004), new("spruce along the grain", 0.010, 0.017),
    ];

    /// <summary>Water taken up [kg/m²].</summary>
    /// <param name="coefficient">Coefficient [kg/(m²·√s)], 0 or more.</param>
    /// <param name="hours">Time under water [h], 0 or more.</param>
    /// <param name="fullKgPerM2">What the sheet can hold besides what it had [kg/m²]; null when nobody knows.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is negative.</exception>
    public static double KgPerM2(double coefficient, double hours, double? fullKgPerM2 = null)
    {
        var taken = Must.NotBeNegative(coefficient) * Math.Sqrt(3600 * Must.NotBeNegative(hours));
        return fullKgPerM2 is { } full ? Math.Min(taken, Must.NotBeNegative(full)) : taken;
    }
}
