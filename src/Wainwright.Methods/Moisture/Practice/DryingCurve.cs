using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Methods.Moisture.Practice;

/// <summary>How one point dries, from its own readings: what it will read, and when it is under a target.</summary>
/// <remarks>
/// M(t) = rest + A exp(−k t), t from the first reading. Rest, A and k are not fitted but weighed over a grid: k likely 0.08 a day and within a factor of 4
/// nine times in ten, A likely 6 points, within a factor of 9 and no more than 60, the rest as told. With one reading the answer is what was thought beforehand, and wide.
/// </remarks>
public sealed class DryingCurve
{
    const double LikelyRate = 0.08, RateFactor = 2.3, LikelyOver = 6, OverFactor = 3.8, MostOver = 60;

    const int Rates = 33, Overs = 41, Rests = 7;

    // values of a day told apart when its quantiles are sought
    const int Steps = 200;

    // what weighs less than this against the best is dropped
    const double Least = 1e-4, Far = 12;

    readonly double firstDay;

    readonly List<Course> courses;

    DryingCurve(double firstDay, List<Course> courses) => (this.firstDay, this.courses) = (firstDay, courses);

    readonly record struct Course(double Rest, double Over, double Rate, double Weight)
    {
        public double At(double days) => Rest + (Over * Math.Exp(-Rate * Math.Max(0, days)));
    }

    /// <summary>An exponential approach; its figures beforehand are this project's own.</summary>
    public static readonly Basis Basis = new(
        Source: "Exponential approach to a dry reference: the late part of diffusion out of a slab; rates beforehand: own rule, common practice, no source",
        Assumes: ["heat, air and covers stay as they are", "no new water", "the same spot is read each time"],
        Caution: "The face dries first: early readings fall faster than the core. A forecast is a range, not a promise.",
        How: Provenance.OwnRule);

    /// <param name="Day">When [d], any start.</param>
    /// <param name="Percent">Moisture, corrected [%].</param>
    /// <param name="SigmaPoints">Standard deviation of a repeated reading [points], above 0.</param>
    /// <param name="Bound">Value or limit.</param>
    public readonly record struct Seen(double Day, double Percent, double SigmaPoints, MeterReading.Bound Bound);

    /// <summary>Weighs the courses against what was read.</summary>
    /// <param name="seen">One reading or more, in any order.</param>
    /// <param name="restPercent">What it will dry to: a dry reference, or the equilibrium of the air [%].</param>
    /// <param name="restSigmaPoints">Standard deviation of that [points], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">No reading, or a value that is not finite.</exception>
    public static DryingCurve Of(IReadOnlyList<Seen> seen, double restPercent, double restSigmaPoints)
    {
        ArgumentOutOfRangeException.ThrowIfZero(seen.Count);
        Must.NotBeNegative(restPercent);
        Must.BePositive(restSigmaPoints);
        foreach (var s in seen)
        {
            Must.BeFinite(s.Day);
            Must.NotBeNegative(s.Percent);
            Must.BePositive(s.SigmaPoints);
        }
        var first = seen.Min(s => s.Day);
        var all = Weighed(seen, first, restPercent, restSigmaPoints, new(-3, 3), new(-3, Math.Min(3, Math.Log(MostOver / LikelyOver) / Math.Log(OverFactor))));
        // a sharp answer falls between the steps of the whole grid: once more over what weighs anything
        var highest = all.Max(a => a.Log);
        var near = all.Where(a => a.Log > highest - Far).ToList();
        all = Weighed(seen, first, restPercent, restSigmaPoints, Round(near, n => n.Z.Rate, Rates), Round(near, n => n.Z.Over, Overs));
        var best = all.Max(a => a.Log);
        var kept = all.Where(a => a.Log > best + Math.Log(Least)).Select(a => a.Course with { Weight = Math.Exp(a.Log - best) }).ToList();
        var sum = kept.Sum(c => c.Weight);
        return new(first, [.. kept.Select(c => c with { Weight = c.Weight / sum })]);
    }

    readonly record struct Reach(double From, double To)
    {
        public IEnumerable<double> Steps(int count)
        {
            for (var i = 0; i < count; i++) yield return From + ((To - From) * i / (count - 1));
        }
    }

    /// <summary>What the nodes reach over, and a step of the whole grid more.</summary>
    static Reach Round(List<((double Rate, double Over) Z, Course Course, double Log)> near, Func<((double Rate, double Over) Z, Course Course, double Log), double> of, int steps) =>
        new(Math.Max(-3, near.Min(of) - (6.0 / (steps - 1))), Math.Min(3, near.Max(of) + (6.0 / (steps - 1))));

