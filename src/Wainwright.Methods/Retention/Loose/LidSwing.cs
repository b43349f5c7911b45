namespace Wainwright.Methods.Retention;

/// <summary>Whether a lid or door that lifts about its hinge meets the ceiling, and at which angle.</summary>
/// <remarks>A point at (x, z) from the hinge when shut stands at z·cos θ + x·sin θ above it at angle θ; it meets a height c when R·sin(φ + θ) = c.</remarks>
public static class LidSwing
{
    /// <summary>Circle about the hinge.</summary>
    public static readonly Basis Basis = new(
        Source: "plane geometry of a point turning about a hinge",
        Assumes: ["the hinge's play is small", "a flat ceiling"],
        Caution: "Ceilings of vans curve: measure at the place where the edge would come.",
        How: Provenance.OwnRule);

    /// <summary>Angle at which the point reaches a height above the hinge [°]; null when it never does before a half turn.</summary>
    /// <param name="acrossMm">Point from the hinge when shut, across, the way the lid reaches [mm], 0 or more.</param>
    /// <param name="aboveMm">Point above the hinge when shut [mm]; negative below.</param>
    /// <param name="ceilingMm">Ceiling above the hinge [mm].</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double? MeetsAtDegrees(double acrossMm, double aboveMm, double ceilingMm)
    {
        double radius = Math.Sqrt((Must.NotBeNegative(acrossMm) * acrossMm) + (Must.BeFinite(aboveMm) * aboveMm)), start = Math.Atan2(aboveMm, acrossMm);
        if (Must.BeFinite(ceilingMm) <= aboveMm) return 0;
        return ceilingMm > radius ? null : double.RadiansToDegrees(Math.Asin(ceilingMm / radius) - start);
    }

    /// <summary>Height above the hinge at an angle [mm].</summary>
    /// <param name="acrossMm">Point from the hinge when shut, across [mm].</param>
    /// <param name="aboveMm">Point above the hinge when shut [mm].</param>
    /// <param name="degrees">Opened by [°].</param>
    public static double AboveHingeMm(double acrossMm, double aboveMm, double degrees)
    {
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(Must.BeFinite(degrees)));
        return (Must.BeFinite(aboveMm) * cos) + (Must.BeFinite(acrossMm) * sin);
    }
}
