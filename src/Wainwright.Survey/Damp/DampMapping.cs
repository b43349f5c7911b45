using Wainwright.Fitout;
using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Survey.Damp;

/// <summary>Makes the damp map of a job.</summary>
public static class DampMapping
{
    // likely maps drawn for areas, and where the drawing begins: fixed, so that a job gives one answer
    private const int Draws = 200, DrawFrom = 1;

    /// <summary>The map of a day.</summary>
    /// <param name="job">The job.</param>
    /// <param name="on">The day; readings taken later are left out. Null for the latest of each point.</param>
    /// <param name="thresholdsPercent">Thresholds [%], each 5 to 60; none for <see cref="DampMap.UsualThresholds"/>.</param>
    /// <param name="cellMm">Side of a piece [mm], 20 to 500.</param>
    /// <returns>The map; null when no measured part of the van is of wood.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A threshold or the side leaves its range.</exception>
    public static DampMap? Of(Job job, DateOnly? on = null, IReadOnlyList<double>? thresholdsPercent = null, double cellMm = DampNet.UsualCellMm)
    {
        var said = FloorAsSaid.In(job);
        job = said ?? job;
        if (DampNet.Of(job, cellMm) is not { } net) return null;
        var readings = DampReadings.Of(job, net, on);
        return Of(job, net, said is null ? readings : readings.And(FloorAsSaid.Told), thresholdsPercent);
    }

    internal static DampMap Of(Job job, DampNet net, DampReadings readings, IReadOnlyList<double>? thresholdsPercent, IReadOnlyList<double>? trendPercent = null)
    {
        IReadOnlyList<double> thresholds = thresholdsPercent is { Count: > 0 } asked ? [.. asked.Distinct().Order()] : DampMap.UsualThresholds;
        foreach (var t in thresholds)
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(t, 5);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(t, 60);
        }
        var dry = DryBoard.Of(job, readings.Used);
        var field = FieldOf(net, readings, dry, trendPercent);
        var draws = field.Draws(Draws, DrawFrom);
        var cells = net.Cells.Select((c, i) => (c.Sheet, i)).ToLookup(p => p.Sheet, p => p.i);
        var sheets = net.Sheets.Select((sheet, s) => SheetVerdict.Of(net, field, sheet, [.. cells[s]], [.. readings.Used.Where(r => net.Cells[r.Cell].Sheet == s)], draws, thresholds)).ToList();
        return new(job, net, readings.Used, readings.Told, field, dry.From, thresholds, sheets);
    }

    /// <summary>The field of readings alone, without drawn maps and verdicts.</summary>
    internal static DampPosterior FieldOf(Job job, DampNet net, DampReadings readings, IReadOnlyList<double>? trendPercent) => FieldOf(net, readings, DryBoard.Of(job, readings.Used), trendPercent);

    private static DampPosterior FieldOf(DampNet net, DampReadings readings, DryBoard dry, IReadOnlyList<double>? trendPercent) =>
        DampField.Fit(net.Surface, [.. readings.Used.Select(r => r.Seen)], new()
        {
            DryPercent = [.. net.Materials.Select(m => BoardMaterial.IsPanel(m) ? dry.PanelPercent : dry.WoodPercent)],
            DrySigmaPoints = dry.SigmaPoints,
            GroupOfSheet = [.. net.Sheets.Select(s => s.Group)],
            TrendPercent = trendPercent,
        });
}
