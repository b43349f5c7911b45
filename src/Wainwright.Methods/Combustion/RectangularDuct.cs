namespace Wainwright.Methods.Combustion;

/// <summary>The round duct that stands for a rectangular one.</summary>
/// <remarks>Hydraulic diameter Dh = 4A/P; equal friction De = 1.30·(a·b)^0.625/(a + b)^0.25.</remarks>
public static class RectangularDuct
{
    /// <summary>The ventilation handbook's forms.</summary>
    public static readonly Basis Basis = new(
        Source: "ASHRAE Handbook – Fundamentals, duct design chapter: hydraulic and equivalent diameter",
        Assumes: ["flat sides, no swage"],
        Caution: "Dh carries the mean speed of the real section; De carries the flow: do not mix them.",
        How: Provenance.Quoted);

    /// <param name="WidthMm">One side [mm], above 0.</param>
    /// <param name="HeightMm">Other side [mm], above 0.</param>
    public sealed record Input(double WidthMm, double HeightMm);

    /// <param name="HydraulicMm">Hydraulic diameter [mm].</param>
    /// <param name="EquivalentMm">Round duct of equal friction at equal flow [mm].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double HydraulicMm, double EquivalentMm, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A side is not above 0.</exception>
    public static Result Of(Input duct)
    {
        double a = Must.BePositive(duct.WidthMm), b = Must.BePositive(duct.HeightMm);
        var longest = Math.Max(a, b) / Math.Min(a, b);
        return new(2 * a * b / (a + b), 1.30 * Math.Pow(a * b, 0.625) / Math.Pow(a + b, 0.25),
            longest > 8 ? ["sides in a ratio above 8: the equivalent diameter no longer holds"] : []);
    }
}
