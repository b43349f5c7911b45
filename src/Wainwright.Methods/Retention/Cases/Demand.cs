namespace Wainwright.Methods.Retention;

/// <summary>What a case demands along any direction, added to gravity.</summary>
/// <remarks>
/// Along an axis: the case's own figure. Between axes an ellipsoid through the figures, 1/√Σ(cos²/a²): documents ask for each axis alone, so
/// this is a rule of ours. Where the case says nothing of a way that the direction has a part in, it demands nothing along that direction.
/// </remarks>
public static class Demand
{
    /// <summary>Own rule between the axes.</summary>
    public static readonly Basis Basis = new(
        Source: "own rule: ellipsoid through the axis figures of the chosen case",
        Assumes: ["forward is towards smaller x, right is larger y, up is larger z"],
        Caution: "Documents ask for each axis alone. A real crash turns and lifts a van while it stops it.",
        How: Provenance.OwnRule);

    /// <summary>Acceleration demanded along a direction, besides gravity [g]; null when the case says nothing of it.</summary>
    /// <param name="acceleration">The chosen case.</param>
    /// <param name="thrown">The way things are thrown; any length above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The vector has no direction.</exception>
    public static double? Added(AccelerationCase acceleration, Vector3D thrown)
    {
        var way = thrown.Unit();
        double sum = 0;
        foreach (var (part, g) in (ReadOnlySpan<(double, double?)>)
            [(way.X, way.X < 0 ? acceleration.ForwardG : acceleration.RearwardG), (way.Y, acceleration.SidewaysG), (way.Z, way.Z < 0 ? Down(acceleration) : acceleration.UpG)])
        {
            if (Math.Abs(part) < 1e-9) continue;
            if (g is not { } axis) return null;
            if (axis == 0) return 0;
            sum += part * part / (axis * axis);
        }
        return 1 / Math.Sqrt(sum);
    }

    static double? Down(AccelerationCase acceleration) => acceleration.DownIsGravity && acceleration.DownG is { } down ? down - 1 : acceleration.DownG;
}
