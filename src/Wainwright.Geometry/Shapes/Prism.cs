namespace Wainwright.Geometry;

/// <summary>A turn about the upright axis and, before it, a tilt about the body's own x axis [degrees].</summary>
/// <param name="YawDeg">From x towards y.</param>
/// <param name="TiltDeg">From y towards z.</param>
public readonly record struct Turn(double YawDeg, double TiltDeg)
{
    /// <summary>Whether nothing is turned.</summary>
    public bool IsNone => YawDeg == 0 && TiltDeg == 0;

    internal Point Of(Point p)
    {
        var (sinTilt, cosTilt) = Math.SinCos(TiltDeg * Math.PI / 180);
        var (sinYaw, cosYaw) = Math.SinCos(YawDeg * Math.PI / 180);
        var (y, z) = (p.YMm * cosTilt - p.ZMm * sinTilt, p.YMm * sinTilt + p.ZMm * cosTilt);
        return new(p.XMm * cosYaw - y * sinYaw, p.XMm * sinYaw + y * cosYaw, z);
    }
}

/// <summary>A convex outline drawn out along an axis, then turned about the middle of its bounds.</summary>
internal sealed class Prism
{
    private const double Rounding = 1e-6;

    private readonly (Point Normal, double Offset)[] faces;

    /// <param name="axis">Axis it is drawn out along, 0 for x, 1 for y, 2 for z.</param>
    /// <param name="outline">Convex outline in the other two axes, in their order, either way round [mm].</param>
    /// <param name="from">Where it begins along the axis [mm].</param>
    /// <param name="to">Where it ends along the axis [mm].</param>
    /// <param name="turn">How it is turned.</param>
    public Prism(int axis, IReadOnlyList<(double U, double V)> outline, double from, double to, Turn turn)
    {
        var (u0, u1) = (outline.Min(p => p.U), outline.Max(p => p.U));
        var (v0, v1) = (outline.Min(p => p.V), outline.Max(p => p.V));
        var middle = Placed(axis, (u0 + u1) / 2, (v0 + v1) / 2, (from + to) / 2);
        Point InVan(double u, double v, double w) => middle + turn.Of(Placed(axis, u, v, w) - middle);

        Corners = [.. outline.SelectMany(p => new[] { InVan(p.U, p.V, from), InVan(p.U, p.V, to) })];
        var inside = new Point(Corners.Average(c => c.XMm), Corners.Average(c => c.YMm), Corners.Average(c => c.ZMm));
        var across = turn.Of(Placed(axis, 0, 0, 1));
        var sides = outline.Select((p, i) =>
        {
            var q = outline[(i + 1) % outline.Count];
            return Outward(turn.Of(Placed(axis, q.V - p.V, p.U - q.U, 0)), InVan(p.U, p.V, from), inside);
        });
        faces = [.. sides, Outward(across, InVan(u0, v0, from), inside), Outward(across, InVan(u0, v0, to), inside)];
    }

    /// <summary>Its corners where they lie [mm].</summary>
    public IReadOnlyList<Point> Corners { get; }

    /// <summary>Whether a box lies wholly within; exact up to a millionth of a millimetre.</summary>
    public bool Holds(Box box)
    {
        foreach (var (normal, offset) in faces)
            if (Farthest(box, normal) > offset + Rounding) return false;
        return true;
    }

    /// <summary>Whether one of the faces has the box wholly outside; no means perhaps not, never surely not.</summary>
    public bool IsClearOf(Box box)
    {
        foreach (var (normal, offset) in faces)
            if (-Farthest(box, new(-normal.XMm, -normal.YMm, -normal.ZMm)) >= offset - Rounding) return true;
        return false;
    }

    private static double Farthest(Box box, Point normal) =>
        Math.Max(normal.XMm * box.X0, normal.XMm * box.X1)
        + Math.Max(normal.YMm * box.Y0, normal.YMm * box.Y1)
        + Math.Max(normal.ZMm * box.Z0, normal.ZMm * box.Z1);

    private static (Point Normal, double Offset) Outward(Point normal, Point on, Point inside)
    {
        var length = Math.Sqrt(normal.Dot(normal));
        normal = new(normal.XMm / length, normal.YMm / length, normal.ZMm / length);
        var offset = normal.Dot(on);
        return normal.Dot(inside) <= offset ? (normal, offset) : (new(-normal.XMm, -normal.YMm, -normal.ZMm), -offset);
    }

    internal static Point Placed(int axis, double u, double v, double w) => axis switch
    {
        0 => new(w, u, v),
        1 => new(u, w, v),
        _ => new(u, v, w),
    };
}
