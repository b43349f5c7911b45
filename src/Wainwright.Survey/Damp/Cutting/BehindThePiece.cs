using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Cutting;

/// <summary>What a piece to be cut takes with it or hides: fixings of other parts, insulation, lines.</summary>
internal sealed class BehindThePiece(Job job)
{
    // a fixing this near the face goes into it; insulation and lines this deep may be met [mm]. Own rules
    private const double FixingMm = 25, DepthMm = 80;

    /// <summary>Fixings of other parts inside pieces, joint by joint.</summary>
    public IReadOnlyList<(JointId Joint, PartId Part, int Fixings)> Fixings(PartId board, IReadOnlyList<FaceCutting.Cut> cuts) =>
    [
        .. job.Joints.Where(j => j.Part != board && j.Points.Count > 0)
            .Select(j => (j.Id, j.Part, Inside: j.Points.Count(p => cuts.Any(c => Near(c, p, FixingMm))), j))
            .Where(j => j.Inside > 0)
            // one place may stand for several fixings
            .Select(j => (j.Id, j.Part, Math.Max(1, (int)Math.Round((double)j.j.Count * j.Inside / j.j.Points.Count)))),
    ];

    /// <summary>Joints to the board of which nobody measured where they are.</summary>
    public IReadOnlyList<JointId> Unplaced(PartId board) => [.. job.Joints.Where(j => j.To == board && j.Part != board && j.Points.Count == 0).Select(j => j.Id)];

    /// <summary>Insulation behind or under pieces.</summary>
    public IReadOnlyList<PartId> Insulation(IReadOnlyList<FaceCutting.Cut> cuts) =>
        [.. job.Parts.Where(p => p.System == PartSystem.Insulation && p.Solids.Any(s => cuts.Any(c => Meets(c, s.Bounds())))).Select(p => p.Id)];

    /// <summary>Lines within reach of a saw behind or before pieces.</summary>
    public IReadOnlyList<LineId> Lines(IReadOnlyList<FaceCutting.Cut> cuts) =>
    [
        .. job.Lines.Where(l => l.Route.Zip(l.Route.Skip(1)).Any(s => cuts.Any(c => Meets(c, Round(s.First, s.Second, (l.OutsideMm?.Value ?? 0) / 2)))))
            .Select(l => l.Id),
    ];

    private static bool Near(FaceCutting.Cut cut, Place place, double mm)
    {
        var at = BoardCells.Sides(place);
        return Within(at[cut.Face.UAxis], cut.Box.U0, cut.Box.U1) && Within(at[cut.Face.VAxis], cut.Box.V0, cut.Box.V1) && Within(at[cut.Face.Across], cut.Face.LowMm - mm, cut.Face.HighMm + mm);
    }

    private static bool Meets(FaceCutting.Cut cut, (Place Low, Place High) box)
    {
        double[] low = BoardCells.Sides(box.Low), high = BoardCells.Sides(box.High);
        var (u, v, across) = (cut.Face.UAxis, cut.Face.VAxis, cut.Face.Across);
        return low[u] < cut.Box.U1 && high[u] > cut.Box.U0 && low[v] < cut.Box.V1 && high[v] > cut.Box.V0 && low[across] < cut.Face.HighMm + DepthMm && high[across] > cut.Face.LowMm - DepthMm;
    }

    // a straight run lies in the box of its ends; one that runs askew is taken too wide, never too narrow
    private static (Place, Place) Round(Place a, Place b, double half) =>
        (new(Math.Min(a.XMm, b.XMm) - half, Math.Min(a.YMm, b.YMm) - half, Math.Min(a.ZMm, b.ZMm) - half), new(Math.Max(a.XMm, b.XMm) + half, Math.Max(a.YMm, b.YMm) + half, Math.Max(a.ZMm, b.ZMm) + half));

    private static bool Within(double at, double low, double high) => at >= low && at <= high;
}
