namespace Wainwright.Access;

/// <summary>How a load lies at close steps between two points of a tilted way: its middle goes straight while it turns evenly.</summary>
internal static class Tipped
{
    private const double StepMm = 2, StepDegrees = 0.25;

    public static IEnumerable<(WalkedTurn Lies, Vec At)> Steps(WalkedTurn from, Vec at, WalkedTurn to, Vec there)
    {
        var (axis, degrees) = Between(from, to);
        var steps = (int)Math.Ceiling(Math.Max(Math.Sqrt((there - at).LengthSquared) / StepMm, degrees / StepDegrees)) + 1;
        for (var step = 1; step <= steps; step++)
        {
            var share = step / (double)steps;
            yield return (from.TurnedAbout(axis, degrees * share), at + share * (there - at));
        }
    }

    /// <summary>The one turn that leads from one attitude to the other, at most half a turn.</summary>
    private static (Vec Axis, double Degrees) Between(WalkedTurn from, WalkedTurn to)
    {
        // the turn R with R · from = to: its trace gives the angle, what is not symmetric in it the axis
        double R(int row, int column) => to.X.Along(row) * from.X.Along(column) + to.Y.Along(row) * from.Y.Along(column) + to.Z.Along(row) * from.Z.Along(column);
        var twist = new Vec(R(2, 1) - R(1, 2), R(0, 2) - R(2, 0), R(1, 0) - R(0, 1));
        var (sine, cosine) = (Math.Sqrt(twist.LengthSquared) / 2, (R(0, 0) + R(1, 1) + R(2, 2) - 1) / 2);
        var degrees = Math.Atan2(sine, cosine) * 180 / Math.PI;
        if (sine > 1e-9) return (twist.Unit(), degrees);
        if (cosine > 0) return (WalkedTurn.AxisOf(2), 0);
        // half a turn: a column of R + 1 that is not nought lies along the axis
        var columns = Enumerable.Range(0, 3).Select(c => new Vec(R(0, c) + (c == 0 ? 1 : 0), R(1, c) + (c == 1 ? 1 : 0), R(2, c) + (c == 2 ? 1 : 0)));
        return (columns.MaxBy(c => c.LengthSquared).Unit(), 180);
    }
}
