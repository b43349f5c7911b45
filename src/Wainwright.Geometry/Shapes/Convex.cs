namespace Wainwright.Geometry;

/// <summary>A convex body as it is, not as boxes: a box, a bar with a convex outline, or a cylinder, turned in any way.</summary>
/// <remarks>
/// Known by its farthest point in any direction, which is all that distance and collision need. Curved sides are curved; no
/// rounding to whole millimetres.
/// </remarks>
public sealed class Convex
{
    private enum Kind { Box, Round, Corners }

    private readonly Kind kind;
    private readonly Point half; // half lengths of a box; of a cylinder radius, radius, half length: it lies along its own z
    private readonly Point[] corners;

    private Convex(Kind kind, Point middle, Rotation own, Point half, Point[] corners)
    {
        (this.kind, MiddleMm, Own, this.half) = (kind, middle, own, half);
        this.corners = kind == Kind.Corners ? corners : [.. Enumerable.Range(0, 8).Select(i => new Point((i & 1) == 0 ? -half.XMm : half.XMm, (i & 2) == 0 ? -half.YMm : half.YMm, (i & 4) == 0 ? -half.ZMm : half.ZMm))];
        RadiusMm = kind switch
        {
            Kind.Box => Math.Sqrt(half.Dot(half)),
            Kind.Round => Math.Sqrt(half.XMm * half.XMm + half.ZMm * half.ZMm),
            _ => corners.Max(c => Math.Sqrt(c.Dot(c))),
        };
        BallMm = kind == Kind.Corners ? 0 : Math.Min(half.XMm, Math.Min(half.YMm, half.ZMm));
        BallMiddleMm = middle;
    }

    /// <summary>A point inside it, about which it is turned when it is turned alone [mm].</summary>
    public Point MiddleMm { get; }

    /// <summary>No point of it is farther from its middle [mm].</summary>
    public double RadiusMm { get; }

    /// <summary>Radius of the largest ball within it [mm].</summary>
    public double BallMm { get; private init; }

    /// <summary>Where the middle of that ball is [mm].</summary>
    public Point BallMiddleMm { get; private init; }

    internal Rotation Own { get; }

    /// <summary>Corners of a body with corners that holds it, in its own axes and from its middle; for a cylinder those of the box round it.</summary>
    internal IReadOnlyList<Point> Corners => corners;

    /// <summary>A box between two corners, turned about its middle.</summary>
    public static Convex Box(Point low, Point high, Turn turn = default) =>
        new(Kind.Box, Halfway(low, high), Attitude.Of(turn).ToRotation(), new((high.XMm - low.XMm) / 2, (high.YMm - low.YMm) / 2, (high.ZMm - low.ZMm) / 2), []);

    /// <summary>A box of whole millimetres.</summary>
    public static Convex Of(Box box) => Box(new(box.X0, box.Y0, box.Z0), new(box.X1, box.Y1, box.Z1));

    /// <summary>A cylinder along an axis, turned about its middle.</summary>
    /// <param name="axis">0 for x, 1 for y, 2 for z.</param>
    /// <param name="centre">Centre line in the other two axes, in their order [mm].</param>
    /// <param name="radiusMm">Radius.</param>
    /// <param name="fromMm">Where it begins along the axis.</param>
    /// <param name="toMm">Where it ends along the axis.</param>
    /// <param name="turn">How it is turned.</param>
    public static Convex Cylinder(int axis, (double U, double V) centre, double radiusMm, double fromMm, double toMm, Turn turn = default)
    {
        var upright = axis switch { 0 => Attitude.About(1, 90), 1 => Attitude.About(0, 90), _ => Attitude.AsFound };
        return new(
            Kind.Round, Prism.Placed(axis, centre.U, centre.V, (fromMm + toMm) / 2), Attitude.Of(turn).After(upright).ToRotation(),
            new(radiusMm, radiusMm, (toMm - fromMm) / 2), []);
    }

