using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>The ways a tool can be put to one fixing, and whether by any of them hand and tool get there.</summary>
/// <remarks>
/// Most ways fail because something fills the tool's own place; that is looked up once and answers without a search.
/// </remarks>
internal sealed class FixingReach
{
    private readonly List<Way> ways;

    private sealed record Way(Lazy<Probe> Probe, Point At, int[] InItsPlace);

    /// <param name="candidates">Where the tool would be, as what probe, and its boxes at the origin.</param>
    /// <param name="obstacles">All that can stand in its place; fixed things too.</param>
    public FixingReach(IEnumerable<(Point At, IReadOnlyList<Box> Boxes, Lazy<Probe> Probe)> candidates, IReadOnlyList<Obstacle> obstacles)
    {
        var possible = candidates
            .Select(c => (c.At, c.Probe, InItsPlace: InPlaceOf(c.Boxes, c.At, obstacles)))
            .Where(c => !c.InItsPlace.Contains(Obstacle.Fixed))
            .ToList();
        // what is in the way of most comes first, so that few things make up the wall
        var often = possible.SelectMany(c => c.InItsPlace).CountBy(i => i).ToDictionary();
        ways = [.. possible
            .Select(c => new Way(c.Probe, c.At, [.. c.InItsPlace.OrderByDescending(i => often[i]).ThenBy(i => i)]))
            .OrderBy(w => w.InItsPlace.Length)];
    }

    public Answer Ask(ItemSet gone)
    {
        var wall = new ItemSet(gone.Size);
        foreach (var way in ways)
        {
            if (Array.Exists(way.InItsPlace, wall.Has)) continue;
            var filled = Array.FindIndex(way.InItsPlace, i => !gone.Has(i));
            if (filled >= 0)
            {
                wall.Add(way.InItsPlace[filled]);
                continue;
            }
            switch (way.Probe.Value.Reach(gone, way.At))
            {
                case WayOut there:
                    var through = there.Through.Copy();
                    foreach (var item in way.InItsPlace) through.Add(item);
                    return there with { Through = through };
                case Stuck stuck:
                    wall.AddAll(stuck.Wall);
                    break;
            }
        }
        return new Stuck(wall);
    }

    private static int[] InPlaceOf(IReadOnlyList<Box> boxes, Point at, IReadOnlyList<Obstacle> obstacles)
    {
        var (x, y, z) = ((int)Math.Round(at.XMm), (int)Math.Round(at.YMm), (int)Math.Round(at.ZMm));
        var placed = boxes.Select(b => b.Moved(x, y, z)).ToArray();
        var bounds = Box.Around(placed);
        return [.. obstacles.Where(o => o.Boxes.Any(b => bounds.Overlaps(b) && Array.Exists(placed, b.Overlaps))).Select(o => o.Item).Distinct()];
    }
}
