using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Paper;

/// <summary>Measures of the load space, the scale bar and the title block below a drawing.</summary>
internal sealed class TitleStrip(Job job, SectionView view, Projection on, Sheet sheet, Ink ink)
{
    private const double LetterMm = 2.4;

    public void Draw(double topMm, double widthMm)
    {
        var room = job.Vehicle.LoadSpace;
        var corners = ShellLines.Corners(room, view).Select(on.Of).ToList();
        var (u0, u1, v0, v1) = (corners.Min(c => c.U), corners.Max(c => c.U), corners.Min(c => c.V), corners.Max(c => c.V));
        var (across, up) = view.From switch
        {
            SeenFrom.Left or SeenFrom.Right => (room.LengthMm, room.HeightMm),
            SeenFrom.Above => (room.LengthMm, room.WidthMm),
            _ => (room.WidthMm, room.HeightMm),
        };
        Level(sheet.X(u0), sheet.X(u1), topMm + 4.6, Mm(across));
        Standing(sheet.Y(v0), sheet.Y(v1), view.From is SeenFrom.Right ? sheet.X(u0) - 3.5 : sheet.X(u1) + 3.5, Mm(up));
        Strip(topMm + 7, widthMm);
    }

    private void Level(double x0, double x1, double y, string text)
    {
        ink.Line(x0, y, x1, y, Pen.Dimension);
        foreach (var x in (double[])[x0, x1])
        {
            ink.Line(x, y - 1.6, x, y + 1.2, Pen.Dimension);
            ink.Line(x - 0.8, y + 0.8, x + 0.8, y - 0.8, Pen.Dimension with { WidthMm = 0.5 });
        }
        ink.Text((x0 + x1) / 2, y - 0.8, text, LetterMm, Anchor.Middle, halo: true);
    }

    private void Standing(double y0, double y1, double x, string text)
    {
        ink.Line(x, y0, x, y1, Pen.Dimension);
        foreach (var y in (double[])[y0, y1])
        {
            ink.Line(x - 1.2, y, x + 1.2, y, Pen.Dimension);
            ink.Line(x - 0.8, y + 0.8, x + 0.8, y - 0.8, Pen.Dimension with { WidthMm = 0.5 });
        }
        ink.Upright(x + (view.From is SeenFrom.Right ? -0.9 : 3.1), (y0 + y1) / 2, text, LetterMm);
    }

    private void Strip(double y, double widthMm)
    {
        ink.Line(0, y + 0.6, widthMm, y + 0.6, Pen.Solid);
        var narrow = widthMm < 130;
        ink.Text(1, y + 4, view.Title, narrow ? 2.3 : 2.8, bold: true);
        ink.Text(1, y + 7.8, string.Create(CultureInfo.InvariantCulture, $"{view.Cut} · job {job.Id}{(narrow ? "" : $" · about 1:{sheet.Scale:0} on A4 · mm · cab and wheels sketched")}"), 2.1);
        Bar(widthMm - 3 - sheet.Mm(1000), y + 4.8);
        if (view.From is SeenFrom.Left or SeenFrom.Above) Front(widthMm - 7 - sheet.Mm(1000), y + 4.8, -1);
        if (view.From is SeenFrom.Right) Front(widthMm - 7 - sheet.Mm(1000), y + 4.8, 1);
    }

    private void Bar(double x, double y)
    {
        var half = sheet.Mm(500);
        ink.Rectangle(x, y - 1.5, half, 1.5, Pen.Black);
        ink.Rectangle(x + half, y - 1.5, half, 1.5, Pen.Pin with { WidthMm = 0.18 });
        ink.Text(x, y + 2.4, "0", 2, Anchor.Middle);
        ink.Text(x + half, y + 2.4, "0.5", 2, Anchor.Middle);
        ink.Text(x + 2 * half, y + 2.4, "1 m", 2, Anchor.Middle);
    }

    private void Front(double x, double y, int way)
    {
        var (tip, tail) = way < 0 ? (x - 13, x) : (x, x - 13);
        ink.Line(tail, y - 0.8, tip, y - 0.8, Pen.Door with { Dashes = null });
        ink.Polygon([(tip, y - 0.8), (tip - way * 2.6, y - 1.9), (tip - way * 2.6, y + 0.3)], Pen.Black);
        ink.Text(x - 6.5, y + 2.4, "front", 2, Anchor.Middle);
    }

    private static string Mm(Measured m) => string.Create(CultureInfo.InvariantCulture, $"{m.Value:0}{(m.PlusMinus is { } t ? $" ± {t:0}" : "")} mm");
}
