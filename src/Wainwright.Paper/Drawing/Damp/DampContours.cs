using System.Globalization;

namespace Wainwright.Paper;

/// <summary>Contour lines of moisture on a laid face, each with its own dashes and its number.</summary>
/// <remarks>Each piece is four triangles between its middle and its corners; a corner has the mean of the pieces that touch it.</remarks>
internal static class DampContours
{
    private static readonly Pen[] Pens = [new("contour", 0.3, "0.4 0.8"), new("contour", 0.4, "2.2 0.9"), new("contour", 0.7)];

    // a line shorter than this carries no number [mm of paper]
    private const double LabelledMm = 9;

    /// <summary>The pen of a threshold, the lowest first.</summary>
    public static Pen Of(int threshold, int count) => Pens[Math.Clamp(threshold + Pens.Length - count, 0, Pens.Length - 1)];

    public static void Draw(Ink ink, Sheet sheet, LaidFace face, IReadOnlyList<double> percent, IReadOnlyList<double> thresholds)
    {
        var corners = CornerMeans(face, percent);
        for (var t = 0; t < thresholds.Count; t++)
        {
            var pen = Of(t, thresholds.Count);
            List<(double X, double Y)>? longest = null;
            foreach (var chain in Chains(face.Tiles.SelectMany(tile => Crossings(tile, percent[tile.Cell], corners, thresholds[t]))))
            {
                var line = chain.Select(sheet.At).ToList();
                ink.Polyline(line, Pen.Halo with { WidthMm = pen.WidthMm + 0.5 });
                ink.Polyline(line, pen);
                if (longest is null || Length(line) > Length(longest)) longest = line;
            }
            if (longest is not null && Length(longest) >= LabelledMm)
            {
                var (x, y) = longest[longest.Count / 2];
                ink.Text(x, y + 0.9, string.Create(CultureInfo.InvariantCulture, $"{thresholds[t]:0.#} %"), 2.3, Anchor.Middle, bold: true, halo: true);
            }
        }
    }

    private static double Length(List<(double X, double Y)> line) => line.Zip(line.Skip(1)).Sum(s => Math.Sqrt(((s.First.X - s.Second.X) * (s.First.X - s.Second.X)) + ((s.First.Y - s.Second.Y) * (s.First.Y - s.Second.Y))));

    private static (long, long) Key(Flat p) => ((long)Math.Round(p.U * 2), (long)Math.Round(p.V * 2));

    private static Flat[] Corners(Extent e) => [new(e.U0, e.V0), new(e.U1, e.V0), new(e.U1, e.V1), new(e.U0, e.V1)];

    /// <summary>At each corner the mean of all pieces that touch it, with a corner or with a side.</summary>
    private static Dictionary<(long, long), double> CornerMeans(LaidFace face, IReadOnlyList<double> percent)
    {
        Dictionary<(long, long), double> means = [];
        foreach (var corner in face.Tiles.SelectMany(t => Corners(t.Box)))
            if (!means.ContainsKey(Key(corner)))
                means[Key(corner)] = face.Tiles.Where(t => corner.U >= t.Box.U0 - 1 && corner.U <= t.Box.U1 + 1 && corner.V >= t.Box.V0 - 1 && corner.V <= t.Box.V1 + 1).Average(t => percent[t.Cell]);
        return means;
    }

    /// <summary>Where a threshold crosses the four triangles of a piece.</summary>
    private static IEnumerable<(Flat A, Flat B)> Crossings(LaidTile tile, double middle, Dictionary<(long, long), double> means, double threshold)
    {
        var corners = Corners(tile.Box);
        var centre = new Flat((tile.Box.U0 + tile.Box.U1) / 2, (tile.Box.V0 + tile.Box.V1) / 2);
        for (var i = 0; i < 4; i++)
        {
            (Flat At, double Value)[] triangle = [(centre, middle), (corners[i], means[Key(corners[i])]), (corners[(i + 1) % 4], means[Key(corners[(i + 1) % 4])])];
            List<Flat> cut = [];
            for (var k = 0; k < 3; k++)
            {
                var (a, b) = (triangle[k], triangle[(k + 1) % 3]);
                if (a.Value > threshold == b.Value > threshold) continue;
                var share = (threshold - a.Value) / (b.Value - a.Value);
                cut.Add(new(a.At.U + (share * (b.At.U - a.At.U)), a.At.V + (share * (b.At.V - a.At.V))));
            }
            if (cut.Count == 2) yield return (cut[0], cut[1]);
        }
    }

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
