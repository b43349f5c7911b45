namespace Wainwright.Methods.Moisture;

/// <summary>Kilograms of water behind a moisture percentage, and the most that wood can hold.</summary>
/// <remarks>m = ρ e M/100;  Mmax = 100 (1.54 − G)/(1.54 G).</remarks>
public static class WaterInWood
{
    /// <summary>Wood handbook, equation 4-4.</summary>
    public static readonly Basis Basis = new(
        Source: "USDA Wood Handbook, chapter 4, equation 4-4 (from memory); the mass is arithmetic",
        Assumes: ["dry density, not delivered density", "every pore filled for the most"],
        Caution: "A wet panel delaminates long before its pores are full.",
        How: Provenance.FromMemory);

    /// <summary>Water in a sheet [kg/m²].</summary>
    /// <param name="dryKgPerM3">Dry density [kg/m³], above 0.</param>
    /// <param name="thicknessMm">Thickness [mm], above 0.</param>
    /// <param name="moisturePercent">Moisture [% of dry mass], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double KgPerM2(double dryKgPerM3, double thicknessMm, double moisturePercent) =>
        Must.BePositive(dryKgPerM3) * Must.BePositive(thicknessMm) / 1000 * Must.NotBeNegative(moisturePercent) / 100;

    /// <summary>Moisture with every pore full [% of dry mass].</summary>
    /// <param name="specificGravity">Dry mass over green volume [-], 0.1 to 1.5.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value leaves its range.</exception>
    public static double MostPercent(double specificGravity) =>
        100 * (1.54 - Must.BeWithin(specificGravity, 0.1, 1.5)) / (1.54 * specificGravity);
}
