using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Methods.Tests.Moisture.Field;

/// <summary>Whether a map that was asked for 90 % holds the truth: cell by cell, the wet area, and the region that has all the wet in it.</summary>
/// <param name="Cells">Share of cells inside their interval [0–1].</param>
/// <param name="Area">Whether the area over 16 % is inside its own.</param>
/// <param name="Region">Whether all that is over 16 % is inside the region.</param>
/// <param name="RegionCells">Size of that region [cells].</param>
/// <param name="WetCells">Cells that are over 16 %.</param>
sealed record MapScore(double Cells, bool Area, bool Region, int RegionCells, int WetCells)
{
    const double Wet = 16;

    public static MapScore Of(DampPosterior map, double[] truth, int start)
    {
        var draws = map.Draws(100, start);
        var held = 0;
        for (var i = 0; i < truth.Length; i++)
        {
            var sorted = draws.Select(d => d[i]).Order().ToArray();
            if (truth[i] >= sorted[4] && truth[i] <= sorted[95]) held++;
        }
        var wet = draws.Select(d => d.Count(v => v > Wet)).Order().ToArray();
        var really = truth.Count(v => v > Wet);
        var region = Inside(map, draws);
        return new((double)held / truth.Length, really >= wet[4] && really <= wet[95], Enumerable.Range(0, truth.Length).All(i => truth[i] <= Wet || region.Contains(i)), region.Count, really);
    }

    /// <summary>The likeliest cells, as many as it takes until nine of ten likely maps have all that is wet among them.</summary>
    static HashSet<int> Inside(DampPosterior map, IReadOnlyList<double[]> draws)
    {
        var order = Enumerable.Range(0, map.Net.Cells.Count).OrderByDescending(i => map.ProbabilityOver(i, Wet)).ToArray();
        var last = draws.Select(d => Array.FindLastIndex(order, i => d[i] > Wet) + 1).Order().ToArray();
        return [.. order[..last[(int)(0.9 * last.Length) - 1]]];
    }
}
