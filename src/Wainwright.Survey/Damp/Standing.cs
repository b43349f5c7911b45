using Wainwright.Fitout;

namespace Wainwright.Survey.Damp;

/// <summary>What stands in front of a board, as seen from the room.</summary>
internal sealed class Standing(Job job, IReadOnlyList<PartId> outNow)
{
    // hand and meter; a covering no thicker than this is pricked through [mm]
    private const double MeterMm = 60, PrickedMm = 3;

    private readonly List<(PartId Part, Place Low, Place High)> boxes = [.. job.Parts.Where(p => !p.Outside && !outNow.Contains(p.Id) && p.System is not PartSystem.Insulation)
        .SelectMany(p => p.Solids.Select(s => s.Bounds()).Where(b => BoardCells.Sides(b.High - b.Low).Min() > PrickedMm).Select(b => (p.Id, b.Low, b.High)))];

    /// <summary>Parts that must go to get a meter to a piece; for a board that stands free, those of the emptier side.</summary>
    public IReadOnlyList<PartId> InFrontOf(DampNet net, int cell)
    {
        var piece = net.Cells[cell];
        var own = net.Sheets[piece.Sheet].Part;
        return [.. Sides(piece, net.Sheets[piece.Sheet].System).Select(way => Covering(piece, way, own)).MinBy(c => c.Count)!];
    }

    private List<PartId> Covering(DampCell piece, int way, PartId own)
    {
        double[] low = BoardCells.Sides(piece.Middle), high = BoardCells.Sides(piece.Middle);
        var face = way > 0 ? BoardCells.Sides(piece.High)[piece.Across] : BoardCells.Sides(piece.Low)[piece.Across];
        (low[piece.Across], high[piece.Across]) = way > 0 ? (face + 1, face + MeterMm) : (face - MeterMm, face - 1);
        return [.. boxes.Where(b => b.Part != own && Meets(low, high, BoardCells.Sides(b.Low), BoardCells.Sides(b.High))).Select(b => b.Part).Distinct()];
    }

    private static bool Meets(double[] low, double[] high, double[] boxLow, double[] boxHigh) =>
        Enumerable.Range(0, 3).All(x => low[x] < boxHigh[x] && high[x] > boxLow[x]);

    /// <summary>Ways to look at a piece from the room: floor from above, ceiling from below, lining from the middle, anything else from both sides.</summary>
    private IEnumerable<int> Sides(DampCell piece, PartSystem system)
    {
        if (system is not (PartSystem.Floor or PartSystem.Lining)) return [1, -1];
        var space = job.Vehicle.LoadSpace;
        double[] middle = [space.LengthMm.Value / 2, space.WidthMm.Value / 2, space.HeightMm.Value / 2];
        return [BoardCells.Sides(piece.Middle)[piece.Across] < middle[piece.Across] ? 1 : -1];
    }
}
