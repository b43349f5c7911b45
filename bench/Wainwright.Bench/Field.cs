using System.Globalization;
using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Bench;

/// <summary>Fit and map of a damp field on one large sheet: readings scattered over it, a tenth of them beyond the meter's end.</summary>
static class Field
{
    const int Across = 200;

    // the second sheet's cells are as wide as a van's usual pieces: no patches stand for them there
    const double CellMm = 25, RivalCellMm = 100;

    /// <param name="cells">Number of cells, rounded down to whole rows of 200.</param>
    /// <param name="readings">Number of readings.</param>
    /// <returns>1 when gstat was there and its answer differs.</returns>
    public static int Run(int cells, int readings)
    {
        var along = cells / Across;
        var net = Sheet(along, CellMm);
        var chance = new Random(1);
        List<FieldObservation> seen = [];
        for (var i = 0; i < readings; i++)
        {
            var cell = chance.Next(net.Cells.Count);
            var (x, y) = (net.Cells[cell].XMm - 2000, net.Cells[cell].YMm - 1000);
            var percent = 12 + (25 * Math.Exp(-((x * x) + (y * y)) / 400_000)) + chance.NextDouble() - 0.5;
            seen.Add(percent > MeterReading.HighestPercent ? new(cell, MeterReading.HighestPercent, 1, MeterReading.Bound.AtLeast) : new(cell, percent, 1));
        }
        var priors = new FieldPriors();
        int Whole()
        {
            var map = DampField.Fit(net, seen, priors);
            return Enumerable.Range(0, net.Cells.Count).Count(c => map.MeanPercent(c) > 14 && map.SpreadOfPoints(c) > 0 && map.ProbabilityOver(c, 16) + map.ProbabilityOver(c, 20) + map.ProbabilityOver(c, 28) > 1);
        }
        Median.Of(string.Create(CultureInfo.InvariantCulture, $"field: {readings} readings on {net.Cells.Count} cells, fit and map"), 9, Whole, 1000);
        var spent = Enumerable.Range(0, 5).Select(_ => Spent.On(Whole).Spent.CpuS).Order().ElementAt(2);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"the same in cpu, median of five: {spent:0.00} s, over all cores"));
        return Math.Max(FieldRival.Run(net, readings, 0.15), FieldRival.Run(Sheet(along, RivalCellMm), readings, 0.05));
    }

    static SurfaceNet Sheet(int along, double cellMm)
    {
        List<SurfaceNet.Cell> cells = [];
        List<SurfaceNet.Link> links = [];
        for (var y = 0; y < along; y++)
            for (var x = 0; x < Across; x++)
            {
                if (x > 0) links.Add(new(cells.Count - 1, cells.Count, 1));
                if (y > 0) links.Add(new(cells.Count - Across, cells.Count, 1));
                cells.Add(new(cellMm * cellMm, 0, x * cellMm, y * cellMm, 0));
            }
        return new(cells, links);
    }
}
