namespace Wainwright.Geometry;

/// <summary>One rigid load among obstacles in a shell: is there a way out that turns it by any angle?</summary>
/// <remarks>
/// A search by chance between what exact moves reach from within and what they reach from outside. What it finds is a way,
/// clear between its points as well as at them; that it finds none proves nothing.
/// </remarks>
public sealed class Tilter
{
    /// <summary>
    /// Outside, the ground is taken to lie so far below the load floor [mm]; common practice, no source. A load that is tipped
    /// out does not dip below it.
    /// </summary>
    public const int GroundMm = 500;

    // what lies tilted keeps at least this far off everything, or its own width of a hair would be a way
    private const double LeastClearMm = 0.2;
    private const int FarMm = 20_000, TriesPerRound = 250;

    private readonly IReadOnlyList<Convex> load;
    private readonly IReadOnlyList<(int Item, Convex Shape)> shapes;
    private readonly Shell shell;
    private readonly Func<ExactRegions> regionsAfresh;
    private readonly double needMm;

    /// <param name="moving">Boxes that hold the load, where it stands.</param>
    /// <param name="load">The load as it is.</param>
    /// <param name="obstacles">Everything removable that could be in its way, as boxes that hold it.</param>
    /// <param name="shapes">The same as it is, each piece with its item.</param>
    /// <param name="shell">What it must leave.</param>
    /// <param name="fit">How closely it may pass.</param>
    /// <exception cref="ArgumentException">The load has no shape.</exception>
    public Tilter(
        IReadOnlyList<Box> moving, IReadOnlyList<Convex> load, IReadOnlyList<Obstacle> obstacles, IReadOnlyList<(int Item, Convex Shape)> shapes, Shell shell, Fit fit)
    {
        if (moving.Count == 0 || load.Count == 0) throw new ArgumentException("A thing without a shape cannot be moved.", nameof(load));
        (this.load, this.shell) = (load, shell);
        var floor = shell.Room.Z0 - GroundMm;
        this.shapes =
        [
            .. shell.Blocks.Select(b => (Obstacle.Fixed, Convex.Of(b))),
            (Obstacle.Fixed, Convex.Box(new(-FarMm, -FarMm, floor - GroundMm), new(FarMm, FarMm, floor))),
            .. shapes,
        ];
        // how a room is divided depends on what was asked of it before; a search begins with none, so that it depends on nothing
        regionsAfresh = () => new(moving, obstacles, shell, fit);
        MiddleMm = regionsAfresh().Found;
        needMm = Math.Max(LeastClearMm, fit.ClearanceMm);
    }

    /// <summary>The point the load is turned about: the middle of its bounds as found [mm].</summary>
    public Point MiddleMm { get; }

    /// <summary>Whether it comes out tilted when these are gone.</summary>
    /// <param name="gone">What is out already.</param>
    /// <param name="budget">How much may be spent.</param>
    /// <param name="stop">Ends the search early with nothing found.</param>
    public TiltAnswer Ask(ItemSet gone, TiltBudget budget, CancellationToken stop)
    {
        var standing = shapes.Where(s => s.Item == Obstacle.Fixed || !gone.Has(s.Item)).ToList();
        var regions = regionsAfresh();
        var within = regions.FromWithin(gone);
        if (within.Blocks.Count == 0) return new NoneFound(0); // it stands in something by its measures
        var (around, roots, random) = (new Surroundings(load, MiddleMm, standing, needMm), new TiltRoots(regions, within, regions.FromOutside(gone)), new Random(budget.Seed));
        var free = new TiltTrees(around, roots, shell, random, null);
        var tries = 0;
        for (var round = 0; tries < budget.Tries && !stop.IsCancellationRequested; round++)
        {
            // most ways out are tilts about one axis: one plane after another is tried by itself, and any motion every third time
            var trees = round % 3 == 2 ? free : new TiltTrees(around, roots, shell, random, roots.AnyPlane(shell, random));
            var before = trees.Tries;
            var found = trees.HasBothEnds ? trees.Grow(Math.Min(TriesPerRound, budget.Tries - tries), stop) : null;
            tries += Math.Max(1, trees.Tries - before);
            if (found is not null) return Way(regions, found, gone, standing, tries);
        }
        return new NoneFound(tries);
    }

