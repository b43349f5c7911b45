namespace Wainwright.Paper;

/// <summary>A pin laid out: where its label stands and where it points, in millimetres of paper.</summary>
internal sealed record SetPin(Pin Pin, double AtX, double AtY, double LabelX, int Row);

/// <summary>
/// Labels in rows above or below a drawing, in the order of the places they point at, so that no two labels overlap and
/// leaders seldom cross.
/// </summary>
internal static class PinLane
{
    public const double PinMm = 5.4, RowMm = 6.2;

    /// <summary>How many rows the labels need on that width.</summary>
    public static int Rows(IReadOnlyCollection<Pin> pins, double widthMm) =>
        pins.Count == 0 ? 0 : (int)Math.Ceiling(pins.Sum(WidthMm) / Math.Max(widthMm, 1));

    public static double WidthMm(Pin pin) => Math.Max(PinMm, pin.Label.Length * 2.4 * Ink.LetterWidth + 2) + 0.7;

    /// <summary>Places the labels; each row keeps the order and the room its labels need.</summary>
    public static IReadOnlyList<SetPin> Set(IEnumerable<(Pin Pin, double X, double Y)> pins, double fromX, double toX)
    {
        var sorted = pins.OrderBy(p => p.X).ThenBy(p => p.Y).ToList();
        var rows = Rows([.. sorted.Select(p => p.Pin)], toX - fromX);
        return [.. Enumerable.Range(0, rows).SelectMany(row => Spread([.. sorted.Where((_, i) => i % rows == row)], fromX, toX, row))];
    }

    /// <summary>Least movement from the wanted places under "in order, not overlapping": pooled blocks, as in isotonic regression.</summary>
    private static IEnumerable<SetPin> Spread(List<(Pin Pin, double X, double Y)> row, double fromX, double toX, int number)
    {
        var offset = new double[row.Count];
        for (var i = 1; i < row.Count; i++) offset[i] = offset[i - 1] + (WidthMm(row[i - 1].Pin) + WidthMm(row[i].Pin)) / 2;

        var blocks = new List<(double Sum, int Count)>();
        for (var i = 0; i < row.Count; i++)
        {
            blocks.Add((row[i].X - offset[i], 1));
            while (blocks.Count > 1 && blocks[^2].Sum / blocks[^2].Count > blocks[^1].Sum / blocks[^1].Count)
            {
                var last = blocks[^1];
                blocks.RemoveAt(blocks.Count - 1);
                blocks[^1] = (blocks[^1].Sum + last.Sum, blocks[^1].Count + last.Count);
            }
        }
        var starts = blocks.SelectMany(b => Enumerable.Repeat(b.Sum / b.Count, b.Count)).ToList();
        for (var i = 0; i < row.Count; i++)
        {
            var least = fromX + WidthMm(row[0].Pin) / 2;
            var most = toX - WidthMm(row[^1].Pin) / 2 - offset[^1];
            yield return new(row[i].Pin, row[i].X, row[i].Y, Math.Max(least, Math.Min(starts[i], most)) + offset[i], number);
        }
    }
}
