using Wainwright.Fitout;
using Wainwright.Survey.Damp;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Components.Drawing;

/// <summary>Boards by how wet they are, as the drawing board in the browser wants them.</summary>
/// <param name="Boards">Pieces, boards and pins: sent once for a map.</param>
/// <param name="Bands">Band of each piece: 0 dry, one more for each threshold it is over, −1 where nothing is known.</param>
/// <param name="Day">The day shown, in words.</param>
public sealed record DampSketch(object Boards, IReadOnlyList<int> Bands, string Day)
{
    /// <summary>The boards of a map with its readings, and the places to read next.</summary>
    public static object Of(DampMap map, IReadOnlyList<NextReading> next)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(next);
        var read = map.Readings.Select(r => new { key = $"pin {r.Point}", at = Sketch.At(map.Job.Points.First(p => p.Id == r.Point).At), text = $"{r.Point} {DampWords.Read(r.Made)}", look = DampWords.Band(map.ThresholdsPercent, r.Made.Percent) > 0 ? "pin wet" : "pin dry" });
        var open = next.Select((n, i) => new { key = $"next {i + 1}", at = Sketch.At(n.At), text = $"read {i + 1}", look = "pin next" });
        return new
        {
            boxes = map.Net.Cells.SelectMany(c => Sketch.At(c.Low).Concat(Sketch.At(c.High))),
            across = map.Net.Cells.Select(c => c.Across),
            sheet = map.Net.Cells.Select(c => c.Sheet),
            boards = map.Net.Sheets.Select(s => s.Part.Text),
            shell = map.Net.Sheets.Select(s => s.System is PartSystem.Floor or PartSystem.Lining),
            bands = map.ThresholdsPercent.Count + 1,
            pins = read.Concat(open),
        };
    }

    /// <summary>Band of each piece.</summary>
    /// <param name="day">The map.</param>
    /// <param name="percent">Moisture of each piece on the day shown [%].</param>
    public static IReadOnlyList<int> BandsOf(DampDay day, IReadOnlyList<double> percent)
    {
        ArgumentNullException.ThrowIfNull(day);
        return [.. percent.Select((p, i) => day.Unread[i] ? -1 : DampWords.Band(day.Map.ThresholdsPercent, p))];
    }
}
