namespace Wainwright.Survey.Damp.Cutting;

/// <summary>A face laid out for the search: what each rectangle would gain, from summed tables.</summary>
/// <remarks>
/// Gain of cutting a rectangle out instead of leaving it, in minutes: over all of it the stakes of its pieces that do not depend on the
/// margin; over what is left inside the margin at cut edges, the rot that goes; less the cut and the piece. Edges of the board and seams
/// between the pieces that a board comes apart into need no cut and no margin.
/// </remarks>
internal sealed class CutTable
{
    private readonly double[] us, vs;

    private readonly double[,] all, inside;

    // minutes and length of the cut along each line, summed from its beginning
    private readonly double[][] minutesU, minutesV, lengthU, lengthV;

    private readonly int[] atU, atV, inU, outU, inV, outV;

    /// <summary>One piece of board on the face.</summary>
    /// <param name="Box">Where it lies.</param>
    /// <param name="Owner">What it belongs to: between two owners is a seam.</param>
    /// <param name="GainPerMm2">Gain of cutting it, the rot aside [min/mm²].</param>
    /// <param name="RotPerMm2">Gain from its rot, where the margin is kept [min/mm²].</param>
    public readonly record struct Tile(FaceBox Box, int Owner, double GainPerMm2, double RotPerMm2);

    public CutTable(IReadOnlyList<Tile> tiles, IReadOnlyList<CutLine> linesU, IReadOnlyList<CutLine> linesV, CutStakes stakes)
    {
        (LinesU, LinesV, PieceMinutes) = (linesU, linesV, stakes.PiecePerPiece);
        us = Places(tiles.SelectMany(t => (double[])[t.Box.U0, t.Box.U1]), linesU, linesV, stakes.MarginMm);
        vs = Places(tiles.SelectMany(t => (double[])[t.Box.V0, t.Box.V1]), linesV, linesU, stakes.MarginMm);
        var owner = new int[us.Length - 1, vs.Length - 1];
        (all, inside) = (new double[us.Length, vs.Length], new double[us.Length, vs.Length]);
        for (var i = 0; i < us.Length - 1; i++)
            for (var j = 0; j < vs.Length - 1; j++) owner[i, j] = -1;
        foreach (var tile in tiles)
            for (var i = At(us, tile.Box.U0); i < At(us, tile.Box.U1); i++)
                for (var j = At(vs, tile.Box.V0); j < At(vs, tile.Box.V1); j++)
                {
                    var area = (us[i + 1] - us[i]) * (vs[j + 1] - vs[j]);
                    owner[i, j] = tile.Owner;
                    all[i + 1, j + 1] += area * tile.GainPerMm2;
                    inside[i + 1, j + 1] += area * tile.RotPerMm2;
                }
        Sum(all);
        Sum(inside);
        (atU, inU, outU) = Indices(us, linesU, stakes.MarginMm);
        (atV, inV, outV) = Indices(vs, linesV, stakes.MarginMm);
        int Owner(int i, int j) => i < 0 || j < 0 || i >= us.Length - 1 || j >= vs.Length - 1 ? -1 : owner[i, j];
        (minutesU, lengthU) = Cuts(linesU, atU, vs, (line, j) => (Owner(line - 1, j), Owner(line, j)), stakes);
        (minutesV, lengthV) = Cuts(linesV, atV, us, (line, i) => (Owner(i, line - 1), Owner(i, line)), stakes);
    }

    public IReadOnlyList<CutLine> LinesU { get; }

    public IReadOnlyList<CutLine> LinesV { get; }

    private double PieceMinutes { get; }

