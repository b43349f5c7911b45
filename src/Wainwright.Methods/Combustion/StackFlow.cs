namespace Wainwright.Methods.Combustion;

/// <summary>Air that warmth alone draws through a low and a high opening; heat that an airflow carries.</summary>
/// <remarks>Q = Cd·A·√(2·g·H·ΔT/T),  A of the two openings in series;  heat P = ρ·cp·Q·ΔT with ρ·cp = 1206 J/(m³·K) at 20 °C.</remarks>
public static class StackFlow
{
    /// <summary>Stack effect.</summary>
    public static readonly Basis Basis = new(
        Source: "ASHRAE Handbook – Fundamentals (1997), chapter 25, equation 37; heat of air: engineeringtoolbox.com d_702",
        Assumes: ["no wind", "warm column of one temperature", "openings sharp-edged"],
        Caution: "Wind on one side can stop or reverse it: fixed vents are sized by the code of the place, not by this.",
        How: Provenance.Quoted);

    const double G = 9.80665, AirJPerM3K = 1206, KelvinAt0C = 273.15;

    /// <param name="FreeAreaMm2">Both openings in series, or one with the whole column [mm²], above 0.</param>
    /// <param name="HeightMm">Height between the middles of the openings [mm], above 0.</param>
    /// <param name="InsideC">Temperature of the warm column [°C].</param>
    /// <param name="OutsideC">Temperature outside [°C].</param>
    /// <param name="Discharge">Discharge coefficient [-]: 0.61 sharp-edged.</param>
    public sealed record Input(double FreeAreaMm2, double HeightMm, double InsideC, double OutsideC, double Discharge = 0.61);

    /// <param name="FlowM3PerH">Air drawn [m³/h]; 0 when inside is no warmer.</param>
    /// <param name="HeatW">Heat carried away at that flow [W].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double FlowM3PerH, double HeatW, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input vents)
    {
        var rise = Must.BeWithin(vents.InsideC, -80, 1000) - Must.BeWithin(vents.OutsideC, -80, 60);
        Must.BePositive(vents.FreeAreaMm2);
        Must.BePositive(vents.HeightMm);
        Must.BeWithin(vents.Discharge, 0.1, 1);
        if (rise <= 0) return new(0, 0, ["inside is no warmer than outside: warmth draws nothing"]);
        var speed = Math.Sqrt(2 * G * vents.HeightMm / 1000 * rise / (vents.InsideC + KelvinAt0C));
        var m3PerS = vents.Discharge * vents.FreeAreaMm2 / 1e6 * speed;
        return new(m3PerS * 3600, HeatCarriedW(m3PerS * 3600, rise), []);
    }

    /// <summary>Heat that an airflow carries [W].</summary>
    /// <param name="flowM3PerH">Flow [m³/h], 0 or more.</param>
    /// <param name="riseK">Temperature rise [K], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is negative.</exception>
    public static double HeatCarriedW(double flowM3PerH, double riseK) => AirJPerM3K * Must.NotBeNegative(flowM3PerH) / 3600 * Must.NotBeNegative(riseK);
}
