using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>Wet readings that belong together, the pieces of board round them, and all readings on those.</summary>
/// <param name="Cells">Pieces of the net.</param>
/// <param name="Readings">Readings on them, wet and dry.</param>
/// <param name="Wettest">The wettest of them.</param>
/// <param name="Leaks">Where water may have come in.</param>
internal sealed record DampPatch(IReadOnlyList<int> Cells, IReadOnlyList<DampReading> Readings, DampReading Wettest, IReadOnlyList<LeakPlace> Leaks)
{
    /// <summary>Over its dry board by this a reading is wet [points]; own rule: more than the meter's spread.</summary>
    public const double WetPoints = 3;

    // wet readings this near are of one water, and a patch reaches this far beyond its wet readings: own rules [mm]
    private const double TogetherMm = 800, ReachMm = 1000;

    /// <summary>The patches of a map, the wettest first.</summary>
    /// <param name="map">The map.</param>
    /// <param name="dryPercent">Dry board of the job [%].</param>
    /// <param name="built">The boards as built.</param>
    public static IReadOnlyList<DampPatch> Of(DampMap map, double dryPercent, AsBuilt built)
    {
        var wet = map.Readings.Where(r => r.Made.Percent > dryPercent + WetPoints && r.Made.Bound != Methods.Moisture.MeterReading.Bound.AtMost).ToList();
        return [.. Groups(map, wet).Select(g => Around(map, g, built)).OrderByDescending(p => p.Wettest.Made.Percent)];
    }

    private static DampPatch Around(DampMap map, List<DampReading> wet, AsBuilt built)
    {
        var net = map.Net;
        var middles = wet.Select(r => net.Cells[r.Cell].Middle).ToList();
        var near = Enumerable.Range(0, net.Cells.Count).Where(c => middles.Any(m => net.Cells[c].DistanceMm(m) <= ReachMm)).ToHashSet();
        // a board that lies under another comes with it
        near.UnionWith(near.Select(built.Over).ToList());
        int[] cells = [.. near.Order()];
        var wettest = wet.MaxBy(r => r.Made.Percent)!;
        return new(cells, [.. map.Readings.Where(r => near.Contains(r.Cell))], wettest, LeakPlace.Of(map, cells, wettest));
    }

    /// <summary>Readings near each other, or near one that is.</summary>
    private static IEnumerable<List<DampReading>> Groups(DampMap map, List<DampReading> wet)
    {
        var group = Enumerable.Range(0, wet.Count).ToArray();
        int Root(int i) => group[i] == i ? i : group[i] = Root(group[i]);
        for (var i = 0; i < wet.Count; i++)
            for (var j = 0; j < i; j++)
                if (At(map, wet[i]).DistanceMm(At(map, wet[j])) <= TogetherMm) group[Root(i)] = Root(j);
        return Enumerable.Range(0, wet.Count).GroupBy(Root).Select(g => g.Select(i => wet[i]).ToList());
    }

    private static Place At(DampMap map, DampReading reading) => map.Net.Cells[reading.Cell].Middle;
}
