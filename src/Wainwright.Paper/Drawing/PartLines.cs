using Wainwright.Fitout;

namespace Wainwright.Paper;

/// <summary>Draws the parts: what is beyond the cut in outline, cut faces hatched, what is overhead dashed.</summary>
internal sealed class PartLines(IReadOnlyList<Part> parts, SectionView view, Projection on, Sheet sheet, Ink ink, IReadOnlySet<PartId> marked)
{
    /// <summary>Thinner than this on paper a cut face is blacked in, as drawing practice has it [mm].</summary>
    private const double BlackedMm = 0.75;

    private const double HatchGapMm = 1.3, LetterMm = 2.1, LineMm = LetterMm * 1.15;

    private readonly List<Drawn> drawn = [.. parts.SelectMany((p, i) => p.Solids.Select(s => Drawn.Of(p, i, s, on))).OrderByDescending(d => d.Depth)];

    /// <summary>One solid as it comes out in this view.</summary>
    private sealed record Drawn(Part Part, int Number, double Depth, IReadOnlyList<Flat> Face, IReadOnlyList<Flat> Beyond, IReadOnlyList<Flat> Whole)
    {
        public static Drawn Of(Part part, int number, Solid solid, Projection on)
        {
            var corners = Outline.Corners(solid);
            var (face, beyond) = Outline.Cut(corners, on);
            return new(part, number, corners.Average(on.Depth), face, beyond, Outline.Hull(corners.Select(on.Of)));
        }

        public bool Overhead => Beyond.Count == 0;
    }

    /// <summary>Whether any of the part shows in this view, overhead lines of the plan included.</summary>
    public bool Shows(PartId part) => drawn.Any(d => d.Part.Id == part && (!d.Overhead || view.From == SeenFrom.Above));

    /// <summary>Seen and cut, farthest first, so that what is nearer covers what is behind it.</summary>
    public void Draw()
    {
        foreach (var solid in drawn.Where(d => !d.Overhead))
        {
            ink.Open("part", solid.Part.Id.Text);
            var fill = marked.Contains(solid.Part.Id) ? Pen.Marked : Pen.Solid;
            if (solid.Beyond.Count >= 3) ink.Polygon(sheet.At(solid.Beyond), fill, Title(solid.Part));
            if (solid.Face.Count >= 3) Face(solid);
            ink.Close();
        }
        foreach (var solid in drawn.Where(d => !d.Overhead && marked.Contains(d.Part.Id) && d.Beyond.Count >= 3)) ink.Polygon(sheet.At(solid.Beyond), Pen.Hidden);
        if (view.From == SeenFrom.Above)
            foreach (var solid in drawn.Where(d => d.Overhead && d.Whole.Count >= 3 && !LeftOut(d.Part)))
            {
                ink.Open("part", solid.Part.Id.Text);
                ink.Polygon(sheet.At(solid.Whole), marked.Contains(solid.Part.Id) ? Pen.Overhead with { WidthMm = 0.5 } : Pen.Overhead, Title(solid.Part));
                ink.Close();
            }
    }

    /// <summary>
    /// Short names, each on a part that is large enough and not covered where the name would stand, clear of
    /// <paramref name="taken"/>.
    /// </summary>
    public void Names(IEnumerable<PaperBox> taken)
    {
        var full = taken.ToList();
        var named = new HashSet<PartId>();
        foreach (var d in drawn.Where(d => !d.Overhead && d.Beyond.Count >= 3).Reverse())
        {
            if (named.Contains(d.Part.Id)) continue;
            var room = PaperBox.Of(sheet.At(d.Beyond));
            var lines = Lettering.Wrap(PlainWords.ShortName(d.Part.Name), LetterMm, room.Width - 2).ToList();
            var (wide, high) = (lines.Max(l => Lettering.WidthMm(l, LetterMm)), lines.Count * LineMm);
            if (lines.Count > 3 || high > room.Height - 1.5 || wide > room.Width - 1.6) continue;
            foreach (var (x, y) in Spots(room, wide, high))
            {
                var box = PaperBox.Around(x, y, wide, high);
                if (Covered(d, box) || full.Any(box.Meets)) continue;
                full.Add(box);
                named.Add(d.Part.Id);
                foreach (var (line, i) in lines.Select((l, i) => (l, i)))
                    ink.Text(x, box.Y0 + i * LineMm + LetterMm * 0.95, line, LetterMm, Anchor.Middle, halo: d.Face.Count >= 3);
                break;
            }
        }
    }

    /// <summary>Places to try for a name, the middle first.</summary>
    private static IEnumerable<(double X, double Y)> Spots(PaperBox room, double wide, double high)
    {
        var (x, y) = ((room.X0 + room.X1) / 2, (room.Y0 + room.Y1) / 2);
        var (down, along) = ((room.Height - high) / 2 - 0.8, (room.Width - wide) / 2 - 0.8);
        foreach (var dy in (double[])[0, -0.5, 0.5, -1, 1])
            foreach (var dx in (double[])[0, -0.5, 0.5, -1, 1])
                yield return (x + dx * along, y + dy * down);
    }

    private bool Covered(Drawn by, PaperBox box) => drawn.Any(d => !d.Overhead && d.Depth < by.Depth && d.Beyond.Count >= 3 && box.Meets(PaperBox.Of(sheet.At(d.Beyond))));

    private void Face(Drawn solid)
    {
        var thin = Math.Min(solid.Face.Max(p => p.U) - solid.Face.Min(p => p.U), solid.Face.Max(p => p.V) - solid.Face.Min(p => p.V));
        if (sheet.Mm(thin) < BlackedMm)
        {
            ink.Polygon(sheet.At(solid.Face), Pen.Black);
            return;
        }
        var pen = sheet.Mm(thin) < 2 ? Pen.Solid : Pen.Cut;
        ink.Polygon(sheet.At(solid.Face), marked.Contains(solid.Part.Id) ? pen with { Fill = Pen.Tone } : pen);
        var gap = sheet.Mm(thin) < 2 ? HatchGapMm / 2 : HatchGapMm;
        ink.Lines(Outline.Hatch(solid.Face, gap * sheet.Scale, solid.Number % 2 == 0).Select(l => (sheet.At(l.A), sheet.At(l.B))), Pen.Hatch);
    }

    /// <summary>Sheets under the roof and what lies on it would cover the whole plan with lines and say nothing there.</summary>
    private static bool LeftOut(Part part) =>
        part.System is PartSystem.Lining or PartSystem.Insulation || (part.Outside && part.System != PartSystem.Openings);

    private static string Title(Part part) => $"{part.Id.Text} {part.Name}";
}
