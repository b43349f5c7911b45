namespace Wainwright.Methods.Labour;

/// <summary>Time of a reach or a move of the hand by distance: the MTM-1 data card, in TMU (1 TMU = 0.036 s).</summary>
/// <remarks>
/// Between tabled distances linear; beyond 30 in so much per inch. A weight above 2.5 lb: time = table·factor + constant of its class.
/// Case A to a fixed place, B to one that varies, C to one among others, E to nowhere in particular.
/// </remarks>
public static class ReachAndMove
{
    /// <summary>MTM-1 data card.</summary>
    public static readonly Basis Basis = new(
        Source: "MTM-1 data card, tables I (reach) and II (move), as a public copy prints it",
        Assumes: ["a trained worker at normal pace on a bench"],
        Caution: "Clean bench work: dirt, gloves, kneeling and corroded screws come on top. A lower bound and a shape, not a quote.",
        How: Provenance.Quoted);

    /// <summary>Seconds in one time measurement unit.</summary>
    public const double SecondsPerTmu = 0.036;

    /// <summary>What the hand does.</summary>
    public enum Case
    {
        /// <summary>Reach to a fixed place or the other hand.</summary>
        ReachA,

        /// <summary>Reach to a single object whose place varies.</summary>
        ReachB,

        /// <summary>Reach to an object among others.</summary>
        ReachC,

        /// <summary>Reach to nowhere in particular.</summary>
        ReachE,

        /// <summary>Move to the other hand or a stop.</summary>
        MoveA,

        /// <summary>Move to about a place.</summary>
        MoveB,

        /// <summary>Move to an exact place.</summary>
        MoveC,
    }

    static readonly double[] Inches = [1, 2, 4, 6, 8, 10, 12, 16, 20, 24, 30];

    static readonly double[][] Tmu =
    [
        [2.5, 4.0, 6.1, 7.0, 7.9, 8.7, 9.6, 11.4, 13.1, 14.9, 17.5],
        [2.5, 4.0, 6.4, 8.6, 10.1, 11.5, 12.9, 15.8, 18.6, 21.5, 25.8],
        [3.6, 5.9, 8.4, 10.1, 11.5, 12.9, 14.2, 17.0, 19.8, 22.5, 26.7],
        [2.4, 3.8, 6.8, 8.0, 9.3, 10.5, 11.8, 14.2, 16.7, 19.2, 22.9],
        [2.5, 3.6, 6.1, 8.1, 9.7, 11.3, 12.9, 16.0, 19.2, 22.4, 27.1],
        [2.9, 4.6, 6.9, 8.9, 10.6, 12.2, 13.4, 15.8, 18.2, 20.6, 24.3],
        [3.4, 5.2, 8.0, 10.3, 11.8, 13.5, 15.2, 18.7, 22.1, 25.5, 30.7],
    ];

    static readonly double[] PerInchBeyond = [0.4, 0.7, 0.7, 0.6, 0.8, 0.6, 0.85];

    static readonly (double ToLb, double Factor, double Constant)[] Weights =
    [
        (2.5, 1, 0), (7.5, 1.06, 2.2), (12.5, 1.11, 3.9), (17.5, 1.17, 5.6), (22.5, 1.22, 7.4),
        (27.5, 1.28, 9.1), (32.5, 1.33, 10.8), (37.5, 1.39, 12.5), (42.5, 1.44, 14.3), (47.5, 1.50, 16.0),
    ];

    /// <param name="What">Reach or move, and its case.</param>
    /// <param name="DistanceMm">Length of the path [mm], above 0.</param>
    /// <param name="WeightKg">Weight per hand [kg], 0 or more; counts for moves only.</param>
    public sealed record Input(Case What, double DistanceMm, double WeightKg = 0);

    /// <param name="Tmu">Time [TMU].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double Tmu, IReadOnlyList<string> OutsideRange)
    {
        /// <summary>Time [s].</summary>
        public double Seconds => Tmu * SecondsPerTmu;
    }

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or leaves its range.</exception>
    public static Result Of(Input motion)
    {
        var inches = Must.BePositive(motion.DistanceMm) / 25.4;
        var pounds = Must.NotBeNegative(motion.WeightKg) / 0.45359237;
        var row = Tmu[(int)motion.What];
        List<string> outside = [];
        var plain = Plain(row, PerInchBeyond[(int)motion.What], inches);
        if (motion.What < Case.MoveA) return new(plain, outside);

        // a rounding of pounds to kilograms and back may not push a load over its class limit
        var at = Array.FindIndex(Weights, w => pounds <= w.ToLb + 1e-9);
        if (at < 0)
        {
            outside.Add("above 47.5 lb (21.5 kg) per hand: the card ends");
            at = Weights.Length - 1;
        }
        return new((plain * Weights[at].Factor) + Weights[at].Constant, outside);
    }

    static double Plain(double[] row, double beyond, double inches)
    {
        if (inches <= Inches[0]) return row[0];
        if (inches >= Inches[^1]) return row[^1] + (beyond * (inches - Inches[^1]));
        var above = Array.FindIndex(Inches, i => i >= inches);
        var part = (inches - Inches[above - 1]) / (Inches[above] - Inches[above - 1]);
        return row[above - 1] + (part * (row[above] - row[above - 1]));
    }
}
