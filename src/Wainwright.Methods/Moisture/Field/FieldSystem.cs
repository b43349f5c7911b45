using Wainwright.Methods.Moisture.Field.Sparse;

namespace Wainwright.Methods.Moisture.Field;

/// <summary>The unknowns of a damp field, cells first, then the dry boards of the groups, and their precision before and after the readings.</summary>
/// <remarks>
/// Cell moisture is its group's dry board plus a field of mean 0. Both are unknown together: the prior of (cells, dry boards) is
/// [R, −RP; −PᵀR, PᵀRP + Λ], P telling which group a cell is in. All is counted from what was thought of beforehand: the trend, without one the dry boards.
/// </remarks>
sealed class FieldSystem
{
    readonly SurfaceNet net;
    readonly int groups;
    readonly SparseSymmetric places;
    readonly Elimination bare, whole;
    readonly SparseSymmetric joint;

    public FieldSystem(SurfaceNet net, FieldPriors priors)
    {
        this.net = net;
        Priors = priors;
        groups = priors.DryPercent.Count;
        GroupOf = [.. net.Cells.Select(c => priors.GroupOfSheet?[c.Sheet] ?? 0)];
        places = DiffusionOperator.Places(net);
        var middles = net.Cells.Select(c => (c.XMm, c.YMm, c.ZMm)).ToArray();
        bare = new(places, NestedDissection.Of(places, middles));
        joint = Joint();
        whole = new(joint, NestedDissection.Of(joint, middles));
    }

    public FieldPriors Priors { get; }

    public int[] GroupOf { get; }

    public int Size => joint.Size;

    public DiffusionOperator Operator(double rangeMm) => DiffusionOperator.Of(net, places, bare, rangeMm);

    public double Origin(int cell) => Priors.TrendPercent?[cell] ?? Priors.DryPercent[GroupOf[cell]];

    SparseSymmetric Joint()
    {
        var n = net.Cells.Count;
        var start = new int[n + groups + 1];
        var column = new List<int>(places.Column.Length + (2 * n * groups));
        for (var i = 0; i < n; i++)
        {
            for (var e = places.Start[i]; e < places.Start[i + 1]; e++) column.Add(places.Column[e]);
            for (var g = 0; g < groups; g++) column.Add(n + g);
            start[i + 1] = column.Count;
        }
        for (var g = 0; g < groups; g++)
        {
            for (var i = 0; i < n + groups; i++) column.Add(i);
            start[n + g + 1] = column.Count;
        }
        return new(start, [.. column], new double[column.Count]);
    }

    /// <summary>Precision before the readings for one operator and spread, and the logarithm of its determinant.</summary>
    public (SparseSymmetric Precision, double LogDeterminant) Prior(DiffusionOperator field, double spreadPoints)
    {
        var n = net.Cells.Count;
        var value = new double[joint.Value.Length];
        var scale = 1 / (spreadPoints * spreadPoints);
        var r = field.Precision;
        for (var i = 0; i < n; i++)
            for (var e = r.Start[i]; e < r.Start[i + 1]; e++)
            {
                int j = r.Column[e], gi = n + GroupOf[i], gj = n + GroupOf[j];
                var v = scale * r.Value[e];
                value[joint.Start[i] + e - r.Start[i]] += v;
                value[joint.At(i, gj)] -= v;
                value[joint.Start[gj] + i] -= v;
                value[joint.Start[gi] + gj] += v;
            }
        var dry = 1 / (Priors.DrySigmaPoints * Priors.DrySigmaPoints);
        for (var g = 0; g < groups; g++) value[joint.At(n + g, n + g)] += dry;
        return (joint.With(value), field.LogDeterminant + (n * Math.Log(scale)) + (groups * Math.Log(dry)));
    }

    /// <summary>The same with the sites of the observations in it, factored.</summary>
    public FrontalCholesky Factor(SparseSymmetric prior, IReadOnlyList<FieldObservation> seen, Site[] sites)
    {
        var value = (double[])prior.Value.Clone();
        for (var o = 0; o < sites.Length; o++) value[prior.At(seen[o].Cell, seen[o].Cell)] += sites[o].Precision;
        return FrontalCholesky.Of(whole, prior.With(value));
    }
}
