namespace Wainwright.Paper;

/// <summary>Contours of a figure over pieces laid flat: the areas over a level and the lines round them.</summary>
/// <remarks>Each piece is four triangles between its middle, which has the piece's figure, and its corners; a corner has the mean of the pieces that touch it. Between them the figure runs straight.</remarks>
internal sealed class Contour
{
    private readonly IReadOnlyList<LaidTile> tiles;

    // the pieces that touch a corner, with a corner or with a side
    private readonly Dictionary<(long, long), int[]> touching = [];

    public Contour(IReadOnlyList<LaidTile> tiles)
    {
        this.tiles = tiles;
        foreach (var corner in tiles.SelectMany(t => Corners(t.Box)))
            if (!touching.ContainsKey(Key(corner)))
                touching[Key(corner)] = [.. tiles.Where(t => corner.U >= t.Box.U0 - 1 && corner.U <= t.Box.U1 + 1 && corner.V >= t.Box.V0 - 1 && corner.V <= t.Box.V1 + 1).Select(t => t.Cell)];
    }

    /// <summary>What is over a level: closed areas that do not overlap, and the lines where it is crossed, each as long as it goes.</summary>
    /// <param name="values">The figure of each piece, in the order of the net.</param>
    /// <param name="level">The level.</param>
    public (IReadOnlyList<IReadOnlyList<Flat>> Areas, IReadOnlyList<IReadOnlyList<Flat>> Lines) Over(IReadOnlyList<double> values, double level)
    {
        var means = touching.ToDictionary(t => t.Key, t => t.Value.Average(c => values[c]));
        List<IReadOnlyList<Flat>> areas = [];
        List<(Flat A, Flat B)> crossings = [];
        Extent? whole = null;
        foreach (var tile in tiles)
        {
            var corners = Corners(tile.Box);
            double[] at = [.. corners.Select(c => means[Key(c)])];
            var run = values[tile.Cell] > level && at.All(v => v > level);
            // pieces that are over it throughout are one area with their neighbours along the row
            if (whole is { } before && !(run && before.V0 == tile.Box.V0 && before.V1 == tile.Box.V1 && before.U1 == tile.Box.U0))
            {
                areas.Add(Corners(before));
                whole = null;
            }
            if (run) whole = whole is { } longer ? longer with { U1 = tile.Box.U1 } : tile.Box;
            else if (values[tile.Cell] > level || at.Any(v => v > level)) Cut(tile, corners, at, values[tile.Cell], level, areas, crossings);
        }
        if (whole is { } last) areas.Add(Corners(last));
        return (areas, [.. Chains(crossings)]);
    }

    private static void Cut(LaidTile tile, Flat[] corners, double[] at, double middle, double level, List<IReadOnlyList<Flat>> areas, List<(Flat A, Flat B)> crossings)
    {
        var centre = new Flat((tile.Box.U0 + tile.Box.U1) / 2, (tile.Box.V0 + tile.Box.V1) / 2);
        for (var i = 0; i < 4; i++)
        {
            (Flat At, double Value)[] triangle = [(centre, middle), (corners[i], at[i]), (corners[(i + 1) % 4], at[(i + 1) % 4])];
            List<Flat> area = [], cut = [];
            for (var k = 0; k < 3; k++)
            {
                var (a, b) = (triangle[k], triangle[(k + 1) % 3]);
                if (a.Value > level) area.Add(a.At);
                if (a.Value > level == b.Value > level) continue;
                var share = (level - a.Value) / (b.Value - a.Value);
                cut.Add(new(a.At.U + (share * (b.At.U - a.At.U)), a.At.V + (share * (b.At.V - a.At.V))));
                area.Add(cut[^1]);
            }
            if (area.Count > 2) areas.Add(area);
            if (cut.Count == 2) crossings.Add((cut[0], cut[1]));
        }
    }

    private static (long, long) Key(Flat p) => ((long)Math.Round(p.U * 2), (long)Math.Round(p.V * 2));

    private static Flat[] Corners(Extent e) => [new(e.U0, e.V0), new(e.U1, e.V0), new(e.U1, e.V1), new(e.U0, e.V1)];

    /// <summary>Short pieces joined end to end, so that dashes run on.</summary>
    private static IEnumerable<List<Flat>> Chains(IEnumerable<(Flat A, Flat B)> pieces)
    {
        static (long, long) End(Flat p) => ((long)Math.Round(p.U * 20), (long)Math.Round(p.V * 20));
        var left = pieces.Where(p => End(p.A) != End(p.B)).ToList();
        var at = left.SelectMany((p, i) => new[] { (End(p.A), i), (End(p.B), i) }).ToLookup(e => e.Item1, e => e.i);
        var used = new bool[left.Count];
        for (var start = 0; start < left.Count; start++)
        {
            if (used[start]) continue;
            used[start] = true;
            LinkedList<Flat> chain = new([left[start].A, left[start].B]);
            while (Next(chain.Last!.Value) is { } on) chain.AddLast(on);
            while (Next(chain.First!.Value) is { } before) chain.AddFirst(before);
            yield return [.. chain];
        }

        Flat? Next(Flat end)
        {
            foreach (var i in at[End(end)])
            {
                if (used[i]) continue;
                used[i] = true;
                return End(left[i].A) == End(end) ? left[i].B : left[i].A;
            }
            return null;
        }
    }
}
