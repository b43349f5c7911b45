using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>Where water may have come in: a finding, or the wettest reading where no finding tells.</summary>
/// <param name="Source">In words, with its id.</param>
/// <param name="Cells">Pieces of the net that it may have come in at.</param>
internal sealed record LeakPlace(string Source, IReadOnlyList<int> Cells)
{
    private static readonly string[] Leaks = ["roof-", "water-", "waste-"];

    // water comes in within this of a finding's points, of its parts, and of the wettest reading: own rules [mm]
    private const double NearPointMm = 200, NearPartMm = 120, NearWettestMm = 400;

    /// <summary>The findings of roof, fresh and waste water that have a place on the given pieces; the wettest reading where there is none.</summary>
    public static IReadOnlyList<LeakPlace> Of(DampMap map, IReadOnlyList<int> cells, DampReading wettest)
    {
        List<LeakPlace> found = [];
        foreach (var finding in map.Job.Findings.Where(f => f.Faults.Any(a => Leaks.Any(l => a.StartsWith(l, StringComparison.Ordinal)))))
        {
            var points = map.Job.Points.Where(p => finding.Points.Contains(p.Id)).Select(p => p.At).ToList();
            var boxes = map.Job.Parts.Where(p => finding.Parts.Contains(p.Id)).SelectMany(p => p.Solids.Select(s => s.Bounds())).ToList();
            var near = cells.Where(c => points.Any(p => map.Net.Cells[c].DistanceMm(p) <= NearPointMm) || boxes.Any(b => ApartMm(map.Net.Cells[c], b.Low, b.High) <= NearPartMm)).ToList();
            if (near.Count > 0) found.Add(new($"{finding.Id}: {First(finding.What)}", near));
        }
        if (found.Count > 0) return found;
        var at = map.Net.Cells[wettest.Cell].Middle;
        return [new($"no finding tells where: near {wettest.Point}, the wettest reading", [.. cells.Where(c => map.Net.Cells[c].DistanceMm(at) <= NearWettestMm)])];
    }

    private static double ApartMm(DampCell cell, Place low, Place high)
    {
        static double Gap(double low, double high, double otherLow, double otherHigh) => Math.Max(0, Math.Max(otherLow - high, low - otherHigh));
        return new Place(0, 0, 0).DistanceMm(new(Gap(cell.Low.XMm, cell.High.XMm, low.XMm, high.XMm), Gap(cell.Low.YMm, cell.High.YMm, low.YMm, high.YMm), Gap(cell.Low.ZMm, cell.High.ZMm, low.ZMm, high.ZMm)));
    }

    // the first clause is enough to know it again
    private static string First(string what) => what.IndexOfAny([':', ';', ',', '.']) is var end and > 0 ? what[..end] : what;
}
