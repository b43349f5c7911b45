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
        // where the slip is all outward, what is left over by rounding is not square to the axis: made so, or dropped
        var square = along - fixing.Axis.Dot(along) * fixing.Axis;
        var sideways = square.Dot(square) > 1e-8 * along.Dot(along) ? square.Length : 0;
        along = square;
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
        // of corners that stand evenly round a circle the one nearest to the slip resists most
        var (sin, cos) = Math.SinCos(2 * Math.PI / shape.Corners * Math.Round(Math.Atan2(y, x) / (2 * Math.PI) * shape.Corners));
        var (pullN, shearN) = (fixing.PullN, (shape.Around ? 1 / Math.Cos(Math.PI / shape.Corners) : 1) * fixing.ShearN);
        var (pull, shear) = (pullN * outward, shearN * (x * cos + y * sin));
        var (byPull, byShear) = fixing.Sharing switch
        {
            Sharing.Straight => pull > shear ? (1.0, 0.0) : (0, 1),
            Sharing.Round => RoundCorner(pull, shear, shape),
            _ => (outward > 0 ? 1 : 0, 1),
        };
        return new(byPull * pullN, byShear * shearN * (cos * first + sin * second), byPull * pull + byShear * shear);
    }

    private static (double Pull, double Shear) RoundCorner(double pull, double shear, RegionShape shape)
    {
        var steps = Math.Max(2, shape.Corners / 4);
        var wide = shape.Around ? 1 / Math.Cos(Math.PI / (4 * steps)) : 1;
        var (sin, cos) = Math.SinCos(Math.PI / 2 / steps * Math.Round(Math.Atan2(pull, shear) / (Math.PI / 2) * steps));
        return (wide * sin, wide * cos);
    }

    private static (double PullN, double ShearN, double Power) Round(in FixingArm fixing, double pull, double shear)
    {
        var power = Math.Sqrt(pull * pull + shear * shear);
        return power > 0 ? (fixing.PullN * pull / power, fixing.ShearN * shear / power, power) : (0, 0, 0);
    }
}
