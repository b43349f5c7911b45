using Wainwright.Methods.Moisture.Field.Sparse;

namespace Wainwright.Methods.Moisture.Field;

/// <summary>The prior precision on a net for one range: (κ²C + G) C⁻¹ (κ²C + G), brought to spread 1 in every cell.</summary>
/// <remarks>
/// C are the areas, G the links' conductances as a Laplacian. At the rim of a sheet the bare operator doubles its variance (nothing
/// flows out, what would have left comes back); dividing by each cell's own prior spread takes that away, so that a rim is not
/// held wetter or less known than the middle.
/// </remarks>
sealed class DiffusionOperator
{
    DiffusionOperator(SparseSymmetric precision, double logDeterminant) => (Precision, LogDeterminant) = (precision, logDeterminant);

    /// <summary>Precision of the field with spread 1.</summary>
    public SparseSymmetric Precision { get; }

    public double LogDeterminant { get; }

    /// <summary>The places of the operator's entries: each cell, its neighbours and theirs.</summary>
    public static SparseSymmetric Places(SurfaceNet net)
    {
        var near = new SortedSet<int>[net.Cells.Count];
        for (var i = 0; i < near.Length; i++) near[i] = [i];
        foreach (var link in net.Links)
        {
            near[link.A].Add(link.B);
            near[link.B].Add(link.A);
        }
        var start = new int[near.Length + 1];
        var columns = new List<int>();
        var row = new HashSet<int>();
        for (var i = 0; i < near.Length; i++)
        {
            row.Clear();
            foreach (var n in near[i]) row.UnionWith(near[n]);
            columns.AddRange(row.Order());
            start[i + 1] = columns.Count;
        }
        return new(start, [.. columns], new double[columns.Count]);
    }

    /// <summary>Κ²C + G.</summary>
    static SparseSymmetric Stiffness(SurfaceNet net, double kappaPerMm)
    {
        var entries = new List<(int, int, double)>();
        for (var i = 0; i < net.Cells.Count; i++) entries.Add((i, i, kappaPerMm * kappaPerMm * net.Cells[i].AreaMm2));
        foreach (var link in net.Links)
        {
            entries.Add((link.A, link.A, link.Conductance));
            entries.Add((link.B, link.B, link.Conductance));
            entries.Add((Math.Min(link.A, link.B), Math.Max(link.A, link.B), -link.Conductance));
        }
        return SparseSymmetric.Of(net.Cells.Count, entries);
    }

    public static DiffusionOperator Of(SurfaceNet net, SparseSymmetric places, Elimination plan, double rangeMm)
    {
        var k = Stiffness(net, Math.Sqrt(8) / rangeMm);
        var bare = new double[places.Value.Length];
        // K C⁻¹ K, row by row: whoever shares a neighbour
        for (var m = 0; m < net.Cells.Count; m++)
            for (var a = k.Start[m]; a < k.Start[m + 1]; a++)
                for (var b = k.Start[m]; b < k.Start[m + 1]; b++)
                    bare[places.At(k.Column[a], k.Column[b])] += k.Value[a] * k.Value[b] / net.Cells[m].AreaMm2;
        var factor = FrontalCholesky.Of(plan, places.With(bare));
        var spread = factor.InverseDiagonal().Select(Math.Sqrt).ToArray();
        var even = new double[bare.Length];
        for (var i = 0; i < net.Cells.Count; i++)
            for (var e = places.Start[i]; e < places.Start[i + 1]; e++) even[e] = bare[e] * spread[i] * spread[places.Column[e]];
        return new(places.With(even), factor.LogDeterminant + (2 * spread.Sum(Math.Log)));
    }
}
