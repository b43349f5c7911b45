using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>Where a part lies against something that it may push on: floor, walls, roof, arches, floor build-up, lining, what it is fixed to.</summary>
/// <remarks>Other furniture beside it counts as air: a neighbour that leans is no support that anybody planned.</remarks>
internal sealed class Touching
{
    // felt, a bead of sealant, a bowed sheet: closer than this it touches before anything has moved far; common practice, no source
    private const double GapMm = 8, OverlapMm = 12, LeastMm = 5;

    private readonly List<(Place Low, Place High)> shell = [], backings = [];
    private readonly HashSet<PartId> backingParts = [];
    private readonly double widthMm;

    public Touching(Job job)
    {
        var room = job.Vehicle.LoadSpace;
        double length = room.LengthMm.Value, width = room.WidthMm.Value, height = room.HeightMm.Value;
        widthMm = width;
        const double thick = 200;
        shell.Add((new(-5_000, -1_000, -thick), new(length + 2_000, width + 1_000, 0)));
        shell.Add((new(-5_000, -1_000, height), new(length + 2_000, width + 1_000, height + thick)));
        shell.Add((new(-5_000, -thick, 0), new(length + 2_000, 0, height)));
        shell.Add((new(-5_000, width, 0), new(length + 2_000, width + thick, height)));
        foreach (var arch in room.WheelArches)
            shell.Add(arch.Side == Direction.Left
                ? (new(arch.FromXMm, 0, 0), new(arch.ToXMm, arch.WidthMm, arch.HeightMm))
                : (new(arch.FromXMm, width - arch.WidthMm, 0), new(arch.ToXMm, width, arch.HeightMm)));
        foreach (var part in job.Parts.Where(p => IsBacking(p, room)))
        {
            backingParts.Add(part.Id);
            backings.AddRange(part.Solids.Select(s => s.Bounds()));
        }
    }

    /// <summary>Whether a part is so much of the shell that others may stand or lean on it as on the van.</summary>
    public bool IsBacking(PartId part) => backingParts.Contains(part);

    /// <summary>Contacts of a body with the van [mm].</summary>
    public IEnumerable<Contact> WithVan(Part part, int body)
    {
        var touching = Faces(part).SelectMany(face => shell.SelectMany(b => Between(face, b)));
        if (!backingParts.Contains(part.Id)) return Spread(touching.Concat(Faces(part).SelectMany(face => backings.SelectMany(b => Between(face, b)))), "the van", body, null);
        // a floor board or lining is held out by what lies behind it, never in by what lies before it
        var mine = Faces(part).ToHashSet();
        var middle = Laden.Middle(part)!.Value;
        var outOfShell = part.System == PartSystem.Floor ? new Vector3D(0, 0, 1) : new(0, middle.Y < widthMm / 2 ? 1 : -1, 0);
        return Spread(touching.Concat(Faces(part).SelectMany(face => backings.Where(b => !mine.Contains(b)).SelectMany(b => Between(face, b))).Where(c => c.Normal == outOfShell)), "the van", body, null);
    }

    /// <summary>Contacts of a body with another body.</summary>
    public static IEnumerable<Contact> Between(Part part, int body, Part other, int to) =>
        Spread(Faces(part).SelectMany(face => Faces(other).SelectMany(b => Between(face, b))), other.Name, body, to);

    /// <summary>Where one stands on another by the record and the tape shows a gap: on what lies under its foot, a hand's breadth wider.</summary>
    public static IEnumerable<Contact> Standing(Part part, int body, Part under, int to)
    {
        if (part.Bounds() is not var (low, high) || under.Bounds() is not var (lowest, highest)) yield break;
        const double hand = 80;
        var (x0, x1) = (Math.Max(low.XMm, lowest.XMm - hand), Math.Min(high.XMm, highest.XMm + hand));
        var (y0, y1) = (Math.Max(low.YMm, lowest.YMm - hand), Math.Min(high.YMm, highest.YMm + hand));
        if (x1 <= x0 || y1 <= y0) yield break;
        foreach (var x in (double[])[x0, x1])
            foreach (var y in (double[])[y0, y1]) yield return new(under.Name, new(x, y, low.ZMm), new(0, 0, 1), body, to);
    }

