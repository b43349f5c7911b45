namespace Wainwright.Methods.Electrics;

/// <summary>Current that a stranded copper conductor may carry below 50 V, by gauge and insulation temperature.</summary>
/// <remarks>Table 5 for 30 °C air, times the factor of an engine space (50 °C), times the factor of a bundle.</remarks>
public static class Ampacity
{
    /// <summary>33 CFR 183.425 table 5.</summary>
    public static readonly Basis Basis = new(
        Source: "33 CFR 183.425, table 5 (boats, below 50 V); bundle factors from a reprint of a US Coast Guard guideline table",
        Assumes: ["insulated, stranded copper", "30 °C air, single conductor, unless the factors say otherwise"],
        Caution: "A boat rule applied to a van: say so. The Coast Guard sets no bundle factor below 50 V; it is applied here because a van's loom is a bundle. Other tables give other figures for the same wire.",
        How: Provenance.Read);

    static readonly int[] InsulationC = [60, 75, 80, 90, 105, 125];

    static readonly Dictionary<int, int[]> Table = new()
    {
        [18] = [10, 10, 15, 20, 20, 25], [16] = [15, 15, 20, 25, 25, 30], [14] = [20, 20, 25, 30, 35, 40], [12] = [25, 25, 35, 40, 45, 50],
        [10] = [40, 40, 50, 55, 60, 70], [8] = [55, 65, 70, 70, 80, 90], [6] = [80, 95, 100, 100, 120, 125], [4] = [105, 125, 130, 135, 160, 170],
        [2] = [140, 170, 175, 180, 210, 225], [1] = [165, 195, 210, 210, 245, 265], [0] = [195, 230, 245, 245, 285, 305],
        [-1] = [225, 265, 285, 285, 330, 355], [-3] = [300, 360, 385, 385, 445, 475],
    };

    // 0.85 at 105 °C was seen in a cable maker's table; the others of note 1 come from memory
    static readonly double[] EngineSpace = [0.58, 0.75, 0.78, 0.82, 0.85, 0.89];

    /// <param name="Gauge">AWG number; 0 to −3 for 1/0 to 4/0.</param>
    /// <param name="InsulationC">Insulation temperature rating [°C]: 60, 75, 80, 90, 105 or 125.</param>
    /// <param name="InEngineSpace">The air is at 50 °C.</param>
    /// <param name="LoadedTogether">Current-carrying conductors in the bundle, this one included; 1 or more.</param>
    public sealed record Input(int Gauge, int InsulationC, bool InEngineSpace = false, int LoadedTogether = 1);

    /// <param name="Amp">Current it may carry [A].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double Amp, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">The table has no such gauge or insulation rating, or the bundle is empty.</exception>
    public static Result Of(Input wire)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(wire.LoadedTogether, 1);
        var column = Array.IndexOf(InsulationC, wire.InsulationC);
        if (column < 0) throw new ArgumentOutOfRangeException(nameof(wire), wire.InsulationC, "InsulationC: the table holds 60, 75, 80, 90, 105 and 125");
        if (!Table.TryGetValue(wire.Gauge, out var row)) throw new ArgumentOutOfRangeException(nameof(wire), wire.Gauge, "Gauge: not in the table");
        return new(row[column] * (wire.InEngineSpace ? EngineSpace[column] : 1) * BundleFactor(wire.LoadedTogether), []);
    }

    /// <summary>What a bundle leaves of each conductor's ampacity [-].</summary>
    /// <param name="loadedTogether">Current-carrying conductors in the bundle, 1 or more.</param>
    public static double BundleFactor(int loadedTogether) => loadedTogether switch { <= 2 => 1, 3 => 0.70, <= 6 => 0.60, <= 24 => 0.50, _ => 0.40 };
}
