namespace Wainwright.Methods.Combustion;

/// <summary>Carbon monoxide in air: parts per million to milligrams per cubic metre and back; reading freed of excess air.</summary>
/// <remarks>mg/m³ = ppm·28.01/24.465 at 25 °C and 101.325 kPa. Air-free = measured·20.9/(20.9 − O2 %).</remarks>
public static class CarbonMonoxide
{
    /// <summary>Molar volume at 25 °C and one atmosphere.</summary>
    public static readonly Basis Basis = new(
        Source: "Ideal gas at 25 °C and 101.325 kPa; OSHA chemical data sheet CH_225600 gives 35 ppm as 40 mg/m³, 200 as 229",
        Assumes: ["25 °C and sea-level pressure"],
        Caution: "A meter that reads 0 beside a cold heater proves nothing about the next hour: test hot, doors shut, fans on.",
        How: Provenance.Read);

    const double MolarMassG = 28.01, MolarVolumeL = 24.465, AirOxygenPercent = 20.9;

    /// <summary>Concentration as mass per volume [mg/m³].</summary>
    /// <param name="ppm">Parts per million by volume, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative.</exception>
    public static double ToMgPerM3(double ppm) => Must.NotBeNegative(ppm) * MolarMassG / MolarVolumeL;

    /// <summary>Concentration as parts per million by volume.</summary>
    /// <param name="mgPerM3">Mass per volume [mg/m³], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative.</exception>
    public static double ToPpm(double mgPerM3) => Must.NotBeNegative(mgPerM3) * MolarVolumeL / MolarMassG;

    /// <summary>Flue reading freed of excess air [ppm].</summary>
    /// <param name="ppm">Measured [ppm], 0 or more.</param>
    /// <param name="oxygenPercent">Oxygen in the sample [%], 0 to below 20.9.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range: at 20.9 % the sample is plain air.</exception>
    public static double AirFreePpm(double ppm, double oxygenPercent)
    {
        Must.BeWithin(oxygenPercent, 0, 20.8);
        return Must.NotBeNegative(ppm) * AirOxygenPercent / (AirOxygenPercent - oxygenPercent);
    }
}
