namespace Wainwright.Methods.Moisture.Air;

/// <summary>Water in air as the dryer's trade counts it: per kilogram of dry air, with its heat.</summary>
/// <remarks>W = 0.621945 pw/(p − pw);  h = 1.006 t + W (2501 + 1.86 t) kJ/kg;  ρv = pw/(461.5 T).</remarks>
public static class MoistAir
{
    /// <summary>Ideal mixture.</summary>
    public static readonly Basis Basis = new(
        Source: "ASHRAE Fundamentals 2017, chapter 1, ideal-gas relations (seen in an open library's tests)",
        Assumes: ["ideal gases: real saturated air holds up to 0.5 % more"],
        Caution: "Humidity meters are good to 2 or 3 % of humidity at best.",
        How: Provenance.Quoted);

    /// <summary>Sea level [Pa].</summary>
    public const double SeaLevelPa = 101_325;

    /// <param name="AirC">Temperature [°C], −50 to 100.</param>
    /// <param name="RelativeHumidityFraction">Relative humidity [0–1].</param>
    /// <param name="PressurePa">Air pressure [Pa], 50 000 to 120 000.</param>
    public sealed record Input(double AirC, double RelativeHumidityFraction, double PressurePa = SeaLevelPa);

    /// <param name="VapourPa">Vapour pressure [Pa].</param>
    /// <param name="HumidityRatio">Water per dry air [kg/kg].</param>
    /// <param name="GramPerM3">Water in the air [g/m³].</param>
    /// <param name="EnthalpyKjPerKg">Heat against 0 °C, per dry air [kJ/kg].</param>
    /// <param name="DewPointC">Dew point, frost point below 0 [°C]; negative infinity in air without water.</param>
    public sealed record Result(double VapourPa, double HumidityRatio, double GramPerM3, double EnthalpyKjPerKg, double DewPointC);

    /// <summary>State of the air.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range, or the air would be nothing but steam.</exception>
    public static Result Of(Input air)
    {
        var vapour = SteamTables.SaturationPa(Must.BeWithin(air.AirC, -50, 100)) * Must.BeWithin(air.RelativeHumidityFraction, 0, 1);
        var ratio = 0.621945 * vapour / Must.BePositive(Must.BeWithin(air.PressurePa, 50_000, 120_000) - vapour);
        return new(vapour, ratio, 1000 * vapour / (461.5 * (air.AirC + 273.15)), EnthalpyKjPerKg(air.AirC, ratio),
            vapour > 0.01 ? SteamTables.DewPointC(vapour) : double.NegativeInfinity);
    }

    /// <summary>Heat of moist air against 0 °C, per dry air [kJ/kg].</summary>
    /// <param name="airC">Temperature [°C], −50 to 100.</param>
    /// <param name="humidityRatio">Water per dry air [kg/kg], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double EnthalpyKjPerKg(double airC, double humidityRatio) =>
        (1.006 * Must.BeWithin(airC, -50, 100)) + (Must.NotBeNegative(humidityRatio) * (2501 + (1.86 * airC)));
}
