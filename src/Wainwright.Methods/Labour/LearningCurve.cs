namespace Wainwright.Methods.Labour;

/// <summary>How much quicker the next of the same piece goes: Crawford's unit curve and Wright's average curve.</summary>
/// <remarks>
/// b = ln r/ln 2.  Crawford: y(n) = a·n^b.  Wright: total(1..n) = a·n^(1+b), a single unit is the difference of two totals.
/// a is the time of the first unit. Say which curve is meant: at 80 % the second unit takes 80 % (Crawford) or 60 % (Wright).
/// </remarks>
public static class LearningCurve
{
    /// <summary>Unit and cumulative-average learning curves.</summary>
    public static readonly Basis Basis = new(
        Source: "T. P. Wright, J. Aeronautical Sciences 3 (1936) 122; J. R. Crawford's unit form; values as the R package learningCurve prints them",
        Assumes: ["the same piece, the same hands, no long break"],
        Caution: "For second and third identical pieces, at most some ten. Never for fault finding.",
        How: Provenance.Quoted);

    /// <param name="FirstUnitTime">Time of the first unit, any unit of time, above 0.</param>
    /// <param name="Rate">Learning rate [-]: 0.8 for an 80 % curve; above 0.5, at most 1.</param>
    public sealed record Input(double FirstUnitTime, double Rate);

    /// <summary>Exponent of a rate [-].</summary>
    /// <param name="rate">Learning rate, above 0.5, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate leaves that range.</exception>
    public static double Exponent(double rate) => Math.Log2(Must.BeWithin(rate, 0.500001, 1));

    /// <summary>Time of unit n, Crawford.</summary>
    /// <param name="curve">First unit and rate.</param>
    /// <param name="unit">Which unit, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double CrawfordUnit(Input curve, int unit) => Must.BePositive(curve.FirstUnitTime) * Math.Pow(Counting(unit), Exponent(curve.Rate));

    /// <summary>Time of units 1 to n, Crawford, summed exactly.</summary>
    /// <param name="curve">First unit and rate.</param>
    /// <param name="units">How many, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double CrawfordTotal(Input curve, int units)
    {
        Counting(units);
        var total = 0.0;
        for (var n = 1; n <= units; n++) total += CrawfordUnit(curve, n);
        return total;
    }

    /// <summary>Time of units 1 to n, Wright.</summary>
    /// <param name="curve">First unit and rate.</param>
    /// <param name="units">How many, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double WrightTotal(Input curve, int units) => Must.BePositive(curve.FirstUnitTime) * Math.Pow(Counting(units), 1 + Exponent(curve.Rate));

    /// <summary>Time of unit n, Wright.</summary>
    /// <param name="curve">First unit and rate.</param>
    /// <param name="unit">Which unit, 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double WrightUnit(Input curve, int unit) => WrightTotal(curve, unit) - (Counting(unit) == 1 ? 0 : WrightTotal(curve, unit - 1));

    static int Counting(int n)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(n, 1);
        return n;
    }
}
