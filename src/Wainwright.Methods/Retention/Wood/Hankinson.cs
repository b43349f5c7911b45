namespace Wainwright.Methods.Retention;

/// <summary>A strength of wood between along the grain and across it.</summary>
/// <remarks>Rθ = R0·R90/(R0·sin²θ + R90·cos²θ).</remarks>
public static class Hankinson
{
    /// <summary>Hankinson's formula.</summary>
    public static readonly Basis Basis = new(
        Source: "NDS, clause 12.3.4; Wood Handbook, Hankinson formula",
        Assumes: ["clear wood, one direction of grain"],
        Caution: "Plywood has no one direction: take the lower.",
        How: Provenance.Quoted);

    /// <summary>Strength at an angle to the grain, in the unit of the two given.</summary>
    /// <param name="along">Strength along the grain, above 0.</param>
    /// <param name="across">Strength across the grain, above 0.</param>
    /// <param name="degrees">Angle between load and grain [°], 0 to 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">A strength not above 0 or an angle outside 0 to 90.</exception>
    public static double Of(double along, double across, double degrees)
    {
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(Must.BeWithin(degrees, 0, 90)));
        return Must.BePositive(along) * Must.BePositive(across) / ((along * sin * sin) + (across * cos * cos));
    }
}
