namespace Wainwright.Methods.Moisture.Field;

/// <summary>The places that the field is worked out at: the cells themselves, or where cells are much finer than the field reaches, patches of them that the cells stand between.</summary>
/// <remarks>
/// Patches are joined as their cells are. A cell takes from the patches near it by shares that come of a few steps of spreading along
/// the links, so that shares never jump a gap either.
/// </remarks>
sealed class FieldNodes
{
    // patches no wider than this share of the shortest range; spreading by this much of what flows over the links
    const double PatchOfRange = 0.15, Step = 0.8, LeastShare = 2e-3;

    FieldNodes(SurfaceNet net, Row[] rows, bool areCells) => (Net, Rows, AreCells) = (net, rows, areCells);

    /// <summary>What a cell takes from the nodes.</summary>
    public sealed record Row(int[] Node, double[] Share)
    {
        public double Of(double[] nodes)
        {
            double sum = 0;
            for (var k = 0; k < Node.Length; k++) sum += Share[k] * nodes[Node[k]];
            return sum;
        }
    }

    /// <summary>The nodes as a net of their own.</summary>
    public SurfaceNet Net { get; }

    /// <summary>Each cell's row.</summary>
    public Row[] Rows { get; }

    /// <summary>By how much each cell must be raised to spread 1 again: between nodes of spread 1 their mean is a little less.</summary>
    /// <remarks>By the first terms of the correlation of smoothness 2 over the straight way: 1 − x²/4 + x⁴/16·(ln(2/x) + 3/4 − γ), x = 4·distance/range.</remarks>
    public double[] Raise(double rangeMm)
    {
        if (AreCells) return [.. Enumerable.Repeat(1.0, Rows.Length)];
        var raise = new double[Rows.Length];
        Parallel.For(0, raise.Length, i =>
        {
            double lost = 0;
            var row = Rows[i];
            for (var a = 0; a < row.Node.Length; a++)
                for (var b = 0; b < a; b++)
                {
                    var (from, to) = (Net.Cells[row.Node[a]], Net.Cells[row.Node[b]]);
                    var x2 = 16 / (rangeMm * rangeMm) * (((from.XMm - to.XMm) * (from.XMm - to.XMm)) + ((from.YMm - to.YMm) * (from.YMm - to.YMm)) + ((from.ZMm - to.ZMm) * (from.ZMm - to.ZMm)));
                    if (x2 > 0) lost += 2 * row.Share[a] * row.Share[b] * Math.Min(0.6, (x2 / 4) - (x2 * x2 / 16 * ((0.5 * Math.Log(4 / x2)) + 0.75 - 0.5772156649)));
                }
            raise[i] = 1 / Math.Sqrt(1 - Math.Min(0.5, lost));
        });
        return raise;
    }

    /// <summary>Whether nodes and cells are the same.</summary>
    public bool AreCells { get; }

    public static FieldNodes Of(SurfaceNet net, double shortestRangeMm)
    {
        var side = PatchOfRange * shortestRangeMm;
        var patch = Patches(net, side);
        var count = patch.Max() + 1;
        // fewer than four cells to a patch is not worth it
        if (count * 4 > net.Cells.Count) return new(net, [.. Enumerable.Range(0, net.Cells.Count).Select(i => new Row([i], [1]))], true);
        var coarse = Joined(net, patch, count);
        return new(coarse, Spread(net, patch, Math.Sqrt((double)net.Cells.Count / count)), false);
    }

    /// <summary>The patch of each cell: cells of one sheet in one box that hang together.</summary>
    static int[] Patches(SurfaceNet net, double sideMm)
    {
        var low = net.Cells.GroupBy(c => c.Sheet).ToDictionary(g => g.Key, g => (X: g.Min(c => c.XMm), Y: g.Min(c => c.YMm), Z: g.Min(c => c.ZMm)));
        int Box(double at, double from) => (int)Math.Floor((at - from + 1e-6) / sideMm);
        var key = net.Cells.Select(c => (c.Sheet, Box(c.XMm, low[c.Sheet].X), Box(c.YMm, low[c.Sheet].Y), Box(c.ZMm, low[c.Sheet].Z))).ToArray();
        var root = Enumerable.Range(0, key.Length).ToArray();
        int Root(int i)
        {
            while (root[i] != i) i = root[i] = root[root[i]];
            return i;
        }
        foreach (var link in net.Links)
            if (key[link.A] == key[link.B]) root[Root(link.A)] = Root(link.B);
        var number = new Dictionary<int, int>();
        var patch = new int[key.Length];
        for (var i = 0; i < patch.Length; i++)
        {
            var r = Root(i);
            if (!number.TryGetValue(r, out patch[i])) number[r] = patch[i] = number.Count;
        }
        return patch;
    }

