namespace Wainwright.Geometry;

/// <summary>A way the moving thing can lie, or the room that a quarter turn between two of them needs.</summary>
internal sealed class Pose
{
    private ItemSet? begunWith;

    public Pose(IReadOnlyList<Box> boxes, Forbidden[] forbidden, Shell shell)
    {
        Boxes = boxes;
        Forbidden = forbidden;
        var bounds = Box.Around(boxes);
        var out_ = shell.Outside;
        // beyond this the thing is outside on that side and nothing more can be learned
        var spare = Math.Max(bounds.X1 - bounds.X0, Math.Max(bounds.Y1 - bounds.Y0, bounds.Z1 - bounds.Z0)) + 1;
        Window = new(
            2 * (out_.X0 - bounds.X1 - spare), 2 * (out_.Y0 - bounds.Y1 - spare), 2 * (out_.Z0 - bounds.Z1 - spare),
            2 * (out_.X1 - bounds.X0 + spare), 2 * (out_.Y1 - bounds.Y0 + spare), 2 * (out_.Z1 - bounds.Z0 + spare));
        Exits =
        [
            Window with { X1 = 2 * (out_.X0 - bounds.X1) }, Window with { X0 = 2 * (out_.X1 - bounds.X0) },
            Window with { Y1 = 2 * (out_.Y0 - bounds.Y1) }, Window with { Y0 = 2 * (out_.Y1 - bounds.Y0) },
            Window with { Z1 = 2 * (out_.Z0 - bounds.Z1) }, Window with { Z0 = 2 * (out_.Z1 - bounds.Z0) },
        ];
    }

    public IReadOnlyList<Box> Boxes { get; }

    public Forbidden[] Forbidden { get; }

    /// <summary>Displacements that are looked at.</summary>
    public Cells Window { get; }

    /// <summary>Displacements at which it is wholly outside, one region for each <see cref="Heading"/>.</summary>
    public Cells[] Exits { get; }

    public DividedSpace Space { get; } = new();

    public void Begin(ItemSet gone)
    {
        if (begunWith is not null && begunWith.Equals(gone)) return;
        begunWith = gone.Copy();
        Space.Begin(Forbidden, gone, Window);
    }

    public long DistanceToExit(Cell at)
    {
        var least = long.MaxValue;
        foreach (var exit in Exits) least = Math.Min(least, at.DistanceTo(exit.Nearest(at)));
        return least;
    }
}

/// <summary>A quarter turn between two poses, possible wherever a room that holds the whole sweep is free.</summary>
internal sealed record QuarterTurn(int Sweep, int From, int To, int About);
