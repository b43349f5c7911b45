namespace Wainwright.Methods.Moisture.Field;

/// <summary>What is thought of a damp field before any reading: how far wetness reaches, how large it is, how dry the dry board is.</summary>
/// <remarks>
/// Reach and size are not fitted to one best value: all pairs of the two grids are weighed by the readings and kept.
/// The numbers are this project's own, common practice, no source: stains seen in opened vans reach from two hands to a metre.
/// </remarks>
public sealed record FieldPriors
{
    /// <summary>Distances over which wetness forgets itself (correlation about 0.13) [mm], each above 0.</summary>
    public IReadOnlyList<double> RangesMm { get; init; } = [200, 350, 600, 1000, 1700];

    /// <summary>Weight of each range before the readings, any scale.</summary>
    public IReadOnlyList<double> RangeWeights { get; init; } = [1, 2, 3, 2, 1];

    /// <summary>The moisture that no board goes below [%], below every dry board: the field is then even in the logarithm of what is over it. Null: even in points.</summary>
    public double? FloorPercent { get; init; }

    /// <summary>Standard deviations of the field round its dry board, each above 0: in points, or with a floor in e-folds of what is over it.</summary>
    public IReadOnlyList<double> Spreads { get; init; } = [0.35, 0.6, 0.95, 1.4];

    /// <summary>Weight of each spread before the readings, any scale.</summary>
    public IReadOnlyList<double> SpreadWeights { get; init; } = [1, 2, 2, 1];

    /// <summary>Dry board of each group of sheets before the readings [%].</summary>
    public IReadOnlyList<double> DryPercent { get; init; } = [12];

    /// <summary>Standard deviation of that [points], above 0.</summary>
    public double DrySigmaPoints { get; init; } = 2;

    /// <summary>Group of each sheet, a place in <see cref="DryPercent"/>; null when all are one group.</summary>
    public IReadOnlyList<int>? GroupOfSheet { get; init; }

    /// <summary>What each cell is thought to hold before any reading [%, 0–300], in the order of the net; the field is then the doubt about it. Null: the dry board of its group.</summary>
    public IReadOnlyList<double>? TrendPercent { get; init; }

    /// <summary>The field and its sources.</summary>
    public static readonly Basis Basis = new(
        Source: "Lindgren, Rue and Lindström 2011 (J. R. Stat. Soc. B 73): a Matérn field of smoothness 1 from a diffusion operator, precision (κ²C + G) C⁻¹ (κ²C + G), range √8/κ; censored readings by expectation propagation, Minka 2001",
        Assumes: ["wetness varies smoothly along the sheets", "errors of readings are independent", "range and spread the same on all sheets"],
        Caution: "A map of what is likely between readings, not a measurement. Where no reading is near it returns what was thought before.",
        How: Provenance.FromMemory);
}
