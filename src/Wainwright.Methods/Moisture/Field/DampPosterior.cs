using Wainwright.Methods.Moisture.Field.Sparse;

namespace Wainwright.Methods.Moisture.Field;

/// <summary>A fitted damp field: several ranges, sizes and levels side by side, each with its weight.</summary>
public sealed class DampPosterior
{
    readonly FieldGround ground;
    readonly IReadOnlyList<Member> members;
    readonly Lazy<double[]> reached;

    internal DampPosterior(FieldGround ground, IReadOnlyList<Member> members)
    {
        this.ground = ground;
        this.members = members;
        reached = new(() => ground.Reached([.. Enumerable.Range(0, ground.Priors.RangesMm.Count).Select(r => members.Where(m => m.Range == r).Sum(m => m.Weight))]));
    }

    internal sealed record Member(double Weight, int Range, int Size, int Level, SiteFit Sites, double[] Mean, double[] Spread);

    /// <summary>The surfaces.</summary>
    public SurfaceNet Net => ground.Net;

    /// <summary>The readings it rests on.</summary>
    public IReadOnlyList<FieldObservation> Observations => ground.Observations;

    internal FieldGround Ground => ground;

    internal IReadOnlyList<Member> Members => members;

    /// <summary>Range, the members' mean weighted [mm].</summary>
    public double RangeMm => members.Sum(m => m.Weight * ground.Priors.RangesMm[m.Range]);

    /// <summary>How little the readings reach a cell [0–1]: spread of the field there over that of one that no reading reaches, had each reading told its own place closely; 1 knows nothing.</summary>
    /// <remarks>Only where the readings are counts, not what they say: a dry one makes its surroundings known as a wet one does.</remarks>
    /// <param name="cell">The cell.</param>
    public double Ignorance(int cell) => reached.Value[cell];

    /// <summary>Dry board of a group as the readings leave it [%].</summary>
    /// <param name="group">The group.</param>
    public double DryPercent(int group) => ground.Dry.Percent[group];

    /// <summary>Mean moisture of a cell [%].</summary>
    /// <param name="cell">The cell.</param>
    public double MeanPercent(int cell) => Moments(cell).Mean;

    /// <summary>Standard deviation of a cell's moisture [points].</summary>
    /// <param name="cell">The cell.</param>
    public double SpreadOfPoints(int cell) => Moments(cell).Spread;

    /// <summary>Moisture that a cell is below with a given chance [%]; at 0.5 its middle.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="share">The chance, above 0 and below 1.</param>
    public double QuantilePercent(int cell, double share) => Quantile(cell, m => (m.Mean[cell], m.Spread[cell]), share);

    /// <summary>Chance that a cell is over a threshold [0–1].</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="thresholdPercent">The threshold [%].</param>
    public double ProbabilityOver(int cell, double thresholdPercent)
    {
        var (over, doubt) = (thresholdPercent - ground.DryAt(cell), ground.Doubt[ground.GroupOf[cell]]);
        double below = 0;
        foreach (var m in members) below += m.Weight * Ramp.Below(over, m.Mean[cell], m.Spread[cell], doubt);
        return Math.Clamp(1 - below, 0, 1);
    }

    /// <summary>What the map would have said where an observation is, had it not been made: the moisture it is below with a given chance [%], meter's error not counted.</summary>
    /// <remarks>Range, size and level keep their weights, the dry board its figure. Expectation propagation's own approximation.</remarks>
    /// <param name="observation">Which one.</param>
    /// <param name="share">The chance, above 0 and below 1.</param>
    public double LeftOutQuantilePercent(int observation, double share) => Quantile(Observations[observation].Cell, m =>
    {
        var (mean, variance) = m.Sites.Without[observation];
        return (mean, Math.Sqrt(variance));
    }, share);

    /// <summary>The likeliest combination: one bell curve over all cells, for what needs cells together.</summary>
    internal Member Likeliest => members.MaxBy(m => m.Weight)!;

    /// <summary>How every cell's field goes together with that of each of some cells, by one member: covariances [points²].</summary>
    internal double[][] Covariances(Member member, IReadOnlyList<int> cells)
    {
        var size2 = Math.Pow(ground.Priors.Spreads[member.Size], 2);
        var own = ground.Columns(member.Range, [.. Enumerable.Range(0, Observations.Count)]);
        var before = new double[cells.Count][];
        // in parts, for both cores
        var parts = cells.Chunk(16).ToArray();
        Parallel.For(0, parts.Length, p => ground.Reach(member.Range).Columns(parts[p]).CopyTo(before, p * 16));
        var after = new double[cells.Count][];
        Parallel.For(0, cells.Count, c =>
        {
            var x = own.Select(column => ground.Reach(member.Range).At(cells[c], column)).ToArray();
            member.Sites.Carry(x);
            member.Sites.CarryBack(x);
            var nodes = before[c];
            for (var i = 0; i < nodes.Length; i++) nodes[i] *= size2;
            for (var o = 0; o < own.Length; o++) DenseRows.Add(nodes, own[o], -x[o]);
            after[c] = ground.Nodes.AreCells ? nodes : [.. Enumerable.Range(0, Net.Cells.Count).Select(i => ground.Reach(member.Range).At(i, nodes))];
        });
        return after;
    }

