using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Methods.Tests.Moisture.Field;

/// <summary>Small nets to reason about.</summary>
static class Sheets
{
    /// <summary>A flat sheet of square cells; cell (ix, iy) is iy·across + ix.</summary>
    public static SurfaceNet Flat(int across, int along, double cellMm = 100)
    {
        var cells = new List<SurfaceNet.Cell>();
        var links = new List<SurfaceNet.Link>();
        for (var y = 0; y < along; y++)
            for (var x = 0; x < across; x++)
            {
                cells.Add(new(cellMm * cellMm, 0, x * cellMm, y * cellMm, 0));
                if (x > 0) links.Add(new((y * across) + x - 1, (y * across) + x, 1));
                if (y > 0) links.Add(new(((y - 1) * across) + x, (y * across) + x, 1));
            }
        return new(cells, links);
    }

    /// <summary>Two strips of one row each that lie side by side and do not touch.</summary>
    public static SurfaceNet TwoApart(int length, double cellMm = 100)
    {
        var one = Flat(length, 1, cellMm);
        return new(
            [.. one.Cells, .. one.Cells.Select(c => c with { Sheet = 1, YMm = cellMm })],
            [.. one.Links, .. one.Links.Select(l => l with { A = l.A + length, B = l.B + length })]);
    }
}
