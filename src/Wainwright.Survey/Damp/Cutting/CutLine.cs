using Wainwright.Fitout;

namespace Wainwright.Survey.Damp.Cutting;

/// <summary>A straight line that a cut may run on.</summary>
/// <param name="AtMm">Its place along the axis it stands square to [mm].</param>
/// <param name="Framing">Framing it runs over; null for none.</param>
/// <param name="FromMm">Where along itself the framing begins [mm].</param>
/// <param name="ToMm">Where it ends [mm].</param>
internal readonly record struct CutLine(double AtMm, string? Framing = null, double FromMm = double.NegativeInfinity, double ToMm = double.PositiveInfinity);

/// <summary>The lines that a cut in a face may run on: its own edges and seams, framing behind it, and a grid where cutting may pay.</summary>
internal static class CutLines
{
    // nearer to a line than this another is the same [mm]
    private const double SameMm = 1;

    /// <summary>Lines square to u and to v, by place.</summary>
    /// <param name="face">The face.</param>
    /// <param name="edges">Edges of its solids.</param>
    /// <param name="frames">Lines over framing, square to u and to v.</param>
    /// <param name="pays">The rectangle round all pieces where cutting may pay; outside it no grid.</param>
    /// <param name="stakes">Grid and margin.</param>
    public static (IReadOnlyList<CutLine> U, IReadOnlyList<CutLine> V) Of(BoardFace face, IReadOnlyList<FaceBox> edges, (IEnumerable<CutLine> U, IEnumerable<CutLine> V) frames, FaceBox pays, CutStakes stakes)
    {
        var reach = stakes.MarginMm + stakes.GridMm;
        return (Along(face.Extent.U0, face.Extent.U1, edges.SelectMany(e => (double[])[e.U0, e.U1]), frames.U, pays.U0 - reach, pays.U1 + reach, stakes.GridMm),
            Along(face.Extent.V0, face.Extent.V1, edges.SelectMany(e => (double[])[e.V0, e.V1]), frames.V, pays.V0 - reach, pays.V1 + reach, stakes.GridMm));
    }

    private static List<CutLine> Along(double low, double high, IEnumerable<double> edges, IEnumerable<CutLine> frames, double from, double to, double grid)
    {
        List<CutLine> lines = [];
        void Add(CutLine line)
        {
            if (line.AtMm < low - SameMm || line.AtMm > high + SameMm || lines.Exists(l => Math.Abs(l.AtMm - line.AtMm) < SameMm)) return;
            lines.Add(line);
        }
        foreach (var edge in edges) Add(new(edge));
        foreach (var frame in frames) Add(frame);
        for (var at = low + grid; at < high; at += grid)
            if (at >= from && at <= to) Add(new(at));
        return [.. lines.OrderBy(l => l.AtMm)];
    }

    /// <summary>Framing behind a face: bows over a ceiling, floor members under a floor, ribs, pillars and rails behind a lining.</summary>
    public static (IEnumerable<CutLine> U, IEnumerable<CutLine> V) Framing(BoardFace face, PartSystem system, Vehicle vehicle)
    {
        if (system is not (PartSystem.Floor or PartSystem.Lining) || face.Across == 0) return ([], []);
        var room = vehicle.LoadSpace;
        if (face.Across == 2)
        {
            var kind = face.LowMm > room.HeightMm.Value / 2 ? FrameKind.Bow : FrameKind.FloorMember;
            return (vehicle.Frames.Where(f => f.Kind == kind).Select(f => new CutLine(f.XMm, f.Name)), []);
        }
        var side = face.LowMm < room.WidthMm.Value / 2 ? Direction.Left : Direction.Right;
        var own = vehicle.Frames.Where(f => f.Side is null || f.Side == side).ToList();
        return (own.Where(f => f.Kind is FrameKind.Rib or FrameKind.Pillar).Select(f => new CutLine(f.XMm, f.Name, f.ZMm ?? double.NegativeInfinity)),
            own.Where(f => f.Kind == FrameKind.Rail && f.ZMm is not null).Select(f => new CutLine(f.ZMm!.Value, f.Name, f.XMm, f.ToXMm ?? double.PositiveInfinity)));
    }
}