    static SurfaceNet Joined(SurfaceNet net, int[] patch, int count)
    {
        var (area, x, y, z, sheet) = (new double[count], new double[count], new double[count], new double[count], new int[count]);
        for (var i = 0; i < patch.Length; i++)
        {
            var c = net.Cells[i];
            area[patch[i]] += c.AreaMm2;
            x[patch[i]] += c.AreaMm2 * c.XMm;
            y[patch[i]] += c.AreaMm2 * c.YMm;
            z[patch[i]] += c.AreaMm2 * c.ZMm;
            sheet[patch[i]] = c.Sheet;
        }
        SurfaceNet.Cell[] cells = [.. Enumerable.Range(0, count).Select(p => new SurfaceNet.Cell(area[p], sheet[p], x[p] / area[p], y[p] / area[p], z[p] / area[p]))];
        static double Apart(SurfaceNet.Cell a, SurfaceNet.Cell b) => Math.Max(1e-3, Math.Sqrt(Math.Pow(a.XMm - b.XMm, 2) + Math.Pow(a.YMm - b.YMm, 2) + Math.Pow(a.ZMm - b.ZMm, 2)));
        var links = new Dictionary<(int, int), double>();
        foreach (var link in net.Links)
        {
            int a = Math.Min(patch[link.A], patch[link.B]), b = Math.Max(patch[link.A], patch[link.B]);
            // the way between the patches' middles is longer than that between the cells'
            if (a != b) links[(a, b)] = links.GetValueOrDefault((a, b)) + (link.Conductance * Math.Min(1, Apart(net.Cells[link.A], net.Cells[link.B]) / Apart(cells[a], cells[b])));
        }
        return new(cells, [.. links.OrderBy(l => l.Key).Select(l => new SurfaceNet.Link(l.Key.Item1, l.Key.Item2, l.Value))]);
    }

    static Row[] Spread(SurfaceNet net, int[] patch, double cellsToASide)
    {
        // a box of k cells spread by as much again is a roof of k cells each way
        var steps = (int)Math.Ceiling(cellsToASide * cellsToASide / 12 / (Step / 2));
        var near = new List<(int Cell, double Conductance)>[net.Cells.Count];
        for (var i = 0; i < near.Length; i++) near[i] = [];
        foreach (var link in net.Links)
        {
            near[link.A].Add((link.B, link.Conductance));
            near[link.B].Add((link.A, link.Conductance));
        }
        var now = patch.Select(p => new[] { (Node: p, Share: 1.0) }).ToArray();
        var sums = new Dictionary<int, double>();
        for (var s = 0; s < steps; s++)
        {
            var next = new (int Node, double Share)[now.Length][];
            for (var i = 0; i < next.Length; i++)
            {
                sums.Clear();
                var total = near[i].Sum(n => n.Conductance);
                foreach (var (node, share) in now[i]) sums[node] = total > 0 ? (1 - Step) * share : share;
                foreach (var (cell, conductance) in near[i])
                    foreach (var (node, share) in now[cell]) sums[node] = sums.GetValueOrDefault(node) + (Step * share * conductance / total);
                next[i] = [.. sums.Where(p => p.Value > LeastShare).OrderBy(p => p.Key).Select(p => (p.Key, p.Value))];
            }
            now = next;
        }
        return [.. now.Select(r => new Row([.. r.Select(p => p.Node)], [.. r.Select(p => p.Share / r.Sum(q => q.Share))]))];
    }
}
