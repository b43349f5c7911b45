namespace Wainwright.Geometry;

/// <summary>A plane that a load keeps to: it is turned about one axis only, and its middle does not shift along it.</summary>
/// <param name="Axis">The axis it is turned about, 0 for x, 1 for y, 2 for z.</param>
/// <param name="ShiftMm">Displacement of its middle along that axis, a whole number of half millimetres.</param>
/// <param name="First">How it lies before it is tilted.</param>
/// <param name="Gap">The gap it is to leave by.</param>
internal sealed record TiltPlane(int Axis, double ShiftMm, Attitude First, Gap Gap)
{
    /// <summary>One of the two axes within the plane.</summary>
    public int Across(int which) => (Axis + 1 + which) % 3;
}

/// <summary>Places from which a tilted way can begin, and at which it can end, drawn at random.</summary>
internal sealed class TiltRoots(ExactRegions regions, ExactRegions.Region within, IReadOnlyList<ExactRegions.Region> outside)
{
    private const int Draws = 12;

    public Point Found => regions.Found;

    public Point HalfMm => regions.HalfMm;

    /// <summary>A place that is reached from where the load was found; none when the draws did not meet the plane.</summary>
    public ExactRegions.Root? Within(TiltPlane? plane, Random random)
    {
        for (var draw = 0; draw < Draws; draw++)
            if (regions.Within(within, random, plane) is { } root && (plane is null || IsAbout(plane, root.Posture.Attitude))) return root;
        return null;
    }

    /// <summary>A place that is reached from outside; none when the draws did not meet the plane.</summary>
    public ExactRegions.Root? Outside(TiltPlane? plane, Random random)
    {
        var fitting = plane is null ? outside : [.. outside.Where(r => IsAbout(plane, r.First))];
        for (var draw = 0; draw < Draws; draw++)
            if (regions.Within(fitting[random.Next(fitting.Count)], random, plane) is { } root) return root;
        return null;
    }

    /// <summary>Any attitude that quarter turns lead to.</summary>
    public Attitude AnyQuarterTurned(Random random) => outside[random.Next(outside.Count)].First;

    /// <summary>A plane through a gap and a place the load gets to; any motion where there is no such plane.</summary>
    public TiltPlane? AnyPlane(Shell shell, Random random)
    {
        for (var draw = 0; draw < Draws && shell.Gaps.Count > 0; draw++)
        {
            var gap = shell.Gaps[random.Next(shell.Gaps.Count)];
            var axis = (gap.Wall.Axis() + 1 + random.Next(2)) % 3;
            if (regions.Within(within, random, null) is not { } root) continue;
            var half = HalfAlong(root.Posture.Attitude, axis);
            var (low, high) = (gap.Where.Low(axis) + half - Found[axis], gap.Where.High(axis) - half - Found[axis]);
            var shift = root.Posture.ShiftMm[axis];
            // as it lies already if that passes the gap, now and then anyway; else in the middle or anywhere of what does
            if (shift < low || shift > high || random.Next(3) == 0)
                shift = low > high || random.Next(2) == 0 ? (low + high) / 2 : low + random.NextDouble() * (high - low);
            return new(axis, Math.Round(2 * shift) / 2, root.Posture.Attitude, gap);
        }
        return null;
    }

    private double HalfAlong(Attitude attitude, int axis)
    {
        var turned = attitude.ToRotation();
        var row = axis == 0 ? turned.RowX : axis == 1 ? turned.RowY : turned.RowZ;
        return Math.Abs(row.XMm) * HalfMm.XMm + Math.Abs(row.YMm) * HalfMm.YMm + Math.Abs(row.ZMm) * HalfMm.ZMm;
    }

    /// <summary>Whether a turn about the plane's axis leads from its first attitude to this one.</summary>
    private static bool IsAbout(TiltPlane plane, Attitude attitude)
    {
        var (axis, radians) = plane.First.To(attitude);
        return radians < 0.01 || Math.Abs(axis[plane.Axis]) > 0.999;
    }
}
