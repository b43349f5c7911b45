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
    private const double FlattestCosine = 0.26; // 15° to the face; common practice, no source
    private const int GridMm = 50;
    // from the spot to the middle of the head: near enough to see a screw, far enough to focus; common practice, no source
    private static readonly int[] EyeAtMm = [200, 300, 450, 650, 900, 1200, 1600, 2100];

    private readonly Crowd crowd;
    private readonly Probe head;

    public Sight(Crowd crowd, Person person)
    {
        this.crowd = crowd;
        var half = (person.HeadMm + 1) / 2;
        head = new([new Box(-half, -half, -half, half, half, half)], crowd.Obstacles, crowd.Shell);
    }

    /// <summary>The lines of sight to a part.</summary>
    public Approach Of(Part part)
    {
        var own = PartBody.Of(part.Solids).Outer;
        var others = crowd.Around(part);
        return new(head, crowd.ItemsOf(part), Spots.AllOver(own).SelectMany(s => Lines(s.At, s.Face, others)));
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
}
