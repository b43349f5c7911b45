namespace Wainwright.Methods.Retention;

/// <summary>Working value of a fixing pulled out and pushed across at once.</summary>
/// <remarks>
/// Load at angle α to the wood surface. Screws: W·Z/(W·cos²α + Z·sin²α). Nails: W·Z/(W·cosα + Z·sinα), which is a straight line
/// N/W + V/Z = 1; for screws the curve bulges outside that line.
/// </remarks>
public static class NdsCombined
{
    /// <summary>Combined lateral and withdrawal loads.</summary>
    public static readonly Basis Basis = new(
        Source: "NDS 2015/2018, equations 12.4-1 and 12.4-2",
        Assumes: ["both single values hold for the same fixing and length of load"],
        Caution: "Working values in, a working value out.",
        How: Provenance.FromMemory);

    /// <summary>Working value along the load's own direction [N].</summary>
    /// <param name="fixing">What it is.</param>
    /// <param name="withdrawalN">Working value straight out [N], above 0.</param>
    /// <param name="lateralN">Working value across [N], above 0.</param>
    /// <param name="degreesToSurface">Angle between load and wood surface [°], 0 (across) to 90 (straight out).</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double AllowableN(WoodFixing fixing, double withdrawalN, double lateralN, double degreesToSurface)
    {
        double w = Must.BePositive(withdrawalN), z = Must.BePositive(lateralN);
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(Must.BeWithin(degreesToSurface, 0, 90)));
        return fixing == WoodFixing.SmoothNail ? w * z / ((w * cos) + (z * sin)) : w * z / ((w * cos * cos) + (z * sin * sin));
    }
}
