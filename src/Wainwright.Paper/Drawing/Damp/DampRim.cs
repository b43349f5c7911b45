namespace Wainwright.Paper;

/// <summary>The outline of a laid face: where a piece of board has none beside it.</summary>
internal static class DampRim
{
    /// <summary>Its straight bits.</summary>
    public static IEnumerable<(Flat A, Flat B)> Of(LaidFace face)
    {
        var (us, vs) = (Places(face.Tiles.SelectMany(t => (double[])[t.Box.U0, t.Box.U1])), Places(face.Tiles.SelectMany(t => (double[])[t.Box.V0, t.Box.V1])));
        var there = new bool[us.Count + 1, vs.Count + 1];
        foreach (var tile in face.Tiles)
            for (var i = At(us, tile.Box.U0); i < At(us, tile.Box.U1); i++)
                for (var j = At(vs, tile.Box.V0); j < At(vs, tile.Box.V1); j++) there[i + 1, j + 1] = true;
        for (var i = 0; i < us.Count; i++)
            for (var j = 0; j < vs.Count; j++)
            {
                if (j < vs.Count - 1 && there[i, j + 1] != there[i + 1, j + 1]) yield return (new(us[i], vs[j]), new(us[i], vs[j + 1]));
                if (i < us.Count - 1 && there[i + 1, j] != there[i + 1, j + 1]) yield return (new(us[i], vs[j]), new(us[i + 1], vs[j]));
            }
    }

    private static List<double> Places(IEnumerable<double> edges)
    {
        List<double> kept = [];
        foreach (var e in edges.Order())
            if (kept.Count == 0 || e - kept[^1] > 0.5) kept.Add(e);
        return kept;
    }

    private static int At(List<double> places, double mm)
    {
        var i = places.BinarySearch(mm - 0.5);
        return i < 0 ? ~i : i;
    }
}