    private TiltedWay Way(ExactRegions regions, TiltTrees.Joined found, ItemSet gone, List<(int Item, Convex Shape)> standing, int tries)
    {
        var (first, last) = (regions.WayTo(found.Start), regions.WayTo(found.End));
        List<Posture> path = [.. first.SkipLast(1), .. found.Postures, .. last.Reverse().Skip(1)];
        for (var i = path.Count - 1; i > 0; i--)
            if (path[i] == path[i - 1]) path.RemoveAt(i);
        path = UntilOutside(path);
        var through = ExactRegions.Through(found.Start, gone);
        through.AddAll(ExactRegions.Through(found.End, gone));
        foreach (var item in shapes.Where(s => s.Item != Obstacle.Fixed && gone.Has(s.Item)).GroupBy(s => s.Item))
            if (!through.Has(item.Key) && !IsClear(found.Postures, item, needMm)) through.Add(item.Key);
        var left = standing.Concat(shapes.Where(s => s.Item != Obstacle.Fixed && gone.Has(s.Item) && !through.Has(s.Item))).ToList();
        var clear = new[] { 20.0, 10, 5, 3, 2, 1 }.FirstOrDefault(mm => mm > needMm && IsClear(found.Postures, left, mm), needMm);
        return new(path, through, GapOf(path), clear, tries);
    }

    private bool IsClear(IReadOnlyList<Posture> path, IEnumerable<(int Item, Convex Shape)> of, double clearMm)
    {
        var among = new Surroundings(load, MiddleMm, of, clearMm);
        return among.IsClear(path[0]) && path.Zip(path.Skip(1)).All(leg => among.Follow(Swing.Between(leg.First, leg.Second)) >= 1);
    }

    /// <summary>The way as far as it has to be followed: nothing of the load is left within the shell's outer bounds.</summary>
    private List<Posture> UntilOutside(List<Posture> path)
    {
        const int Looks = 64;
        for (var i = 0; i + 1 < path.Count; i++)
            for (var look = 1; look <= Looks; look++)
                if (Swing.Between(path[i], path[i + 1]).At(look / (double)Looks) is var at && IsOutside(at))
                    return [.. path.Take(i + 1), look == Looks ? path[i + 1] : at];
        return path;
    }

    private bool IsOutside(Posture at) => Enum.GetValues<Heading>().Any(heading => IsBeyond(heading, at));

    private bool IsBeyond(Heading wall, Posture at)
    {
        var (axis, outside) = (wall.Axis(), shell.Outside);
        return load.Select(p => p.At(MiddleMm, at).Standing.Bounds()).All(b => wall.Sign() < 0 ? b.High[axis] <= outside.Low(axis) : b.Low[axis] >= outside.High(axis));
    }

    /// <summary>
    /// The last gap in which it is seen on its way; of two at once the one beyond whose wall it ends. Touching the edge of one
    /// does not count.
    /// </summary>
    private Gap? GapOf(List<Posture> path)
    {
        const int Looks = 8;
        const double Edge = 0.001;
        var inset = new Point(Edge, Edge, Edge);
        var slabs = shell.Gaps.Select(g => g.In(shell.Slab(g.Wall))).Select(b => Convex.Box(new Point(b.X0, b.Y0, b.Z0) + inset, new Point(b.X1, b.Y1, b.Z1) - inset)).ToList();
        for (var leg = path.Count - 1; leg > 0; leg--)
        {
            // a straight leg may be long and a wall thin
            var looks = Looks + (int)((path[leg].ShiftMm - path[leg - 1].ShiftMm).LengthMm / (shell.Outside.X1 - shell.Room.X1));
            for (var look = looks; look > 0; look--)
            {
                var at = Swing.Between(path[leg - 1], path[leg]).At(look / (double)looks);
                var pieces = load.Select(p => p.At(MiddleMm, at)).ToList();
                var seen = shell.Gaps.Where((_, g) => pieces.Exists(slabs[g].Touches)).ToList();
                if (seen.Count > 0) return seen.Find(g => IsBeyond(g.Wall, path[^1])) ?? seen[0];
            }
        }
        return null;
    }
}
