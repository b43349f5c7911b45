namespace Wainwright.Access;

/// <summary>A turn about an axis through a place: what lies wholly farther from the axis, or beside it, is never met.</summary>
internal static class Spin
{
    /// <summary>Whether a standing solid reaches into the round block that holds the whole turn.</summary>
    /// <param name="load">The solids that turn, where they begin.</param>
    /// <param name="axis">0 for x, 1 for y, 2 for z.</param>
    /// <param name="centre">A place on the axis.</param>
    /// <param name="standing">What may be met.</param>
    /// <param name="letPassMm">Depth that is no fault [mm].</param>
    public static bool Meets(IReadOnlyList<WalkedSolid> load, int axis, Vec centre, WalkedSolid standing, double letPassMm)
    {
        var corners = load.SelectMany(s => s.Corners).ToList();
        var (low, high) = (corners.Min(c => c.Along(axis)) + letPassMm, corners.Max(c => c.Along(axis)) - letPassMm);
        var radius = Math.Sqrt(corners.Max(c => Across(c, axis, centre).LengthSquared)) - letPassMm;
        if (standing.High.Along(axis) <= low || standing.Low.Along(axis) >= high) return false;
        var slice = Slice(standing, axis, low, high).Select(c => Across(c, axis, centre)).ToList();
        return slice.Count > 0 && DistanceFromNought(slice, axis) < radius;
    }

    private static Vec Across(Vec at, int axis, Vec centre)
    {
        var off = at - centre;
        return axis switch { 0 => off with { X = 0 }, 1 => off with { Y = 0 }, _ => off with { Z = 0 } };
    }

    /// <summary>Corners of what of a solid lies between two planes across the axis.</summary>
    private static IEnumerable<Vec> Slice(WalkedSolid solid, int axis, double low, double high)
    {
        foreach (var corner in solid.Corners)
            if (corner.Along(axis) >= low && corner.Along(axis) <= high) yield return corner;
        foreach (var (a, b) in solid.EdgePairs())
            foreach (var plane in (double[])[low, high])
                if ((a.Along(axis) - plane) * (b.Along(axis) - plane) < 0)
                    yield return a + (plane - a.Along(axis)) / (b.Along(axis) - a.Along(axis)) * (b - a);
    }

    /// <summary>How far the convex outline around some points is from nought, in the plane across the axis.</summary>
    private static double DistanceFromNought(List<Vec> points, int axis)
    {
        var (u, v) = axis switch { 0 => (1, 2), 1 => (0, 2), _ => (0, 1) };
        // the farthest that any direction keeps all points away; the best direction is square to an edge or towards a corner
        var best = 0.0;
        void Try(double a, double b)
        {
            var length = Math.Sqrt(a * a + b * b);
            if (length < 1e-9) return;
            best = Math.Max(best, points.Min(p => (p.Along(u) * a + p.Along(v) * b) / length));
        }
        foreach (var p in points)
        {
            Try(p.Along(u), p.Along(v));
            foreach (var q in points)
            {
                var (du, dv) = (q.Along(u) - p.Along(u), q.Along(v) - p.Along(v));
                Try(dv, -du);
                Try(-dv, du);
            }
        }
        return best;
    }
}
