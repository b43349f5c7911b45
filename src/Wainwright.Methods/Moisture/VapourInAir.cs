namespace Wainwright.Methods.Moisture;

/// <summary>Grams of water that a cubic metre of air carries, and the airing that a source of vapour asks for.</summary>
/// <remarks>ρv = p/(461.5·T);  needed airflow Q = G/(ρv,in − ρv,out).</remarks>
public static class VapourInAir
{
    /// <summary>Gas law of water vapour with ISO 13788 saturation.</summary>
    public static readonly Basis Basis = new(
        Source: "Ideal gas law with 461.5 J/(kg·K) for water vapour; saturation after ISO 13788",
        Assumes: ["inside air is mixed", "nothing soaks up or gives off vapour"],
        Caution: "Soft goods and boards store a night's vapour: steady airing figures are for a steady state.",
        How: Provenance.Quoted);

    /// <summary>Water in the air [g/m³].</summary>
    /// <param name="airC">Air temperature [°C].</param>
    /// <param name="relativeHumidityFraction">Relative humidity [0–1].</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double GramPerM3(double airC, double relativeHumidityFraction) =>
        1000 * SaturationPressure.Of(new(airC)).PressurePa * Must.BeWithin(relativeHumidityFraction, 0, 1) / (461.5 * (airC + 273.15));

    /// <summary>Airflow that carries a source of vapour away [m³/h]; positive infinity when the outside air is as wet.</summary>
    /// <param name="gramPerH">Source [g/h], 0 or more.</param>
    /// <param name="insideGramPerM3">Inside, as it may become [g/m³].</param>
    /// <param name="outsideGramPerM3">Outside [g/m³].</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is negative.</exception>
    public static double AiringM3PerH(double gramPerH, double insideGramPerM3, double outsideGramPerM3)
    {
        var room = Must.NotBeNegative(insideGramPerM3) - Must.NotBeNegative(outsideGramPerM3);
        return Must.NotBeNegative(gramPerH) == 0 ? 0 : room > 0 ? gramPerH / room : double.PositiveInfinity;
    }
}
