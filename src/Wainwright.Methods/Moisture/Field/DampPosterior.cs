using Wainwright.Methods.Moisture.Field.Sparse;

namespace Wainwright.Methods.Moisture.Field;

/// <summary>A fitted damp field: several ranges and spreads side by side, each with its weight.</summary>
public sealed class DampPosterior
{
    readonly IReadOnlyList<Member> members;
    readonly WetnessScale scale;
    readonly FieldPriors priors;

    internal DampPosterior(SurfaceNet net, IReadOnlyList<FieldObservation> observations, WetnessScale scale, FieldPriors priors, IReadOnlyList<Member> members)
    {
        Net = net;
        Observations = observations;
        this.scale = scale;
        this.priors = priors;
        this.members = members;
    }

    internal sealed record Member(double Weight, double RangeMm, double FieldSpread, double[] Mean, double[] Spread, double[] Dry, (double Mean, double Spread)[] Without, FrontalCholesky Factor);

    /// <summary>The surfaces.</summary>
    public SurfaceNet Net { get; }

    /// <summary>The readings it rests on.</summary>
    public IReadOnlyList<FieldObservation> Observations { get; }

    internal IReadOnlyList<Member> Members => members;

    /// <summary>Range, the members' mean weighted [mm].</summary>
    public double RangeMm => members.Sum(m => m.Weight * m.RangeMm);

    /// <summary>Spread of a cell over the spread of one that no reading reaches, on the field's own scale [0–1 and a little]: 1 knows nothing.</summary>
    /// <param name="cell">The cell.</param>
    public double Ignorance(int cell)
    {
        var unknown = Math.Sqrt(members.Sum(m => m.Weight * m.FieldSpread * m.FieldSpread) + (priors.DrySigmaPoints * priors.DrySigmaPoints));
        return OnScale(m => (m.Mean[cell], m.Spread[cell])) / unknown;
    }

    /// <summary>Dry board of a group as the readings leave it [%].</summary>
    /// <param name="group">The group.</param>
    public double DryPercent(int group) => scale.From(members.Sum(m => m.Weight * m.Dry[group]));

    /// <summary>Mean moisture of a cell [%].</summary>
    /// <param name="cell">The cell.</param>
    public double MeanPercent(int cell) => Moments(cell).Mean;

    /// <summary>Standard deviation of a cell's moisture [points].</summary>
    /// <param name="cell">The cell.</param>
    public double SpreadOfPoints(int cell) => Moments(cell).Spread;

    /// <summary>Moisture that a cell is below with a given chance [%]; at 0.5 its middle.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="share">The chance, above 0 and below 1.</param>
    public double QuantilePercent(int cell, double share) => Quantile(m => (m.Mean[cell], m.Spread[cell]), share);

    /// <summary>Chance that a cell is over a threshold [0–1].</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="thresholdPercent">The threshold [%].</param>
    public double ProbabilityOver(int cell, double thresholdPercent) =>
        members.Sum(m => m.Weight * NormalCurve.Below((m.Mean[cell] - scale.To(thresholdPercent)) / m.Spread[cell]));

    /// <summary>What the map would have said where an observation is, had it not been made: the moisture it is below with a given chance [%], meter's error not counted.</summary>
    /// <remarks>Range and spread keep their weights. For a bound, expectation propagation's own approximation.</remarks>
    /// <param name="observation">Which one.</param>
    /// <param name="share">The chance, above 0 and below 1.</param>
    public double LeftOutQuantilePercent(int observation, double share) => Quantile(m => m.Without[observation], share);

    internal WetnessScale Scale => scale;

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
            for (var i = 0; i < draws[d].Length; i++) draws[d][i] = scale.From(member.Mean[i] + x[i]);
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

    (double Mean, double Spread) Moments(int cell)
    {
        double mean = 0, square = 0;
        foreach (var m in members)
        {
            var (one, two) = scale.Moments(m.Mean[cell], m.Spread[cell]);
            mean += m.Weight * one;
            square += m.Weight * two;
        }
        return (mean, Math.Sqrt(Math.Max(0, square - (mean * mean))));
    }

    double OnScale(Func<Member, (double Mean, double Spread)> of)
    {
        double mean = 0, square = 0;
        foreach (var m in members)
        {
            var (a, s) = of(m);
            mean += m.Weight * a;
            square += m.Weight * ((a * a) + (s * s));
        }
        return Math.Sqrt(Math.Max(0, square - (mean * mean)));
    }

    double Quantile(Func<Member, (double Mean, double Spread)> of, double share)
    {
        Must.BeWithin(share, 1e-9, 1 - 1e-9);
        var all = members.Select(m => (m.Weight, At: of(m))).ToList();
        var (low, high) = (all.Min(a => a.At.Mean - (8 * a.At.Spread)), all.Max(a => a.At.Mean + (8 * a.At.Spread)));
        for (var i = 0; i < 50; i++)
        {
            var middle = (low + high) / 2;
            if (all.Sum(a => a.Weight * NormalCurve.Below((middle - a.At.Mean) / a.At.Spread)) < share) low = middle;
            else high = middle;
        }
        return scale.From((low + high) / 2);
    }
}
