namespace Wainwright.Methods.Moisture;

/// <summary>Water that a hot-pressed panel settles at, as a range, and the humidity of the air that stands behind a reading.</summary>
/// <remarks>Panel = f · wood, f 0.8 to 1.0, never silently 1. The inverse halves on humidity: the curve rises throughout.</remarks>
public static class PanelEquilibrium
{
    /// <summary>Lowest and highest factor against solid wood [-].</summary>
    public const double LowFactor = 0.8, HighFactor = 1.0;

    /// <summary>That panels settle lower is read; by how much is from memory.</summary>
    public static readonly Basis Basis = new(
        Source: "USDA Wood Handbook, FPL-GTR-190, chapter 13: panels settle lower than lumber, by product; factor 0.8 to 1.0 from memory",
        Assumes: ["equilibrium as WoodEquilibrium gives it for solid wood"],
        Caution: "Published tables part by two points: a flooring standard quoted by a shop has 16.5 and 14.5 % at 75 and 65 %, 15 °C, where the handbook's equation has 14.6 and 12.1.",
        How: Provenance.FromMemory);

    /// <param name="LowPercent">With the lowest factor [% of dry mass].</param>
    /// <param name="HighPercent">With the highest factor [% of dry mass].</param>
    /// <param name="OutsideRange">Limits that the air leaves; empty when it is inside.</param>
    public sealed record Result(double LowPercent, double HighPercent, IReadOnlyList<string> OutsideRange);

    /// <summary>The range that a panel settles in.</summary>
    /// <exception cref="ArgumentOutOfRangeException">As <see cref="WoodEquilibrium.Of"/>.</exception>
    public static Result Of(WoodEquilibrium.Input air)
    {
        var wood = WoodEquilibrium.Of(air);
        return new(LowFactor * wood.MoisturePercent, HighFactor * wood.MoisturePercent, wood.OutsideRange);
    }

    /// <summary>Relative humidity [0–1] of air with which wood of that moisture is at rest; 1 when it is wetter than air can make it.</summary>
    /// <param name="moisturePercent">Moisture [% of dry mass], 0 or more.</param>
    /// <param name="airC">Temperature [°C], −50 to 150.</param>
    /// <param name="factor">Panel against wood [-], above 0 and up to 1.2.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double HumidityFraction(double moisturePercent, double airC, double factor = 1)
    {
        var target = Must.NotBeNegative(moisturePercent) / Must.BeWithin(Must.BePositive(factor), 0, 1.2);
        if (WoodEquilibrium.Of(new(airC, 1)).MoisturePercent <= target) return 1;
        double low = 0, high = 1;
        for (var i = 0; i < 52; i++)
        {
            var middle = (low + high) / 2;
            if (WoodEquilibrium.Of(new(airC, middle)).MoisturePercent < target) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }

    /// <summary>Water that a cubic metre takes up for the whole step of humidity from 0 to 1, as steep as it is between two humidities [kg/m³].</summary>
    /// <param name="dryKgPerM3">Dry density [kg/m³], above 0.</param>
    /// <param name="airC">Temperature [°C], −50 to 150.</param>
    /// <param name="fromFraction">Lower humidity [0–1].</param>
    /// <param name="toFraction">Upper humidity [0–1], above the lower.</param>
    /// <param name="factor">Panel against wood [-].</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double SlopeKgPerM3(double dryKgPerM3, double airC, double fromFraction, double toFraction, double factor = 1) =>
        Must.BePositive(dryKgPerM3) / 100 * Must.BePositive(factor)
            * (WoodEquilibrium.Of(new(airC, toFraction)).MoisturePercent - WoodEquilibrium.Of(new(airC, fromFraction)).MoisturePercent)
            / Must.BePositive(toFraction - fromFraction);
}
