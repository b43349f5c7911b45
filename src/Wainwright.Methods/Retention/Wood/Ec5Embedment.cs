namespace Wainwright.Methods.Retention;

/// <summary>Embedment strength and yield moment after Eurocode 5: what wood and steel bring to the yield modes.</summary>
/// <remarks>
/// N, mm, kg/m³. Timber 0.082·ρ·d^−0.3, bored 0.082·(1 − 0.01·d)·ρ; plywood 0.11·ρ·d^−0.3; chipboard and OSB 65·d^−0.7·t^0.1.
/// Yield moment 0.3·fu·d^2.6 round nails and bolts, 0.45 square nails; staples 240·d^2.6. A screw counts with 1.1 times its root
/// when the smooth shank does not reach four diameters into the point side.
/// </remarks>
public static class Ec5Embedment
{
    /// <summary>Embedment and yield moment.</summary>
    public static readonly Basis Basis = new(
        Source: "EN 1995-1-1, equations 8.15 to 8.22 and 8.14, 8.29, 8.30 (embedment from memory, moments as eurocode.us quotes them)",
        Assumes: ["characteristic density", "nails and screws up to 6 mm, at any angle to the grain", "plywood: head at least twice the diameter"],
        Caution: "Characteristic values: nineteen of twenty pieces reach them.",
        How: Provenance.FromMemory);

    /// <summary>Kinds of steel section in bending.</summary>
    public enum Shank
    {
        /// <summary>Round nail, bolt, or screw by its effective diameter.</summary>
        Round,

        /// <summary>Square or grooved nail.</summary>
        Square,
    }

    /// <summary>Timber [MPa].</summary>
    /// <param name="characteristicKgPerM3">Characteristic density [kg/m³], above 0.</param>
    /// <param name="diameterMm">Diameter [mm], above 0.</param>
    /// <param name="isBored">The hole was bored.</param>
    public static double TimberMPa(double characteristicKgPerM3, double diameterMm, bool isBored = false) => 0.082 * Must.BePositive(characteristicKgPerM3)
        * (isBored ? 1 - (0.01 * Must.BeWithin(diameterMm, 0, 50)) : Math.Pow(Must.BePositive(diameterMm), -0.3));

    /// <summary>Plywood [MPa].</summary>
    /// <param name="characteristicKgPerM3">Characteristic density [kg/m³], above 0.</param>
    /// <param name="diameterMm">Diameter [mm], above 0.</param>
    public static double PlywoodMPa(double characteristicKgPerM3, double diameterMm) =>
        0.11 * Must.BePositive(characteristicKgPerM3) * Math.Pow(Must.BePositive(diameterMm), -0.3);

    /// <summary>Chipboard and oriented strand board [MPa].</summary>
    /// <param name="diameterMm">Diameter [mm], above 0.</param>
    /// <param name="boardMm">Board [mm], above 0.</param>
    public static double ChipboardMPa(double diameterMm, double boardMm) =>
        65 * Math.Pow(Must.BePositive(diameterMm), -0.7) * Math.Pow(Must.BePositive(boardMm), 0.1);

    /// <summary>Yield moment [N·mm].</summary>
    /// <param name="shank">Section.</param>
    /// <param name="tensileMPa">Tensile strength of the steel [MPa], above 0.</param>
    /// <param name="diameterMm">Diameter, of a screw its effective one [mm], above 0.</param>
    public static double YieldMomentNmm(Shank shank, double tensileMPa, double diameterMm) =>
        (shank == Shank.Round ? 0.3 : 0.45) * Must.BePositive(tensileMPa) * Math.Pow(Must.BePositive(diameterMm), 2.6);

    /// <summary>Yield moment of one leg of a staple [N·mm].</summary>
    /// <param name="legMm">Diameter of the leg, of a flat one the root of its two sides' product [mm], above 0.</param>
    public static double StapleMomentNmm(double legMm) => 240 * Math.Pow(Must.BePositive(legMm), 2.6);

    /// <summary>Effective diameter of a screw [mm].</summary>
    /// <param name="nominalMm">Outer diameter [mm], above 0.</param>
    /// <param name="rootMm">Root diameter [mm], above 0.</param>
    /// <param name="smoothInPointSideMm">Smooth shank in the point side [mm], 0 or more.</param>
    public static double EffectiveMm(double nominalMm, double rootMm, double smoothInPointSideMm) =>
        Must.NotBeNegative(smoothInPointSideMm) >= 4 * Must.BePositive(nominalMm) ? nominalMm : 1.1 * Must.BePositive(rootMm);
}