    /// <summary>Whole maps as they may be [%], each drawn with the weight of its range, size and level: for areas, where cells must stand together.</summary>
    /// <param name="count">How many, 1 or more.</param>
    /// <param name="start">Start of the drawing: the same start draws the same maps.</param>
    public IReadOnlyList<double[]> Draws(int count, int start)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var starts = new Random(start);
        var each = Enumerable.Range(0, count).Select(_ => starts.Next()).ToArray();
        var draws = new double[count][];
        var columns = members.Select(m => ground.Columns(m.Range, [.. Enumerable.Range(0, Observations.Count)])).ToArray();
        Parallel.For(0, count, d => draws[d] = Draw(Chosen((d + 0.5) / count), columns, each[d]));
        return draws;
    }

    double[] Draw(int chosen, double[][][] columns, int start)
    {
        var (member, chance) = (members[chosen], new Random(start));
        var size = ground.Priors.Spreads[member.Size];
        var nodes = new double[ground.Nodes.Net.Cells.Count];
        Normal(nodes, chance);
        ground.Reach(member.Range).Draw(nodes);
        for (var i = 0; i < nodes.Length; i++) nodes[i] *= size;
        // the draw beforehand led to what was read (Matheron's way, from memory)
        var off = new double[Observations.Count];
        Normal(off, chance);
        for (var o = 0; o < off.Length; o++)
        {
            var (at, spread) = member.Sites.Curve(o);
            var cell = Observations[o].Cell;
            off[o] = at + (spread * off[o]) - ground.Begin(cell, member.Size, member.Level) - ground.Reach(member.Range).At(cell, nodes);
        }
        member.Sites.Lead(off);
        for (var o = 0; o < off.Length; o++) DenseRows.Add(nodes, columns[chosen][o], off[o]);
        var dry = new double[ground.Dry.Percent.Length];
        Normal(dry, chance);
        for (var g = 0; g < dry.Length; g++) dry[g] = ground.Dry.Percent[g] + (ground.Dry.Sigma[g] * dry[g]);
        var uneven = ground.Dry.PickUneven(chance.NextDouble());
        var map = new double[Net.Cells.Count];
        Normal(map, chance);
        for (var i = 0; i < map.Length; i++)
            map[i] = Math.Max(0, dry[ground.GroupOf[i]] + (uneven * map[i]) + Math.Max(0, ground.Begin(i, member.Size, member.Level) + ground.Reach(member.Range).At(i, nodes)));
        return map;
    }

    static void Normal(double[] into, Random chance)
    {
        for (var i = 0; i < into.Length; i += 2)
        {
            var (radius, turn) = (Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())), 2 * Math.PI * chance.NextDouble());
            into[i] = radius * Math.Cos(turn);
            if (i + 1 < into.Length) into[i + 1] = radius * Math.Sin(turn);
        }
    }

    int Chosen(double share)
    {
        for (var m = 0; m < members.Count; m++)
        {
            if (share < members[m].Weight) return m;
            share -= members[m].Weight;
        }
        return members.Count - 1;
    }

    (double Mean, double Spread) Moments(int cell)
    {
        var (dry, doubt) = (ground.DryAt(cell), ground.Doubt[ground.GroupOf[cell]]);
        double mean = 0, square = 0;
        foreach (var m in members)
        {
            var (one, two) = Ramp.Moments(m.Mean[cell], m.Spread[cell]);
            mean += m.Weight * one;
            square += m.Weight * two;
        }
        return (dry + mean, Math.Sqrt(Math.Max(0, square - (mean * mean)) + (doubt * doubt)));
    }

    double Quantile(int cell, Func<Member, (double Mean, double Spread)> of, double share)
    {
        Must.BeWithin(share, 1e-9, 1 - 1e-9);
        var (dry, doubt) = (ground.DryAt(cell), ground.Doubt[ground.GroupOf[cell]]);
        var all = members.Select(m => (m.Weight, At: of(m))).ToArray();
        var (low, high) = (-8 * doubt, (8 * doubt) + all.Max(a => Math.Max(0, a.At.Mean + (8 * a.At.Spread))));
        while (high - low > 1e-7)
        {
            var middle = (low + high) / 2;
            double below = 0;
            foreach (var (weight, at) in all) below += weight * Ramp.Below(middle, at.Mean, at.Spread, doubt);
            if (below < share) low = middle;
            else high = middle;
        }
        return Math.Max(0, dry + ((low + high) / 2));
    }
}
