namespace Wainwright.Methods.Retention.Limit;

/// <summary>The force that resists a slip most, and how much: the support of a strength region.</summary>
/// <param name="PullN">Pull [N].</param>
/// <param name="ShearN">Shear [N].</param>
/// <param name="Power">Force times slip.</param>
readonly record struct Resisting(double PullN, Vector3D ShearN, double Power)
{
    public static Resisting To(in FixingArm fixing, Vector3D slip)
    {
        var outward = fixing.Axis.Dot(slip);
        var along = slip - outward * fixing.Axis;
        // where the slip is nearly all outward, what is left over by rounding is not square to the axis
        along -= fixing.Axis.Dot(along) * fixing.Axis;
        var sideways = along.Length;
        var (pull, shear) = (outward > 0 ? outward * fixing.PullN : 0, sideways * fixing.ShearN);
        var (pullN, shearN, power) = fixing.Sharing switch
        {
            Sharing.Straight => pull > shear ? (fixing.PullN, 0.0, pull) : (0, fixing.ShearN, shear),
            Sharing.Round => Round(fixing, pull, shear),
            _ => (outward > 0 ? fixing.PullN : 0, fixing.ShearN, pull + shear),
        };
        return new(pullN, sideways > 0 ? (shearN / sideways) * along : default, power);
    }

    /// <summary>The same for a polyhedron inside or around the region.</summary>
    public static Resisting To(in FixingArm fixing, Vector3D slip, RegionShape shape)
    {
        if (shape.Corners == 0) return To(fixing, slip);
        var (first, second) = fixing.Axis.Across();
        var (outward, x, y) = (Math.Max(0, fixing.Axis.Dot(slip)), first.Dot(slip), second.Dot(slip));
        var (wide, corner) = (shape.Around ? 1 / Math.Cos(Math.PI / shape.Corners) : 1, Vector3D.Zero);
        var best = double.NegativeInfinity;
        for (var k = 0; k < shape.Corners; k++)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * k / shape.Corners);
            if (x * cos + y * sin <= best) continue;
            best = x * cos + y * sin;
            corner = cos * first + sin * second;
        }
        var (pullN, shearN) = (fixing.PullN, wide * fixing.ShearN);
        var chosen = (Pull: 0.0, Shear: 0.0, Power: double.NegativeInfinity);
        foreach (var (p, s) in Profile(fixing.Sharing, shape))
        {
            var power = p * pullN * outward + s * shearN * best;
            if (power > chosen.Power) chosen = (p * pullN, s * shearN, power);
        }
        return new(chosen.Pull, chosen.Shear * corner, chosen.Power);
    }

    /// <summary>Corners of the region in the plane of pull and shear, as shares of the capacities.</summary>
    public static IEnumerable<(double Pull, double Shear)> Profile(Sharing sharing, RegionShape shape)
    {
        if (sharing == Sharing.Straight) return [(0, 0), (1, 0), (0, 1)];
        if (sharing == Sharing.Apart) return [(0, 0), (1, 0), (0, 1), (1, 1)];
        var steps = Math.Max(2, shape.Corners / 4);
        var wide = shape.Around ? 1 / Math.Cos(Math.PI / (4 * steps)) : 1;
        return [(0, 0), .. Enumerable.Range(0, steps + 1).Select(k => Math.SinCos(Math.PI / 2 * k / steps)).Select(t => (wide * t.Sin, wide * t.Cos))];
    }

    private static (double PullN, double ShearN, double Power) Round(in FixingArm fixing, double pull, double shear)
    {
        var power = Math.Sqrt(pull * pull + shear * shear);
        return power > 0 ? (fixing.PullN * pull / power, fixing.ShearN * shear / power, power) : (0, 0, 0);
    }
}
