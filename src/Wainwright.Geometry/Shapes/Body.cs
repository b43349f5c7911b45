namespace Wainwright.Geometry;

/// <summary>A shape as two sets of boxes: what it certainly lies within, and what certainly lies within it.</summary>
/// <remarks>
/// A way found for the outer boxes is a way for the true shape; a proof that the inner boxes are stuck is a proof for the
/// true shape. Where both agree, the answer is exact although the shape is round or slanting.
/// </remarks>
/// <param name="Outer">Boxes that together hold the shape.</param>
/// <param name="Inner">Boxes that each lie within the shape; may be none.</param>
public sealed record Body(IReadOnlyList<Box> Outer, IReadOnlyList<Box> Inner)
{
    private const int SidesOfRound = 16;

    /// <summary>The smallest box around the outer boxes.</summary>
    public Box Bounds { get; } = Outer.Count > 0 ? Box.Around(Outer) : default;

    /// <summary>Whether outer and inner boxes are the same, so that nothing is lost.</summary>
    public bool IsExact => Outer.SequenceEqual(Inner);

    /// <summary>A shape that is boxes.</summary>
    public static Body Of(params IReadOnlyList<Box> boxes) => new(boxes, boxes);

    /// <summary>Several shapes as one.</summary>
    public static Body Union(IEnumerable<Body> bodies)
    {
        var all = bodies.ToList();
        return new([.. all.SelectMany(b => b.Outer).Distinct()], [.. all.SelectMany(b => b.Inner).Distinct()]);
    }

    /// <summary>A box between two corners, turned about its middle.</summary>
    public static Body BoxBetween(Point low, Point high, Turn turn)
    {
        if (turn.IsNone) return new([Rounded(low, high, outward: true)], NotEmpty(Rounded(low, high, outward: false)));
        return Prism(2, [(low.XMm, low.YMm), (high.XMm, low.YMm), (high.XMm, high.YMm), (low.XMm, high.YMm)], low.ZMm, high.ZMm, turn);
    }

    /// <summary>A convex outline drawn out along an axis, turned about the middle of its bounds.</summary>
    /// <param name="axis">0 for x, 1 for y, 2 for z.</param>
    /// <param name="outline">Corners in the other two axes, in their order, once round [mm].</param>
    /// <param name="fromMm">Where it begins along the axis.</param>
    /// <param name="toMm">Where it ends along the axis.</param>
    /// <param name="turn">How it is turned.</param>
    /// <exception cref="ArgumentException">Fewer than three corners.</exception>
    public static Body Prism(int axis, IReadOnlyList<(double U, double V)> outline, double fromMm, double toMm, Turn turn)
    {
        if (outline.Count < 3) throw new ArgumentException("An outline has at least three corners.", nameof(outline));
        var prism = new Prism(axis, outline, fromMm, toMm, turn);
        return new(Cover.Outer(prism), Cover.Inner(prism));
    }

    /// <summary>A cylinder along an axis, turned about its middle.</summary>
    /// <param name="axis">0 for x, 1 for y, 2 for z.</param>
    /// <param name="centre">Centre line in the other two axes, in their order [mm].</param>
    /// <param name="radiusMm">Radius.</param>
    /// <param name="fromMm">Where it begins along the axis.</param>
    /// <param name="toMm">Where it ends along the axis.</param>
    /// <param name="turn">How it is turned.</param>
    public static Body Cylinder(int axis, (double U, double V) centre, double radiusMm, double fromMm, double toMm, Turn turn)
    {
        // a many-sided bar around the round one, and one within it
        var around = new Prism(axis, Round(centre, radiusMm / Math.Cos(Math.PI / SidesOfRound)), fromMm, toMm, turn);
        var within = new Prism(axis, Round(centre, radiusMm), fromMm, toMm, turn);
        return new(Cover.Outer(around), Cover.Inner(within));
    }

    private static (double U, double V)[] Round((double U, double V) centre, double radiusMm) =>
        [.. Enumerable.Range(0, SidesOfRound).Select(i =>
        {
            // a flat to each axis, so that the bar is no wider than the round one along them
            var (sin, cos) = Math.SinCos(2 * Math.PI * (i + 0.5) / SidesOfRound);
            return (centre.U + radiusMm * cos, centre.V + radiusMm * sin);
        })];

    private static Box Rounded(Point low, Point high, bool outward)
    {
        int Low(double mm) => (int)(outward ? Math.Floor(mm + 1e-6) : Math.Ceiling(mm - 1e-6));
        int High(double mm) => (int)(outward ? Math.Ceiling(mm - 1e-6) : Math.Floor(mm + 1e-6));
        return new(Low(low.XMm), Low(low.YMm), Low(low.ZMm), High(high.XMm), High(high.YMm), High(high.ZMm));
    }

    private static Box[] NotEmpty(Box box) => box.IsEmpty ? [] : [box];
}
