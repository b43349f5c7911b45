using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Paper;

/// <summary>Hatching: close strokes where nobody has read, wide strokes the other way where it may be wet or dry.</summary>
internal static class DampHatch
{
    public static readonly Pen Unread = new("hatch", 0.18, Stroke: "#3a3a3a"), InDoubt = new("hatch", 0.18, "1.2 1.4", Stroke: "#3a3a3a");

    public const double CloseMm = 1.6, WideMm = 3;

    public static void Draw(Ink ink, Sheet sheet, LaidFace face, DampMap map, DampFrame? day)
    {
        ink.Lines(face.Tiles.Where(t => map.IsUnread(t.Cell)).SelectMany(t => Strokes(sheet, t.Box, CloseMm, true)), Unread);
        ink.Lines(face.Tiles.Where(t => !map.IsUnread(t.Cell) && map.IsAsWellWetAsDry(t.Cell, day)).SelectMany(t => Strokes(sheet, t.Box, WideMm, false)), InDoubt);
    }

    /// <summary>Slanting strokes inside a piece; of neighbours they meet, for all belong to one family of lines.</summary>
    private static IEnumerable<((double, double), (double, double))> Strokes(Sheet sheet, Extent box, double step, bool rising)
    {
        var (x0, y0) = sheet.At(new Flat(box.U0, box.V1));
        var (x1, y1) = sheet.At(new Flat(box.U1, box.V0));
        return Strokes(x0, y0, x1, y1, step, rising);
    }

    /// <summary>The same in a rectangle of paper.</summary>
    public static IEnumerable<((double, double), (double, double))> Strokes(double x0, double y0, double x1, double y1, double step, bool rising)
    {
        // rising lines have x + y the same all along, falling ones x − y
        var (low, high) = rising ? (x0 + y0, x1 + y1) : (x0 - y1, x1 - y0);
        for (var k = Math.Ceiling(low / step) * step; k < high; k += step)
        {
            var (from, to) = rising ? (Math.Max(x0, k - y1), Math.Min(x1, k - y0)) : (Math.Max(x0, k + y0), Math.Min(x1, k + y1));
            if (to - from > 0.02) yield return ((from, rising ? k - from : from - k), (to, rising ? k - to : to - k));
        }
    }
}