    /// <summary>Minutes gained by cutting out the rectangle between four lines.</summary>
    public double Gain(int u0, int u1, int v0, int v1)
    {
        var (a, b, c, d) = (atU[u0], atU[u1], atV[v0], atV[v1]);
        var minutes = PieceMinutes + minutesU[u0][d] - minutesU[u0][c] + minutesU[u1][d] - minutesU[u1][c] + minutesV[v0][b] - minutesV[v0][a] + minutesV[v1][b] - minutesV[v1][a];
        var (i, j, k, l) = (IsCut(lengthU[u0], c, d) ? inU[u0] : a, IsCut(lengthU[u1], c, d) ? outU[u1] : b, IsCut(lengthV[v0], a, b) ? inV[v0] : c, IsCut(lengthV[v1], a, b) ? outV[v1] : d);
        return Over(all, a, b, c, d) + (i < j && k < l ? Over(inside, i, j, k, l) : 0) - minutes;
    }

    /// <summary>Length to cut along each side of the rectangle: u0, u1, v0, v1 [mm].</summary>
    public (double U0, double U1, double V0, double V1) CutMm(int u0, int u1, int v0, int v1)
    {
        var (a, b, c, d) = (atU[u0], atU[u1], atV[v0], atV[v1]);
        return (lengthU[u0][d] - lengthU[u0][c], lengthU[u1][d] - lengthU[u1][c], lengthV[v0][b] - lengthV[v0][a], lengthV[v1][b] - lengthV[v1][a]);
    }

    private static bool IsCut(double[] length, int from, int to) => length[to] - length[from] > 0.5;

    private static double Over(double[,] sum, int a, int b, int c, int d) => sum[b, d] - sum[a, d] - sum[b, c] + sum[a, c];

    private static double[] Places(IEnumerable<double> edges, IReadOnlyList<CutLine> lines, IReadOnlyList<CutLine> crossing, double margin)
    {
        // the table must be able to stop where framing that crosses begins and ends
        var ends = crossing.SelectMany(l => (double[])[l.FromMm, l.ToMm]).Where(double.IsFinite);
        var places = edges.Concat(ends).Concat(lines.SelectMany(l => (double[])[l.AtMm, l.AtMm - margin, l.AtMm + margin])).Order().ToList();
        List<double> kept = [];
        foreach (var p in places)
            if (kept.Count == 0 || p - kept[^1] > 1e-6) kept.Add(p);
        return [.. kept];
    }

    private static int At(double[] places, double mm)
    {
        var i = Array.BinarySearch(places, mm - 1e-6);
        return i < 0 ? ~i : i;
    }

    private static (int[] At, int[] In, int[] Out) Indices(double[] places, IReadOnlyList<CutLine> lines, double margin) =>
        ([.. lines.Select(l => At(places, l.AtMm))], [.. lines.Select(l => At(places, l.AtMm + margin))], [.. lines.Select(l => At(places, l.AtMm - margin))]);

    private static void Sum(double[,] table)
    {
        for (var i = 1; i < table.GetLength(0); i++)
            for (var j = 1; j < table.GetLength(1); j++) table[i, j] += table[i - 1, j] + table[i, j - 1] - table[i - 1, j - 1];
    }

    private static (double[][] Minutes, double[][] Length) Cuts(IReadOnlyList<CutLine> lines, int[] at, double[] along, Func<int, int, (int Before, int After)> owners, CutStakes stakes)
    {
        double[][] minutes = new double[lines.Count][], length = new double[lines.Count][];
        for (var n = 0; n < lines.Count; n++)
        {
            (minutes[n], length[n]) = (new double[along.Length], new double[along.Length]);
            for (var k = 0; k < along.Length - 1; k++)
            {
                var (before, after) = owners(at[n], k);
                var cut = before >= 0 && before == after ? along[k + 1] - along[k] : 0;
                var framed = lines[n].Framing is not null && along[k] >= lines[n].FromMm - 1 && along[k + 1] <= lines[n].ToMm + 1;
                length[n][k + 1] = length[n][k] + cut;
                minutes[n][k + 1] = minutes[n][k] + (cut / 1000 * (framed ? stakes.FramingCutPerM : stakes.FreeCutPerM));
            }
        }
        return (minutes, length);
    }
}
