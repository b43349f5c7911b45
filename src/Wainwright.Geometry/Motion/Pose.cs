namespace Wainwright.Geometry;

/// <summary>A way the moving thing can lie, or the room that a quarter turn between two of them needs.</summary>
internal sealed class Pose
{
    /// <param name="boxes">The moving boxes.</param>
    /// <param name="forbidden">Displacements that are not possible.</param>
    /// <param name="shell">What it must leave.</param>
    /// <param name="awayMm">How far it has to come along any axis; absent when it must leave the shell.</param>
    public Pose(IReadOnlyList<Box> boxes, Forbidden[] forbidden, Shell shell, int? awayMm = null)
    {
        Boxes = boxes;
        Forbidden = forbidden;
        var bounds = Box.Around(boxes);
        MiddleMm = new((bounds.X0 + bounds.X1) / 2.0, (bounds.Y0 + bounds.Y1) / 2.0, (bounds.Z0 + bounds.Z1) / 2.0);
        var out_ = shell.Outside;
        var goal = awayMm is { } away
            ? new Cells(-2 * away, -2 * away, -2 * away, 2 * away, 2 * away, 2 * away)
            : new Cells(
                2 * (out_.X0 - bounds.X1), 2 * (out_.Y0 - bounds.Y1), 2 * (out_.Z0 - bounds.Z1),
                2 * (out_.X1 - bounds.X0), 2 * (out_.Y1 - bounds.Y0), 2 * (out_.Z1 - bounds.Z0));
        // further than its own size beyond the goal it is free on that side and nothing more can be learned
        var spare = 2 * (Math.Max(bounds.Length(0), Math.Max(bounds.Length(1), bounds.Length(2))) + 1);
        Window = new(goal.X0 - spare, goal.Y0 - spare, goal.Z0 - spare, goal.X1 + spare, goal.Y1 + spare, goal.Z1 + spare);
        Exits =
        [
            Window with { X1 = goal.X0 }, Window with { X0 = goal.X1 },
            Window with { Y1 = goal.Y0 }, Window with { Y0 = goal.Y1 },
            Window with { Z1 = goal.Z0 }, Window with { Z0 = goal.Z1 },
        ];
    }

    public IReadOnlyList<Box> Boxes { get; }

    /// <summary>Middle of the bounds with no displacement.</summary>
    public Point MiddleMm { get; }

    public Forbidden[] Forbidden { get; }

    /// <summary>Displacements that are looked at.</summary>
    public Cells Window { get; }

    /// <summary>Displacements at which it is wholly outside, one region for each <see cref="Heading"/>.</summary>
    public Cells[] Exits { get; }

    /// <summary>Made when first asked about: most turns are never looked at.</summary>
    public DividedSpace Space => space ??= new(Forbidden, Window);

    private DividedSpace? space;

    public void Begin() => space?.Begin();

    public long DistanceToExit(Cell at)
    {
        var least = long.MaxValue;
        foreach (var exit in Exits) least = Math.Min(least, at.DistanceTo(exit.Nearest(at)));
        return least;
    }
}

/// <summary>A quarter turn between two poses, possible wherever a room that holds the whole sweep is free; from the one found it may lead there only.</summary>
internal sealed record QuarterTurn(int Sweep, int From, int To, int About, bool IsThereOnly = false);
