namespace Wainwright.Methods.Labour;

/// <summary>Mean and spread of a time given as easy, likely and hard: the PERT convention and the triangular law.</summary>
/// <remarks>
/// PERT: mean (a + 4m + b)/6, sd (b − a)/6. Triangular: mean (a + m + b)/3, variance (a² + m² + b² − am − ab − mb)/18.
/// A chain of steps adds means and variances. The two laws give different figures for the same three points: name the law used.
/// </remarks>
public static class ThreePoint
{
    /// <summary>Program evaluation and review technique; triangular distribution.</summary>
    public static readonly Basis Basis = new(
        Source: "PERT three-point convention and triangular distribution, as project-management texts give them",
        Assumes: ["steps of a chain are independent", "one chain: merge bias of parallel chains is left out"],
        Caution: "PERT's spread is a convention, not a measurement: your own records beat it.",
        How: Provenance.Quoted);

    /// <param name="Easy">Least time, any unit.</param>
    /// <param name="Likely">Most likely time, not below the least.</param>
    /// <param name="Hard">Longest time, not below the most likely.</param>
    public sealed record Input(double Easy, double Likely, double Hard);

    /// <param name="Mean">Mean, in the unit of the input.</param>
    /// <param name="Deviation">Standard deviation, in the unit of the input.</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double Mean, double Deviation, IReadOnlyList<string> OutsideRange);

    /// <summary>PERT convention.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or the three are out of order.</exception>
    public static Result OfPert(Input time)
    {
        var (a, m, b) = Ordered(time);
        return new((a + (4 * m) + b) / 6, (b - a) / 6, []);
    }

    /// <summary>Triangular law.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or the three are out of order.</exception>
    public static Result OfTriangle(Input time)
    {
        var (a, m, b) = Ordered(time);
        return new((a + m + b) / 3, Math.Sqrt(((a * a) + (m * m) + (b * b) - (a * m) - (a * b) - (m * b)) / 18), []);
    }

    /// <summary>Time not exceeded with a given probability under the triangular law.</summary>
    /// <param name="time">The three points.</param>
    /// <param name="probability">Probability [0–1].</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range, or the three are out of order.</exception>
    public static double TriangleQuantile(Input time, double probability)
    {
        var (a, m, b) = Ordered(time);
        Must.BeWithin(probability, 0, 1);
        if (a == b) return a;
        var atLikely = (m - a) / (b - a);
        return probability <= atLikely
            ? a + Math.Sqrt(probability * (b - a) * (m - a))
            : b - Math.Sqrt((1 - probability) * (b - a) * (b - m));
    }

    static (double Easy, double Likely, double Hard) Ordered(Input time)
    {
        Must.BeFinite(time.Easy);
        Must.BeWithin(time.Likely, time.Easy, double.MaxValue);
        Must.BeWithin(time.Hard, time.Likely, double.MaxValue);
        return (time.Easy, time.Likely, time.Hard);
    }
}
