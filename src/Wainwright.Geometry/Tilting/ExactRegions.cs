namespace Wainwright.Geometry;

/// <summary>
/// Where a load gets by exact slides and quarter turns: from where it was found, and, in every quarter-turned attitude, in
/// from outside. Between the two a tilted way has to lead.
/// </summary>
/// <remarks>A tight slide up to a wall or through a door is found here exactly and need not be met by chance.</remarks>
internal sealed class ExactRegions
{
    private const int NearMm = 300; // farther outside than this nothing is worth leading to

    private readonly Shell shell;
    private readonly Pose asFound;
    private readonly (Pose[] Poses, QuarterTurn[] Turns) inside;
    private readonly IReadOnlyList<Pose> turned;
    private readonly Point found;

    /// <summary>A place that exact moves lead to.</summary>
    /// <param name="Region">The region it lies in.</param>
    /// <param name="Reached">The block it lies in.</param>
    /// <param name="At">The place.</param>
    /// <param name="Posture">The same as a posture.</param>
    internal sealed record Root(Region Region, Exploration.Reached Reached, Cell At, Posture Posture);

    /// <summary>What is reached in one search.</summary>
    /// <param name="Poses">The poses of the search.</param>
    /// <param name="Blocks">The blocks that were reached.</param>
    /// <param name="First">How the load lies at the beginning of the search.</param>
    internal sealed record Region(IReadOnlyList<Pose> Poses, IReadOnlyList<Exploration.Reached> Blocks, Attitude First);

    public ExactRegions(IReadOnlyList<Box> moving, IReadOnlyList<Obstacle> obstacles, Shell shell, Fit fit)
    {
        this.shell = shell;
        var all = (IReadOnlyList<Obstacle>)[new Obstacle(Obstacle.Fixed, shell.Blocks), .. obstacles];
        asFound = new(moving, Forbidden.WithoutHidden(all.SelectMany(o => Forbidden.For(moving, o, fit, asFound: true))), shell);
        inside = Turning.Of(asFound, all, shell, fit);
        turned = Turning.Bounds(asFound, all, shell, fit);
        found = asFound.MiddleMm;
    }

    /// <summary>The middle of the load's bounds as found [mm].</summary>
    public Point Found => found;

    /// <summary>Half lengths of the bounds as found [mm].</summary>
    public Point HalfMm => new(Box.Around(asFound.Boxes).Length(0) / 2.0, Box.Around(asFound.Boxes).Length(1) / 2.0, Box.Around(asFound.Boxes).Length(2) / 2.0);

    /// <summary>What is reached from where it was found.</summary>
    public Region FromWithin(ItemSet gone)
    {
        Cells[] start = [new(0, 0, 0, 0, 0, 0)];
        var (search, poses) = Turning.Worthwhile(inside, start, gone.Size);
        return new(poses, search.Region(gone, start), Attitude.AsFound);
    }

    /// <summary>What is reached from outside, for every way the load can lie by quarter turns.</summary>
    public IReadOnlyList<Region> FromOutside(ItemSet gone)
    {
        var regions = new List<Region>();
        if (asFound.Boxes.Count > 1)
        {
            // a room of its own: a second search of the same one could divide it afresh, and blocks found before would be others
            var own = new Pose(asFound.Boxes, asFound.Forbidden, shell);
            regions.Add(new([own], Blocks(own, gone), Attitude.AsFound));
        }
        var blocks = turned.Select(pose => Blocks(pose, gone)).ToList();
        foreach (var attitude in QuarterTurned())
        {
            var at = turned.ToList().FindIndex(pose => Enumerable.Range(0, 3).All(axis => Math.Abs(Turned(attitude, axis) - Box.Around(pose.Boxes).Length(axis)) < 0.5));
            regions.Add(new([turned[at]], blocks[at], attitude));
        }
        return regions;
    }

