using Wainwright.Fitout;
using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Survey.Damp;

/// <summary>Where water can walk from piece to piece: within a board, over a seam, round a corner, down behind the linings.</summary>
/// <remarks>
/// What a join lets through is this project's own rule, common practice, no source: a seam or a corner three tenths of a whole
/// board, along the skin behind two linings fifteen hundredths, board lying on board three tenths of one cell in ten.
/// </remarks>
internal sealed class BoardJoins(IReadOnlyList<DampCell> cells, IReadOnlyList<Part> parts)
{
    /// <summary>What joins let through, a whole board being 1 [-].</summary>
    public const double Whole = 1, SeamOrCorner = 0.3, BehindTheLining = 0.15, BoardOnBoard = 0.3;

    /// <summary>Pieces this near touch: the tape's doubt, and a sheet of vinyl between [mm].</summary>
    private const double TouchMm = 4;

    /// <summary>Linings this near are joined by the skin behind them [mm].</summary>
    private const double BehindMm = 320;

    /// <summary>Length over which one board lying on another draws from it [mm].</summary>
    private const double DrawMm = 100;

    public IReadOnlyList<SurfaceNet.Link> All()
    {
        var solids = cells.Select((c, i) => (c, i)).GroupBy(p => (p.c.Sheet, p.c.Solid)).Select(g => g.Select(p => p.i).ToArray()).ToList();
        var boxes = solids.Select(s => Box(s)).ToList();
        List<SurfaceNet.Link> links = [];
        for (var a = 0; a < solids.Count; a++)
        {
            links.AddRange(Touching(solids[a], solids[a]));
            for (var b = a + 1; b < solids.Count; b++)
            {
                var apart = Gap(boxes[a], boxes[b]);
                if (apart.Max() <= TouchMm) links.AddRange(Touching(solids[a], solids[b]));
                else if (Length(apart) <= BehindMm && Lined(solids[a][0]) && Lined(solids[b][0]) && cells[solids[a][0]].Across != cells[solids[b][0]].Across) links.AddRange(Behind(solids[a], solids[b]));
            }
        }
        return links;
    }

    private bool Lined(int cell) => parts[cells[cell].Sheet].System is PartSystem.Lining or PartSystem.Floor;

    private IEnumerable<SurfaceNet.Link> Touching(int[] here, int[] there)
    {
        var one = ReferenceEquals(here, there);
        for (var i = 0; i < here.Length; i++)
            for (var j = one ? i + 1 : 0; j < there.Length; j++)
                if (Conductance(cells[here[i]], cells[there[j]]) is { } through) yield return new(here[i], there[j], through);
    }

    private double? Conductance(DampCell a, DampCell b)
    {
        var apart = Gap((a.Low, a.High), (b.Low, b.High));
        if (apart.Max() > TouchMm) return null;
        if (a.Across == b.Across && Overlap(a, b, (a.Across + 1) % 3) > TouchMm && Overlap(a, b, (a.Across + 2) % 3) > TouchMm)
            return BoardOnBoard * Overlap(a, b, (a.Across + 1) % 3) * Overlap(a, b, (a.Across + 2) % 3) / (DrawMm * DrawMm);
        // the edge they share runs along an axis that lies in both boards
        var along = Enumerable.Range(0, 3).Where(x => x != a.Across && x != b.Across).MaxBy(x => Overlap(a, b, x));
        var length = Overlap(a, b, along);
        if (length <= TouchMm) return null;
        return Factor(a, b) * length / Math.Max(10, a.Middle.DistanceMm(b.Middle));
    }

    private double Factor(DampCell a, DampCell b)
    {
        if (a.Across != b.Across || a.Sheet != b.Sheet) return SeamOrCorner;
        if (a.Solid == b.Solid) return Whole;
        return IsOnePiece(parts[a.Sheet], a.Solid, b.Solid) ? Whole : SeamOrCorner;
    }

    /// <summary>Whether two solids of a board are one piece of it, uncut.</summary>
    public static bool IsOnePiece(Part part, int solid, int other)
    {
        string? Piece(int s) => part.ComesApartInto.FirstOrDefault(p => part.Solids[s].Name is { } n && p.Solids.Contains(n))?.Name;
        return Piece(solid) == Piece(other);
    }

    /// <summary>Rim against rim: each the other's nearest.</summary>
    private IEnumerable<SurfaceNet.Link> Behind(int[] here, int[] there)
    {
        var along = 3 - cells[here[0]].Across - cells[there[0]].Across;
        foreach (var a in here)
        {
            if (Nearest(a, there, along) is not { } b || Nearest(b, here, along) != a) continue;
            var apart = Length(Gap((cells[a].Low, cells[a].High), (cells[b].Low, cells[b].High)));
            if (apart > BehindMm) continue;
            yield return new(a, b, BehindTheLining * Overlap(cells[a], cells[b], along) / cells[a].Middle.DistanceMm(cells[b].Middle));
        }
    }

    private int? Nearest(int from, int[] among, int along)
    {
        int? best = null;
        var least = double.PositiveInfinity;
        foreach (var other in among)
        {
            if (Overlap(cells[from], cells[other], along) <= TouchMm) continue;
            // beside the axis they share only: a neighbour further along is no rim opposite
            var d = cells[other].Middle - cells[from].Middle;
            var sides = BoardCells.Sides(d);
            var away = Math.Sqrt(sides.Where((_, x) => x != along).Sum(s => s * s)) + (0.01 * Math.Abs(sides[along]));
            if (away >= least) continue;
            (best, least) = (other, away);
        }
        return best;
    }

    private (Place Low, Place High) Box(int[] solid) =>
        (new(solid.Min(i => cells[i].Low.XMm), solid.Min(i => cells[i].Low.YMm), solid.Min(i => cells[i].Low.ZMm)), new(solid.Max(i => cells[i].High.XMm), solid.Max(i => cells[i].High.YMm), solid.Max(i => cells[i].High.ZMm)));

    private static double[] Gap((Place Low, Place High) a, (Place Low, Place High) b)
    {
        double[] al = BoardCells.Sides(a.Low), ah = BoardCells.Sides(a.High), bl = BoardCells.Sides(b.Low), bh = BoardCells.Sides(b.High);
        return [.. Enumerable.Range(0, 3).Select(x => Math.Max(0, Math.Max(bl[x] - ah[x], al[x] - bh[x])))];
    }

    private static double Length(double[] v) => Math.Sqrt(v.Sum(x => x * x));

    private static double Overlap(DampCell a, DampCell b, int axis) =>
        Math.Min(BoardCells.Sides(a.High)[axis], BoardCells.Sides(b.High)[axis]) - Math.Max(BoardCells.Sides(a.Low)[axis], BoardCells.Sides(b.Low)[axis]);
}
