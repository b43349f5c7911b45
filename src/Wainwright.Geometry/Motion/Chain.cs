namespace Wainwright.Geometry;

/// <summary>How far a link of a chain may go: no further than so much from a core.</summary>
/// <param name="CoreMm">The core; may be a point.</param>
/// <param name="RangeMm">How far the middle of the link may be from it, in a straight line.</param>
public readonly record struct Tether(Box CoreMm, double RangeMm)
{
    /// <summary>
    /// Whether any of the places of a region is within range. The places within range of a box are a convex set; an odd
    /// coordinate is all that lies between two planes, so its end nearer to the core counts.
    /// </summary>
    internal bool Allows(in Cells region)
    {
        var sum = 0.0;
        for (var axis = 0; axis < 3; axis++)
        {
            double gap = Math.Max(0, Math.Max((region.Low(axis) >> 1) - CoreMm.High(axis), CoreMm.Low(axis) - ((region.High(axis) + 1) >> 1)));
            sum += gap * gap;
        }
        return sum <= RangeMm * RangeMm;
    }

    /// <summary>The place of a region nearest to the core.</summary>
    internal Cell Nearest(in Cells region) => region.Nearest(new(
        Math.Clamp((region.X0 + region.X1) / 2, 2 * CoreMm.X0, 2 * CoreMm.X1),
        Math.Clamp((region.Y0 + region.Y1) / 2, 2 * CoreMm.Y0, 2 * CoreMm.Y1),
        Math.Clamp((region.Z0 + region.Z1) / 2, 2 * CoreMm.Z0, 2 * CoreMm.Z1)));
}

/// <summary>A limb as boxes one behind the other, each thicker than the one before and tethered to where the limb begins; the last must get outside.</summary>
/// <remarks>
/// The first goes from a start as far as its tether lets it; wherever it gets, the next may take over. Free room only grows as
/// things go, so answers are monotone, and <see cref="Stuck"/> is a proof: what was reached lies shut in by what stays. A limb
/// bends here as a rope would: a way is necessary for a limb of bone, not sufficient.
/// </remarks>
public sealed class Chain
{
    private readonly Pose[] links;
    private readonly HashSet<int>[] seen;
    private readonly PriorityQueue<Exploration.Reached, (long Cost, int Order)> queue = new();
    private readonly List<int> free = [], blocked = [];
    private readonly HashSet<(int Link, int Block)> rim = [];
    private int order;

    /// <param name="links">The links' boxes about their middles, the one at the start first.</param>
    /// <param name="obstacles">Everything removable that could be in their way.</param>
    /// <param name="shell">What the last link must leave.</param>
    /// <exception cref="ArgumentException">There are no links.</exception>
    public Chain(IReadOnlyList<Box> links, IReadOnlyList<Obstacle> obstacles, Shell shell)
    {
        if (links.Count == 0) throw new ArgumentException("A chain has at least one link.", nameof(links));
        var all = (IReadOnlyList<Obstacle>)[new Obstacle(Obstacle.Fixed, shell.Blocks), .. obstacles];
        this.links = [.. links.Select(link => new Pose([link], Forbidden.WithoutHidden(all.SelectMany(o => Forbidden.For([link], o, Fit.Exact, asFound: false))), shell))];
        seen = [.. links.Select(_ => new HashSet<int>())];
    }

    /// <summary>Whether the last link gets outside when these are gone; the path is of no use and left out.</summary>
    /// <param name="gone">What is out already.</param>
    /// <param name="stays">What a wall should name first where there is a choice.</param>
    /// <param name="starts">Where the middle of the first link may begin; boxes may be flat.</param>
    /// <param name="tethers">One for each link but the last, all about the same core: a place within the shorter range is then within both.</param>
    /// <exception cref="ArgumentException">Too few or too many tethers, or different cores.</exception>
    public Answer Reach(ItemSet gone, ItemSet stays, IEnumerable<Box> starts, IReadOnlyList<Tether> tethers)
    {
        if (tethers.Count != links.Length - 1) throw new ArgumentException("Each link but the last has a tether.", nameof(tethers));
        if (tethers.Any(t => t.CoreMm != tethers[0].CoreMm)) throw new ArgumentException("All tethers of a chain are about one core.", nameof(tethers));
        queue.Clear();
        rim.Clear();
        order = 0;
        for (var i = 0; i < links.Length; i++)
        {
            seen[i].Clear();
            links[i].Begin();
        }
        foreach (var start in starts)
            Spread(0, new(2 * start.X0, 2 * start.Y0, 2 * start.Z0, 2 * start.X1, 2 * start.Y1, 2 * start.Z1), null, null, gone, tethers);
        while (queue.TryDequeue(out var next, out _))
        {
            if (next.IsOut) return new WayOut([], Through(next, gone, tethers), null);
            if (!seen[next.Pose].Add(next.Block)) continue;
            Go(next, gone, tethers);
        }
        return new Stuck(Wall.Of(links, rim, gone, stays));
    }

