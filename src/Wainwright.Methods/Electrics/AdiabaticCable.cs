namespace Wainwright.Methods.Electrics;

/// <summary>Smallest copper conductor that survives a short circuit until the device opens; longest time it survives.</summary>
/// <remarks>I²·t ≤ k²·S²;  k = 226·√ln(1 + (tf − ti)/(234.5 + ti)) for copper. Valid up to 5 s.</remarks>
public static class AdiabaticCable
{
    /// <summary>The adiabatic equation.</summary>
    public static readonly Basis Basis = new(
        Source: "BS 7671 adiabatic equation; k after IEC 60364-5-54 annex A (form from memory)",
        Assumes: ["no heat leaves the copper", "at most 5 s"],
        Caution: "Says the cable survives, not that the joints do.",
        How: Provenance.Quoted);

    /// <summary>Core of a 70 °C PVC cable, 70 to 160 °C [A·√s/mm²].</summary>
    public const double CorePvc = 115;

    /// <summary>Separate 70 °C PVC conductor, 30 to 160 °C [A·√s/mm²].</summary>
    public const double SeparatePvc = 143;

    /// <summary>Material constant of copper between two temperatures [A·√s/mm²].</summary>
    /// <param name="startC">Start [°C], −40 to 200.</param>
    /// <param name="endC">End [°C], above the start.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature leaves its range.</exception>
    public static double K(double startC, double endC)
    {
        Must.BeWithin(startC, -40, 200);
        Must.BeWithin(endC, startC, 500);
        return 226 * Math.Sqrt(Math.Log(1 + ((endC - startC) / (234.5 + startC))));
    }

    /// <summary>Smallest section [mm²].</summary>
    /// <param name="faultAmp">Short-circuit current [A], above 0.</param>
    /// <param name="seconds">Time to open [s], above 0, at most 5.</param>
    /// <param name="k">Material constant [A·√s/mm²], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double SmallestMm2(double faultAmp, double seconds, double k) =>
        Must.BePositive(faultAmp) * Math.Sqrt(Must.BeWithin(seconds, 1e-6, 5)) / Must.BePositive(k);

    /// <summary>Longest time a section survives [s].</summary>
    /// <param name="sectionMm2">Section [mm²], above 0.</param>
    /// <param name="faultAmp">Short-circuit current [A], above 0.</param>
    /// <param name="k">Material constant [A·√s/mm²], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double LongestSeconds(double sectionMm2, double faultAmp, double k) =>
        Math.Pow(Must.BePositive(k) * Must.BePositive(sectionMm2) / Must.BePositive(faultAmp), 2);
}
