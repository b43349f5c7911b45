namespace Wainwright.Geometry;

/// <summary>A hand or a tool as boxes about its point of work, brought in from outside by slides.</summary>
/// <remarks>It keeps its attitude; the arm behind it is not modelled. One probe serves any number of places.</remarks>
public sealed class Probe
{
    private readonly Pose pose;
    private readonly Exploration exploration;
    private readonly Shell shell;

    /// <param name="shape">Its boxes when its point of work is at the origin.</param>
    /// <param name="obstacles">Everything removable that could be in its way.</param>
    /// <param name="shell">What it is outside of to begin with.</param>
    /// <exception cref="ArgumentException">It has no boxes.</exception>
    public Probe(IReadOnlyList<Box> shape, IReadOnlyList<Obstacle> obstacles, Shell shell)
    {
        if (shape.Count == 0) throw new ArgumentException("A probe has at least one box.", nameof(shape));
        this.shell = shell;
        var all = (IReadOnlyList<Obstacle>)[new Obstacle(Obstacle.Fixed, shell.Blocks), .. obstacles];
        pose = new(shape, Forbidden.WithoutHidden(all.SelectMany(o => Forbidden.For(shape, o, Fit.Exact, asFound: false))), shell);
        exploration = new([pose], []);
    }

    /// <summary>Whether it gets to where its point of work is at the place given [whole mm]; the path runs from there to outside.</summary>
    /// <param name="gone">What is out already.</param>
    /// <param name="stays">What a wall should name first where there is a choice.</param>
    /// <param name="at">The place.</param>
    public Answer Reach(ItemSet gone, ItemSet stays, Point at) => Ask(gone, stays, [On((int)Math.Round(at.XMm), (int)Math.Round(at.YMm), (int)Math.Round(at.ZMm))]);

    /// <summary>Whether it gets to where its point of work is at any of the places given [whole mm]; the path begins at the one it gets to.</summary>
    /// <param name="gone">What is out already.</param>
    /// <param name="stays">What a wall should name first where there is a choice.</param>
    /// <param name="places">The places.</param>
    public Answer ReachAny(ItemSet gone, ItemSet stays, IEnumerable<Point> places) =>
        Ask(gone, stays, [.. places.Select(at => On((int)Math.Round(at.XMm), (int)Math.Round(at.YMm), (int)Math.Round(at.ZMm)))]);

    /// <summary>Whether it gets to where it lies flat against any side of a target.</summary>
    /// <param name="gone">What is out already.</param>
    /// <param name="stays">What a wall should name first where there is a choice.</param>
    /// <param name="target">The target's boxes where they stand; among the obstacles they are to be fixed ones.</param>
    public Answer Touch(ItemSet gone, ItemSet stays, IReadOnlyList<Box> target)
    {
        var against = new List<Cells>();
        foreach (var forbidden in Forbidden.For(pose.Boxes, new(Obstacle.Fixed, target), Fit.Exact, asFound: false))
            for (var face = Heading.MinusX; face <= Heading.PlusZ; face++)
                against.Add(forbidden.Where.Beyond(face));
        return Ask(gone, stays, against);
    }

    private static Cells On(int xMm, int yMm, int zMm) => new(2 * xMm, 2 * yMm, 2 * zMm, 2 * xMm, 2 * yMm, 2 * zMm);

    private Answer Ask(ItemSet gone, ItemSet stays, IReadOnlyList<Cells> starts)
    {
        if (exploration.Run(gone, starts) is not { } end) return new Stuck(Wall.Of([pose], exploration.Rim, gone, stays));
        var trail = Trail.To(end);
        return new WayOut(new Walked(trail, [pose]), trail.Through([pose], gone), trail.Leaves([pose], shell)) { Shape = pose.Boxes };
    }
}
