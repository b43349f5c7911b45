using Wainwright.Methods.Moisture.Field.Sparse;

namespace Wainwright.Methods.Moisture.Field;

/// <summary>What all combinations of range, size and level share: the nodes, one field per range with its covariances to the readings, the dry boards.</summary>
sealed class FieldGround
{
    readonly ReachField[] reaches;

    // per range: covariance of all nodes with each reading, filled when first asked for
    readonly double[]?[][] columns;

    public FieldGround(SurfaceNet net, IReadOnlyList<FieldObservation> observations, FieldPriors priors)
    {
        (Net, Observations, Priors) = (net, observations, priors);
        Nodes = FieldNodes.Of(net, priors.RangesMm.Min());
        var places = ReachField.Places(Nodes.Net);
        var plan = new Elimination(places, NestedDissection.Of(places, [.. Nodes.Net.Cells.Select(c => (c.XMm, c.YMm, c.ZMm))]));
        reaches = new ReachField[priors.RangesMm.Count];
        Parallel.For(0, reaches.Length, r => reaches[r] = ReachField.Of(Nodes, plan, priors.RangesMm[r]));
        columns = [.. reaches.Select(_ => new double[]?[observations.Count])];
        GroupOf = [.. net.Cells.Select(c => priors.GroupOfSheet?[c.Sheet] ?? 0)];
        Dry = DryBoards.Of(observations, c => GroupOf[c], priors);
        Doubt = [.. Dry.Sigma.Select(s => Math.Sqrt((s * s) + Dry.UnevenVariance))];
    }

    public sealed record Fitted(int Range, int Size, int Level, SiteFit Sites, double LogWeight);

    public SurfaceNet Net { get; }

    public IReadOnlyList<FieldObservation> Observations { get; }

    public FieldPriors Priors { get; }

    public FieldNodes Nodes { get; }

    public int[] GroupOf { get; }

    public DryBoards Dry { get; }

    /// <summary>Standard deviation of a group's dry moisture at one cell, unevenness in it [points].</summary>
    public double[] Doubt { get; }

    public ReachField Reach(int range) => reaches[range];

    public double DryAt(int cell) => Dry.Percent[GroupOf[cell]];

    /// <summary>Covariances of all nodes with a range's readings.</summary>
    public double[][] Columns(int range, int[] readings)
    {
        var missing = readings.Where(o => columns[range][o] is null).ToArray();
        var made = reaches[range].Columns([.. missing.Select(o => Observations[o].Cell)]);
        for (var k = 0; k < missing.Length; k++) columns[range][missing[k]] = made[k];
        return [.. readings.Select(o => columns[range][o]!)];
    }

    /// <summary>Field before the readings at a cell [points].</summary>
    public double Begin(int cell, int size, int level) => Ramp.Begin(Priors.TrendPercent?[cell], DryAt(cell), Priors.Levels[level] * Priors.Spreads[size]);

    public Fitted[] Fit(int[] readings, (int Range, int Size, int Level)[] combinations)
    {
        var covariances = new double[reaches.Length][,];
        Parallel.ForEach(combinations.Select(c => c.Range).Distinct(), r =>
        {
            var own = Columns(r, readings);
            var k = covariances[r] = new double[readings.Length, readings.Length];
            for (var a = 0; a < readings.Length; a++)
                for (var b = 0; b < readings.Length; b++) k[a, b] = reaches[r].At(Observations[readings[a]].Cell, own[b]);
        });
        var fitted = new Fitted[combinations.Length];
        Parallel.For(0, combinations.Length, c => fitted[c] = One(readings, combinations[c], covariances[combinations[c].Range]));
        return fitted;
    }

