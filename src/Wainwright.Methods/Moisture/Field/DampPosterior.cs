using Wainwright.Methods.Moisture.Field.Sparse;

namespace Wainwright.Methods.Moisture.Field;

/// <summary>A fitted damp field: several ranges and spreads side by side, each with its weight.</summary>
public sealed class DampPosterior
{
    readonly IReadOnlyList<Member> members;
    readonly FieldPriors priors;

    internal DampPosterior(SurfaceNet net, IReadOnlyList<FieldObservation> observations, FieldPriors priors, IReadOnlyList<Member> members)
    {
        Net = net;
        Observations = observations;
        this.priors = priors;
        this.members = members;
    }

    internal sealed record Member(double Weight, double RangeMm, double SpreadPoints, double[] Mean, double[] Spread, double[] Dry, (double Mean, double Spread)[] Without, FrontalCholesky Factor);

    /// <summary>The surfaces.</summary>
    public SurfaceNet Net { get; }

    /// <summary>The readings it rests on.</summary>
    public IReadOnlyList<FieldObservation> Observations { get; }

    internal IReadOnlyList<Member> Members => members;

    /// <summary>Range, the members' mean weighted [mm].</summary>
    public double RangeMm => members.Sum(m => m.Weight * m.RangeMm);

    /// <summary>Standard deviation of the field before the readings, members weighted [points].</summary>
    public double SpreadPoints => Math.Sqrt(members.Sum(m => m.Weight * m.SpreadPoints * m.SpreadPoints));

    /// <summary>Spread of a cell that no reading reaches: of field and dry board together [points].</summary>
    public double UnknownPoints => Math.Sqrt(members.Sum(m => m.Weight * m.SpreadPoints * m.SpreadPoints) + (priors.DrySigmaPoints * priors.DrySigmaPoints));

    /// <summary>Dry board of a group as the readings leave it [%].</summary>
    /// <param name="group">The group.</param>
    public double DryPercent(int group) => members.Sum(m => m.Weight * m.Dry[group]);

    /// <summary>Mean moisture of a cell [%].</summary>
    /// <param name="cell">The cell.</param>
    public double MeanPercent(int cell) => members.Sum(m => m.Weight * m.Mean[cell]);

    /// <summary>Standard deviation of a cell's moisture [points].</summary>
    /// <param name="cell">The cell.</param>
    public double SpreadOfPoints(int cell) => Mixed(m => (m.Mean[cell], m.Spread[cell])).Spread;

    /// <summary>Chance that a cell is over a threshold [0–1].</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="thresholdPercent">The threshold [%].</param>
    public double ProbabilityOver(int cell, double thresholdPercent) =>
        members.Sum(m => m.Weight * NormalCurve.Below((m.Mean[cell] - thresholdPercent) / m.Spread[cell]));

    /// <summary>What the map would have said where an observation is, had it not been made: mean [%] and standard deviation [points] of the moisture, meter's error not counted.</summary>
    /// <remarks>Range and spread keep their weights. For a bound, expectation propagation's own approximation.</remarks>
    /// <param name="observation">Which one.</param>
    public (double MeanPercent, double SpreadPoints) LeftOut(int observation)
    {
        var (mean, spread) = Mixed(m => m.Without[observation]);
        return (mean, spread);
    }

    /// <summary>The likeliest range and spread: one bell curve over all cells, for what needs cells together.</summary>
    internal Member Likeliest => members.MaxBy(m => m.Weight)!;

    /// <summary>How every cell goes together with one of them, by the likeliest range and spread: covariance [points²].</summary>
    internal double[] Covariance(int cell)
    {
        var unit = new double[Net.Cells.Count + priors.DryPercent.Count];
        unit[cell] = 1;
        return Likeliest.Factor.Solve(unit);
    }

    /// <summary>Whole maps as they may be [%], each drawn with the weight of its range and spread: for areas, where cells must stand together.</summary>
    /// <param name="count">How many, 1 or more.</param>
    /// <param name="start">Start of the drawing: the same start draws the same maps.</param>
    public IReadOnlyList<double[]> Draws(int count, int start)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var chance = new Random(start);
        var draws = new double[count][];
        for (var d = 0; d < count; d++)
        {
            var member = Chosen((d + 0.5) / count);
            var x = new double[Net.Cells.Count + priors.DryPercent.Count];
            for (var i = 0; i < x.Length; i++) x[i] = Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
            member.Factor.Draw(x);
            draws[d] = new double[Net.Cells.Count];
            for (var i = 0; i < draws[d].Length; i++) draws[d][i] = member.Mean[i] + x[i];
        }
        return draws;
    }

    Member Chosen(double share)
    {
        foreach (var m in members)
        {
            if (share < m.Weight) return m;
            share -= m.Weight;
        }
        return members[^1];
    }

    (double Mean, double Spread) Mixed(Func<Member, (double Mean, double Spread)> of)
    {
        double mean = 0, square = 0;
        foreach (var m in members)
        {
            var (a, s) = of(m);
            mean += m.Weight * a;
            square += m.Weight * ((a * a) + (s * s));
        }
        return (mean, Math.Sqrt(Math.Max(0, square - (mean * mean))));
    }
}
