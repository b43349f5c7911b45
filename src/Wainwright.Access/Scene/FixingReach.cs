using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>One way to put a tool to a fixing.</summary>
/// <param name="At">Where it meets the fixing.</param>
/// <param name="Side">The side of the fixing it comes from.</param>
/// <param name="IsFlat">Whether the hand lies flat.</param>
/// <param name="Boxes">Tool and hand as boxes at the origin, the hand last.</param>
/// <param name="Probe">What brings them in.</param>
/// <param name="Arm">The arms there can be behind the hand.</param>
internal sealed record ToolPlace(Point At, Heading Side, bool IsFlat, IReadOnlyList<Box> Boxes, Lazy<Probe> Probe, Lazy<Recalled> Arm);

/// <summary>The ways a tool can be put to one fixing, and whether by any of them hand and tool get there.</summary>
/// <remarks>
/// Most ways fail because something fills the tool's own place; that is looked up once and answers without a search.
/// </remarks>
internal sealed class FixingReach
{
    private readonly List<Way> ways;

    private sealed record Way(ToolPlace Tool, int[] InItsPlace);

    /// <param name="candidates">Where the tool would be.</param>
    /// <param name="obstacles">All that can stand in its place; fixed things too.</param>
    public FixingReach(IEnumerable<ToolPlace> candidates, IReadOnlyList<Obstacle> obstacles)
    {
        var all = candidates.ToList();
        var near = Near(all, obstacles);
        var possible = all
            .Select(c => (Tool: c, InItsPlace: InPlaceOf(c.Boxes, c.At, near)))
            .Where(c => !c.InItsPlace.Contains(Obstacle.Fixed))
            .ToList();
        // what is in the way of most comes first, so that few things make up the wall
        var often = possible.SelectMany(c => c.InItsPlace).CountBy(i => i).ToDictionary();
        ways = [.. possible
            .Select(c => new Way(c.Tool, [.. c.InItsPlace.OrderByDescending(i => often[i]).ThenBy(i => i)]))
            .OrderBy(w => w.InItsPlace.Length)];
    }

    /// <summary>Whether hand and tool, and the arm behind them, get there by any of the ways.</summary>
    /// <param name="gone">What is gone for hand and tool.</param>
    /// <param name="armGone">What is gone for the arm, that and perhaps more; absent when the arm is not asked.</param>
    /// <param name="stays">What a wall should name first where there is a choice.</param>
    public Answer Ask(ItemSet gone, ItemSet? armGone, ItemSet stays)
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
            var there = way.Tool.Probe.Value.Reach(gone, stays, way.Tool.At);
            var arm = there is WayOut && armGone is not null ? way.Tool.Arm.Value.Ask(armGone, stays) : null;
            if (there is WayOut found && arm is not Stuck)
            {
                var through = found.Through.Copy();
                foreach (var item in way.InItsPlace) through.Add(item);
                if (arm is WayOut behind) through.AddAll(behind.Through);
                through.KeepOnly(gone);
                return found with { Through = through };
            }
            wall.AddAll(((there as Stuck) ?? (Stuck)arm!).Wall);
        }
        return new Stuck(wall);
    }

    /// <summary>Whether by any of the ways hand and tool get there when these are gone, and another person's arm behind them.</summary>
    public bool ReachesWith(Arm other, ItemSet gone) => ways.Exists(way =>
        way.InItsPlace.All(gone.Has) && way.Tool.Probe.Value.Reach(gone, new(gone.Size), way.Tool.At) is WayOut
        && other.Behind(Placed(way.Tool.Boxes[^1], way.Tool.At), way.Tool.Side, way.Tool.IsFlat).Ask(gone, new(gone.Size)) is WayOut);

    /// <summary>Boxes that any of the tools could meet at all.</summary>
    private static List<(int Item, Box Box)> Near(List<ToolPlace> all, IReadOnlyList<Obstacle> obstacles)
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

    public static Box Placed(Box box, Point at) => box.Moved((int)Math.Round(at.XMm), (int)Math.Round(at.YMm), (int)Math.Round(at.ZMm));
}
