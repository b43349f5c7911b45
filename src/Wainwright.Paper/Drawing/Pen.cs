using System.Globalization;

namespace Wainwright.Paper;

/// <summary>
/// Line widths on paper [mm], the steps of ISO 128-20; nothing thinner than 0.18, so that a black-and-white
/// print or a second copy keeps it. The name is also the class by which a screen may recolour it.
/// </summary>
internal sealed record Pen(string Name, double WidthMm, string? Dashes = null, string Fill = "none", string Stroke = Pen.Ink)
{
    public const string Ink = "#1b1b1b", White = "#ffffff", Tone = "#dcdcdc";

    public static readonly Pen Shell = new("shell", 0.7);
    public static readonly Pen Cut = new("cut", 0.5, Fill: White);
    public static readonly Pen Solid = new("solid", 0.25, Fill: White);
    public static readonly Pen Marked = new("marked", 0.5, Fill: Tone);
    public static readonly Pen Hidden = new("hidden", 0.5, "1.6 0.9");
    public static readonly Pen Hatch = new("hatch", 0.18);
    public static readonly Pen Black = new("thin-cut", 0.18, Fill: Ink, Stroke: White);
    public static readonly Pen Overhead = new("overhead", 0.25, "1.6 0.9");
    public static readonly Pen Frame = new("frame", 0.18, "0.9 0.6", Fill: White);
    public static readonly Pen Door = new("door", 0.35, "3 0.8 0.6 0.8", Fill: White);
    public static readonly Pen Arch = new("arch", 0.35, Fill: Tone);
    public static readonly Pen Sketch = new("sketch", 0.18, "0.5 0.9", Stroke: "#6a6a6a");
    public static readonly Pen Dimension = new("dimension", 0.18);
    public static readonly Pen Leader = new("leader", 0.25);
    public static readonly Pen Halo = new("halo", 0.9, Stroke: White);
    public static readonly Pen Pin = new("pin", 0.35, Fill: White);
    public static readonly Pen Dot = new("dot", 0.25, Fill: Ink, Stroke: White);

    public string Attributes => string.Create(CultureInfo.InvariantCulture,
        $" class=\"{Name}\" fill=\"{Fill}\" stroke=\"{Stroke}\" stroke-width=\"{WidthMm}\"{(Dashes is null ? "" : $" stroke-dasharray=\"{Dashes}\"")}");
}
