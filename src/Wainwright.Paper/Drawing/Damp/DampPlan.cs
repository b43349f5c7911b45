using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Cutting;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Paper;

/// <summary>What to put on a flat plan of damp boards.</summary>
public sealed record DampPlanOptions
{
    /// <summary>What to cut; absent to draw no cut line.</summary>
    public CutPlan? Cut { get; init; }

    /// <summary>The day whose moisture is drawn; absent for the day of the map.</summary>
    public DampFrame? Frame { get; init; }

    /// <summary>Width of the drawing on paper [mm].</summary>
    public double WidthMm { get; init; } = 178;

    /// <summary>Greatest height of the boards themselves on paper [mm].</summary>
    public double MostHeightMm { get; init; } = 225;

    /// <summary>Whether the key of lines and hatching stands below.</summary>
    public bool Key { get; init; } = true;
}

/// <summary>Boards laid flat, with contour lines at the thresholds, strokes where it is wet, reading pins, hatching where nobody knows, and the cut line.</summary>
/// <remarks>Made to be read in black and white: every line has its own dashes and its number, nothing is said by colour.</remarks>
public static class DampPlan
{
    private const double EdgeMm = 6, NameMm = 2.1;

    /// <summary>Within the rectangle of a board, where there is none of it.</summary>
    internal static readonly Pen NoBoard = new("no-board", 0.18, "0.5 0.9", Fill: "#e2e2e2", Stroke: "#6a6a6a");

    /// <summary>Floor, walls and ceiling folded open: the right wall above the floor, the ceiling above that, the left wall below; each along the edge where it joins.</summary>
    /// <param name="map">The map.</param>
    /// <param name="options">What to put on it.</param>
    public static string Unfolded(DampMap map, DampPlanOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(map);
        return Drawn(map, DampLayout.Unfolded(map), options ?? new(), $"Floor, walls and ceiling folded open, {map.Job.Title}");
    }

    /// <summary>One board, its faces side by side.</summary>
    /// <param name="map">The map.</param>
    /// <param name="board">The board.</param>
    /// <param name="options">What to put on it.</param>
    /// <exception cref="ArgumentException">The map has no such board.</exception>
    public static string OfBoard(DampMap map, PartId board, DampPlanOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(map);
        var sheet = map.Net.Sheets.FirstOrDefault(s => s.Part == board) ?? throw new ArgumentException($"{board} is no board of the map", nameof(board));
        return Drawn(map, DampLayout.SideBySide(map, board), options ?? new(), $"{sheet.Name} laid flat");
    }

    private static string Drawn(DampMap map, IReadOnlyList<LaidFace> faces, DampPlanOptions options, string label)
    {
        var extent = new Extent(faces.Min(f => f.Extent.U0), faces.Min(f => f.Extent.V0), faces.Max(f => f.Extent.U1), faces.Max(f => f.Extent.V1));
        var scale = Math.Max(1, Math.Max(extent.Width / (options.WidthMm - (2 * EdgeMm)), extent.Height / options.MostHeightMm));
        var height = (extent.Height / scale) + (2 * EdgeMm);
        var sheet = new Sheet(scale, ((options.WidthMm - (extent.Width / scale)) / 2) - (extent.U0 / scale), EdgeMm + (extent.V1 / scale));
        var ink = new Ink();
        var values = Values(map, options.Frame);
        foreach (var face in faces)
        {
            ink.Open("board", map.Net.Sheets[face.Face.Sheet].Part.Text);
            ink.Polygon(Corners(face.Extent).Select(sheet.At), NoBoard, map.Net.Sheets[face.Face.Sheet].Name);
            foreach (var tile in face.Tiles) ink.Polygon(Corners(tile.Box).Select(sheet.At), Pen.Solid with { Stroke = Pen.White, WidthMm = 0.18 });
            DampHatch.Draw(ink, sheet, face, map, options.Frame);
            DampDrops.Draw(ink, sheet, face, values, map.ThresholdsPercent);
            ink.Lines(DampRim.Of(face).Select(s => (sheet.At(s.A), sheet.At(s.B))), Pen.Cut with { Fill = "none", WidthMm = 0.35 });
            DampContours.Draw(ink, sheet, face, values, map.ThresholdsPercent);
            Name(ink, sheet, map, face);
            ink.Close();
        }
        var pins = new DampPins(map, faces, sheet);
        if (options.Cut is { } cut) DampCutLines.Draw(ink, sheet, faces, cut, pins.Taken);
        pins.Draw(ink);
        if (options.Key) height = DampKey.Draw(ink, height, options, map.ThresholdsPercent, scale);
        return ink.Done(options.WidthMm, height, label);
    }

    private static IReadOnlyList<double> Values(DampMap map, DampFrame? frame) => frame?.LikelyPercent ?? [.. Enumerable.Range(0, map.Net.Cells.Count).Select(map.LikelyPercent)];

    private static IEnumerable<Flat> Corners(Extent e) => [new(e.U0, e.V0), new(e.U1, e.V0), new(e.U1, e.V1), new(e.U0, e.V1)];

    /// <summary>Name and measures above a face, as much of them as there is room for.</summary>
    private static void Name(Ink ink, Sheet sheet, DampMap map, LaidFace face)
    {
        var (x, y) = sheet.At(new Flat(face.Extent.U0, face.Extent.V1));
        var board = map.Net.Sheets[face.Face.Sheet];
        var measures = string.Create(CultureInfo.InvariantCulture, $"{face.UName} {face.Face.Extent.U0:0}–{face.Face.Extent.U1:0}, {face.VName} {face.Face.Extent.V0:0}–{face.Face.Extent.V1:0}");
        var room = sheet.Mm(face.Extent.Width) + 2;
        string[] lines = [$"{board.Part} {PlainWords.ShortName(board.Name)} · {measures}", $"{board.Part} · {measures}", board.Part.Text];
        ink.Text(x, y - 0.8, lines.FirstOrDefault(l => Lettering.WidthMm(l, NameMm) <= room) ?? "", NameMm);
    }
}
