namespace Wainwright.Access;

/// <summary>Whether a soft thing is folded where it lies: nowhere farther than its own bounds and it reach when they share a place.</summary>
internal static class FoldedInPlace
{
    // bounds are taken on whole millimetres outwards
    private const double WholeMm = 1;

    /// <summary>
    /// Along each axis, of the folded thing and its own bounds the shorter lies within the longer: what is less than its bounds
    /// is folded somewhere within them, what is more stands out over them. It lies within the load space in the same way.
    /// </summary>
    /// <param name="folded">The folded thing where it begins.</param>
    /// <param name="own">The bounds it had.</param>
    /// <param name="room">The load space.</param>
    public static bool Is((Vec Low, Vec High) folded, (Vec Low, Vec High) own, (Vec Low, Vec High) room) => Enumerable.Range(0, 3).All(axis =>
    {
        var (at, space) = (Along(folded, axis), Along(room, axis));
        var (low, high) = Along(own, axis);
        // what was found to stand in the wall by a measuring error does not let it be folded there
        return Nested(at, (Math.Max(low, space.Low), Math.Min(high, space.High))) && Nested(at, space);
    });

    private static bool Nested((double Low, double High) a, (double Low, double High) b) => a.High - a.Low <= b.High - b.Low ? Within(a, b) : Within(b, a);

    private static bool Within((double Low, double High) less, (double Low, double High) more) => less.Low >= more.Low - WholeMm && less.High <= more.High + WholeMm;

    private static (double Low, double High) Along((Vec Low, Vec High) box, int axis) => (box.Low.Along(axis), box.High.Along(axis));
}
