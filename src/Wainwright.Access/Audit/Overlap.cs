namespace Wainwright.Access;

/// <summary>Whether convex solids stand in one another, at rest or along a straight slide; touching is no overlap.</summary>
/// <remarks>
/// Separating directions. A solid and the straight slide it makes are together convex: its shadow in a direction is its own
/// shadow and the slide's. Two convex solids are apart exactly when their shadows are in one of the directions square to a
/// face of either or to an edge of each; the slide counts as one more edge.
/// </remarks>
internal static class Overlap
{
    private const double Rounding = 1e-6;

    /// <summary>How deep a sliding solid goes into a standing one [mm]; 0 when it never does by more than what is let pass.</summary>
    /// <param name="moving">The moving solid where it begins.</param>
    /// <param name="slide">Its slide; nought for a thing at rest.</param>
    /// <param name="standing">What it may meet.</param>
    /// <param name="letPassMm">Depth that is no fault [mm].</param>
    public static double DepthMm(WalkedSolid moving, Vec slide, WalkedSolid standing, double letPassMm)
    {
        var least = double.MaxValue;
        for (var axis = 0; axis < 3; axis++)
        {
            var along = slide.Along(axis);
            var depth = Math.Min(moving.High.Along(axis) + Math.Max(0, along) - standing.Low.Along(axis), standing.High.Along(axis) - moving.Low.Along(axis) - Math.Min(0, along));
            if (depth <= letPassMm + Rounding) return 0;
            least = Math.Min(least, depth);
        }
        if (moving.IsUprightBox && standing.IsUprightBox && IsAlongAnAxis(slide)) return least;
        foreach (var direction in Directions(moving, slide, standing))
        {
            var depth = DepthAlong(direction, moving, slide, standing);
            if (depth <= letPassMm + Rounding) return 0;
            least = Math.Min(least, depth);
        }
        return least;
    }

    private static IEnumerable<Vec> Directions(WalkedSolid moving, Vec slide, WalkedSolid standing)
    {
        foreach (var face in moving.Faces) yield return face;
        foreach (var face in standing.Faces) yield return face;
        foreach (var a in moving.Edges)
            foreach (var b in standing.Edges)
                if (a.Cross(b) is { LengthSquared: > Rounding } across) yield return across.Unit();
        if (slide.LengthSquared < Rounding) yield break;
        foreach (var edge in moving.Edges.Concat(standing.Edges))
            if (edge.Cross(slide.Unit()) is { LengthSquared: > Rounding } across) yield return across.Unit();
    }

    private static double DepthAlong(Vec direction, WalkedSolid moving, Vec slide, WalkedSolid standing)
    {
        var (a0, a1) = Shadow(direction, moving);
        var (b0, b1) = Shadow(direction, standing);
        var along = slide.Dot(direction);
        return Math.Min(a1 + Math.Max(0, along) - b0, b1 - a0 - Math.Min(0, along));
    }

    private static (double Low, double High) Shadow(Vec direction, WalkedSolid solid)
    {
        var (low, high) = (double.MaxValue, double.MinValue);
        foreach (var corner in solid.Corners)
        {
            var at = corner.Dot(direction);
            low = Math.Min(low, at);
            high = Math.Max(high, at);
        }
        return (low, high);
    }

    private static bool IsAlongAnAxis(Vec slide) => (slide.X != 0 ? 1 : 0) + (slide.Y != 0 ? 1 : 0) + (slide.Z != 0 ? 1 : 0) <= 1;
}
