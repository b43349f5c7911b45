using Wainwright.Geometry;

namespace Wainwright.Geometry.Tests.Tilting;

/// <summary>
/// Follows a tilted way in small steps and tests every step by separating axes between corners. Turns, corners and overlap are
/// worked out here; nothing of the planner's is used.
/// </summary>
internal static class DenseReplay
{
    private const double StepMm = 1.5, StepDeg = 0.2;

    /// <summary>The first place where a step overlaps by more than a hundredth of a millimetre, in words; nothing when the whole way is clear.</summary>
    public static string? Collision(IReadOnlyList<Posture> path, Separating.Polytope[] load, (double X, double Y, double Z) middle, Separating.Polytope[] standing)
    {
        for (var leg = 0; leg + 1 < path.Count; leg++)
        {
            var (a, b) = (path[leg], path[leg + 1]);
            var (qa, qb) = (Unit(a.Attitude), Unit(b.Attitude));
            var cos = qa.Zip(qb, (m, n) => m * n).Sum();
            if (cos < 0) (qb, cos) = ([.. qb.Select(v => -v)], -cos);
            var half = Math.Acos(Math.Min(1, cos));
            var far = Math.Sqrt(Math.Pow(b.ShiftMm.XMm - a.ShiftMm.XMm, 2) + Math.Pow(b.ShiftMm.YMm - a.ShiftMm.YMm, 2) + Math.Pow(b.ShiftMm.ZMm - a.ShiftMm.ZMm, 2));
            var steps = (int)Math.Ceiling(Math.Max(far / StepMm, 2 * half * 180 / Math.PI / StepDeg)) + 1;
            for (var i = 0; i <= steps; i++)
            {
                var t = i / (double)steps;
                var q = half < 1e-9 ? qa : [.. qa.Zip(qb, (m, n) => (Math.Sin((1 - t) * half) * m + Math.Sin(t * half) * n) / Math.Sin(half))];
                var shift = (X: a.ShiftMm.XMm + t * (b.ShiftMm.XMm - a.ShiftMm.XMm), Y: a.ShiftMm.YMm + t * (b.ShiftMm.YMm - a.ShiftMm.YMm), Z: a.ShiftMm.ZMm + t * (b.ShiftMm.ZMm - a.ShiftMm.ZMm));
                foreach (var (piece, p) in load.Select((piece, p) => (Moved(piece, q, middle, shift), p)))
                    for (var s = 0; s < standing.Length; s++)
                        if (Separating.GapMm(piece, standing[s]) < -0.01) return $"piece {p} in body {s} on leg {leg} at {t:0.000}";
            }
        }
        return null;
    }

    /// <summary>Whether nothing of the load is left within a box at the end.</summary>
    public static bool EndsOutside(IReadOnlyList<Posture> path, Separating.Polytope[] load, (double X, double Y, double Z) middle, Box outside)
    {
        var last = path[^1];
        var corners = load.SelectMany(p => Moved(p, Unit(last.Attitude), middle, (last.ShiftMm.XMm, last.ShiftMm.YMm, last.ShiftMm.ZMm)).Corners).ToList();
        const double Hair = 1e-6;
        return corners.TrueForAll(c => c.X <= outside.X0 + Hair) || corners.TrueForAll(c => c.X >= outside.X1 - Hair)
            || corners.TrueForAll(c => c.Y <= outside.Y0 + Hair) || corners.TrueForAll(c => c.Y >= outside.Y1 - Hair)
            || corners.TrueForAll(c => c.Z <= outside.Z0 + Hair) || corners.TrueForAll(c => c.Z >= outside.Z1 - Hair);
    }

    private static double[] Unit(Attitude a) => [a.W, a.X, a.Y, a.Z];

    private static Separating.Polytope Moved(Separating.Polytope body, double[] q, (double X, double Y, double Z) middle, (double X, double Y, double Z) shift)
    {
        (double X, double Y, double Z) Turned((double X, double Y, double Z) v)
        {
            // v + 2 r × (r × v + w v)
            var (w, rx, ry, rz) = (q[0], q[1], q[2], q[3]);
            var (cx, cy, cz) = (ry * v.Z - rz * v.Y + w * v.X, rz * v.X - rx * v.Z + w * v.Y, rx * v.Y - ry * v.X + w * v.Z);
            return (v.X + 2 * (ry * cz - rz * cy), v.Y + 2 * (rz * cx - rx * cz), v.Z + 2 * (rx * cy - ry * cx));
        }
        return new(
            [.. body.Corners.Select(c =>
            {
                var t = Turned((c.X - middle.X, c.Y - middle.Y, c.Z - middle.Z));
                return (t.X + middle.X + shift.X, t.Y + middle.Y + shift.Y, t.Z + middle.Z + shift.Z);
            })],
            [.. body.Normals.Select(Turned)], [.. body.Edges.Select(Turned)]);
    }
}
