namespace Wainwright.Methods.Moisture;

/// <summary>Water that wood settles at in air of a given temperature and humidity.</summary>
/// <remarks>
/// M = (1800/W)·[K h/(1 − K h) + (K1 K h + 2 K1 K2 K²h²)/(1 + K1 K h + K1 K2 K²h²)] % of the dry mass, h relative humidity,
/// W = 349 + 1.29 t + 0.0135 t²,  K = 0.805 + 7.36e-4 t − 2.73e-6 t²,  K1 = 6.27 − 9.38e-3 t − 3.03e-4 t²,  K2 = 1.91 + 4.07e-2 t − 2.93e-4 t².
/// </remarks>
public static class WoodEquilibrium
{
    /// <summary>Hailwood and Horrobin, as the wood handbook uses it.</summary>
    public static readonly Basis Basis = new(
        Source: "USDA Forest Products Laboratory, Wood Handbook, FPL-GTR-190, chapter 4, equation 4-5 and table 4-2 (Celsius coefficients as an open implementation carries them)",
        Assumes: ["a mean of species, between wetting and drying", "solid wood: hot-pressed panels settle lower"],
        Caution: "Published tables part by two points. For plywood take 0.8 to 1.0 of it, and say so.",
        How: Provenance.Quoted);

    /// <param name="AirC">Temperature [°C], −1 to 132.</param>
    /// <param name="RelativeHumidityFraction">Relative humidity [0–1], 0 to 0.95.</param>
    public sealed record Input(double AirC, double RelativeHumidityFraction);

    /// <param name="MoisturePercent">Moisture content [% of dry mass].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double MoisturePercent, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">The temperature is not within −50 to 150 °C, or the humidity not within 0 to 1.</exception>
    public static Result Of(Input air)
    {
        double t = Must.BeWithin(air.AirC, -50, 150), h = Must.BeWithin(air.RelativeHumidityFraction, 0, 1);
        var w = 349 + (1.29 * t) + (0.0135 * t * t);
        var k = 0.805 + (7.36e-4 * t) - (2.73e-6 * t * t);
        var k1 = 6.27 - (9.38e-3 * t) - (3.03e-4 * t * t);
        var k2 = 1.91 + (4.07e-2 * t) - (2.93e-4 * t * t);
        var kh = k * h;
        var percent = 1800 / w * ((kh / (1 - kh)) + (((k1 * kh) + (2 * k1 * k2 * kh * kh)) / (1 + (k1 * kh) + (k1 * k2 * kh * kh))));
        List<string> outside = [];
        if (t is < -1.2 or > 132) outside.Add("temperature outside −1 to 132 °C");
        if (h > 0.95) outside.Add("humidity above 95 %: extrapolated");
        return new(percent, outside);
    }
}
