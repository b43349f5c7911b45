namespace Wainwright.Methods.Moisture;

/// <summary>Vapour pressure of air that can hold no more water.</summary>
/// <remarks>
/// 610.5·exp(17.269 t/(237.3 + t)) Pa from 0 °C up, 610.5·exp(21.875 t/(265.5 + t)) below. At most 0.2 % from the
/// international steam tables between 0 and 60 °C, 0.5 % at −20.
/// </remarks>
public static class SaturationPressure
{
    /// <summary>ISO 13788.</summary>
    public static readonly Basis Basis = new(
        Source: "ISO 13788:2012, annex E, equations E.7 and E.8 (form seen in two open implementations; annex number from memory)",
        Assumes: ["over water from 0 °C up, over ice below"],
        Caution: "Humidity meters are good to 2 or 3 % of humidity at best: that outweighs the formula.",
        How: Provenance.Quoted);

    /// <param name="AirC">Air temperature [°C], −30 to 60.</param>
    public sealed record Input(double AirC);

    /// <param name="PressurePa">Saturation pressure [Pa].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double PressurePa, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">The temperature is not finite, or outside −200 to 200 °C.</exception>
    public static Result Of(Input air)
    {
        var t = Must.BeWithin(air.AirC, -200, 200);
        return new(
            610.5 * Math.Exp(t >= 0 ? 17.269 * t / (237.3 + t) : 21.875 * t / (265.5 + t)),
            t is < -30 or > 60 ? ["air temperature outside −30 to 60 °C"] : []);
    }
}
