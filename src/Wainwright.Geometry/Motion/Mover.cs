namespace Wainwright.Geometry;

/// <summary>What a moving thing may do.</summary>
public enum Moves
{
    /// <summary>Straight slides in any direction, one after another, lying as found.</summary>
    Slides,

    /// <summary>
    /// Slides, and quarter turns about each axis wherever a block that holds the whole sweep of its bounds is free. Once
    /// turned, it is taken as its bounding box, also when turned back.
    /// </summary>
    SlidesAndQuarterTurns,
}

/// <summary>One thing among obstacles in a shell: can it come out, by which way, and if not, what holds it.</summary>
/// <remarks>
/// Exact for the moves allowed: a way is a way, and <see cref="Stuck"/> is a proof. Slanting moves are covered, since free
/// room reached by a slanting slide is also reached by straight ones: both stay within the same connected free room.
/// </remarks>
public sealed class Mover
{
    private readonly Shell shell;
    private readonly Pose asFound;
    private readonly IReadOnlyList<Cells> starts;
    private readonly Exploration slides;
    private readonly Func<int, (Exploration Search, Pose[] Poses)>? turning;
    private bool wasStuck;

    /// <param name="moving">Its boxes where it stands.</param>
    /// <param name="obstacles">Everything removable that could be in its way, itself not among it.</param>
    /// <param name="shell">What it must leave.</param>
    /// <param name="fit">How closely it may pass.</param>
    /// <param name="moves">What it may do.</param>
    /// <exception cref="ArgumentException">It has no boxes.</exception>
    public Mover(IReadOnlyList<Box> moving, IReadOnlyList<Obstacle> obstacles, Shell shell, Fit fit, Moves moves)
        : this(moving, obstacles, shell, fit, moves, asFound: true, [new Cells(0, 0, 0, 0, 0, 0)], exits: null)
    {
    }

    private Mover(
        IReadOnlyList<Box> moving, IReadOnlyList<Obstacle> obstacles, Shell shell, Fit fit, Moves moves, bool asFound, IReadOnlyList<Cells> starts, int? exits)
    {
        if (moving.Count == 0) throw new ArgumentException("A thing without boxes cannot be moved.", nameof(moving));
        this.shell = shell;
        this.starts = starts;
        var all = (IReadOnlyList<Obstacle>)[new Obstacle(Obstacle.Fixed, shell.Blocks), .. obstacles];
        this.asFound = new(moving, Forbidden.WithoutHidden(all.SelectMany(o => Forbidden.For(moving, o, fit, asFound))), shell, exits);
        slides = new([this.asFound], []);
        if (moves == Moves.Slides) return;
        (Exploration, Pose[])? made = null;
        turning = items => made ??= Turning.Worthwhile(Turning.Of(this.asFound, all, shell, fit), starts, items);
    }

    /// <summary>The smallest box around it where it stands.</summary>
    public Box Bounds => Box.Around(asFound.Boxes);

    /// <summary>A soft thing that is folded small within the room it was found in and carried out so.</summary>
    /// <param name="folded">Its size folded, at the origin.</param>
    /// <param name="within">The room in which it can be folded; what of it is free is where it may start.</param>
    /// <param name="obstacles">Everything removable that could be in its way, itself not among it.</param>
    /// <param name="shell">What it must leave.</param>
    /// <exception cref="ArgumentException">Folded, it does not fit within that room.</exception>
    public static Mover Folded(Box folded, Box within, IReadOnlyList<Obstacle> obstacles, Shell shell)
    {
        if (Enumerable.Range(0, 3).Any(axis => folded.Length(axis) > within.Length(axis))) throw new ArgumentException("It must fit within the room it is folded in.", nameof(within));
        var start = new Cells(
            2 * (within.X0 - folded.X0), 2 * (within.Y0 - folded.Y0), 2 * (within.Z0 - folded.Z0),
            2 * (within.X1 - folded.X1), 2 * (within.Y1 - folded.Y1), 2 * (within.Z1 - folded.Z1));
        return new([folded], obstacles, shell, Fit.Exact, Moves.SlidesAndQuarterTurns, asFound: false, [start], exits: null);
    }

    /// <summary>A thing that only has to come away from its place by so much along any axis, lying as found.</summary>
    /// <param name="moving">Its boxes where it stands.</param>
    /// <param name="byMm">How far.</param>
    /// <param name="obstacles">Everything removable that could be in its way, itself not among it.</param>
    /// <param name="shell">What it stands in.</param>
    /// <param name="fit">How closely it may pass.</param>
    public static Mover ComingAway(IReadOnlyList<Box> moving, int byMm, IReadOnlyList<Obstacle> obstacles, Shell shell, Fit fit) =>
        new(moving, obstacles, shell, fit, Moves.Slides, asFound: true, [new Cells(0, 0, 0, 0, 0, 0)], byMm);

    /// <summary>Whether it comes out when these are gone.</summary>
    public Answer Ask(ItemSet gone) => Ask(gone, new(gone.Size));

    /// <summary>Whether it comes out when these are gone.</summary>
    /// <param name="gone">What is out already.</param>
    /// <param name="stays">What a wall should name first where there is a choice: it will not go for now.</param>
    public Answer Ask(ItemSet gone, ItemSet stays)
    {
        // sliding alone is the quicker question, but not worth asking again and again of what stands fast
        var slid = turning is not null && wasStuck ? null : slides.Run(gone, starts);
        if (slid is not null) return Way(slid, [asFound], gone);
        if (turning is null) return new Stuck(Wall.Of([asFound], slides.Rim, gone, stays));
        var (search, poses) = turning(gone.Size);
        var turned = search.Run(gone, starts);
        wasStuck = turned is null;
        return turned is null ? new Stuck(Wall.Of(poses, search.Rim, gone, stays)) : Way(turned, poses, gone);
    }

    /// <summary>The same way with corners cut where a shorter one is free; for showing.</summary>
    public WayOut? ShortWay(ItemSet gone)
    {
        if (slides.Run(gone, starts) is { } out_) return Way(out_, [asFound], gone, shortened: true);
        if (turning is null) return null;
        var (search, poses) = turning(gone.Size);
        return search.Run(gone, starts) is { } turnedOut ? Way(turnedOut, poses, gone, shortened: true) : null;
    }

    /// <summary>For each of the six headings, what it meets first when pushed straight with these gone; none where it gets out.</summary>
    public IReadOnlyList<Hindrance> Hindrances(ItemSet gone) =>
        [.. Enum.GetValues<Heading>().Select(h => Push.Along(h, asFound.Forbidden, gone)).OfType<Hindrance>()];

    /// <summary>Items that overlap it as found by more than the shave, and by how much: it cannot begin to move until they are gone.</summary>
    public IReadOnlyList<(int Item, int OverlapMm)> FoundWithin(ItemSet gone)
    {
        var here = new Cells(0, 0, 0, 0, 0, 0);
        return [.. asFound.Forbidden
            .Where(f => f.Where.Holds(here) && (f.Item == Obstacle.Fixed || !gone.Has(f.Item)))
            .GroupBy(f => f.Item)
            .Select(g => (g.Key, g.Max(f => f.LeastWayOutMm)))];
    }

    private WayOut Way(Exploration.Reached end, IReadOnlyList<Pose> poses, ItemSet gone, bool shortened = false)
    {
        var trail = Trail.To(end);
        if (shortened) trail = trail.Shortened(poses, gone);
        return new(new Walked(trail, poses), trail.Through(poses, gone), trail.Leaves(poses, shell));
    }
}
