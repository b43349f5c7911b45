using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Survey;

/// <summary>How far two places of the van are apart, with the doubt of their measures.</summary>
internal static class Nearness
{
    /// <summary>Gap between two things [mm], 0 when they touch; absent when one of them has no place.</summary>
    /// <param name="a">First part.</param>
    /// <param name="atA">A point of it that counts alone; absent for all its solids.</param>
    /// <param name="b">Second part.</param>
    /// <param name="atB">A point of it that counts alone; absent for all its solids.</param>
    public static Span? GapMm(Part a, Place? atA, Part b, Place? atB)
    {
        if (Shape(a, atA) is not { } first || Shape(b, atB) is not { } second) return null;
        var doubt = Doubt.PlaceMm(a) + Doubt.PlaceMm(b);
        var least = Least(first.Outer, second.Outer);
        // a sheet thinner than a millimetre has no whole millimetre inside
        var most = first.Inner.Count > 0 && second.Inner.Count > 0 ? Least(first.Inner, second.Inner) : least + 2;
        return new(Math.Max(0, least - doubt), least, most + doubt);
    }

    /// <summary>
    /// Gap seen from above [mm] where the first hangs over the second, 0 when straight above; absent when one has no place;
    /// unbounded when the first is nowhere above the second.
    /// </summary>
    public static Span? SidewaysMm(Part above, Place? atAbove, Part below, Place? atBelow)
    {
        if (Shape(above, atAbove) is not { } upper || Shape(below, atBelow) is not { } lower) return null;
        var doubt = Doubt.PlaceMm(above) + Doubt.PlaceMm(below);
        var pairs = upper.Outer.SelectMany(u => lower.Outer, (u, l) => (Upper: u, Lower: l)).Where(p => p.Upper.Z1 > p.Lower.Z0).ToList();
        if (pairs.Count == 0) return new(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity);
        var least = pairs.Min(p => Math.Sqrt(Square(Apart(p.Upper, p.Lower, 0)) + Square(Apart(p.Upper, p.Lower, 1))));
        return new(Math.Max(0, least - doubt), least, least + doubt);
    }

    private static Body? Shape(Part part, Place? at) => at is { } p
        ? Body.BoxBetween(new(p.XMm, p.YMm, p.ZMm), new(p.XMm + 1, p.YMm + 1, p.ZMm + 1), default)
        : part.Solids.Count == 0 ? null : PartBody.Of(part.Solids);

    private static double Least(IReadOnlyList<Box> a, IReadOnlyList<Box> b) =>
        a.Min(x => b.Min(y => Math.Sqrt(Square(Apart(x, y, 0)) + Square(Apart(x, y, 1)) + Square(Apart(x, y, 2)))));

    private static double Apart(Box a, Box b, int axis) => Math.Max(0, Math.Max(b.Low(axis) - a.High(axis), a.Low(axis) - b.High(axis)));

    private static double Square(double x) => x * x;
}
