using Wainwright.Fitout;
using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Survey.Damp;

/// <summary>The wooden surfaces of a van, cut into pieces and joined as they are built: floor boards, linings, a wooden bulkhead, and whatever else a reading point is on.</summary>
public sealed class DampNet
{
    /// <summary>Usual side of a piece [mm].</summary>
    public const double UsualCellMm = 100;

    private DampNet(IReadOnlyList<DampSheet> sheets, IReadOnlyList<DampCell> cells, SurfaceNet surface) => (Sheets, Cells, Surface) = (sheets, cells, surface);

    /// <summary>The boards.</summary>
    public IReadOnlyList<DampSheet> Sheets { get; }

    /// <summary>Their pieces, in the order of the net's cells.</summary>
    public IReadOnlyList<DampCell> Cells { get; }

    /// <summary>The net.</summary>
    public SurfaceNet Surface { get; }

    /// <summary>Number of materials that have a dry board each.</summary>
    public IReadOnlyList<string> Materials => [.. Sheets.GroupBy(s => s.Group).OrderBy(g => g.Key).Select(g => g.First().Material)];

    /// <summary>Builds the net; null when no measured part is of wood.</summary>
    /// <param name="job">The job.</param>
    /// <param name="cellMm">Side of a piece [mm], 20 to 500.</param>
    /// <exception cref="ArgumentOutOfRangeException">The side leaves its range.</exception>
    public static DampNet? Of(Job job, double cellMm = UsualCellMm)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(cellMm, 20);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(cellMm, 500);
        var pointed = job.Points.Select(p => p.Part).OfType<PartId>().ToHashSet();
        var boards = job.Parts.Where(p => !p.Outside && p.Solids.Count > 0 && (p.System is PartSystem.Floor or PartSystem.Lining || pointed.Contains(p.Id) || IsBulkhead(p)))
            .Select(p => (Part: p, Material: BoardMaterial.Of(p, job.Points))).Where(b => b.Material is not null).ToList();
        var groups = boards.Select(b => b.Material!).Distinct().ToList();
        List<DampCell> cells = [];
        List<DampSheet> sheets = [];
        List<Part> parts = [];
        foreach (var (part, material) in boards)
        {
            var own = BoardCells.Of(part, sheets.Count, cellMm).ToList();
            if (own.Count == 0) continue;
            cells.AddRange(own);
            parts.Add(part);
            sheets.Add(new(part.Id, part.Name, part.System, material!, own.Sum(c => c.AreaMm2) * 1e-6, own.Min(c => BoardCells.Sides(c.High - c.Low)[c.Across]), groups.IndexOf(material!)));
        }
        if (cells.Count == 0) return null;
        var surface = new SurfaceNet([.. cells.Select(c => new SurfaceNet.Cell(c.AreaMm2, c.Sheet, c.Middle.XMm, c.Middle.YMm, c.Middle.ZMm))], new BoardJoins(cells, parts).All());
        return new(sheets, cells, surface);
    }

    private static bool IsBulkhead(Part part) => part.System == PartSystem.Vehicle && $"{part.Kind} {part.Name}".Contains("bulkhead", StringComparison.OrdinalIgnoreCase);

    /// <summary>The piece that a place lies on or nearest to, and how far off it is [mm].</summary>
    /// <param name="place">The place.</param>
    /// <param name="part">The board it is said to be on; null for any.</param>
    public (int Cell, double OffMm)? Nearest(Place place, PartId? part)
    {
        (int, double)? best = null;
        for (var i = 0; i < Cells.Count; i++)
        {
            if (part is { } named && Sheets[Cells[i].Sheet].Part != named) continue;
            var off = Cells[i].DistanceMm(place);
            if (best is not { } b || off < b.Item2) best = (i, off);
        }
        return best;
    }
}
