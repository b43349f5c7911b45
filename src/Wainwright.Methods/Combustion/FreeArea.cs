namespace Wainwright.Methods.Combustion;

/// <summary>Free area of an opening: what air really passes through.</summary>
/// <remarks>Round: π d²/4. Grille or mesh: face area times the free fraction. Two openings one behind the other: A1·A2/√(A1² + A2²).</remarks>
public static class FreeArea
{
    /// <summary>Plane geometry; two orifices in series share one pressure drop.</summary>
    public static readonly Basis Basis = new(
        Source: "Plane geometry; openings in series after the orifice equation with equal discharge coefficients",
        Assumes: ["sharp-edged openings", "clean: no fluff, no paint"],
        Caution: "A drawn opening is not a free one: measure hole and web, and look behind the grille.",
        How: Provenance.OwnRule);

    /// <summary>Round opening [mm²].</summary>
    /// <param name="diameterMm">Clear diameter [mm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not above 0.</exception>
    public static double OfRoundMm2(double diameterMm) => Math.PI / 4 * Math.Pow(Must.BePositive(diameterMm), 2);

    /// <summary>Grille, mesh or slatted opening [mm²].</summary>
    /// <param name="widthMm">Face width [mm], above 0.</param>
    /// <param name="heightMm">Face height [mm], above 0.</param>
    /// <param name="freeFraction">Open part of the face [0–1].</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double OfGrilleMm2(double widthMm, double heightMm, double freeFraction) =>
        Must.BePositive(widthMm) * Must.BePositive(heightMm) * Must.BeWithin(freeFraction, 0, 1);

    /// <summary>One opening with the resistance of two, one behind the other [mm²].</summary>
    /// <param name="firstMm2">Free area of the first [mm²], 0 or more.</param>
    /// <param name="secondMm2">Free area of the second [mm²], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An area is negative.</exception>
    public static double InSeriesMm2(double firstMm2, double secondMm2) =>
        Must.NotBeNegative(firstMm2) == 0 || Must.NotBeNegative(secondMm2) == 0
            ? 0
            : firstMm2 * secondMm2 / Math.Sqrt((firstMm2 * firstMm2) + (secondMm2 * secondMm2));
}
