namespace Wainwright.Methods.Water;

/// <summary>Flow through a sharp-edged hole.</summary>
/// <remarks>Q = Cd·A·√(2·Δp/ρ); under a head of water Δp = ρ·g·h.</remarks>
public static class OrificeFlow
{
    /// <summary>Torricelli with a discharge coefficient.</summary>
    public static readonly Basis Basis = new(
        Source: "Torricelli's law with discharge coefficient 0.60 to 0.62 for a sharp edge, as engineering tables print it",
        Assumes: ["hole small against the vessel", "flow far from laminar: not a hairline crack"],
        Caution: "A crack or a weeping joint is no round hole: take the answer as an order of size.",
        How: Provenance.Quoted);

    /// <summary>Discharge coefficient of a sharp edge [-].</summary>
    public const double SharpEdge = 0.61;

    const double G = 9.80665;

    /// <param name="DiameterMm">Hole [mm], above 0.</param>
    /// <param name="PressurePa">Pressure across it [Pa], 0 or more.</param>
    /// <param name="DensityKgPerM3">Density of the fluid [kg/m³], above 0.</param>
    /// <param name="Discharge">Discharge coefficient [-].</param>
    public sealed record Input(double DiameterMm, double PressurePa, double DensityKgPerM3 = 1_000, double Discharge = SharpEdge);

    /// <param name="MlPerS">Flow [ml/s].</param>
    /// <param name="LitresPerDay">The same [l/day].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double MlPerS, double LitresPerDay, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input hole)
    {
        var area = Math.PI / 4 * Math.Pow(Must.BePositive(hole.DiameterMm) / 1000, 2);
        var m3PerS = Must.BeWithin(hole.Discharge, 0.1, 1) * area * Math.Sqrt(2 * Must.NotBeNegative(hole.PressurePa) / Must.BePositive(hole.DensityKgPerM3));
        return new(m3PerS * 1e6, m3PerS * 1000 * 86_400, hole.DiameterMm < 0.3 ? ["hole below 0.3 mm: friction governs, not the edge"] : []);
    }

    /// <summary>Pressure under a head of water [Pa].</summary>
    /// <param name="headMm">Height of water above the hole [mm], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The head is negative.</exception>
    public static double WaterHeadPa(double headMm) => 1_000 * G * Must.NotBeNegative(headMm) / 1000;
}
