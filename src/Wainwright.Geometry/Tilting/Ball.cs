namespace Wainwright.Geometry;

/// <summary>The largest ball within a load: it moves along whatever the load does, and lies the same way whatever the turn.</summary>
/// <remarks>
/// Boxes that each lie within the ball, moved by shifts alone, cover less than the ball does in any motion. If they cannot
/// leave, proved exactly, no rigid motion of the load leads out: not by slides, not tilted, not in any way.
/// </remarks>
/// <param name="MiddleMm">Its middle.</param>
/// <param name="RadiusMm">Its radius.</param>
public sealed record Ball(Point MiddleMm, double RadiusMm)
{
    private const int Steps = 6, Finer = 10; // worked out in tenths of a millimetre, so that rounding inwards costs little

    /// <summary>The largest ball found within one piece of a load, or within pieces that make up a box; none when every piece is thin.</summary>
    /// <param name="load">The pieces as they are.</param>
    /// <param name="inner">Boxes that lie within the load.</param>
    public static Ball? LargestIn(IReadOnlyList<Convex> load, IReadOnlyList<Box> inner)
    {
        var balls = load.Select(p => new Ball(p.BallMiddleMm, p.BallMm)).Concat(Cover.Joined(inner).Select(In)).ToList();
        return balls.Count == 0 || balls.MaxBy(b => b.RadiusMm) is not { RadiusMm: >= 1 } largest ? null : largest;
    }

    /// <summary>A smaller one about the same middle, for measures that may be too great; none when nothing is left.</summary>
    public Ball? Smaller(double byMm) => RadiusMm - byMm >= 1 ? this with { RadiusMm = RadiusMm - byMm } : null;

    /// <summary>How much it is too large for a gap, whatever the attitude [whole mm, rounded down]; 0 when it passes.</summary>
    public int ShortFor(Gap gap)
    {
        ArgumentNullException.ThrowIfNull(gap);
        var narrow = Enumerable.Range(0, 3).Where(a => a != gap.Wall.Axis()).Min(gap.Where.Length);
        return Math.Max(0, (int)Math.Floor(2 * RadiusMm - narrow));
    }

    /// <summary>
    /// Whether it can leave. <see cref="Stuck"/> is a proof that no motion whatever takes the load out; a way proves nothing,
    /// and is the answer too where by the measures the ball stands in something: they are wrong then.
    /// </summary>
    /// <param name="obstacles">Boxes that lie within what is in the way.</param>
    /// <param name="shell">What it must leave, its gaps as large as they may be.</param>
    /// <param name="gone">What is out already.</param>
    public Answer Leaves(IReadOnlyList<Obstacle> obstacles, Shell shell, ItemSet gone)
    {
        var boxes = Boxes();
        if (boxes.Count == 0 || StandsIn(boxes, [.. shell.Blocks, .. obstacles.Where(o => o.Item == Obstacle.Fixed || !gone.Has(o.Item)).SelectMany(o => o.Boxes)])) return new WayOut([], new(gone.Size), null);
        return new Mover(boxes, [.. obstacles.Select(o => o with { Boxes = [.. o.Boxes.Select(b => b.Times(Finer))] })], shell.Times(Finer), Fit.Exact, Moves.Slides).Ask(gone);
    }

    private static bool StandsIn(List<Box> boxes, IReadOnlyList<Box> blocks) => boxes.Exists(b => blocks.Any(block => b.Overlaps(block.Times(Finer))));

    /// <summary>Boxes about the middle, each within the ball, that together come close to it along and between the axes [tenths of a millimetre].</summary>
    private List<Box> Boxes()
    {
        var halves = new List<Point>();
        // a point of the eighth of the sphere between the axes is the corner of such a box
        for (var i = 0; i <= Steps; i++)
            for (var j = 0; i + j <= Steps; j++)
            {
                var (x, y, z) = (Near(i), Near(j), Near(Steps - i - j));
                var length = Math.Sqrt(x * x + y * y + z * z);
                halves.Add(new(x / length, y / length, z / length));
            }
        return [.. halves.Select(Within).Where(b => !b.IsEmpty).Distinct()];
    }

    // not quite flat even where a coordinate is nought: the box must have an inside
    private static double Near(int step) => Math.Max(step, 0.005);

    private Box Within(Point share)
    {
        var (middle, half) = (MiddleMm.Times(Finer), share.Times(RadiusMm * Finer));
        static int Up(double mm) => (int)Math.Ceiling(mm - 1e-9);
        static int Down(double mm) => (int)Math.Floor(mm + 1e-9);
        return new(
            Up(middle.XMm - half.XMm), Up(middle.YMm - half.YMm), Up(middle.ZMm - half.ZMm),
            Down(middle.XMm + half.XMm), Down(middle.YMm + half.YMm), Down(middle.ZMm + half.ZMm));
    }

    private static Ball In(Box box) => new(
        new((box.X0 + box.X1) / 2.0, (box.Y0 + box.Y1) / 2.0, (box.Z0 + box.Z1) / 2.0), Math.Min(box.Length(0), Math.Min(box.Length(1), box.Length(2))) / 2.0);
}
