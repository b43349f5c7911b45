namespace Wainwright.Survey.Damp.Cutting;

/// <summary>The best piece to cut out of a face, or the best two: every rectangle between the lines is looked at.</summary>
/// <remarks>Two rectangles that do not overlap can always be parted by the line of one of their sides: the best two are the best of either side of some line, and no pair is missed.</remarks>
internal static class PieceSearch
{
    /// <summary>A rectangle between four lines and what it gains.</summary>
    public readonly record struct Found(int U0, int U1, int V0, int V1, double Gain);

    /// <summary>None, one or two rectangles with the greatest gain together; none when nothing gains.</summary>
    public static IReadOnlyList<Found> Best(CutTable table)
    {
        int nu = table.LinesU.Count, nv = table.LinesV.Count;
        Found?[] endU = new Found?[nu], beginU = new Found?[nu], endV = new Found?[nv], beginV = new Found?[nv];
        for (var u0 = 0; u0 < nu; u0++)
            for (var u1 = u0 + 1; u1 < nu; u1++)
                for (var v0 = 0; v0 < nv; v0++)
                    for (var v1 = v0 + 1; v1 < nv; v1++)
                    {
                        var gain = table.Gain(u0, u1, v0, v1);
                        if (gain <= 0) continue;
                        var found = new Found(u0, u1, v0, v1, gain);
                        Keep(ref endU[u1], found);
                        Keep(ref beginU[u0], found);
                        Keep(ref endV[v1], found);
                        Keep(ref beginV[v0], found);
                    }
        var one = endU.Max(f => f?.Gain ?? 0);
        if (one <= 0) return [];
        var best = new List<Found> { endU.First(f => f?.Gain == one)!.Value };
        foreach (var pair in Pairs(endU, beginU).Concat(Pairs(endV, beginV)))
            if (pair.A.Gain + pair.B.Gain > best.Sum(f => f.Gain) + 1e-9) best = [pair.A, pair.B];
        return best;
    }

    private static void Keep(ref Found? best, Found found)
    {
        if (best is not { } b || found.Gain > b.Gain) best = found;
    }

    /// <summary>For each line, the best that ends at it or before with the best that begins at it or after.</summary>
    private static IEnumerable<(Found A, Found B)> Pairs(Found?[] end, Found?[] begin)
    {
        var after = new Found?[begin.Length];
        Found? best = null;
        for (var i = begin.Length - 1; i >= 0; i--)
        {
            if (begin[i] is { } f) Keep(ref best, f);
            after[i] = best;
        }
        best = null;
        for (var i = 0; i < end.Length; i++)
        {
            if (end[i] is { } f) Keep(ref best, f);
            if (best is { } a && after[i] is { } b) yield return (a, b);
        }
    }
}
