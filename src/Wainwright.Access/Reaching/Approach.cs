using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>One straight way from a thing to where a person's head or shoulder would be.</summary>
/// <param name="End">Where that is [whole mm].</param>
/// <param name="Blockers">What stands across it; whatever never moves does not.</param>
/// <param name="At">Where on the thing it begins.</param>
internal sealed record StraightWay(Point End, ItemSet Blockers, Point At);

/// <summary>Whether one of many lines is clear and ends where a person can be.</summary>
/// <remarks>
/// The more is gone the more lines are clear and the further a person gets, so answers are monotone. The lines are a list:
/// <see cref="Stuck"/> is a proof for these lines.
/// </remarks>
internal sealed class Approach
{
    private const int MostTried = 24; // lines per thing, those that ask least; a head that gets to none of them seldom gets to the others

    private readonly Probe body;
    private readonly ItemSet own;
    private readonly Recalled recalled;
    private readonly Dictionary<Point, List<StraightWay>> ends = [];

    /// <param name="body">What must get to the end of a line.</param>
    /// <param name="own">What counts as standing whatever is gone: the thing itself.</param>
    /// <param name="lines">The lines; of those with the same end only the ones that ask least are kept.</param>
    public Approach(Probe body, ItemSet own, IEnumerable<StraightWay> lines)
    {
        (this.body, this.own) = (body, own);
        recalled = new(own, Work);
        foreach (var line in lines)
        {
            if (!ends.TryGetValue(line.End, out var same)) ends[line.End] = same = [];
            if (same.Exists(s => s.Blockers.IsWithin(line.Blockers))) continue;
            same.RemoveAll(s => line.Blockers.IsWithin(s.Blockers));
            same.Add(line);
        }
    }

    /// <summary>The lines there are when nothing else is in the way.</summary>
    public IEnumerable<StraightWay> Lines => ends.Values.SelectMany(e => e);

    public Answer Ask(ItemSet gone, ItemSet stays) => recalled.Ask(gone, stays);

    /// <summary>A clear line whose end a person gets to when these are gone.</summary>
    public StraightWay? Clear(ItemSet gone)
    {
        gone = gone.Without(own);
        return body.ReachAny(gone, new(gone.Size), Open(gone)) is WayOut way ? ends[way.Path[0].ShiftMm].Find(l => l.Blockers.IsWithin(gone)) : null;
    }

    /// <summary>
    /// Of the lines that one thing alone stands across, and whose ends a person gets to: the thing, and the least depth of it, from any of
    /// its sides, that would have to go. Nothing where every line has more than one across.
    /// </summary>
    /// <param name="gone">What is gone.</param>
    /// <param name="boxes">The boxes of what can stand there.</param>
    public (int Item, int Mm)? LeastCut(ItemSet gone, IReadOnlyList<(int Item, Box Box)> boxes)
    {
        gone = gone.Without(own);
        (int Item, int Mm)? least = null;
        foreach (var group in Lines.Select(l => (Line: l, Across: l.Blockers.Without(gone))).Where(l => l.Across.Count == 1).GroupBy(l => l.Across.First()))
        {
            var its = boxes.Where(b => b.Item == group.Key).Select(b => b.Box).ToList();
            foreach (var (mm, line) in group.Select(l => (Mm: Cut(l.Line, its), l.Line)).OrderBy(c => c.Mm).Take(MostTried))
            {
                if (least is { } best && mm >= best.Mm) break;
                if (body.ReachAny(gone, new(gone.Size), [line.End]) is not WayOut) continue;
                least = (group.Key, mm);
                break;
            }
        }
        return least;
    }

    /// <summary>How deep the line lies within a thing, seen from the side that is nearest.</summary>
    private static int Cut(StraightWay line, List<Box> boxes)
    {
        var stick = new Stick(line.At, line.End, 0);
        var most = 1;
        foreach (var box in boxes.Where(b => stick.Meets(b)))
        {
            var least = int.MaxValue;
            for (var axis = 0; axis < 3; axis++)
            {
                var (low, high) = stick.Within(box, axis);
                least = Math.Min(least, (int)Math.Ceiling(Math.Min(high - box.Low(axis), box.High(axis) - low)));
            }
            most = Math.Max(most, least);
        }
        return most;
    }

    private List<Point> Open(ItemSet gone) => [.. ends.Where(e => e.Value.Exists(l => l.Blockers.IsWithin(gone))).Select(e => e.Key)];

    private Answer Work(ItemSet gone, ItemSet stays)
    {
        var open = Open(gone);
        var wall = new ItemSet(gone.Size);
        if (open.Count > 0)
            switch (body.ReachAny(gone, stays, open))
            {
                case WayOut way:
                    var line = ends[way.Path[0].ShiftMm].Find(l => l.Blockers.IsWithin(gone))!;
                    var through = way.Through.Copy();
                    through.AddAll(line.Blockers);
                    return new WayOut([], through, null);
                case Stuck stuck:
                    wall.AddAll(stuck.Wall);
                    break;
            }
        // the ends of clear lines stay shut off; each other line needs one that stays across it
        var across = ends.Where(e => !e.Value.Exists(l => l.Blockers.IsWithin(gone))).SelectMany(e => e.Value)
            .Select(l => l.Blockers.Without(gone)).Where(b => !b.Meets(wall)).ToList();
        Hit(across, wall, stays);
        return new Stuck(wall);
    }

    /// <summary>Adds to a wall one of each set, those that serve most first, ones that will stay before others.</summary>
    private static void Hit(List<ItemSet> sets, ItemSet wall, ItemSet stays)
    {
        var count = new int[wall.Size];
        while (sets.Count > 0)
        {
            Array.Clear(count);
            foreach (var set in sets)
            {
                var some = set.Meets(stays);
                foreach (var item in set)
                    if (!some || stays.Has(item)) count[item]++;
            }
            var best = Array.IndexOf(count, count.Max());
            wall.Add(best);
            sets.RemoveAll(s => s.Has(best));
        }
    }
}
