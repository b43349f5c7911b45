namespace Wainwright.Paper;

/// <summary>Draws pins that have been placed: leader, dot, label.</summary>
internal sealed class PinLines(IReadOnlyList<SetPin> pins, double edgeMm, bool above, double gapMm)
{
    private const double LetterMm = 2.4, DotMm = 0.75;

    private int Away => above ? -1 : 1;

    /// <summary>Where dots and leaders run, so that names can keep clear of them: boxes of paper.</summary>
    public IEnumerable<PaperBox> Taken() => pins.SelectMany(p =>
    {
        const int steps = 24;
        var (x0, y0) = (p.LabelX, edgeMm + Away * 1.5);
        return Enumerable.Range(0, steps + 1).Select(i => (X: x0 + (p.AtX - x0) * i / steps, Y: y0 + (p.AtY - y0) * i / steps))
            .Select(c => PaperBox.Around(c.X, c.Y, 2 * DotMm, 2 * DotMm));
    });

    public void Draw(Ink ink)
    {
        foreach (var pen in (Pen[])[Pen.Halo, Pen.Leader])
            foreach (var p in pins)
                ink.Polyline([(p.LabelX, LabelY(p)), (p.LabelX, edgeMm + Away * 1.5), (p.AtX, p.AtY)], pen);
        foreach (var p in pins) ink.Circle(p.AtX, p.AtY, DotMm, Pen.Dot);
        foreach (var p in pins)
        {
            var y = LabelY(p);
            ink.Open("mark", p.Pin.Label);
            if (p.Pin.Kind == PinKind.Finding && p.Pin.Label.Length <= 2) ink.Circle(p.LabelX, y, PinLane.PinMm / 2, Pen.Pin, p.Pin.Says);
            else
            {
                var width = PinLane.WidthMm(p.Pin) - 0.7;
                ink.Rectangle(p.LabelX - width / 2, y - PinLane.PinMm / 2 + 0.4, width, PinLane.PinMm - 0.8, Pen.Pin, p.Pin.Kind == PinKind.Finding ? 2.2 : 0);
            }
            ink.Text(p.LabelX, y + LetterMm * 0.36, p.Pin.Label, LetterMm, Anchor.Middle, bold: p.Pin.Kind == PinKind.Finding);
            ink.Close();
        }
    }

    private double LabelY(SetPin p) => edgeMm + Away * (gapMm - 1.5 + p.Row * PinLane.RowMm + PinLane.PinMm / 2);
}
