namespace Wainwright.Methods.Retention;

/// <summary>Crushing strength of wood under the side of a nail, screw or bolt.</summary>
/// <remarks>
/// psi: under 1/4 in 16600·G^1.84 at any angle; from 1/4 in 11200·G along the grain and 6100·G^1.45/√D across it, between by
/// Hankinson. The printed tables round to 50 psi. A calculator page prints 16 000 for 16 600; the tables fit 16 600 only.
/// </remarks>
public static class DowelBearing
{
    /// <summary>Dowel bearing strengths of the American wood design specification.</summary>
    public static readonly Basis Basis = new(
        Source: "NDS 2015/2018, table 12.3.3 and its footnotes; plywood and OSB table 12.3.3B",
        Assumes: ["sound dry wood", "steel plates as the tables take them"],
        Caution: "Plywood by grade name is coarse: furniture plywood may be lighter than its face suggests. Weigh an offcut.",
        How: Provenance.Quoted);

    const double QuarterInchMm = 6.35, RoundingPsi = 50;

    /// <summary>Steel side plate of thin galvanised sheet (ASTM A653 grade 33) [MPa]: 61 850 psi.</summary>
    public const double ThinSteelMPa = 61_850 * UsUnits.MPaPerPsi;

    /// <summary>Steel side plate of 1/4 in and more (ASTM A36) [MPa]: 87 000 psi.</summary>
    public const double PlateSteelMPa = 87_000 * UsUnits.MPaPerPsi;

    /// <summary>Structural and marine plywood, and OSB, under fixings up to 1/4 in [MPa]: 4 650 psi (from memory).</summary>
    public const double StructuralPlywoodMPa = 4_650 * UsUnits.MPaPerPsi;

    /// <summary>Other plywood under fixings up to 1/4 in [MPa]: 3 350 psi (from memory).</summary>
    public const double OtherPlywoodMPa = 3_350 * UsUnits.MPaPerPsi;

    /// <summary>Crushing strength [MPa].</summary>
    /// <param name="specificGravity">Oven-dry specific gravity [-], above 0.</param>
    /// <param name="nominalDiameterMm">Nominal diameter [mm], above 0.</param>
    /// <param name="grainDegrees">Angle between load and grain [°], 0 to 90; without effect under 1/4 in.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double OfMPa(double specificGravity, double nominalDiameterMm, double grainDegrees = 0)
    {
        var g = Must.BePositive(specificGravity);
        Must.BeWithin(grainDegrees, 0, 90);
        if (Must.BePositive(nominalDiameterMm) < QuarterInchMm) return 16_600 * Math.Pow(g, 1.84) * UsUnits.MPaPerPsi;
        var across = 6_100 * Math.Pow(g, 1.45) / Math.Sqrt(nominalDiameterMm / UsUnits.MmPerIn);
        return Hankinson.Of(11_200 * g, across, grainDegrees) * UsUnits.MPaPerPsi;
    }

    /// <summary>The same as the printed tables take it: rounded to 50 psi [MPa].</summary>
    /// <param name="specificGravity">Oven-dry specific gravity [-], above 0.</param>
    /// <param name="nominalDiameterMm">Nominal diameter [mm], above 0.</param>
    /// <param name="grainDegrees">Angle between load and grain [°], 0 to 90.</param>
    public static double AsTabledMPa(double specificGravity, double nominalDiameterMm, double grainDegrees = 0) =>
        Math.Round(OfMPa(specificGravity, nominalDiameterMm, grainDegrees) / UsUnits.MPaPerPsi / RoundingPsi) * RoundingPsi * UsUnits.MPaPerPsi;
}
