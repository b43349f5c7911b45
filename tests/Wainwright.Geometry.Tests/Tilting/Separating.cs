using Wainwright.Geometry;

namespace Wainwright.Geometry.Tests.Tilting;

/// <summary>Bodies with corners and how far apart a plane holds them, by trying every axis that can part two such bodies.</summary>
/// <remarks>S. Gottschalk, M. C. Lin, D. Manocha, OBBTree (SIGGRAPH 1996; from memory): faces' normals and products of edges suffice.</remarks>
internal static class Separating
{
    /// <summary>A body as corners, edges' directions and faces' normals.</summary>
    internal sealed record Polytope((double X, double Y, double Z)[] Corners, (double X, double Y, double Z)[] Normals, (double X, double Y, double Z)[] Edges);

    public static Polytope Of(Box b) => BoxBetween(b.X0, b.Y0, b.Z0, b.X1, b.Y1, b.Z1);

    public static Polytope BoxBetween(double x0, double y0, double z0, double x1, double y1, double z1) => new(
        [(x0, y0, z0), (x1, y0, z0), (x0, y1, z0), (x1, y1, z0), (x0, y0, z1), (x1, y0, z1), (x0, y1, z1), (x1, y1, z1)],
        [(1, 0, 0), (0, 1, 0), (0, 0, 1)], [(1, 0, 0), (0, 1, 0), (0, 0, 1)]);

    /// <summary>An upright bar over a convex outline.</summary>
    public static Polytope Upright((double X, double Y)[] outline, double z0, double z1)
    {
        var sides = outline.Select((p, i) => (X: outline[(i + 1) % outline.Length].X - p.X, Y: outline[(i + 1) % outline.Length].Y - p.Y)).ToArray();
        return new(
            [.. outline.SelectMany(p => new[] { (p.X, p.Y, z0), (p.X, p.Y, z1) })],
            [(0, 0, 1), .. sides.Select(s => (s.Y, -s.X, 0.0))], [(0, 0, 1), .. sides.Select(s => (s.X, s.Y, 0.0))]);
    }

    /// <summary>A many-sided bar within an upright cylinder.</summary>
    public static Polytope Within(double x, double y, double radius, double z0, double z1) =>
        Upright([.. Enumerable.Range(0, 24).Select(i => (x + radius * Math.Cos(i * Math.PI / 12), y + radius * Math.Sin(i * Math.PI / 12)))], z0, z1);

    /// <summary>A box turned about its middle: a tilt about x from y to z, then a yaw about z from x to y.</summary>
    public static Polytope Of(Box b, Turn turn)
    {
        var straight = Of(b);
        var (mx, my, mz) = ((b.X0 + b.X1) / 2.0, (b.Y0 + b.Y1) / 2.0, (b.Z0 + b.Z1) / 2.0);
        var (ct, st, cy, sy) = (Math.Cos(turn.TiltDeg * Math.PI / 180), Math.Sin(turn.TiltDeg * Math.PI / 180), Math.Cos(turn.YawDeg * Math.PI / 180), Math.Sin(turn.YawDeg * Math.PI / 180));
        (double X, double Y, double Z) Turned((double X, double Y, double Z) v)
        {
            var (y, z) = (v.Y * ct - v.Z * st, v.Y * st + v.Z * ct);
            return (v.X * cy - y * sy, v.X * sy + y * cy, z);
        }
        return new(
            [.. straight.Corners.Select(c => Turned((c.X - mx, c.Y - my, c.Z - mz))).Select(c => (c.X + mx, c.Y + my, c.Z + mz))],
            [.. straight.Normals.Select(Turned)], [.. straight.Edges.Select(Turned)]);
    }

    /// <summary>The widest gap along any of the axes; negative when they overlap, by the least way out.</summary>
    public static double GapMm(Polytope a, Polytope b)
    {
        var widest = double.MinValue;
        void Look((double X, double Y, double Z) axis)
        {
            var length = Math.Sqrt(axis.X * axis.X + axis.Y * axis.Y + axis.Z * axis.Z);
            if (length < 1e-9) return;
            var (a0, a1) = Along(a, axis, length);
            var (b0, b1) = Along(b, axis, length);
            widest = Math.Max(widest, Math.Max(a0 - b1, b0 - a1));
        }
        foreach (var axis in (ReadOnlySpan<(double X, double Y, double Z)>)[(1, 0, 0), (0, 1, 0), (0, 0, 1)])
        {
            Look(axis);
            if (widest > 0) return widest;
        }
        foreach (var n in a.Normals) Look(n);
        foreach (var n in b.Normals) Look(n);
        foreach (var e in a.Edges)
            foreach (var f in b.Edges)
                Look((e.Y * f.Z - e.Z * f.Y, e.Z * f.X - e.X * f.Z, e.X * f.Y - e.Y * f.X));
        return widest;
    }

    private static (double From, double To) Along(Polytope body, (double X, double Y, double Z) axis, double length)
    {
        var (from, to) = (double.MaxValue, double.MinValue);
        foreach (var c in body.Corners)
        {
            var d = (c.X * axis.X + c.Y * axis.Y + c.Z * axis.Z) / length;
            (from, to) = (Math.Min(from, d), Math.Max(to, d));
        }
        return (from, to);
    }
}
