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
        var all = candidates.ToList();
        var near = Near(all, obstacles);
        var possible = all
            .Select(c => (c.At, c.Probe, InItsPlace: InPlaceOf(c.Boxes, c.At, near)))
            .Where(c => !c.InItsPlace.Contains(Obstacle.Fixed))
            .ToList();
        // what is in the way of most comes first, so that few things make up the wall
        var often = possible.SelectMany(c => c.InItsPlace).CountBy(i => i).ToDictionary();
        ways = [.. possible
            .Select(c => new Way(c.Probe, c.At, [.. c.InItsPlace.OrderByDescending(i => often[i]).ThenBy(i => i)]))
            .OrderBy(w => w.InItsPlace.Length)];
    }

    public Answer Ask(ItemSet gone, ItemSet stays)
    {
        var wall = new ItemSet(gone.Size);
        foreach (var way in ways)
        {
            if (Array.Exists(way.InItsPlace, wall.Has)) continue;
            var filled = Array.FindIndex(way.InItsPlace, i => stays.Has(i) && !gone.Has(i));
            if (filled < 0) filled = Array.FindIndex(way.InItsPlace, i => !gone.Has(i));
            if (filled >= 0)
            {
                wall.Add(way.InItsPlace[filled]);
                continue;
            }
            switch (way.Probe.Value.Reach(gone, stays, way.At))
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

    /// <summary>Boxes that any of the tools could meet at all.</summary>
    private static List<(int Item, Box Box)> Near(List<(Point At, IReadOnlyList<Box> Boxes, Lazy<Probe> Probe)> all, IReadOnlyList<Obstacle> obstacles)
    {
        if (all.Count == 0) return [];
        var around = Box.Around(all.Select(c => Placed(Box.Around(c.Boxes), c.At)));
        return [.. obstacles.SelectMany(o => o.Boxes.Where(around.Overlaps).Select(b => (o.Item, b)))];
    }

    private static int[] InPlaceOf(IReadOnlyList<Box> boxes, Point at, List<(int Item, Box Box)> near)
    {
        var placed = boxes.Select(b => Placed(b, at)).ToArray();
        var bounds = Box.Around(placed);
        var found = new SortedSet<int>();
        foreach (var (item, box) in near)
            if (bounds.Overlaps(box) && Array.Exists(placed, box.Overlaps)) found.Add(item);
        return [.. found];
    }

    private static Box Placed(Box box, Point at) => box.Moved((int)Math.Round(at.XMm), (int)Math.Round(at.YMm), (int)Math.Round(at.ZMm));
}
