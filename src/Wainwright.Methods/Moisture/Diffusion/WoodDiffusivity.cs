namespace Wainwright.Methods.Moisture.Diffusion;

/// <summary>How fast bound water moves through wood across the grain.</summary>
/// <remarks>
/// D_BT = 7e-6 exp(−(9200 − 70 M)/(1.987 T)) m²/s; void part v = 1 − G (0.667 + 0.01 M), a = √v; D_T = D_BT/((1 − a²)(1 − a)).
/// From vapour data instead: D = (δ/μ) psat/(dw/dh).
/// </remarks>
public static class WoodDiffusivity
{
    /// <summary>Siau.</summary>
    public static readonly Basis Basis = new(
        Source: "Siau, Transport Processes in Wood (1984) (from memory)",
        Assumes: ["moisture 5 to 25 %", "across the grain", "solid wood: plywood across the sheet 0.3 to 1 of it (from memory)"],
        Caution: "Take it as known to a factor of two either way. An abstract reports an eightfold rise from 2.5 to 18 % in aspen at 43 °C where this gives 3.7.",
        How: Provenance.FromMemory);

    /// <param name="WoodC">Temperature [°C], 0 to 90.</param>
    /// <param name="MoisturePercent">Moisture [% of dry mass], 5 to 25.</param>
    /// <param name="SpecificGravity">Dry mass over volume at that moisture [-], 0.2 to 0.9.</param>
    public sealed record Input(double WoodC, double MoisturePercent, double SpecificGravity);

    /// <param name="CellWallM2PerS">Of the cell wall [m²/s].</param>
    /// <param name="AcrossM2PerS">Of the wood across the grain [m²/s].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double CellWallM2PerS, double AcrossM2PerS, IReadOnlyList<string> OutsideRange);

    /// <summary>Siau's two diffusivities.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range by far, or the wood would have no pores.</exception>
    public static Result Of(Input wood)
    {
        double t = Must.BeWithin(wood.WoodC, -40, 150), m = Must.BeWithin(wood.MoisturePercent, 0, 40), g = Must.BeWithin(wood.SpecificGravity, 0.1, 1.2);
        var wall = 7e-6 * Math.Exp(-(9200 - (70 * m)) / (1.987 * (t + 273.15)));
        var pores = Must.BeWithin(1 - (g * (0.667 + (0.01 * m))), 0, 1);
        List<string> outside = [];
        if (t is < 0 or > 90) outside.Add("temperature outside 0 to 90 °C");
        if (m is < 5 or > 25) outside.Add("moisture outside 5 to 25 %");
        return new(wall, wall / ((1 - pores) * (1 - Math.Sqrt(pores))), outside);
    }

    /// <summary>Diffusivity that a vapour resistance factor stands for [m²/s].</summary>
    /// <param name="resistanceFactor">μ [-], 1 or more.</param>
    /// <param name="airC">Temperature [°C], −20 to 60.</param>
    /// <param name="saturationPa">Saturation pressure there [Pa], above 0.</param>
    /// <param name="slopeKgPerM3">Slope of the sorption curve [kg/m³], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double FromVapour(double resistanceFactor, double airC, double saturationPa, double slopeKgPerM3) =>
        Vapour.VapourResistance.AirPermeability(airC) / Must.BeWithin(resistanceFactor, 1, 1e9) * Must.BePositive(saturationPa) / Must.BePositive(slopeKgPerM3);
}
