using System.Globalization;

namespace Wainwright.Geometry;

/// <summary>How a thing lies, as one turn from how it was found: a unit quaternion.</summary>
/// <remarks>Turning by an angle α about a unit axis a is (cos α/2, a · sin α/2). (W, X, Y, Z) and its negative are the same turn.</remarks>
/// <param name="W">Cosine of half the angle.</param>
/// <param name="X">Axis along x times the sine of half the angle.</param>
/// <param name="Y">Axis along y times the sine of half the angle.</param>
/// <param name="Z">Axis along z times the sine of half the angle.</param>
public readonly record struct Attitude(double W, double X, double Y, double Z)
{
    /// <summary>Not turned.</summary>
    public static Attitude AsFound { get; } = new(1, 0, 0, 0);

    /// <summary>The whole angle of the turn, 0 to 180 [degrees].</summary>
    public double AngleDeg => 2 * Math.Atan2(Math.Sqrt(X * X + Y * Y + Z * Z), Math.Abs(W)) * 180 / Math.PI;

    /// <summary>The turn back.</summary>
    public Attitude Back => new(W, -X, -Y, -Z);

    /// <summary>A turn about an axis of the vehicle, right-handed: from x towards y about z, from y towards z about x, from z towards x about y.</summary>
    /// <param name="axis">0 for x, 1 for y, 2 for z.</param>
    /// <param name="degrees">The angle [degrees].</param>
    public static Attitude About(int axis, double degrees) => About(new Point(axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0), degrees * Math.PI / 180);

    /// <summary>A turn about the upright axis and, before it, a tilt about the body's own x axis.</summary>
    public static Attitude Of(Turn turn) => About(2, turn.YawDeg).After(About(0, turn.TiltDeg));

    /// <summary>This turn made after another.</summary>
    public Attitude After(Attitude first)
    {
        var (w, x, y, z) = (
            W * first.W - X * first.X - Y * first.Y - Z * first.Z,
            W * first.X + X * first.W + Y * first.Z - Z * first.Y,
            W * first.Y - X * first.Z + Y * first.W + Z * first.X,
            W * first.Z + X * first.Y - Y * first.X + Z * first.W);
        var length = Math.Sqrt(w * w + x * x + y * y + z * z);
        return new(w / length, x / length, y / length, z / length);
    }

    /// <summary>Where a point of the thing comes to, both from the point it is turned about [mm].</summary>
    public Point Of(Point p) => ToRotation().Of(p);

    internal static Attitude About(Point unitAxis, double radians)
    {
        var (sin, cos) = Math.SinCos(radians / 2);
        return new(cos, unitAxis.XMm * sin, unitAxis.YMm * sin, unitAxis.ZMm * sin);
    }

    /// <summary>The shortest single turn in vehicle axes that leads from this attitude to another.</summary>
    internal (Point UnitAxis, double Radians) To(Attitude other)
    {
        var turn = other.After(Back);
        if (turn.W < 0) turn = new(-turn.W, -turn.X, -turn.Y, -turn.Z);
        var sin = Math.Sqrt(turn.X * turn.X + turn.Y * turn.Y + turn.Z * turn.Z);
        return sin < 1e-12 ? (new(0, 0, 1), 0) : (new(turn.X / sin, turn.Y / sin, turn.Z / sin), 2 * Math.Atan2(sin, turn.W));
    }

    internal Rotation ToRotation() => new(
        new(1 - 2 * (Y * Y + Z * Z), 2 * (X * Y - W * Z), 2 * (X * Z + W * Y)),
        new(2 * (X * Y + W * Z), 1 - 2 * (X * X + Z * Z), 2 * (Y * Z - W * X)),
        new(2 * (X * Z - W * Y), 2 * (Y * Z + W * X), 1 - 2 * (X * X + Y * Y)));

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"({W:0.####}; {X:0.####}, {Y:0.####}, {Z:0.####})");
}

/// <summary>The same turn as three rows, for turning many points.</summary>
internal readonly record struct Rotation(Point RowX, Point RowY, Point RowZ)
{
    public static Rotation None { get; } = new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    public Point Of(Point p) => new(RowX.Dot(p), RowY.Dot(p), RowZ.Dot(p));

    /// <summary>Turned back.</summary>
    public Point Back(Point p) => new(
        RowX.XMm * p.XMm + RowY.XMm * p.YMm + RowZ.XMm * p.ZMm,
        RowX.YMm * p.XMm + RowY.YMm * p.YMm + RowZ.YMm * p.ZMm,
        RowX.ZMm * p.XMm + RowY.ZMm * p.YMm + RowZ.ZMm * p.ZMm);

    /// <summary>This turn after another.</summary>
    public Rotation After(in Rotation first)
    {
        var (x, y, z) = (first.Column(0), first.Column(1), first.Column(2));
        return new(
            new(RowX.Dot(x), RowX.Dot(y), RowX.Dot(z)), new(RowY.Dot(x), RowY.Dot(y), RowY.Dot(z)), new(RowZ.Dot(x), RowZ.Dot(y), RowZ.Dot(z)));
    }

    public Point Column(int axis) => new(RowX[axis], RowY[axis], RowZ[axis]);
}
