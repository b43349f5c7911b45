using Wainwright.Methods.Moisture.Field.Sparse;

namespace Wainwright.Methods.Moisture.Field;

/// <summary>The field before any reading for one range, brought to mean 0 and spread 1 at each node: covariance K⁻¹CK⁻¹CK⁻¹, K = κ²C + G.</summary>
/// <remarks>
/// C are the areas, G the links' conductances as a Laplacian. Only K is ever factored. At the rim of a sheet the bare operator has
/// more variance (nothing flows out, what would have left comes back); dividing by each node's own spread takes that away, so that a
/// rim is not held wetter or less known than the middle. That spread comes from the diagonal of K⁻¹ alone: half its second derivative
/// by κ² is the variance.
/// </remarks>
sealed class ReachField
{
    const int AtOnce = 16;

    // step of the derivative, as a share of κ²: half a millionth of the variance is lost
    const double Step = 1e-3;

    readonly FrontalCholesky factor;
    readonly FieldNodes nodes;
    readonly double[] area, scale, raise;

    ReachField(FieldNodes nodes, double rangeMm, FrontalCholesky factor, double[] scale)
    {
        (this.nodes, this.factor, this.scale) = (nodes, factor, scale);
        area = [.. nodes.Net.Cells.Select(c => c.AreaMm2)];
        raise = nodes.Raise(rangeMm);
    }

    public static ReachField Of(FieldNodes all, Elimination plan, double rangeMm)
    {
        var nodes = all.Net;
        var kappa2 = 16 / (rangeMm * rangeMm);
        var factors = new FrontalCholesky[3];
        var diagonals = new double[3][];
        for (var k = 0; k < 3; k++)
        {
            factors[k] = FrontalCholesky.Of(plan, Stiffness(nodes, plan.Pattern, kappa2 * (1 + (Step * (k - 1)))));
            diagonals[k] = factors[k].InverseDiagonal();
        }
        var h = Step * kappa2;
        var scale = new double[nodes.Cells.Count];
        for (var i = 0; i < scale.Length; i++) scale[i] = h / Math.Sqrt((diagonals[0][i] + diagonals[2][i] - (2 * diagonals[1][i])) / 2);
        return new(all, rangeMm, factors[1], scale);
    }

    /// <summary>The places of K's entries: each node and its neighbours.</summary>
    public static SparseSymmetric Places(SurfaceNet nodes) =>
        SparseSymmetric.Of(nodes.Cells.Count, [.. nodes.Links.Select(l => (Math.Min(l.A, l.B), Math.Max(l.A, l.B), 0.0))]);

    static SparseSymmetric Stiffness(SurfaceNet nodes, SparseSymmetric places, double kappa2PerMm2)
    {
        var value = new double[places.Value.Length];
        for (var i = 0; i < nodes.Cells.Count; i++) value[places.At(i, i)] += kappa2PerMm2 * nodes.Cells[i].AreaMm2;
        foreach (var link in nodes.Links)
        {
            value[places.At(link.A, link.A)] += link.Conductance;
            value[places.At(link.B, link.B)] += link.Conductance;
            value[places.At(link.A, link.B)] -= link.Conductance;
            value[places.At(link.B, link.A)] -= link.Conductance;
        }
        return places.With(value);
    }

    /// <summary>What a cell has of figures that stand at the nodes.</summary>
    public double At(int cell, double[] atNodes) => raise[cell] * nodes.Rows[cell].Of(atNodes);

    /// <summary>Covariance of every node with each of some cells.</summary>
    public double[][] Columns(IReadOnlyList<int> cells)
    {
        var (n, columns) = (area.Length, new double[cells.Count][]);
        Parallel.For(0, (cells.Count + AtOnce - 1) / AtOnce, part =>
        {
            var from = part * AtOnce;
            var wide = Math.Min(AtOnce, cells.Count - from);
            var x = new double[n * wide];
            for (var r = 0; r < wide; r++)
            {
                var row = nodes.Rows[cells[from + r]];
                for (var k = 0; k < row.Node.Length; k++) x[(row.Node[k] * wide) + r] = raise[cells[from + r]] * row.Share[k] * scale[row.Node[k]];
            }
            for (var turn = 0; turn < 3; turn++)
            {
                if (turn > 0)
                    for (var i = 0; i < x.Length; i++) x[i] *= area[i / wide];
                factor.SolveMany(x, wide);
            }
            for (var r = 0; r < wide; r++)
            {
                var column = columns[from + r] = new double[n];
                for (var i = 0; i < n; i++) column[i] = x[(i * wide) + r] * scale[i];
            }
        });
        return columns;
    }

    /// <summary>Normal numbers turned in place into a draw of the nodes.</summary>
    public void Draw(double[] normal)
    {
        factor.Draw(normal);
        for (var i = 0; i < normal.Length; i++) normal[i] *= area[i];
        factor.SolveMany(normal, 1);
        for (var i = 0; i < normal.Length; i++) normal[i] *= scale[i];
    }
}
