namespace Wainwright.Methods.Risk;

/// <summary>Risk level of an injury scenario after the EU guidelines for consumer products.</summary>
/// <remarks>
/// Probability of a scenario is the product of the probabilities of its steps. One cell (severity 1, above 1/1 000: low) is
/// confirmed by the guidelines' worked example; all other cells come from memory and are marked so.
/// </remarks>
public static class EuProductRisk
{
    /// <summary>The guidelines.</summary>
    public static readonly Basis Basis = new(
        Source: "Commission Decision 2010/15/EU, part IV (replaced by (EU) 2019/417): risk assessment guidelines for consumer products",
        Assumes: ["one injury scenario at a time", "foreseeable life of the product"],
        Caution: "The table's cells come from memory but for one: use it to compare, not to cite. Test how the level moves when a guess moves.",
        How: Provenance.FromMemory);

    /// <summary>Risk level, lowest first.</summary>
    public enum Level
    {
        /// <summary>Low.</summary>
        Low,

        /// <summary>Medium.</summary>
        Medium,

        /// <summary>High.</summary>
        High,

        /// <summary>Serious.</summary>
        Serious,
    }

    /// <summary>One cell of the table.</summary>
    /// <param name="Risk">Level.</param>
    /// <param name="How">How the cell is known.</param>
    public readonly record struct Cell(Level Risk, Provenance How);

    // probability above this bound; columns severity 1 to 4
    static readonly (double Above, Level[] Levels)[] Rows =
    [
        (0.5, [Level.High, Level.Serious, Level.Serious, Level.Serious]),
        (1e-1, [Level.Medium, Level.Serious, Level.Serious, Level.Serious]),
        (1e-2, [Level.Medium, Level.Serious, Level.Serious, Level.Serious]),
        (1e-3, [Level.Low, Level.High, Level.Serious, Level.Serious]),
        (1e-4, [Level.Low, Level.Medium, Level.High, Level.Serious]),
        (1e-5, [Level.Low, Level.Low, Level.Medium, Level.High]),
        (1e-6, [Level.Low, Level.Low, Level.Low, Level.Medium]),
        (-1, [Level.Low, Level.Low, Level.Low, Level.Low]),
    ];

    /// <summary>The level of a scenario.</summary>
    /// <param name="severity">Severity of the injury, 1 (first aid) to 4 (fatal or loss of limb).</param>
    /// <param name="probability">Probability over the foreseeable life [0–1].</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static Cell Of(int severity, double probability)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(severity, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(severity, 4);
        Must.BeWithin(probability, 0, 1);
        var row = Array.FindIndex(Rows, r => probability > r.Above);
        return new(Rows[row].Levels[severity - 1], severity == 1 && row == 3 ? Provenance.Quoted : Provenance.FromMemory);
    }

    /// <summary>Probability of a scenario from its steps [0–1].</summary>
    /// <param name="steps">Probability of each step [0–1].</param>
    /// <exception cref="ArgumentOutOfRangeException">A step leaves its range.</exception>
    public static double Probability(params IReadOnlyList<double> steps)
    {
        var all = 1.0;
        foreach (var step in steps) all *= Must.BeWithin(step, 0, 1);
        return all;
    }
}
