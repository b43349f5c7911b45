namespace Wainwright.Methods.Moisture.Air;

/// <summary>Saturation pressure and heat of evaporation close to the international steam tables.</summary>
/// <remarks>
/// Pressure over water and ice: Hyland and Wexler, exp(c/T + … + c ln T). <see cref="SaturationPressure"/> (ISO 13788) stays the one that building
/// methods are written with; it is up to 0.2 % from this.
/// </remarks>
public static class SteamTables
{
    /// <summary>Two sets of equations.</summary>
    public static readonly Basis Basis = new(
        Source: "Hyland and Wexler as in ASHRAE Fundamentals, chapter 1; heat of evaporation as a line through a steam table at 0 and 40 °C (coefficients from memory, held by printed tables)",
        Assumes: ["pure water"],
        Caution: "Older printed tables are up to 0.1 % from the modern ones.",
        How: Provenance.FromMemory);

    /// <summary>Saturation pressure [Pa], over ice below 0 °C.</summary>
    /// <param name="airC">Temperature [°C], −100 to 200.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature leaves its range.</exception>
    public static double SaturationPa(double airC)
    {
        var t = Must.BeWithin(airC, -100, 200) + 273.15;
        return airC < 0
            ? Math.Exp((-5.6745359e3 / t) + 6.3925247 - (9.677843e-3 * t) + (6.2215701e-7 * t * t) + (2.0747825e-9 * t * t * t) - (9.484024e-13 * t * t * t * t) + (4.1635019 * Math.Log(t)))
            : Math.Exp((-5.8002206e3 / t) + 1.3914993 - (4.8640239e-2 * t) + (4.1764768e-5 * t * t) - (1.4452093e-8 * t * t * t) + (6.5459673 * Math.Log(t)));
    }

    /// <summary>Temperature at which air of a vapour pressure is saturated [°C], by halving.</summary>
    /// <param name="vapourPa">Vapour pressure [Pa], 0.002 to 1.5 million.</param>
    /// <exception cref="ArgumentOutOfRangeException">The pressure leaves its range.</exception>
    public static double DewPointC(double vapourPa)
    {
        Must.BeWithin(vapourPa, SaturationPa(-100), SaturationPa(200));
        double low = -100, high = 200;
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            if (SaturationPa(middle) < vapourPa) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }

    /// <summary>Heat that a kilogram of water takes with it when it evaporates [kJ/kg]: 2500.9 − 2.37 t, a line through the steam tables' ends.</summary>
    /// <param name="waterC">Temperature [°C], 0 to 40, where the line keeps within 0.1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature leaves its range.</exception>
    public static double EvaporationKjPerKg(double waterC) => 2500.9 - (2.37 * Must.BeWithin(waterC, 0, 40));
}