    /// <summary>A place within a block, at random; none when the block has none near the shell, or none in the plane.</summary>
    public Root? Within(Region region, Random random, TiltPlane? plane)
    {
        if (region.Blocks.Count == 0) return null;
        var reached = region.Blocks[random.Next(region.Blocks.Count)];
        var pose = region.Poses[reached.Pose];
        var (bounds, around) = (Box.Around(pose.Boxes), shell.Outside.Grown(NearMm));
        var near = new Cells(
            2 * (around.X0 - bounds.X1), 2 * (around.Y0 - bounds.Y1), 2 * (around.Z0 - bounds.Z1),
            2 * (around.X1 - bounds.X0), 2 * (around.Y1 - bounds.Y0), 2 * (around.Z1 - bounds.Z0));
        if (plane is not null)
        {
            var layer = (int)Math.Round(2 * (plane.ShiftMm + found[plane.Axis] - pose.MiddleMm[plane.Axis]));
            near = near.WithLow(plane.Axis, layer).WithHigh(plane.Axis, layer);
        }
        var room = pose.Space.Where(reached.Block).Common(near);
        if (room.IsEmpty) return null;
        var at = new Cell(random.Next(room.X0, room.X1 + 1), random.Next(room.Y0, room.Y1 + 1), random.Next(room.Z0, room.Z1 + 1));
        return PostureOf(region, reached, at) is { } posture ? new(region, reached, at, posture) : null;
    }

    /// <summary>The exact way from the beginning of the search to a place.</summary>
    public IReadOnlyList<Posture> WayTo(Root root)
    {
        var (postures, attitude, pose) = (new List<Posture>(), root.Region.First, 0);
        foreach (var stop in Stops(root))
        {
            if (stop.By is { } turn)
            {
                pose = stop.Pose;
                attitude = Turned(attitude, turn.About, pose)!.Value;
            }
            postures.Add(new(root.Region.Poses[pose].MiddleMm + stop.At.ToPoint() - found, attitude));
        }
        return postures;
    }

    /// <summary>What is passed through on that way of the things that are gone.</summary>
    public static ItemSet Through(Root root, ItemSet gone) => new Trail([.. Stops(root)]).Through(root.Region.Poses, gone);

    private static IEnumerable<Trail.Stop> Stops(Root root)
    {
        var stops = Trail.To(root.Reached).Stops;
        var last = stops[^1];
        return [.. stops, .. Enumerable.Range(0, 3).Select(axis =>
        {
            last = last with { At = last.At.With(axis, root.At.Along(axis)), By = null };
            return last;
        })];
    }

    private static IReadOnlyList<Exploration.Reached> Blocks(Pose pose, ItemSet gone) => new Exploration([pose], []).Region(gone, pose.Exits);

    private Posture? PostureOf(Region region, Exploration.Reached reached, Cell at)
    {
        var turns = new Stack<(int About, int To)>();
        for (var r = reached; r is not null; r = r.From)
            if (r.By is { } turn) turns.Push((turn.About, r.Pose));
        Attitude? attitude = region.First;
        while (attitude is { } before && turns.TryPop(out var turn)) attitude = Turned(before, turn.About, turn.To);
        return attitude is { } last ? new(region.Poses[reached.Pose].MiddleMm + at.ToPoint() - found, last) : null;
    }

    /// <summary>
    /// After a quarter turn, either way round: the bounds are the same. A single box may come back to the first pose, where the
    /// gaps and overlaps as found count, so it must lie as found again; nothing when no quarter turn about this axis leads there.
    /// </summary>
    private static Attitude? Turned(Attitude before, int about, int toPose)
    {
        var turned = Attitude.About(about, 90).After(before);
        if (toPose > 0) return turned;
        var other = Attitude.About(about, -90).After(before);
        return turned.AngleDeg < 1 ? turned : other.AngleDeg < 1 ? other : null;
    }

    /// <summary>Length of the bounds along an axis when turned so by quarters.</summary>
    private double Turned(Attitude attitude, int axis)
    {
        var bounds = Box.Around(asFound.Boxes);
        var row = attitude.ToRotation() is var r && axis == 0 ? r.RowX : axis == 1 ? r.RowY : r.RowZ;
        return Math.Abs(row.XMm) * bounds.Length(0) + Math.Abs(row.YMm) * bounds.Length(1) + Math.Abs(row.ZMm) * bounds.Length(2);
    }

    /// <summary>All 24 attitudes that quarter turns lead to.</summary>
    private static List<Attitude> QuarterTurned()
    {
        var all = new List<Attitude> { Attitude.AsFound };
        for (var i = 0; i < all.Count; i++)
            for (var axis = 0; axis < 3; axis++)
            {
                var next = Attitude.About(axis, 90).After(all[i]);
                if (!all.Exists(known => known.To(next).Radians < 0.1)) all.Add(next);
            }
        return all;
    }
}
