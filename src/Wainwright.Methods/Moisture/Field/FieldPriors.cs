namespace Wainwright.Methods.Moisture.Field;

/// <summary>What is thought of a damp field before any reading: how far wetness reaches, how large it is, how rare, and how dry the dry board is.</summary>
/// <remarks>
/// Moisture is the dry board, a little uneven, and on it what is over zero of a field whose mean lies below zero: most board is
/// plainly dry, a leak is where the field comes up. Reach, size and level are not fitted to one best value: all combinations of the
/// grids are weighed by the readings and the likely ones kept. The numbers are this project's own, common practice, no source, tried
/// on invented leaks (docs/damp.md).
/// </remarks>
public sealed record FieldPriors
{
    /// <summary>Distances over which wetness forgets itself (correlation about 0.14) [mm], each above 0.</summary>
    public IReadOnlyList<double> RangesMm { get; init; } = [350, 700, 1400, 2800];

    /// <summary>Weight of each range before the readings, any scale.</summary>
    public IReadOnlyList<double> RangeWeights { get; init; } = [1, 1, 1, 1];

    /// <summary>Sizes: standard deviations of the field under the ramp [points], each above 0.</summary>
    public IReadOnlyList<double> Spreads { get; init; } = [6, 16, 45];

    /// <summary>Weight of each size before the readings, any scale.</summary>
    public IReadOnlyList<double> SpreadWeights { get; init; } = [1, 1, 1];

    /// <summary>How far the field's mean lies below zero, in sizes [-]: 2 leaves one place in forty-four wet, 3 one in seven hundred, 4 hardly any.</summary>
    public IReadOnlyList<double> Levels { get; init; } = [2, 3, 4];

    /// <summary>Weight of each level before the readings, any scale.</summary>
    public IReadOnlyList<double> LevelWeights { get; init; } = [1, 1, 1];

    /// <summary>Dry board of each group of sheets before the readings [%].</summary>
    public IReadOnlyList<double> DryPercent { get; init; } = [12];

    /// <summary>Standard deviation of that [points], above 0.</summary>
    public double DrySigmaPoints { get; init; } = 2;

    /// <summary>Group of each sheet, a place in <see cref="DryPercent"/>; null when all are one group.</summary>
    public IReadOnlyList<int>? GroupOfSheet { get; init; }

    /// <summary>What each cell is thought to hold before any reading [%, 0–300], in the order of the net; the field is then the doubt about it, <see cref="Spreads"/> its size. Null, or where it is no more than the dry board: the dry board of its group.</summary>
    public IReadOnlyList<double>? TrendPercent { get; init; }

    /// <summary>The field and its sources.</summary>
    public static readonly Basis Basis = new(
        Source: "Lindgren, Rue and Lindström 2011 (J. R. Stat. Soc. B 73): a Matérn field of smoothness 2 from a diffusion operator K = κ²C + G, covariance K⁻¹CK⁻¹CK⁻¹, range 4/κ; the part over zero of such a field over the dry board; readings by expectation propagation, Minka 2001",
        Assumes: ["wetness varies smoothly along the sheets and is rare", "errors of readings are independent", "range, size and level the same on all sheets"],
        Caution: "A map of what is likely between readings, not a measurement. Where no reading is near it returns what was thought before.",
        How: Provenance.FromMemory);
}
