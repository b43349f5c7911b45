using Wainwright.Survey.Damp;

namespace Wainwright.Paper;

/// <summary>Where readings were taken, each with its number and value, placed so that no two cover each other.</summary>
internal sealed class DampPins
{
    private const double DotMm = 0.9, LetterMm = 2.2, LineMm = 2.6;

    private readonly List<(double X, double Y, string Text, string Title, PaperBox Box)> pins = [];

    public DampPins(DampMap map, IReadOnlyList<LaidFace> faces, Sheet sheet)
    {
        foreach (var face in faces)
            foreach (var reading in map.Readings.Where(r => face.Face.Cells.Contains(r.Cell)))
            {
                var point = map.Job.Points.First(p => p.Id == reading.Point);
                var (x, y) = sheet.At(face.At(point.At));
                var text = $"{point.Id} {reading.Shown}";
                pins.Add((x, y, text, $"{point.Id} {point.Where}", Free(x, y, Lettering.WidthMm(text, LetterMm))));
            }
    }

    /// <summary>Paper that dots and their words stand on.</summary>
    public IEnumerable<PaperBox> Taken => pins.SelectMany(p => (PaperBox[])[p.Box, PaperBox.Around(p.X, p.Y, 2 * DotMm, 2 * DotMm)]);

    public void Draw(Ink ink)
    {
        foreach (var pin in pins)
        {
            ink.Circle(pin.X, pin.Y, DotMm, Pen.Dot, pin.Title);
            ink.Text(pin.Box.X0, pin.Box.Y1 - 0.5, pin.Text, LetterMm, bold: true, halo: true);
        }
    }

    /// <summary>A place for words beside a dot that no other words have: right of it, left, below, above, then further off.</summary>
    private PaperBox Free(double x, double y, double width)
    {
        PaperBox At(double left, double middle) => new(left, middle - (LineMm / 2), left + width, middle + (LineMm / 2));
        var places = Enumerable.Range(0, 4).SelectMany(i => (PaperBox[])[At(x + 1.5, y + (i * LineMm)), At(x - 1.5 - width, y + (i * LineMm)), At(x + 1.5, y - (i * LineMm)), At(x - 1.5 - width, y - (i * LineMm))]);
        return places.Where(p => !Taken.Any(t => t.Meets(p))).Append(At(x + 1.5, y)).First();
    }
}
