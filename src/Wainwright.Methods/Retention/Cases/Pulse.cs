namespace Wainwright.Methods.Retention;

/// <summary>From speed and stopping distance to deceleration.</summary>
/// <remarks>Mean a = v²/(2·s). A pulse of length T that takes away v has a peak of 2·v/T as a triangle and (π/2)·v/T as a half sine.</remarks>
public static class Pulse
{
    /// <summary>Kinematics of stopping.</summary>
    public static readonly Basis Basis = new(
        Source: "uniform deceleration and pulse areas, elementary mechanics; factor 1.5 on a static test: SAE J3043, summary on tnlab.org",
        Assumes: ["the van stops with what is fixed in it"],
        Caution: "A stiff part on an elastic fixing feels up to twice the peak.",
        How: Provenance.Quoted);

    /// <summary>Standard acceleration of gravity [m/s²].</summary>
    public const double GravityMPerS2 = 9.80665;

    /// <summary>Factor that one static test uses for dynamic amplification [-].</summary>
    public const double StaticTestFactor = 1.5;

    /// <summary>Mean deceleration [g].</summary>
    /// <param name="speedMPerS">Speed taken away [m/s], 0 or more.</param>
    /// <param name="distanceMm">Stopping distance [mm], above 0.</param>
    public static double MeanG(double speedMPerS, double distanceMm) =>
        Must.NotBeNegative(speedMPerS) * speedMPerS / (2 * Must.BePositive(distanceMm) / 1000) / GravityMPerS2;

    /// <summary>Peak of a triangle [g].</summary>
    /// <param name="speedMPerS">Speed taken away [m/s], 0 or more.</param>
    /// <param name="lengthMs">Length of the pulse [ms], above 0.</param>
    public static double TrianglePeakG(double speedMPerS, double lengthMs) => 2 * Must.NotBeNegative(speedMPerS) / (Must.BePositive(lengthMs) / 1000) / GravityMPerS2;

    /// <summary>Peak of a half sine [g].</summary>
    /// <param name="speedMPerS">Speed taken away [m/s], 0 or more.</param>
    /// <param name="lengthMs">Length of the pulse [ms], above 0.</param>
    public static double HalfSinePeakG(double speedMPerS, double lengthMs) => Math.PI / 4 * TrianglePeakG(speedMPerS, lengthMs);
}
