using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Whether a part can be looked at, straight and without a mirror.</summary>
/// <remarks>
/// From spots on the faces of a part, lines go out in 98 directions, none flatter than 15° to the face; a head is tried along each at
/// several distances. One clear line to where a head gets to from outside is enough. Glass is taken to hide what is behind it.
/// </remarks>
internal sealed class Sight
{
    // Head length 215 mm at the 99th percentile of men (ANSUR II, US Army 2012, public data), in every direction, so that it may turn.
    private const int HeadHalfMm = 108;
    private const double FlattestCosine = 0.26; // 15° to the face; common practice, no source
    private const int SpotEveryMm = 150, MostSpots = 4, MostBoxes = 10, EdgeShare = 8, GridMm = 50;
    // from the spot to the middle of the head: near enough to see a screw, far enough to focus; common practice, no source
    private static readonly int[] EyeAtMm = [200, 300, 450, 650, 900, 1200, 1600, 2100];

    private readonly Crowd crowd;
    private readonly Probe head;

    public Sight(Crowd crowd)
    {
        this.crowd = crowd;
        head = new([new Box(-HeadHalfMm, -HeadHalfMm, -HeadHalfMm, HeadHalfMm, HeadHalfMm, HeadHalfMm)], crowd.Obstacles, crowd.Shell);
    }

    /// <summary>The lines of sight to a part.</summary>
    public Approach Of(Part part)
    {
        var own = PartBody.Of(part.Solids).Outer;
        var others = crowd.Around(part);
        return new(head, crowd.ItemsOf(part), Spots(own).SelectMany(s => Lines(s.At, s.Face, others)));
    }

    private IEnumerable<StraightWay> Lines(Point spot, Heading face, IReadOnlyList<(int Item, Box Box)> others)
    {
        foreach (var way in Directions.Fine)
        {
            if (way.Along(face.Direction()) < FlattestCosine) continue;
            var ray = new Stick(spot, spot.Towards(way, EyeAtMm[^1]), 0);
            var end = 1.0;
            var met = new List<(double At, int Item)>();
            foreach (var (item, box) in others)
            {
                if (ray.Enters(box) is not { } at || at >= end) continue;
                if (item == Obstacle.Fixed) end = at;
                else met.Add((at, item));
            }
            met.Sort();
            var (blockers, next) = (new ItemSet(crowd.Items), 0);
            foreach (var mm in EyeAtMm)
            {
                var at = (double)mm / EyeAtMm[^1];
                if (at > end) break;
                if (next < met.Count && met[next].At < at) blockers = blockers.Copy();
                while (next < met.Count && met[next].At < at) blockers.Add(met[next++].Item);
                yield return new(OnGrid(spot.Towards(way, mm)), blockers, spot);
            }
        }
    }

    private static Point OnGrid(Point at) => new(Snapped(at.XMm), Snapped(at.YMm), Snapped(at.ZMm));

    private static double Snapped(double mm) => Math.Round(mm / GridMm) * GridMm;

    /// <summary>
    /// Spots all over a thing's outside: a grid on each side of its bounds, laid on to what is met there, and the middles of the
    /// faces of its largest boxes, for what is a frame.
    /// </summary>
    internal static IEnumerable<(Point At, Heading Face)> Spots(IReadOnlyList<Box> boxes) =>
        Sides(Box.Around(boxes)).SelectMany(face => OnBounds(boxes, face)).Concat(boxes.OrderByDescending(b => b.VolumeMm3).Take(MostBoxes).SelectMany(OnBox)).Distinct();

    /// <summary>The sides of a box that count as its faces: who sees the edge of a board has not seen the board.</summary>
    private static IEnumerable<Heading> Sides(Box box)
    {
        long Area(int axis) => (long)box.Length((axis + 1) % 3) * box.Length((axis + 2) % 3);
        var largest = Enumerable.Range(0, 3).Max(Area);
        return Enum.GetValues<Heading>().Where(face => Area(face.Axis()) * EdgeShare >= largest);
    }

    private static IEnumerable<(Point At, Heading Face)> OnBox(Box box)
    {
        foreach (var face in Sides(box))
        {
            double[] at = [(box.X0 + box.X1) / 2.0, (box.Y0 + box.Y1) / 2.0, (box.Z0 + box.Z1) / 2.0];
            at[face.Axis()] = face.Sign() > 0 ? box.High(face.Axis()) : box.Low(face.Axis());
            yield return (new(at[0], at[1], at[2]), face);
        }
    }

    private static IEnumerable<(Point At, Heading Face)> OnBounds(IReadOnlyList<Box> boxes, Heading face)
    {
        var bounds = Box.Around(boxes);
        var (axis, sign) = (face.Axis(), face.Sign());
        var (u, v) = ((axis + 1) % 3, (axis + 2) % 3);
        foreach (var atU in Middles(bounds, u))
            foreach (var atV in Middles(bounds, v))
            {
                var hit = boxes.Where(b => b.Low(u) <= atU && atU <= b.High(u) && b.Low(v) <= atV && atV <= b.High(v))
                    .Select(b => sign > 0 ? b.High(axis) : b.Low(axis)).OrderByDescending(c => sign * c).Cast<int?>().FirstOrDefault();
                if (hit is not { } c) continue;
                double[] at = new double[3];
                (at[axis], at[u], at[v]) = (c, atU, atV);
                yield return (new(at[0], at[1], at[2]), face);
            }
    }

    private static IEnumerable<double> Middles(Box bounds, int axis)
    {
        var count = Math.Clamp((bounds.Length(axis) + SpotEveryMm - 1) / SpotEveryMm, 1, MostSpots);
        return Enumerable.Range(0, count).Select(i => bounds.Low(axis) + bounds.Length(axis) * (i + 0.5) / count);
    }
}
