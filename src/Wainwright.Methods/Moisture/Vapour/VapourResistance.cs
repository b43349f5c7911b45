namespace Wainwright.Methods.Moisture.Vapour;

/// <summary>What stands in the way of vapour, in the units the trades use.</summary>
/// <remarks>
/// δ = 2.306e-5/(461.5 T)·(T/273.15)^1.81·(p₀/p); s_d = μ e; Z = s_d/δ; 1 perm = 5.721e-11 kg/(m²·s·Pa).
/// 1 GN·s/kg = 1 MN·s/g = 1e9 m²·s·Pa/kg (a stored direction prints 1e6 once: a misprint).
/// </remarks>
public static class VapourResistance
{
    /// <summary>Schirmer.</summary>
    public static readonly Basis Basis = new(
        Source: "Schirmer's equation for still air (from memory); ISO 10456 uses 2.0e-10; perm as in SBi direction 224, annex A",
        Assumes: ["still air", "vapour only: no air through cracks"],
        Caution: "One cut, one screw hole or one seam can pass more than the whole sheet.",
        How: Provenance.FromMemory);

    /// <summary>One US perm [kg/(m²·s·Pa)].</summary>
    public const double PermKgPerM2SPa = 5.7214e-11;

    /// <summary>Permeability of still air [kg/(m·s·Pa)].</summary>
    /// <param name="airC">Temperature [°C], −40 to 90.</param>
    /// <param name="pressurePa">Air pressure [Pa], 50 000 to 120 000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double AirPermeability(double airC, double pressurePa = Air.MoistAir.SeaLevelPa)
    {
        var t = Must.BeWithin(airC, -40, 90) + 273.15;
        return 2.306e-5 / (461.5 * t) * Math.Pow(t / 273.15, 1.81) * (Air.MoistAir.SeaLevelPa / Must.BeWithin(pressurePa, 50_000, 120_000));
    }

    /// <summary>Layer of still air that stops as much [m]: s_d = μ e.</summary>
    /// <param name="resistanceFactor">μ [-], 1 or more.</param>
    /// <param name="thicknessMm">Thickness [mm], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double AirLayerM(double resistanceFactor, double thicknessMm) =>
        (double.IsPositiveInfinity(resistanceFactor) ? resistanceFactor : Must.BeWithin(resistanceFactor, 1, 1e12)) * Must.NotBeNegative(thicknessMm) / 1000;

    /// <summary>Resistance Z of an air layer [m²·s·Pa/kg].</summary>
    /// <param name="airLayerM">s_d [m], 0 or more.</param>
    /// <param name="airC">Temperature [°C], −40 to 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double OfAirLayer(double airLayerM, double airC) => Must.NotBeNegative(airLayerM) / AirPermeability(airC);

    /// <summary>Resistance Z of a permeance in perm [m²·s·Pa/kg].</summary>
    /// <param name="perm">Permeance [US perm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The permeance is not above 0.</exception>
    public static double OfPerm(double perm) => 1 / (Must.BePositive(perm) * PermKgPerM2SPa);

    /// <summary>Factor μ of a resistivity [-].</summary>
    /// <param name="giganewtonSPerKgM">Resistivity [GN·s/(kg·m)], above 0.</param>
    /// <param name="airC">Temperature [°C], −40 to 90.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double FactorOf(double giganewtonSPerKgM, double airC) => Must.BePositive(giganewtonSPerKgM) * 1e9 * AirPermeability(airC);

    /// <summary>Water through a resistance [g/(m²·d)].</summary>
    /// <param name="differencePa">Difference of vapour pressure [Pa].</param>
    /// <param name="resistance">Z [m²·s·Pa/kg], above 0; infinite for metal.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double GramPerM2Day(double differencePa, double resistance) =>
        double.IsPositiveInfinity(resistance) ? 0 : Must.BeFinite(differencePa) / Must.BePositive(resistance) * 1000 * 86_400;
}