    static List<((double Rate, double Over) Z, Course Course, double Log)> Weighed(IReadOnlyList<Seen> seen, double first, double restPercent, double restSigmaPoints, Reach rates, Reach overs)
    {
        List<((double, double), Course, double)> all = new(Rates * Overs * Rests);
        foreach (var zk in rates.Steps(Rates))
        {
            var k = LikelyRate * Math.Pow(RateFactor, zk);
            var falls = seen.Select(s => Math.Exp(-k * (s.Day - first))).ToArray();
            foreach (var zo in overs.Steps(Overs))
            {
                var over = LikelyOver * Math.Pow(OverFactor, zo);
                for (var r = 0; r < Rests; r++)
                {
                    var zr = -2.5 + (5.0 * r / (Rests - 1));
                    var rest = restPercent + (zr * restSigmaPoints);
                    var log = -((zk * zk) + (zo * zo) + (zr * zr)) / 2;
                    for (var i = 0; i < falls.Length; i++) log += Log(seen[i], rest + (over * falls[i]));
                    all.Add(((zk, zo), new(rest, over, k, 0), log));
                }
            }
        }
        return all;
    }

    /// <summary>Moisture on a day that is not exceeded with a given chance [%]; a reading's own error counted when asked.</summary>
    /// <param name="day">The day [d], the first reading's or later.</param>
    /// <param name="share">The chance, above 0 and below 1.</param>
    /// <param name="readingSigmaPoints">Standard deviation of the reading to come [points]; 0 for the moisture itself.</param>
    public double Percent(double day, double share, double readingSigmaPoints = 0)
    {
        var at = courses.Select(c => (Value: c.At(day - firstDay), c.Weight)).OrderBy(c => c.Value).ToList();
        Must.BeWithin(share, 1e-6, 1 - 1e-6);
        if (readingSigmaPoints <= 0) return Quantile(at, share);
        at = Thinned(at);
        var (low, high) = (at[0].Value - (6 * readingSigmaPoints), at[^1].Value + (6 * readingSigmaPoints));
        for (var i = 0; i < 30; i++)
        {
            var middle = (low + high) / 2;
            if (at.Sum(c => c.Weight * NormalCurve.Below((middle - c.Value) / readingSigmaPoints)) < share) low = middle;
            else high = middle;
        }
        return (low + high) / 2;
    }

    /// <summary>Day by which it is at or under a target with a given chance [d]; positive infinity where it may never be.</summary>
    /// <param name="targetPercent">The target [%].</param>
    /// <param name="share">The chance, above 0 and below 1.</param>
    public double DayUnder(double targetPercent, double share) =>
        Quantile([.. courses.Select(c => (Day(c, targetPercent), c.Weight)).OrderBy(d => d.Item1)], Must.BeWithin(share, 1e-6, 1 - 1e-6));

    /// <summary>Chance that it is at or under a target by a day [0–1].</summary>
    /// <param name="targetPercent">The target [%].</param>
    /// <param name="day">The day [d].</param>
    public double ChanceUnder(double targetPercent, double day) => courses.Sum(c => Day(c, targetPercent) <= day ? c.Weight : 0);

    double Day(Course c, double target) =>
        c.Rest + c.Over <= target ? firstDay : c.Rest >= target ? double.PositiveInfinity : firstDay + (Math.Log(c.Over / (target - c.Rest)) / c.Rate);

    /// <summary>The same in no more than so many steps of like weight.</summary>
    static List<(double Value, double Weight)> Thinned(List<(double Value, double Weight)> sorted)
    {
        List<(double, double)> steps = [];
        double weight = 0, moment = 0;
        foreach (var (value, w) in sorted)
        {
            weight += w;
            moment += w * value;
            if (weight < 1.0 / Steps) continue;
            steps.Add((moment / weight, weight));
            (weight, moment) = (0, 0);
        }
        if (weight > 0) steps.Add((moment / weight, weight));
        return steps;
    }

    static double Quantile(List<(double Value, double Weight)> sorted, double share)
    {
        var sum = 0.0;
        foreach (var (value, weight) in sorted)
        {
            sum += weight;
            if (sum >= share) return value;
        }
        return sorted[^1].Value;
    }

    static double Log(Seen seen, double moisture)
    {
        var z = (seen.Percent - moisture) / seen.SigmaPoints;
        return seen.Bound switch
        {
            MeterReading.Bound.AtLeast => NormalCurve.LogBelow(-z),
            MeterReading.Bound.AtMost => NormalCurve.LogBelow(z),
            _ => -z * z / 2,
        };
    }
}
