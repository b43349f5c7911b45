using Wainwright.Survey.Damp.Cutting;

namespace Wainwright.Paper;

/// <summary>The pieces to cut out, on the faces they belong to.</summary>
internal static class DampCutLines
{
    public static readonly Pen Line = new("cut-line", 1, "5 1 1 1");

    private const double WordMm = 3.4, SideMm = 2.1;

    private static readonly string[] Axes = ["x", "y", "z"];

    public static void Draw(Ink ink, Sheet sheet, IReadOnlyList<LaidFace> faces, CutPlan plan, IEnumerable<PaperBox> taken)
    {
        foreach (var face in faces)
            foreach (var piece in plan.Boards[face.Face.Sheet].Pieces.Where(p => LiesOn(face.Face, p)))
            {
                var corners = piece.Corners.Select(face.At).Select(sheet.At).ToList();
                ink.Polygon(corners, Line with { WidthMm = 1.8, Stroke = Pen.White, Dashes = null });
                ink.Polygon(corners, Line, $"cut out {plan.Boards[face.Face.Sheet].Sheet.Part}");
                var (x, y) = (corners.Average(c => c.X), corners.Average(c => c.Y));
                var word = Place(corners, taken);
                ink.Text(word.X, word.Y, "OUT", WordMm, Anchor.Middle, bold: true, halo: true);
                for (var side = 0; side < corners.Count; side++) Side(ink, corners[side], corners[(side + 1) % corners.Count], (x, y), piece.RunsOn[side], taken);
            }
    }

    /// <summary>A place for the word in the piece that no pin has; the middle where there is none.</summary>
    private static (double X, double Y) Place(List<(double X, double Y)> corners, IEnumerable<PaperBox> taken)
    {
        var box = PaperBox.Of(corners);
        var places = from v in (double[])[0.5, 0.3, 0.7, 0.15, 0.85] from u in (double[])[0.5, 0.3, 0.7, 0.15, 0.85] select (X: box.X0 + (u * box.Width), Y: box.Y0 + (v * box.Height));
        return places.Where(p => !taken.Any(t => t.Meets(PaperBox.Around(p.X, p.Y - (WordMm / 3), 10, WordMm + 1)))).Append((box.X0 + (box.Width / 2), box.Y0 + (box.Height / 2))).First();
    }

    // what a side runs on stands inside it, where it is a cut
    private static void Side(Ink ink, (double X, double Y) a, (double X, double Y) b, (double X, double Y) middle, string runsOn, IEnumerable<PaperBox> taken)
    {
        if (runsOn == "edge of the board") return;
        var (x, y) = ((a.X + b.X) / 2, (a.Y + b.Y) / 2);
        var (level, wide) = (Math.Abs(a.X - b.X) > Math.Abs(a.Y - b.Y), Lettering.WidthMm(runsOn, SideMm));
        // words that a pin's would cover are left to the list beside the drawing
        if (taken.Any(t => t.Meets(PaperBox.Around(x, y, level ? wide : 3 * SideMm, level ? 3 * SideMm : wide)))) return;
        if (level) ink.Text(x, y + (y < middle.Y ? 3 : -1.4), runsOn, SideMm, Anchor.Middle, halo: true);
        else ink.Upright(x + (x < middle.X ? 2.6 : -1.2), y, runsOn, SideMm);
    }

    private static bool LiesOn(BoardFace face, CutPiece piece)
    {
        double Of(Fitout.Place p, int axis) => Axes[axis] switch { "x" => p.XMm, "y" => p.YMm, _ => p.ZMm };
        return piece.Corners.All(c => Of(c, face.Across) >= face.LowMm - 1 && Of(c, face.Across) <= face.HighMm + 1
            && Of(c, face.UAxis) >= face.Extent.U0 - 1 && Of(c, face.UAxis) <= face.Extent.U1 + 1 && Of(c, face.VAxis) >= face.Extent.V0 - 1 && Of(c, face.VAxis) <= face.Extent.V1 + 1)
            // all corners in one plane: a face that merely touches another's edge has none of its pieces
            && piece.Corners.Max(c => Of(c, face.Across)) - piece.Corners.Min(c => Of(c, face.Across)) < 1;
    }
}
