namespace Wainwright.Methods.Risk;

/// <summary>Risk level from severity and probability after the open US system-safety standard.</summary>
/// <remarks>
/// Rows A to D agree between a public restatement and memory. Row E, severity 3, is from memory (a restatement prints Low):
/// that one cell is marked. The levels are an order, not numbers: never multiplied, never averaged.
/// </remarks>
public static class MilStd882
{
    /// <summary>Tables I to III of the standard.</summary>
    public static readonly Basis Basis = new(
        Source: "MIL-STD-882E, tables I to III, as public restatements give them",
        Assumes: ["one item over its life", "severity and probability judged apart"],
        Caution: "Ordinal scales hide much: keep the scenario in words beside the level. Eliminated means the hazard is gone: no warning, training or guard gets there.",
        How: Provenance.Quoted);

    /// <summary>How bad.</summary>
    public enum Severity
    {
        /// <summary>Death or permanent total disability.</summary>
        Catastrophic = 1,

        /// <summary>Permanent partial disability, or three or more people in hospital.</summary>
        Critical = 2,

        /// <summary>Injury or illness with lost working days.</summary>
        Marginal = 3,

        /// <summary>Injury or illness without a lost day.</summary>
        Negligible = 4,
    }

    /// <summary>How likely, for one item over its life.</summary>
    public enum Probability
    {
        /// <summary>Gone.</summary>
        Eliminated,

        /// <summary>So unlikely that it may be taken not to happen (below 10⁻⁶).</summary>
        Improbable,

        /// <summary>Unlikely but possible (10⁻⁶ to 10⁻³).</summary>
        Remote,

        /// <summary>Some time (10⁻³ to 10⁻²).</summary>
        Occasional,

        /// <summary>Several times (10⁻² to 10⁻¹; band from memory).</summary>
        Probable,

        /// <summary>Often (10⁻¹ and above; band from memory).</summary>
        Frequent,
    }

    /// <summary>Risk level, lowest first.</summary>
    public enum Level
    {
        /// <summary>The hazard is gone.</summary>
        Eliminated,

        /// <summary>Low.</summary>
        Low,

        /// <summary>Medium.</summary>
        Medium,

        /// <summary>Serious.</summary>
        Serious,

        /// <summary>High.</summary>
        High,
    }

    /// <summary>One cell of the matrix.</summary>
    /// <param name="Risk">Level.</param>
    /// <param name="How">How the cell is known.</param>
    public readonly record struct Cell(Level Risk, Provenance How);

    // rows Improbable to Frequent, columns severity 1 to 4
    static readonly Level[][] Rows =
    [
        [Level.Medium, Level.Medium, Level.Medium, Level.Low],
        [Level.Serious, Level.Medium, Level.Medium, Level.Low],
        [Level.High, Level.Serious, Level.Medium, Level.Low],
        [Level.High, Level.High, Level.Serious, Level.Medium],
        [Level.High, Level.High, Level.Serious, Level.Medium],
    ];

    /// <summary>The cell of a severity and a probability.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a value of the scales.</exception>
    public static Cell Of(Severity severity, Probability probability)
    {
        if (!Enum.IsDefined(severity)) throw new ArgumentOutOfRangeException(nameof(severity), severity, "severity: must be 1 to 4");
        if (!Enum.IsDefined(probability)) throw new ArgumentOutOfRangeException(nameof(probability), probability, "probability: must be on the scale");
        if (probability == Probability.Eliminated) return new(Level.Eliminated, Provenance.Quoted);
        var fromMemory = probability == Probability.Improbable && severity == Severity.Marginal;
        return new(Rows[(int)probability - 1][(int)severity - 1], fromMemory ? Provenance.FromMemory : Provenance.Quoted);
    }
}
