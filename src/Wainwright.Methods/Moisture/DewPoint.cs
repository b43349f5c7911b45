namespace Wainwright.Methods.Moisture;

/// <summary>The temperature at which air of a given state begins to wet a surface.</summary>
/// <remarks>Inverse of <see cref="SaturationPressure"/>: with k = ln(p/610.5), 237.3 k/(17.269 − k) from 0 °C up, 265.5 k/(21.875 − k) below.</remarks>
public static class DewPoint
{
    /// <summary>ISO 13788, inverted.</summary>
    public static readonly Basis Basis = new(
        Source: "ISO 13788:2012, annex E, equations E.9 and E.10 (form seen in open implementations; annex number from memory)",
        Assumes: ["the air is mixed: the meter's reading holds at the surface"],
        Caution: "Says where water can form, not how much, nor since when.",
        How: Provenance.Quoted);

    /// <param name="AirC">Air temperature [°C], −30 to 60.</param>
    /// <param name="RelativeHumidityFraction">Relative humidity [0–1], above 0.</param>
    public sealed record Input(double AirC, double RelativeHumidityFraction);

    /// <param name="DewPointC">Dew point [°C]; below 0 the frost point.</param>
    /// <param name="VapourPa">Vapour pressure of the air [Pa].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double DewPointC, double VapourPa, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or humidity is not in (0, 1].</exception>
    public static Result Of(Input air)
    {
        var saturated = SaturationPressure.Of(new(air.AirC));
        var vapour = saturated.PressurePa * Must.BeWithin(Must.BePositive(air.RelativeHumidityFraction), 0, 1);
        var k = Math.Log(vapour / 610.5);
        return new(k >= 0 ? 237.3 * k / (17.269 - k) : 265.5 * k / (21.875 - k), vapour, saturated.OutsideRange);
    }
}
