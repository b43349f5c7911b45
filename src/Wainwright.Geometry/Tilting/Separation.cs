namespace Wainwright.Geometry;

/// <summary>Distance of two convex bodies, with the direction in which a plane parts them.</summary>
/// <remarks>
/// Method of Gilbert, Johnson and Keerthi (IEEE Journal of Robotics and Automation 4, 1988; from memory): the point nearest to
/// the origin of the difference of the two bodies, by ever better simplices. What is handed out is not the nearest distance
/// found but the width of the gap along the best direction found, which is a lower bound whatever the rounding of the simplex.
/// </remarks>
internal static class Separation
{
    private const int MostSteps = 60;

    /// <param name="GapMm">Every point of the first lies at least so far beyond every point of the second, along the direction; 0 when they are not parted.</param>
    /// <param name="Direction">Unit vector from the second to the first.</param>
    internal readonly record struct Found(double GapMm, Point Direction);

    /// <param name="a">The first.</param>
    /// <param name="b">The second.</param>
    /// <param name="enoughMm">A gap of this width is wide enough: it need not be looked for further.</param>
    public static Found Of(in Placed a, in Placed b, double enoughMm)
    {
        var nearest = a.MiddleMm - b.MiddleMm;
        if (nearest.LengthMm < 1e-9) return default;
        var simplex = new Simplex();
        var best = default(Found);
        for (var step = 0; step < MostSteps; step++)
        {
            var length = nearest.LengthMm;
            if (length < 1e-9) return default;
            var direction = nearest.Times(1 / length);
            var corner = a.Farthest(direction.Times(-1)) - b.Farthest(direction);
            var gap = direction.Dot(corner);
            if (gap > best.GapMm) best = new(gap, direction);
            if (best.GapMm >= enoughMm || length - gap <= 1e-9 * length + 1e-9) break;
            if (!simplex.Add(corner)) break;
            nearest = simplex.Nearest();
            if (simplex.HoldsOrigin) return default;
        }
        return best;
    }
}
