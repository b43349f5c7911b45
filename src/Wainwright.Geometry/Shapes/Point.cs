using System.Globalization;

namespace Wainwright.Geometry;

/// <summary>A point or a displacement along the three axes [mm].</summary>
/// <param name="XMm">First axis.</param>
/// <param name="YMm">Second axis.</param>
/// <param name="ZMm">Third axis, upwards.</param>
public readonly record struct Point(double XMm, double YMm, double ZMm)
{
    /// <summary>Sum, axis by axis.</summary>
    public static Point operator +(Point a, Point b) => new(a.XMm + b.XMm, a.YMm + b.YMm, a.ZMm + b.ZMm);

    /// <summary>Difference, axis by axis.</summary>
    public static Point operator -(Point a, Point b) => new(a.XMm - b.XMm, a.YMm - b.YMm, a.ZMm - b.ZMm);

    /// <summary>Sum, axis by axis.</summary>
    public static Point Add(Point left, Point right) => left + right;

    /// <summary>Difference, axis by axis.</summary>
    public static Point Subtract(Point left, Point right) => left - right;

    internal double this[int axis] => axis switch { 0 => XMm, 1 => YMm, _ => ZMm };

    internal double LengthMm => Math.Sqrt(Dot(this));

    internal Point Times(double by) => new(XMm * by, YMm * by, ZMm * by);

    internal Point Cross(Point other) => new(
        YMm * other.ZMm - ZMm * other.YMm, ZMm * other.XMm - XMm * other.ZMm, XMm * other.YMm - YMm * other.XMm);

    internal double Dot(Point other) => XMm * other.XMm + YMm * other.YMm + ZMm * other.ZMm;

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"({XMm}, {YMm}, {ZMm})");
}