    /// <summary>A convex outline drawn out along an axis, turned about the middle of its bounds.</summary>
    /// <param name="axis">0 for x, 1 for y, 2 for z.</param>
    /// <param name="outline">Corners in the other two axes, in their order, once round [mm].</param>
    /// <param name="fromMm">Where it begins along the axis.</param>
    /// <param name="toMm">Where it ends along the axis.</param>
    /// <param name="turn">How it is turned.</param>
    /// <exception cref="ArgumentException">Fewer than three corners.</exception>
    public static Convex Drawn(int axis, IReadOnlyList<(double U, double V)> outline, double fromMm, double toMm, Turn turn = default)
    {
        if (outline.Count < 3) throw new ArgumentException("An outline has at least three corners.", nameof(outline));
        var (u, v) = ((outline.Min(p => p.U) + outline.Max(p => p.U)) / 2, (outline.Min(p => p.V) + outline.Max(p => p.V)) / 2);
        var middle = Prism.Placed(axis, u, v, (fromMm + toMm) / 2);
        Point[] corners = [.. outline.SelectMany(p => new[] { Prism.Placed(axis, p.U, p.V, fromMm) - middle, Prism.Placed(axis, p.U, p.V, toMm) - middle })];
        var rotation = Attitude.Of(turn).ToRotation();
        var circle = InscribedCircle.In(outline);
        return new(Kind.Corners, middle, rotation, default, corners)
        {
            BallMm = Math.Min(circle.RadiusMm, (toMm - fromMm) / 2),
            BallMiddleMm = middle + rotation.Of(Prism.Placed(axis, circle.U, circle.V, (fromMm + toMm) / 2) - middle),
        };
    }

    /// <summary>Whether the insides share a point or the sides touch; exact up to a millionth of a millimetre.</summary>
    public bool Touches(Convex other) => DistanceMm(other) <= 1e-6;

    /// <summary>Distance to another body [mm]; 0 when they touch or overlap.</summary>
    public double DistanceMm(Convex other) => Separation.Of(Standing, other.Standing, double.PositiveInfinity).GapMm;

    /// <summary>The body turned about a point and shifted.</summary>
    /// <param name="about">The point it is turned about [mm].</param>
    /// <param name="posture">How it lies then.</param>
    public Convex At(Point about, Posture posture)
    {
        var turn = posture.Attitude.ToRotation();
        Point Moved(Point p) => about + posture.ShiftMm + turn.Of(p - about);
        return new(kind, Moved(MiddleMm), turn.After(Own), half, corners) { BallMm = BallMm, BallMiddleMm = Moved(BallMiddleMm) };
    }

    internal Placed Standing => new(this, MiddleMm, Own);

    /// <summary>The point farthest in a direction, both in its own axes and from its middle.</summary>
    internal Point Farthest(Point direction)
    {
        switch (kind)
        {
            case Kind.Box:
                return new(Math.CopySign(half.XMm, direction.XMm), Math.CopySign(half.YMm, direction.YMm), Math.CopySign(half.ZMm, direction.ZMm));
            case Kind.Round:
                var across = Math.Sqrt(direction.XMm * direction.XMm + direction.YMm * direction.YMm);
                var z = Math.CopySign(half.ZMm, direction.ZMm);
                return across == 0 ? new(half.XMm, 0, z) : new(half.XMm * direction.XMm / across, half.XMm * direction.YMm / across, z);
            default:
                var (best, most) = (corners[0], corners[0].Dot(direction));
                foreach (var corner in corners)
                    if (corner.Dot(direction) is var along && along > most) (best, most) = (corner, along);
                return best;
        }
    }

    private static Point Halfway(Point a, Point b) => new((a.XMm + b.XMm) / 2, (a.YMm + b.YMm) / 2, (a.ZMm + b.ZMm) / 2);
}

/// <summary>A convex body where it is at the moment.</summary>
internal readonly record struct Placed(Convex Body, Point MiddleMm, Rotation Turned)
{
    public Point Farthest(Point direction) => MiddleMm + Turned.Of(Body.Farthest(Turned.Back(direction)));

    /// <summary>How far it reaches along each axis from its middle, to the lower and to the upper side.</summary>
    public (Point Low, Point High) Bounds() => (
        new(Farthest(new(-1, 0, 0)).XMm, Farthest(new(0, -1, 0)).YMm, Farthest(new(0, 0, -1)).ZMm),
        new(Farthest(new(1, 0, 0)).XMm, Farthest(new(0, 1, 0)).YMm, Farthest(new(0, 0, 1)).ZMm));
}
