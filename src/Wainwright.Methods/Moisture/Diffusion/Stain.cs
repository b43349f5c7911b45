namespace Wainwright.Methods.Moisture.Diffusion;

/// <summary>How far a stain walks by diffusion alone.</summary>
/// <remarks>
/// Plane source: C = M/(2 √(πDt)) exp(−x²/4Dt), twice that beside a sealed face; point in a sheet: M/(4πDt) exp(−r²/4Dt); strip of half width h:
/// ½ (erf((h−x)/2√Dt) + erf((h+x)/2√Dt)); width √(2Dt).
/// </remarks>
public static class Stain
{
    /// <summary>Crank, chapters 2 and 3.</summary>
    public static readonly Basis Basis = new(
        Source: "Crank, The Mathematics of Diffusion (1975), chapters 2 and 3 (from memory)",
        Assumes: ["constant diffusivity", "a wide sheet"],
        Caution: "Bound water spreads about 2 cm in a month: a wider stain is liquid that ran under or along the sheet.",
        How: Provenance.FromMemory);

    /// <summary>Standard width √(2Dt) [mm].</summary>
    /// <param name="diffusivityM2PerS">Diffusivity [m²/s], above 0.</param>
    /// <param name="days">Time [d], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double WidthMm(double diffusivityM2PerS, double days) => 1000 * Math.Sqrt(2 * Spread(diffusivityM2PerS, Must.NotBeNegative(days)));

    /// <summary>Water beside a plane source [kg/m³].</summary>
    /// <param name="kgPerM2">Water let in [kg/m²], 0 or more.</param>
    /// <param name="diffusivityM2PerS">Diffusivity [m²/s], above 0.</param>
    /// <param name="days">Time [d], above 0.</param>
    /// <param name="distanceMm">Distance [mm].</param>
    /// <param name="besideSealedFace">The source lies on a face that lets nothing through: all of it goes one way.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double PlaneKgPerM3(double kgPerM2, double diffusivityM2PerS, double days, double distanceMm, bool besideSealedFace = false)
    {
        var dt = Spread(diffusivityM2PerS, Must.BePositive(days));
        return (besideSealedFace ? 2 : 1) * Must.NotBeNegative(kgPerM2) / (2 * Math.Sqrt(Math.PI * dt)) * Math.Exp(-Math.Pow(Must.BeFinite(distanceMm) / 1000, 2) / (4 * dt));
    }

    /// <summary>Water about a drop let into a sheet, across its whole thickness [kg/m²].</summary>
    /// <param name="kg">Water let in [kg], 0 or more.</param>
    /// <param name="diffusivityM2PerS">Diffusivity along the sheet [m²/s], above 0.</param>
    /// <param name="days">Time [d], above 0.</param>
    /// <param name="distanceMm">Distance [mm].</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double PointKgPerM2(double kg, double diffusivityM2PerS, double days, double distanceMm)
    {
        var dt = Spread(diffusivityM2PerS, Must.BePositive(days));
        return Must.NotBeNegative(kg) / (4 * Math.PI * dt) * Math.Exp(-Math.Pow(Must.BeFinite(distanceMm) / 1000, 2) / (4 * dt));
    }

    /// <summary>What is left of a wet strip's moisture, at a distance from its middle [0–1].</summary>
    /// <param name="halfWidthM">Half the strip's width [m], above 0.</param>
    /// <param name="spreadM2">D·t [m²], above 0.</param>
    /// <param name="fromMiddleM">Distance from the middle [m].</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double StripShare(double halfWidthM, double spreadM2, double fromMiddleM)
    {
        var scale = 2 * Math.Sqrt(Must.BePositive(spreadM2));
        return 0.5 * (ErrorFunction.Erf((Must.BePositive(halfWidthM) - Must.BeFinite(fromMiddleM)) / scale) + ErrorFunction.Erf((halfWidthM + fromMiddleM) / scale));
    }

    static double Spread(double diffusivityM2PerS, double days) => Must.BePositive(diffusivityM2PerS) * days * 86_400;
}
