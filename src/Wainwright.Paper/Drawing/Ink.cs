using System.Globalization;
using System.Net;
using System.Text;

namespace Wainwright.Paper;

/// <summary>Where text stands against its point.</summary>
internal enum Anchor
{
    Start,
    Middle,
    End,
}

/// <summary>An SVG drawing being made, in millimetres of paper, y down the page. Every text is encoded.</summary>
internal sealed class Ink
{
    private readonly StringBuilder svg = new();

    /// <summary>Width of a sans-serif letter in the mean, as a share of the letter height; the fonts named here measured roughly.</summary>
    public const double LetterWidth = 0.53;

    public void Polygon(IEnumerable<(double X, double Y)> corners, Pen pen, string? title = null) =>
        Shape($"<polygon points=\"{string.Join(' ', corners.Select(c => $"{N(c.X)},{N(c.Y)}"))}\"{pen.Attributes} stroke-linejoin=\"round\"", title, "polygon");

    public void Line(double x1, double y1, double x2, double y2, Pen pen) =>
        svg.Append($"<path d=\"M{N(x1)} {N(y1)}L{N(x2)} {N(y2)}\"{pen.Attributes}/>");

    public void Lines(IEnumerable<((double X, double Y) A, (double X, double Y) B)> lines, Pen pen)
    {
        var path = string.Concat(lines.Select(l => $"M{N(l.A.X)} {N(l.A.Y)}L{N(l.B.X)} {N(l.B.Y)}"));
        if (path.Length > 0) svg.Append($"<path d=\"{path}\"{pen.Attributes}/>");
    }

    public void Polyline(IEnumerable<(double X, double Y)> points, Pen pen) =>
        svg.Append($"<polyline points=\"{string.Join(' ', points.Select(c => $"{N(c.X)},{N(c.Y)}"))}\"{pen.Attributes}/>");

    public void Rectangle(double x, double y, double width, double height, Pen pen, double corner = 0) =>
        svg.Append($"<rect x=\"{N(x)}\" y=\"{N(y)}\" width=\"{N(width)}\" height=\"{N(height)}\"{(corner > 0 ? $" rx=\"{N(corner)}\"" : "")}{pen.Attributes}/>");

    public void Circle(double x, double y, double radius, Pen pen, string? title = null) =>
        Shape($"<circle cx=\"{N(x)}\" cy=\"{N(y)}\" r=\"{N(radius)}\"{pen.Attributes}", title, "circle");

    public void Text(double x, double y, string text, double sizeMm, Anchor anchor = Anchor.Start, bool bold = false, bool halo = false)
    {
        var at = anchor switch { Anchor.Middle => " text-anchor=\"middle\"", Anchor.End => " text-anchor=\"end\"", _ => "" };
        var around = halo ? $" stroke=\"{Pen.White}\" stroke-width=\"0.8\" paint-order=\"stroke\" stroke-linejoin=\"round\"" : "";
        svg.Append($"<text class=\"lettering\" x=\"{N(x)}\" y=\"{N(y)}\" font-size=\"{N(sizeMm)}\" fill=\"{Pen.Ink}\"{at}{(bold ? " font-weight=\"bold\"" : "")}{around}>{WebUtility.HtmlEncode(text)}</text>");
    }

    /// <summary>Text that reads upwards, its middle at the point.</summary>
    public void Upright(double x, double y, string text, double sizeMm) =>
        svg.Append($"<text class=\"lettering\" transform=\"translate({N(x)} {N(y)}) rotate(-90)\" font-size=\"{N(sizeMm)}\" fill=\"{Pen.Ink}\" text-anchor=\"middle\">{WebUtility.HtmlEncode(text)}</text>");

    public void Open(string group, string id) => svg.Append($"<g class=\"{group}\" data-{group}=\"{WebUtility.HtmlEncode(id)}\">");

    public void Close() => svg.Append("</g>");

    /// <summary>The whole drawing as one <c>svg</c> element that needs nothing from outside.</summary>
    public string Done(double widthMm, double heightMm, string label) =>
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" role=\"img\" aria-label=\"{WebUtility.HtmlEncode(label)}\" viewBox=\"0 0 {N(widthMm)} {N(heightMm)}\" width=\"{N(widthMm)}mm\" height=\"{N(heightMm)}mm\" font-family=\"Liberation Sans, DejaVu Sans, Arial, sans-serif\">{svg}</svg>";

    private void Shape(string open, string? title, string element) =>
        svg.Append(title is null ? $"{open}/>" : $"{open}><title>{WebUtility.HtmlEncode(title)}</title></{element}>");

    private static string N(double mm) => Math.Round(mm, 2).ToString(CultureInfo.InvariantCulture);
}
