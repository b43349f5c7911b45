using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Parts that drop or tip when their last fixing goes: marked so, or found so from what is under them.</summary>
/// <remarks>
/// A part is carried by the floor, by what it is recorded to stand on, and by whatever top face its own underside lies on. With
/// none of these it drops. With its middle of mass beyond what carries it, or so close to its edge that ten degrees throw it, it
/// tips. What one hand holds while the other undoes it counts for neither. The three figures are common practice, no source.
/// </remarks>
internal sealed class Hanging
{
    /// <summary>Up to this mass a hand holds it while the last fixing goes [kg].</summary>
    public const double OneHandKg = 5;

    private const double TouchingMm = 5, TipDegrees = 10;

    private readonly Dictionary<PartId, string> how = [];
    private readonly List<(Part Part, (Place Low, Place High) Bounds)> solids;
    private readonly Job job;

    public Hanging(Job job, IEnumerable<Part> standing)
    {
        this.job = job;
        var parts = standing.Where(p => !p.Outside).ToList();
        solids = [.. parts.SelectMany(p => p.Solids.Select(s => (p, s.Bounds())))];
        foreach (var part in parts)
            if (part.Overhead) how[part.Id] = "drops";
            else if (Found(part) is { } found) how[part.Id] = found;
    }

    /// <summary>Whether a part drops or tips, in a verb; nothing when it stands by itself or a hand is enough.</summary>
    public string? Of(PartId part) => how.GetValueOrDefault(part);

    private string? Found(Part part)
    {
        // what slides or hooks in is carried by it; what leaves with another hangs on that one
        if (part.LooseGoods || part.CarriedOutWith is not null || part.FoldsTo is not null || part.Solids.Count == 0 || part.EmptyKg is not { Value: > OneHandKg }) return null;
        var own = job.Joints.Where(j => j.Part == part.Id).ToList();
        if (own.Count == 0 || own.Exists(j => j.Type is FixingType.Runner or FixingType.Pin)) return null;
        var carried = Carried(part).ToList();
        if (carried.Count == 0) return part.StandsOn.Count > 0 ? null : "drops";
        return Tips(part, carried) ? "tips" : null;
    }

    /// <summary>Patches of its underside that something carries.</summary>
    private IEnumerable<(double X0, double X1, double Y0, double Y1)> Carried(Part part)
    {
        foreach (var (low, high) in part.Solids.Select(s => s.Bounds()))
        {
            if (low.ZMm <= 2 * TouchingMm) yield return (low.XMm, high.XMm, low.YMm, high.YMm);
            foreach (var (_, under) in solids.Where(s => s.Part != part && Math.Abs(s.Bounds.High.ZMm - low.ZMm) <= TouchingMm))
            {
                var (x0, x1) = (Math.Max(low.XMm, under.Low.XMm), Math.Min(high.XMm, under.High.XMm));
                var (y0, y1) = (Math.Max(low.YMm, under.Low.YMm), Math.Min(high.YMm, under.High.YMm));
                if (x1 > x0 && y1 > y0) yield return (x0, x1, y0, y1);
            }
        }
    }

    private static bool Tips(Part part, List<(double X0, double X1, double Y0, double Y1)> carried)
    {
        var volume = part.Solids.Sum(s => s.VolumeMm3());
        double Middle(Func<Place, double> axis) => part.Solids.Sum(s => s.VolumeMm3() * (axis(s.Bounds().Low) + axis(s.Bounds().High)) / 2) / volume;
        var (x, y, z) = (Middle(p => p.XMm), Middle(p => p.YMm), Middle(p => p.ZMm));
        var above = z - part.Solids.Min(s => s.Bounds().Low.ZMm);
        // the smallest way to an edge of the rectangle around all that carries it
        var toEdge = Math.Min(Math.Min(x - carried.Min(c => c.X0), carried.Max(c => c.X1) - x), Math.Min(y - carried.Min(c => c.Y0), carried.Max(c => c.Y1) - y));
        return toEdge < above * Math.Tan(TipDegrees * Math.PI / 180);
    }
}
