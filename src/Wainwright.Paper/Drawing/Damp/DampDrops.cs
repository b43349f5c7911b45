namespace Wainwright.Paper;

/// <summary>Short upright strokes where a board is wet: the closer they stand, the wetter it is.</summary>
internal static class DampDrops
{
    public static readonly Pen Drop = new("drop", 0.4, Stroke: "#3a3a3a");

    private const double WidestMm = 6.4, LongMm = 0.9;

    public static void Draw(Ink ink, Sheet sheet, LaidFace face, IReadOnlyList<double> percent, IReadOnlyList<double> thresholds)
    {
        foreach (var tile in face.Tiles)
            if (thresholds.Count(t => percent[tile.Cell] > t) is > 0 and var band)
            {
                var (x0, y0) = sheet.At(new Flat(tile.Box.U0, tile.Box.V1));
                var (x1, y1) = sheet.At(new Flat(tile.Box.U1, tile.Box.V0));
                ink.Lines(In(x0, y0, x1, y1, band), Drop);
            }
    }

    /// <summary>Strokes in a rectangle of paper; those of neighbours belong to one pattern.</summary>
    /// <param name="band">1 for over the lowest threshold, one more for each further one.</param>
    public static IEnumerable<((double, double), (double, double))> In(double x0, double y0, double x1, double y1, int band)
    {
        var step = WidestMm / Math.Pow(1.7, band);
        for (var j = (int)Math.Ceiling(y0 / step); j * step < y1; j++)
            for (var i = (int)Math.Ceiling((x0 / step) - (0.5 * (j & 1))); (i + (0.5 * (j & 1))) * step < x1; i++)
            {
                var x = (i + (0.5 * (j & 1))) * step;
                yield return ((x, j * step), (x, Math.Min(y1, (j * step) + LongMm)));
            }
    }
}
