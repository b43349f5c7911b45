using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Paper;

/// <summary>What to put on a drawing besides the van.</summary>
public sealed record DrawingOptions
{
    /// <summary>Pins; those of which nothing shows in a view are left out of it.</summary>
    public IReadOnlyList<Pin> Pins { get; init; } = [];

    /// <summary>Width of the drawing on paper [mm].</summary>
    public double WidthMm { get; init; } = 178;

    /// <summary>Greatest height of the van itself on paper [mm].</summary>
    public double MostHeightMm { get; init; } = 105;

    /// <summary>Parts that are out and not drawn.</summary>
    public IReadOnlySet<PartId> Out { get; init; } = new HashSet<PartId>();

    /// <summary>Parts toned and drawn heavier.</summary>
    public IReadOnlySet<PartId> Marked { get; init; } = new HashSet<PartId>();

    /// <summary>Whether parts carry their names where there is room.</summary>
    public bool Names { get; init; } = true;

    /// <summary>Whether the key of the pins stands below the drawing; without it the page gives the key.</summary>
    public bool Key { get; init; }
}

/// <summary>A section drawing and what is on it.</summary>
/// <param name="Svg">One <c>svg</c> element; needs nothing from outside.</param>
/// <param name="View">The section.</param>
/// <param name="Pins">The pins that show, in the order of the key.</param>
/// <param name="NotDrawn">Parts that nobody has measured and so are not on any drawing.</param>
public sealed record Drawing(string Svg, SectionView View, IReadOnlyList<Pin> Pins, IReadOnlyList<Part> NotDrawn);

/// <summary>The van in section as a line drawing: shell, doors, ribs, parts, pins, measures.</summary>
public static class SectionDrawing
{
    private const double SideMm = 11, LaneGapMm = 4.5, DimensionMm = 7.5, StripMm = 9.5, KeyLineMm = 3.6, KeyLetterMm = 2.5;

    /// <summary>The drawing as SVG, in millimetres of paper.</summary>
    public static string Svg(Job job, SectionView view, DrawingOptions? options = null) => Of(job, view, options).Svg;

    /// <summary>The drawing with the list of what is on it.</summary>
    public static Drawing Of(Job job, SectionView view, DrawingOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(view);
        options ??= new();
        var on = new Projection(view);
        var parts = job.Parts.Where(p => !options.Out.Contains(p.Id)).ToList();
        var extent = Whole(job, view, on, parts);

        var scale = RoundScale(Math.Max(extent.Width / (options.WidthMm - 2 * SideMm), extent.Height / options.MostHeightMm));
        var showing = options.Pins.Where(p => Shows(p, view, on, job)).ToList();
        var middle = (extent.V0 + extent.V1) / 2;
        var (above, below) = (showing.Where(p => on.Of(p.At).V >= middle).ToList(), showing.Where(p => on.Of(p.At).V < middle).ToList());
        var (lanesAbove, lanesBelow) = (Lane(above, options.WidthMm), Lane(below, options.WidthMm));
        var key = options.Key ? KeyLines(showing, options.WidthMm) : [];

        var top = 3 + lanesAbove;
        var bottom = top + extent.Height / scale;
        var height = bottom + lanesBelow + DimensionMm + StripMm + key.Count * KeyLineMm + (key.Count > 0 ? 3 : 0);
        var sheet = new Sheet(scale, (options.WidthMm - extent.Width / scale) / 2 - extent.U0 / scale, top + extent.V1 / scale);

        var ink = new Ink();
        ink.Rectangle(0, 0, options.WidthMm, height, new Pen("paper", 0.18, Fill: Pen.White, Stroke: "none"));
        var shell = new ShellLines(job, view, on, sheet, ink);
        var lines = new PartLines(parts, view, on, sheet, ink, options.Marked);
        shell.Behind();
        lines.Draw();
        shell.Skin();
        var pins = (PinLines[])[Pins(above, true), Pins(below, false)];
        var taken = shell.Names();
        if (options.Names) lines.Names(taken.Concat(pins.SelectMany(p => p.Taken())));
        foreach (var lane in pins) lane.Draw(ink);
        new TitleStrip(job, view, on, sheet, ink).Draw(bottom + lanesBelow, options.WidthMm);
        foreach (var (line, i) in key.Select((l, i) => (l, i)))
            ink.Text(2, bottom + lanesBelow + DimensionMm + StripMm + 3 + (i + 0.8) * KeyLineMm, line, KeyLetterMm);

        return new(ink.Done(options.WidthMm, height, $"{view.Title}, {view.Cut}"), view, showing, [.. parts.Where(p => p.Solids.Count == 0)]);

        PinLines Pins(List<Pin> pins, bool up) => new(
            PinLane.Set(pins.Select(p => (p, sheet.X(on.Of(p.At).U), sheet.Y(on.Of(p.At).V))), 1, options.WidthMm - 1),
            up ? top : bottom, up, LaneGapMm);
    }

    private static double Lane(List<Pin> pins, double widthMm) => pins.Count == 0 ? 2 : LaneGapMm - 0.5 + PinLane.Rows(pins, widthMm - 2) * PinLane.RowMm;

    private static Extent Whole(Job job, SectionView view, Projection on, List<Part> parts)
    {
        var shell = ShellLines.Corners(job.Vehicle.LoadSpace, view).Select(on.Of).ToList();
        var extent = new Extent(shell[0].U, shell[0].V, shell[0].U, shell[0].V).With(shell)
            .With(parts.SelectMany(p => p.Solids).SelectMany(Outline.Corners).Where(c => view.From == SeenFrom.Above || on.Depth(c) >= on.CutDepth).Select(on.Of));
        if (view.From is SeenFrom.Left or SeenFrom.Right)
            extent = extent.With(new Place[] { new(-ShellLines.CabMm - 60, 0, 0), new(0, 0, -ShellLines.UnderMm) }.Select(on.Of));
        return extent;
    }

    /// <summary>The next whole scale: it is said as "about", for the scale bar alone survives a copier.</summary>
    private static double RoundScale(double least) => Math.Max(5, Math.Ceiling(least));

    /// <summary>A pin shows where its place lies beyond the cut or within a hand's breadth of it; the plan shows all.</summary>
    private static bool Shows(Pin pin, SectionView view, Projection on, Job job)
    {
        const double handMm = 100;
        if (view.From == SeenFrom.Above) return true;
        var depth = on.Depth(pin.At);
        var reach = view.From == SeenFrom.Rear ? job.Vehicle.LoadSpace.LengthMm.Value / 4 : double.MaxValue;
        return depth >= on.CutDepth - handMm && depth <= on.CutDepth + reach;
    }

    private static List<string> KeyLines(List<Pin> pins, double widthMm) =>
        [.. pins.SelectMany(p => Lettering.Wrap(string.Create(CultureInfo.InvariantCulture, $"{p.Label}  {p.Says}"), KeyLetterMm, widthMm - 4))];
}
