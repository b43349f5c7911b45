namespace Wainwright.Methods.Combustion;

/// <summary>Whether an air heater can breathe: free area by which cabin air returns to it, against its hot-air outlet.</summary>
/// <remarks>
/// Ratio of the inlet's free area to the outlet duct's section. One hole of 1 1/4 in (31.75 mm) feeding a 60 mm outlet
/// gives 0.28. This is the circulation air; the air that burns is another line and comes from outside.
/// </remarks>
public static class CirculationAir
{
    /// <summary>The grid rule: holes add up to at least the duct's section.</summary>
    public static readonly Basis Basis = new(
        Source: "Air-heater service practice citing UN Regulation 122: where a suction or delivery duct ends in a grid, its holes add up to at least the duct section",
        Assumes: ["the inlet is in the same closed space as the heater's return side", "no other leak feeds it"],
        Caution: "The ratio does not prove the airflow. The maker's own figure on the unit's papers rules. Starved heaters overheat and trip: never defeat the trip.",
        How: Provenance.Quoted);

    /// <summary>Inlet free area over outlet section that the grid rule asks for [-].</summary>
    public const double LeastRatio = 1.0;

    /// <param name="InletFreeAreasMm2">Free area of every opening through which cabin air returns [mm²], 0 or more.</param>
    /// <param name="OutletSectionMm2">Section of the hot-air outlet at the heater [mm²], above 0.</param>
    public sealed record Input(IReadOnlyList<double> InletFreeAreasMm2, double OutletSectionMm2);

    /// <param name="InletMm2">All inlets together [mm²].</param>
    /// <param name="Ratio">Inlet over outlet [-]; 1 or more meets the grid rule.</param>
    /// <param name="ShortOfMm2">Free area still wanted [mm²]; 0 when none is.</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double InletMm2, double Ratio, double ShortOfMm2, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">An area is negative, or the outlet is not above 0.</exception>
    public static Result Of(Input air)
    {
        var outlet = Must.BePositive(air.OutletSectionMm2);
        var inlet = 0.0;
        foreach (var area in air.InletFreeAreasMm2) inlet += Must.NotBeNegative(area);
        return new(inlet, inlet / outlet, Math.Max(0, (LeastRatio * outlet) - inlet), []);
    }
}
