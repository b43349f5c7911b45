using System.Globalization;

namespace Wainwright.Paper;

/// <summary>The key below a plan of damp boards: lines, hatching, pins, scale.</summary>
internal static class DampKey
{
    private const double LetterMm = 2.3, SampleMm = 9, RowMm = 4.4;

    /// <summary>Draws it from a height on; gives the height below it.</summary>
    public static double Draw(Ink ink, double topMm, DampPlanOptions options, IReadOnlyList<double> thresholds, double scale)
    {
        List<(string Says, Action<double, double> Sample)> entries =
        [
            .. thresholds.Select((t, i) => (string.Create(CultureInfo.InvariantCulture, $"{t:0.#} % line"), (Action<double, double>)((x, y) => ink.Line(x, y, x + SampleMm, y, DampContours.Of(i, thresholds.Count))))),
            ("wet: closer is wetter", (x, y) => ink.Lines(DampDrops.In(x, y - 1.5, x + (SampleMm / 2), y + 1.5, 1).Concat(DampDrops.In(x + (SampleMm / 2), y - 1.5, x + SampleMm, y + 1.5, thresholds.Count)), DampDrops.Drop)),
            ("nobody has read here", (x, y) => Hatched(x, y, DampHatch.CloseMm, true, DampHatch.Unread)),
            ("may be wet or dry", (x, y) => Hatched(x, y, DampHatch.WideMm, false, DampHatch.InDoubt)),
            ("no board: window, hatch, arch", (x, y) => ink.Rectangle(x, y - 1.5, SampleMm, 3, DampPlan.NoBoard)),
            ("reading: point and %", (x, y) => ink.Circle(x + (SampleMm / 2), y, 0.9, Pen.Dot)),
        ];
        if (options.Cut is not null) entries.Add(("cut out", (x, y) => ink.Line(x, y, x + SampleMm, y, DampCutLines.Line)));
        var (left, row) = (2.0, topMm + 2);
        foreach (var (says, sample) in entries)
        {
            var wide = SampleMm + 1.5 + Lettering.WidthMm(says, LetterMm) + 4;
            if (left + wide > options.WidthMm)
            {
                left = 2;
                row += RowMm;
            }
            sample(left, row);
            ink.Text(left + SampleMm + 1.5, row + 0.8, says, LetterMm);
            left += wide;
        }
        row += RowMm;
        ink.Line(2, row, 2 + (500 / scale), row, Pen.Solid);
        ink.Text(2 + (500 / scale) + 1.5, row + 0.8, string.Create(CultureInfo.InvariantCulture, $"500 mm; about 1:{scale:0} on A4; x from the front, y from the left, z from the metal floor [mm]"), LetterMm);
        return row + 3;

        void Hatched(double x, double y, double step, bool rising, Pen pen)
        {
            ink.Rectangle(x, y - 1.5, SampleMm, 3, Pen.Sketch with { WidthMm = 0.18 });
            ink.Lines(DampHatch.Strokes(x, y - 1.5, x + SampleMm, y + 1.5, step, rising), pen);
        }
    }
}
