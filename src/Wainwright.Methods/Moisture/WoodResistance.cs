namespace Wainwright.Methods.Moisture;

/// <summary>Electric resistance between a meter's pins and the moisture it stands for.</summary>
/// <remarks>
/// Samuelsson: log10(log10(R/MΩ) + 1) = a u + b; a and b fitted here to <see cref="DouglasFir"/>. A reading spans five decades for 18 points:
/// the noisy quantity is log R, never R. Worst error of the fit 0.9 point at 25 %, below 0.4 from 7 to 22 %.
/// </remarks>
public static class WoodResistance
{
    const double Slope = -0.04826, Offset = 1.0710; // least squares over the table

    /// <summary>Samuelsson's form on the Forest Products Laboratory's table.</summary>
    public static readonly Basis Basis = new(
        Source: "Forest Products Laboratory (James), table for Douglas-fir at 80 °F; Samuelsson's form. Table from memory but for its two ends, seen in the notes of an open meter (22 GΩ at 7 %, 500 kΩ at 25 %)",
        Assumes: ["needles 8 mm deep, 32 mm apart, along the grain", "27 °C", "Douglas-fir"],
        Caution: "No curve for plywood or OSB was found. Another wood may part by several points.",
        How: Provenance.FromMemory);

    /// <param name="MoisturePercent">Moisture [% of dry mass].</param>
    /// <param name="Megohm">Resistance [MΩ].</param>
    public readonly record struct Cell(int MoisturePercent, double Megohm);

    /// <summary>The table for Douglas-fir, from memory but for its ends.</summary>
    public static readonly IReadOnlyList<Cell> DouglasFir =
    [
        new(7, 22_400), new(8, 4_780), new(9, 1_660), new(10, 630), new(11, 265), new(12, 120), new(13, 60), new(14, 33), new(15, 18.6), new(16, 11.2),
        new(17, 7.1), new(18, 4.6), new(19, 3.09), new(20, 2.14), new(21, 1.51), new(22, 1.10), new(23, 0.79), new(24, 0.60), new(25, 0.46),
    ];

    /// <summary>Moisture [%] by the fitted form.</summary>
    /// <param name="megohm">Resistance [MΩ], above 0.1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The resistance is 0.1 MΩ or less: the form has no value there.</exception>
    public static double MoisturePercent(double megohm) =>
        Must.BePositive(megohm) > 0.1
            ? (Math.Log10(Math.Log10(megohm) + 1) - Offset) / Slope
            : throw new ArgumentOutOfRangeException(nameof(megohm), megohm, "megohm: must be above 0.1, where the form ends");

    /// <summary>Resistance [MΩ] by the fitted form.</summary>
    /// <param name="moisturePercent">Moisture [%], 5 to 30.</param>
    /// <exception cref="ArgumentOutOfRangeException">The moisture leaves its range.</exception>
    public static double Megohm(double moisturePercent) => Math.Pow(10, Math.Pow(10, (Slope * Must.BeWithin(moisturePercent, 5, 30)) + Offset) - 1);
}
