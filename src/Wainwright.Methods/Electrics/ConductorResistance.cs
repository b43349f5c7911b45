namespace Wainwright.Methods.Electrics;

/// <summary>Largest resistance of a copper conductor by size and class.</summary>
/// <remarks>
/// Table at 20 °C, then R(t) = R20·(234.5 + t)/254.5. Fine-stranded (class 5) conductors are 10 to 16 % above ρ/A of the nominal
/// area: the table is read, never computed. Sizes that it does not hold are refused, never extrapolated.
/// </remarks>
public static class ConductorResistance
{
    /// <summary>IEC 60228.</summary>
    public static readonly Basis Basis = new(
        Source: "IEC 60228, tables of maximum conductor resistance at 20 °C (three independent copies agree); temperature form from memory",
        Assumes: ["annealed copper to the standard", "size as printed on the sheath"],
        Caution: "Cheap cable may be undersized or copper-clad aluminium: weigh or measure a length when it matters.",
        How: Provenance.Quoted);

    /// <summary>How a conductor is made.</summary>
    public enum Make
    {
        /// <summary>Solid or stranded, classes 1 and 2, plain.</summary>
        Stranded,

        /// <summary>Fine-stranded, class 5, plain.</summary>
        FinePlain,

        /// <summary>Fine-stranded, class 5, tinned.</summary>
        FineTinned,
    }

    // mm², Ω/km at 20 °C: classes 1 and 2 plain, class 5 plain, class 5 tinned. 50 mm² class 5 really is below class 2.
    static readonly (double Mm2, double Stranded, double FinePlain, double FineTinned)[] Table =
    [
        (0.5, 36.0, 39.0, 40.1), (0.75, 24.5, 26.0, 26.7), (1.0, 18.1, 19.5, 20.0), (1.5, 12.1, 13.3, 13.7), (2.5, 7.41, 7.98, 8.21),
        (4, 4.61, 4.95, 5.09), (6, 3.08, 3.30, 3.39), (10, 1.83, 1.91, 1.95), (16, 1.15, 1.21, 1.24), (25, 0.727, 0.780, 0.795),
        (35, 0.524, 0.554, 0.565), (50, 0.387, 0.386, 0.393), (70, 0.268, 0.272, 0.277),
    ];

    /// <summary>Sizes that the table holds [mm²], smallest first.</summary>
    public static readonly IReadOnlyList<double> SizesMm2 = [.. Table.Select(r => r.Mm2)];

    /// <param name="SizeMm2">Nominal size [mm²], one of <see cref="SizesMm2"/>.</param>
    /// <param name="Made">How it is made.</param>
    /// <param name="CopperC">Temperature of the copper [°C], −40 to 150.</param>
    public sealed record Input(double SizeMm2, Make Made, double CopperC = 20);

    /// <param name="OhmPerKm">Largest resistance at that temperature [Ω/km].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double OhmPerKm, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">The size is not in the table, or the temperature leaves its range.</exception>
    public static Result Of(Input wire)
    {
        var row = Array.FindIndex(Table, r => r.Mm2 == wire.SizeMm2);
        if (row < 0) throw new ArgumentOutOfRangeException(nameof(wire), wire.SizeMm2, "SizeMm2: not in the table of IEC 60228 sizes 0.5 to 70 mm²");
        var cold = wire.Made switch { Make.Stranded => Table[row].Stranded, Make.FinePlain => Table[row].FinePlain, _ => Table[row].FineTinned };
        return new(cold * (234.5 + Must.BeWithin(wire.CopperC, -40, 150)) / 254.5, []);
    }
}
