using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Three numbers along the vehicle axes [mm where they are a place].</summary>
internal readonly record struct Vec(double X, double Y, double Z)
{
    public static Vec Zero { get; } = new(0, 0, 0);

    public double LengthSquared => X * X + Y * Y + Z * Z;

    public static Vec operator +(Vec a, Vec b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vec operator -(Vec a, Vec b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vec operator *(double by, Vec a) => new(by * a.X, by * a.Y, by * a.Z);

    public static Vec Of(Place place) => new(place.XMm, place.YMm, place.ZMm);

    public double Along(int axis) => axis switch { 0 => X, 1 => Y, _ => Z };

    public double Dot(Vec other) => X * other.X + Y * other.Y + Z * other.Z;

    public Vec Cross(Vec other) => new(Y * other.Z - Z * other.Y, Z * other.X - X * other.Z, X * other.Y - Y * other.X);

    public Vec Unit() => 1 / Math.Sqrt(LengthSquared) * this;
}

/// <summary>How a thing is turned against how it was found.</summary>
/// <param name="X">Where its own x axis points.</param>
/// <param name="Y">Where its own y axis points.</param>
/// <param name="Z">Where its own z axis points.</param>
internal readonly record struct WalkedTurn(Vec X, Vec Y, Vec Z)
{
    public static WalkedTurn AsFound { get; } = new(new(1, 0, 0), new(0, 1, 0), new(0, 0, 1));

    /// <summary>From a unit quaternion: an axis and the half angle about it.</summary>
    public static WalkedTurn Of(Turned turned)
    {
        var axis = new Vec(turned.X, turned.Y, turned.Z);
        if (axis.LengthSquared < 1e-18) return AsFound;
        return AsFound.TurnedAbout(axis.Unit(), 2 * Math.Atan2(Math.Sqrt(axis.LengthSquared), turned.W) * 180 / Math.PI);
    }

    public Vec Of(Vec v) => v.X * X + v.Y * Y + v.Z * Z;

    /// <summary>This, then a further turn about a vehicle axis.</summary>
    public WalkedTurn TurnedAbout(Vec axis, double degrees) => new(Turned(X, axis, degrees), Turned(Y, axis, degrees), Turned(Z, axis, degrees));

    public static Vec AxisOf(int axis) => axis switch { 0 => new(1, 0, 0), 1 => new(0, 1, 0), _ => new(0, 0, 1) };

    private static Vec Turned(Vec v, Vec axis, double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return cos * v + sin * axis.Cross(v) + (1 - cos) * axis.Dot(v) * axis;
    }
}