    Fitted One(int[] readings, (int Range, int Size, int Level) at, double[,] covariance)
    {
        var seen = readings.Select(o => Observations[o]).ToArray();
        var dry = seen.Select(s => DryAt(s.Cell)).ToArray();
        var sigma = seen.Select(s => Math.Sqrt((s.SigmaPoints * s.SigmaPoints) + Math.Pow(Doubt[GroupOf[s.Cell]], 2))).ToArray();
        var sites = SiteFit.Of(covariance, Priors.Spreads[at.Size], [.. seen.Select(s => Begin(s.Cell, at.Size, at.Level))],
            (o, mean, variance) => Ramp.Given(seen[o], dry[o], sigma[o], mean, variance));
        return new(at.Range, at.Size, at.Level, sites, sites.LogWeight + Math.Log(Priors.RangeWeights[at.Range] * Priors.SpreadWeights[at.Size] * Priors.LevelWeights[at.Level]));
    }

    /// <summary>Mean and spread of every cell for each of the kept.</summary>
    public DampPosterior.Member[] Members(IReadOnlyList<Fitted> kept, double[] weights)
    {
        var all = Enumerable.Range(0, Observations.Count).ToArray();
        var members = new DampPosterior.Member[kept.Count];
        Parallel.For(0, kept.Count, k => members[k] = Member(kept[k], weights[k], Columns(kept[k].Range, all)));
        return members;
    }

    DampPosterior.Member Member(Fitted fitted, double weight, double[][] own)
    {
        var (size, n, cells) = (Priors.Spreads[fitted.Size], Nodes.Net.Cells.Count, Net.Cells.Count);
        var moved = new double[n];
        for (var o = 0; o < own.Length; o++) DenseRows.Add(moved, own[o], fitted.Sites.Pulls[o]);
        var variance = new double[n];
        var four = new double[4 * own.Length];
        for (var i = 0; i < n; i += 4)
        {
            var wide = Math.Min(4, n - i);
            for (var k = 0; k < wide; k++)
                for (var o = 0; o < own.Length; o++) four[(k * own.Length) + o] = own[o][i + k];
            fitted.Sites.CarryFour(four);
            for (var k = 0; k < wide; k++)
            {
                var carried = four.AsSpan(k * own.Length, own.Length);
                variance[i + k] = Math.Max(1e-9, (size * size) - DenseRows.Dot(carried, carried));
            }
        }
        var (mean, spread) = (new double[cells], new double[cells]);
        for (var i = 0; i < cells; i++)
        {
            (mean[i], spread[i]) = (Begin(i, fitted.Size, fitted.Level) + reaches[fitted.Range].At(i, moved), Math.Sqrt(Nodes.Rows[i].Of(variance)));
        }
        return new(weight, fitted.Range, fitted.Size, fitted.Level, fitted.Sites, mean, spread);
    }

    /// <summary>Spread of each cell over that of one without readings, had each reading told its field closely: what only the places of the readings say, by weight of the ranges.</summary>
    public double[] Reached(double[] rangeWeights)
    {
        var left = new double[Nodes.Net.Cells.Count];
        for (var r = 0; r < rangeWeights.Length; r++)
            if (rangeWeights[r] > 0) Leave(r, rangeWeights[r], left);
        return [.. Nodes.Rows.Select(row => Math.Sqrt(row.Of(left)))];
    }

    void Leave(int range, double weight, double[] left)
    {
        // a reading tells its place to a seventh of a size; own rule
        const double Told = 0.15;
        var count = Observations.Count;
        var own = Columns(range, [.. Enumerable.Range(0, count)]);
        var k = new double[count * count];
        for (var a = 0; a < count; a++)
            for (var b = 0; b < count; b++) k[(a * count) + b] = reaches[range].At(Observations[a].Cell, own[b]) + (a == b ? Told * Told : 0);
        DenseRows.Factor(k, count);
        Parallel.For(0, left.Length, i =>
        {
            var x = new double[count];
            for (var o = 0; o < count; o++) x[o] = own[o][i];
            DenseRows.Forward(k, count, x);
            left[i] += weight * Math.Max(0, 1 - DenseRows.Dot(x, x));
        });
    }
}
