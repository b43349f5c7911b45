namespace Wainwright.Geometry;

/// <summary>The largest circle within a convex outline.</summary>
internal static class InscribedCircle
{
    private const int Halvings = 60;

    /// <summary>Its middle and radius, the radius never too large.</summary>
    /// <remarks>The distance to the nearest side is concave over the outline, so two nested searches by thirds find its greatest value.</remarks>
    public static (double U, double V, double RadiusMm) In(IReadOnlyList<(double U, double V)> outline)
    {
        var (u0, u1) = (outline.Min(p => p.U), outline.Max(p => p.U));
        var u = Best(u0, u1, at => BestAt(outline, at).RadiusMm);
        var (v, radius) = BestAt(outline, u);
        return (u, v, Math.Max(0, radius));
    }

    private static (double V, double RadiusMm) BestAt(IReadOnlyList<(double U, double V)> outline, double u)
    {
        var v = Best(outline.Min(p => p.V), outline.Max(p => p.V), at => ToNearestSide(outline, u, at));
        return (v, ToNearestSide(outline, u, v));
    }

    private static double Best(double from, double to, Func<double, double> value)
    {
        for (var i = 0; i < Halvings; i++)
        {
            var (left, right) = (from + (to - from) / 3, to - (to - from) / 3);
            if (value(left) < value(right)) from = left;
            else to = right;
        }
        return (from + to) / 2;
    }

    /// <summary>Distance to the nearest side, negative outside.</summary>
    private static double ToNearestSide(IReadOnlyList<(double U, double V)> outline, double u, double v)
    {
        var twice = outline.Select((p, i) => p.U * outline[(i + 1) % outline.Count].V - outline[(i + 1) % outline.Count].U * p.V).Sum();
        var least = double.PositiveInfinity;
        for (var i = 0; i < outline.Count; i++)
        {
            var (p, q) = (outline[i], outline[(i + 1) % outline.Count]);
            var length = Math.Sqrt((q.U - p.U) * (q.U - p.U) + (q.V - p.V) * (q.V - p.V));
            if (length == 0) continue;
            var side = ((q.U - p.U) * (v - p.V) - (q.V - p.V) * (u - p.U)) / length;
            least = Math.Min(least, twice > 0 ? side : -side);
        }
        return least;
    }
}