    /// <summary>The gone things that meet any of the blocks it came by, as far as their links may be there: the straight way between two corners could leave a tether.</summary>
    private ItemSet Through(Exploration.Reached end, ItemSet gone, IReadOnlyList<Tether> tethers)
    {
        var through = new ItemSet(gone.Size);
        for (var reached = end; reached is not null; reached = reached.From)
        {
            var where = links[reached.Pose].Space.Where(reached.Block);
            foreach (var f in links[reached.Pose].Forbidden)
            {
                if (f.Item == Obstacle.Fixed || !gone.Has(f.Item) || through.Has(f.Item) || !f.Where.Meets(where)) continue;
                if (reached.Pose >= tethers.Count || tethers[reached.Pose].Allows(f.Where.Common(where))) through.Add(f.Item);
            }
        }
        return through;
    }

    private void Go(Exploration.Reached reached, ItemSet gone, IReadOnlyList<Tether> tethers)
    {
        var (link, where) = (links[reached.Pose], links[reached.Pose].Space.Where(reached.Block));
        if (reached.Pose == links.Length - 1)
        {
            foreach (var exit in link.Exits)
            {
                var common = where.Common(exit);
                if (!common.IsEmpty) queue.Enqueue(reached with { At = common.Nearest(reached.At), From = reached, AcrossAxis = null, IsOut = true }, (long.MinValue, order++));
            }
        }
        else Spread(reached.Pose + 1, where, reached, null, gone, tethers);
        for (var face = Heading.MinusX; face <= Heading.PlusZ; face++)
        {
            var beyond = where.Beyond(face);
            if (beyond.Meets(link.Window)) Spread(reached.Pose, beyond, reached, face, gone, tethers);
        }
    }

    private void Spread(int to, Cells region, Exploration.Reached? from, Heading? over, ItemSet gone, IReadOnlyList<Tether> tethers)
    {
        // a link takes over where the one before it may still be; then its own tether counts
        if (from is not null && from.Pose < to && !tethers[from.Pose].Allows(region)) return;
        var own = to < tethers.Count ? tethers[to] : (Tether?)null;
        if (own is { } tether && !tether.Allows(region)) return;
        free.Clear();
        blocked.Clear();
        links[to].Space.Find(region, from is not null && from.Pose == to ? from.Block : 0, gone, free, blocked);
        foreach (var block in blocked)
            if (IsWithin(to, links[to].Space.Where(block).Common(region), from, over, tethers)) rim.Add((to, block));
        foreach (var block in free)
        {
            if (seen[to].Contains(block)) continue;
            var common = links[to].Space.Where(block).Common(region);
            if (!IsWithin(to, common, from, over, tethers)) continue;
            var at = from is null ? tethers.Count > 0 ? tethers[0].Nearest(common) : common.Nearest(new(0, 0, 0)) : common.Nearest(from.At);
            var cost = links[^1].DistanceToExit(at) - (long)to * NextLinkFirst;
            queue.Enqueue(new(to, block, at, from, null, over?.Axis(), 0, false), (cost, order++));
        }
    }

    private const int NextLinkFirst = 2 * 500; // half millimetres: the next link is tried before this one goes on

    /// <summary>Whether a link may be in a region, and just before it where it came over a face, and the link it takes over from too.</summary>
    private static bool IsWithin(int to, in Cells region, Exploration.Reached? from, Heading? over, IReadOnlyList<Tether> tethers)
    {
        if (from is not null && from.Pose != to && !tethers[from.Pose].Allows(region)) return false;
        if (to >= tethers.Count) return true;
        if (!tethers[to].Allows(region)) return false;
        if (over is not { } face) return true;
        var before = region.Low(face.Axis()) - face.Sign();
        return tethers[to].Allows(region.WithLow(face.Axis(), before).WithHigh(face.Axis(), before));
    }
}
