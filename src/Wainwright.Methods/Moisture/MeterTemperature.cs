namespace Wainwright.Methods.Moisture;

/// <summary>What a pin meter's reading becomes at the temperature the wood really has.</summary>
/// <remarks>
/// Meters are set for 20 °C; cold wood conducts less and reads low. Four published forms, kept apart because they disagree by up to a point:
/// <see cref="TradeRule"/>, <see cref="RoundedChart"/>, <see cref="TenKelvinRule"/>, <see cref="Regression"/>.
/// Species comes first, then temperature (a maker's handbook).
/// </remarks>
public static class MeterTemperature
{
    const double SetForC = 20, FreeBandK = 5;

    /// <summary>The trade rule, the one that a reading is corrected by here.</summary>
    public static readonly Basis Basis = new(
        Source: "Handbooks of two makers of pin meters: half a point per 5 K from 20 °C, needed only when off by more than 5 K",
        Assumes: ["temperature of the wood, not of the air", "meter set for 20 °C and without a correction of its own"],
        Caution: "Correct once: many meters do it themselves.",
        How: Provenance.Read);

    /// <summary>A second maker's chart.</summary>
    public static readonly Basis RoundedChartBasis = new(
        Source: "Handbook of another maker: a chart in whole points; 15 % becomes 17 at 10 °C, 12 at 40, 11 at 50; straight between, 0 at 20 °C by the setting of the meter",
        Assumes: ["the points printed for 15 % (and 20 % at 10 °C) hold for other readings"],
        Caution: "Rounded to whole points.",
        How: Provenance.Read);

    /// <summary>A third maker's rule.</summary>
    public static readonly Basis TenKelvinRuleBasis = new(
        Source: "Handbook of a third maker: 10 K wrong makes about 1.5 points about the middle of the range",
        Assumes: ["middle of the range", "straight line"],
        Caution: "An estimate of the error, not a correction.",
        How: Provenance.Read);

    /// <summary>The regression of Pfaff and Garrahan.</summary>
    public static readonly Basis RegressionBasis = new(
        Source: "Pfaff and Garrahan (Forintek), as used with a field guide to moisture meters; not found in any text opened",
        Assumes: ["Douglas-fir scale", "species constants a and b known: none were found for plywood or OSB"],
        Caution: "From memory: agrees with the read rules in slope (0.10 to 0.13 point per K at 15 %), proves nothing on its own. Give panels a spread of 2 points either way.",
        How: Provenance.FromMemory);

    /// <summary>Reading [%] by the trade rule: 0.1 point per K from 20 °C, nothing within 5 K.</summary>
    /// <param name="readingPercent">What the meter shows [%], 0 to 100.</param>
    /// <param name="woodC">Temperature of the wood [°C], −40 to 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double TradeRule(double readingPercent, double woodC)
    {
        var off = Off(woodC);
        return Reading(readingPercent) - (Math.Abs(off) > FreeBandK ? 0.1 * off : 0);
    }

    /// <summary>Reading [%] by the rounded chart; null outside 10 to 50 °C, where nothing is printed.</summary>
    /// <param name="readingPercent">What the meter shows [%], 0 to 100.</param>
    /// <param name="woodC">Temperature of the wood [°C], −40 to 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double? RoundedChart(double readingPercent, double woodC)
    {
        var off = Off(woodC);
        var reading = Reading(readingPercent);
        return off switch
        {
            < -10 or > 30 => null,
            <= 0 => reading - (0.2 * off),
            <= 20 => reading - (0.15 * off),
            _ => reading - 3 - (0.1 * (off - 20)),
        };
    }

    /// <summary>Reading [%] by the third maker's rule: 0.15 point per K from 20 °C.</summary>
    /// <param name="readingPercent">What the meter shows [%], 0 to 100.</param>
    /// <param name="woodC">Temperature of the wood [°C], −40 to 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double TenKelvinRule(double readingPercent, double woodC) => Reading(readingPercent) - (0.15 * Off(woodC));

    /// <summary>Moisture [%] by the regression: ((R + 0.567 − 0.0260 t + 0.000051 t²)/(0.881·1.0056^t) − b)/a.</summary>
    /// <param name="readingPercent">What the meter shows on the Douglas-fir scale [%], 0 to 100.</param>
    /// <param name="woodC">Temperature of the wood [°C], −40 to 90.</param>
    /// <param name="speciesSlope">a of the species, above 0; 1 for Douglas-fir.</param>
    /// <param name="speciesOffset">b of the species [points]; 0 for Douglas-fir.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double Regression(double readingPercent, double woodC, double speciesSlope = 1, double speciesOffset = 0)
    {
        var t = SetForC + Off(woodC);
        return (((Reading(readingPercent) + 0.567 - (0.0260 * t) + (0.000051 * t * t)) / (0.881 * Math.Pow(1.0056, t))) - Must.BeFinite(speciesOffset))
            / Must.BePositive(speciesSlope);
    }

    static double Reading(double readingPercent) => Must.BeWithin(readingPercent, 0, 100);

    static double Off(double woodC) => Must.BeWithin(woodC, -40, 90) - SetForC;
}
