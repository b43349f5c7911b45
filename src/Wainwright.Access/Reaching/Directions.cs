using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Directions spread over the sphere, each as long as one.</summary>
internal static class Directions
{
    /// <summary>Along the axes, the diagonals of faces and of the cube, and between: 98, none further than some 15° from any direction.</summary>
    public static IReadOnlyList<Point> Fine { get; } = Of(2);

    /// <summary>How much two directions agree: 1 for the same, 0 for square, −1 for opposite.</summary>
    public static double Along(this Point a, Point b) => a.XMm * b.XMm + a.YMm * b.YMm + a.ZMm * b.ZMm;

    /// <summary>A heading as a direction.</summary>
    public static Point Direction(this Heading heading) => heading.Axis() switch
    {
        0 => new(heading.Sign(), 0, 0),
        1 => new(0, heading.Sign(), 0),
        _ => new(0, 0, heading.Sign()),
    };

    /// <summary>A point so far in a direction.</summary>
    public static Point Towards(this Point from, Point direction, double mm) =>
        new(from.XMm + mm * direction.XMm, from.YMm + mm * direction.YMm, from.ZMm + mm * direction.ZMm);

    private static List<Point> Of(int largest)
    {
        var found = new List<(int Sum, Point Way)>();
        for (var x = -largest; x <= largest; x++)
            for (var y = -largest; y <= largest; y++)
                for (var z = -largest; z <= largest; z++)
                {
                    if (Divisor(x, y, z) != 1) continue;
                    var length = Math.Sqrt(x * x + y * y + z * z);
                    found.Add((x * x + y * y + z * z, new(x / length, y / length, z / length)));
                }
        // straight ones first: where several will do, the plain one is shown
        return [.. found.OrderBy(f => f.Sum).Select(f => f.Way)];
    }

    private static int Divisor(int x, int y, int z) => Divisor(Divisor(Math.Abs(x), Math.Abs(y)), Math.Abs(z));

    private static int Divisor(int a, int b) => b == 0 ? a : Divisor(b, a % b);
}
