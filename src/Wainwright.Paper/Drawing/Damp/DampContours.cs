using System.Globalization;

namespace Wainwright.Paper;

/// <summary>Contour lines of moisture on a laid face, each with its own dashes and its number.</summary>
internal static class DampContours
{
    private static readonly Pen[] Pens = [new("contour", 0.3, "0.4 0.8"), new("contour", 0.4, "2.2 0.9"), new("contour", 0.7)];

    // a line shorter than this carries no number [mm of paper]
    private const double LabelledMm = 9;

    /// <summary>The pen of a threshold, the lowest first.</summary>
    public static Pen Of(int threshold, int count) => Pens[Math.Clamp(threshold + Pens.Length - count, 0, Pens.Length - 1)];

    public static void Draw(Ink ink, Sheet sheet, LaidFace face, IReadOnlyList<double> percent, IReadOnlyList<double> thresholds)
    {
        var contour = new Contour(face.Tiles);
        for (var t = 0; t < thresholds.Count; t++)
        {
            var pen = Of(t, thresholds.Count);
            List<(double X, double Y)>? longest = null;
            foreach (var chain in contour.Over(percent, thresholds[t]).Lines)
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
}
