namespace Wainwright.Geometry;

/// <summary>At most four points; of them is kept what the point nearest to the origin lies on.</summary>
internal struct Simplex
{
    private Point a, b, c, d;
    private int count;

    /// <summary>Whether the origin lies within all four.</summary>
    public bool HoldsOrigin { get; private set; }

    /// <summary>Takes a point in; no when it is there already and nothing more can be learned.</summary>
    public bool Add(Point p)
    {
        if ((count > 0 && p == a) || (count > 1 && p == b) || (count > 2 && p == c) || count == 4) return false;
        switch (count++)
        {
            case 0: a = p; break;
            case 1: b = p; break;
            case 2: c = p; break;
            default: d = p; break;
        }
        return true;
    }

    /// <summary>The point nearest to the origin; corners that it does not need are dropped.</summary>
    public Point Nearest() => count switch
    {
        1 => a,
        2 => Keep(OnSide(a, b)),
        3 => Keep(OnFace(a, b, c)),
        _ => WithinFour(),
    };

    private readonly record struct Part(Point Nearest, int Count, Point A, Point B, Point C);

    private Point Keep(Part part)
    {
        (count, a, b, c) = (part.Count, part.A, part.B, part.C);
        return part.Nearest;
    }

    private static Part OnSide(Point a, Point b)
    {
        var along = b - a;
        var square = along.Dot(along);
        var share = square > 0 ? -a.Dot(along) / square : 0;
        if (share <= 0) return new(a, 1, a, default, default);
        if (share >= 1) return new(b, 1, b, default, default);
        return new(a + along.Times(share), 2, a, b, default);
    }

    private static Part OnFace(Point a, Point b, Point c)
    {
        var (ab, ac) = (b - a, c - a);
        var normal = ab.Cross(ac);
        var square = normal.Dot(normal);
        if (square > 0)
        {
            // shares of the corners at the foot of the perpendicular from the origin
            var (u, v, w) = (normal.Dot(b.Cross(c)) / square, normal.Dot(c.Cross(a)) / square, normal.Dot(a.Cross(b)) / square);
            if (u > 0 && v > 0 && w > 0) return new(normal.Times(normal.Dot(a) / square), 3, a, b, c);
        }
        var (one, two, three) = (OnSide(a, b), OnSide(b, c), OnSide(c, a));
        var best = Nearer(one, two);
        return Nearer(best, three);
    }

    private static Part Nearer(Part one, Part two) => one.Nearest.Dot(one.Nearest) <= two.Nearest.Dot(two.Nearest) ? one : two;

    private Point WithinFour()
    {
        Part? best = null;
        Look(a, b, c, d, ref best);
        Look(a, b, d, c, ref best);
        Look(a, c, d, b, ref best);
        Look(b, c, d, a, ref best);
        if (best is { } part) return Keep(part);
        HoldsOrigin = true;
        return default;
    }

    /// <summary>A face counts when the origin is not on the same side of it as the fourth corner.</summary>
    private static void Look(Point a, Point b, Point c, Point opposite, ref Part? best)
    {
        var normal = (b - a).Cross(c - a);
        if (normal.Dot(opposite - a) * -normal.Dot(a) > 0) return;
        var face = OnFace(a, b, c);
        best = best is { } known ? Nearer(known, face) : face;
    }
}