    private static bool IsBacking(Part part, LoadSpace room) => part.Solids.Count > 0 && !part.Outside && (part.System switch
    {
        PartSystem.Floor => part.Bounds()!.Value.High.ZMm < 80,
        PartSystem.Vehicle => true,
        PartSystem.Lining or PartSystem.Insulation => part.Bounds()!.Value is var (low, high) && (high.YMm < 60 || low.YMm > room.WidthMm.Value - 60),
        _ => false,
    });

    private static IEnumerable<(Place Low, Place High)> Faces(Part part) => part.Solids.Select(s => s.Bounds());

    /// <summary>Corners of the patch where a box lies against another, with the way that one pushes.</summary>
    private static IEnumerable<(Vector3D At, Vector3D Normal)> Between((Place Low, Place High) box, (Place Low, Place High) by)
    {
        double[] low = [box.Low.XMm, box.Low.YMm, box.Low.ZMm], high = [box.High.XMm, box.High.YMm, box.High.ZMm];
        double[] byLow = [by.Low.XMm, by.Low.YMm, by.Low.ZMm], byHigh = [by.High.XMm, by.High.YMm, by.High.ZMm];
        for (var axis = 0; axis < 3; axis++)
        {
            var (u, v) = ((axis + 1) % 3, (axis + 2) % 3);
            var (u0, u1) = (Math.Max(low[u], byLow[u]), Math.Min(high[u], byHigh[u]));
            var (v0, v1) = (Math.Max(low[v], byLow[v]), Math.Min(high[v], byHigh[v]));
            // thin sheets are narrower than the least patch in one direction, and still lie against something
            if (u1 - u0 < Math.Min(LeastMm, (high[u] - low[u]) / 2) || v1 - v0 < Math.Min(LeastMm, (high[v] - low[v]) / 2) || u1 <= u0 || v1 <= v0) continue;
            var side = Touches(byHigh[axis], low[axis], high[axis] - low[axis]) ? 1 : Touches(byLow[axis], high[axis], high[axis] - low[axis], back: true) ? -1 : 0;
            if (side == 0) continue;
            var at = side > 0 ? low[axis] : high[axis];
            foreach (var pu in (double[])[u0, u1])
                foreach (var pv in (double[])[v0, v1])
                {
                    var p = new double[3];
                    (p[axis], p[u], p[v]) = (at, pu, pv);
                    yield return (new(p[0], p[1], p[2]), new(axis == 0 ? side : 0, axis == 1 ? side : 0, axis == 2 ? side : 0));
                }
        }
    }

    private static bool Touches(double face, double low, double thick, bool back = false)
    {
        var gap = back ? face - low : low - face;
        return gap <= GapMm && gap >= -Math.Min(OverlapMm, thick / 2);
    }

    /// <summary>The outermost corners of each side: what lies between them adds nothing.</summary>
    private static IEnumerable<Contact> Spread(IEnumerable<(Vector3D At, Vector3D Normal)> all, string name, int body, int? to)
    {
        foreach (var side in all.GroupBy(c => c.Normal))
        {
            var points = side.Select(c => c.At).Distinct().ToList();
            var (first, second) = side.Key.Across();
            var kept = new HashSet<Vector3D>();
            for (var k = 0; k < 8; k++)
            {
                var (sin, cos) = Math.SinCos(Math.PI / 4 * k + 0.1);
                var way = cos * first + sin * second;
                kept.Add(points.MaxBy(p => p.Dot(way)));
            }
            foreach (var at in kept) yield return new(name, at, side.Key, body, to);
        }
    }
}
