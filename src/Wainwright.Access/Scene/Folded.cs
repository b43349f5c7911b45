using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>How a soft part lies once it is folded or rolled, and where that can happen.</summary>
internal static class Folded
{
    private static readonly int[][] Ways = [[0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]];

    /// <summary>
    /// The attitude in which the folded part goes least beyond its own bounds, and those bounds grown to hold it, within the room.
    /// </summary>
    public static (Box Folded, Box Within) Best(Box bounds, Place size, Box room)
    {
        int[] sides = [Up(size.XMm), Up(size.YMm), Up(size.ZMm)];
        var way = Ways.MinBy(w => Enumerable.Range(0, 3).Sum(axis => Math.Max(0, sides[w[axis]] - bounds.Length(axis))))!;
        var (x, y, z) = (sides[way[0]], sides[way[1]], sides[way[2]]);
        var within = Grown(bounds, x, y, z).Common(room);
        // against a wall the room cuts some of it off; it grows inwards instead, and is never less than the folded part
        return (new(0, 0, 0, x, y, z), within.Around(new(
            Math.Min(within.X0, room.X1 - x), Math.Min(within.Y0, room.Y1 - y), Math.Min(within.Z0, room.Z1 - z),
            Math.Min(within.X0, room.X1 - x) + x, Math.Min(within.Y0, room.Y1 - y) + y, Math.Min(within.Z0, room.Z1 - z) + z)));
    }

    private static Box Grown(Box box, int x, int y, int z)
    {
        var (dx, dy, dz) = (Math.Max(0, x - box.Length(0)), Math.Max(0, y - box.Length(1)), Math.Max(0, z - box.Length(2)));
        return new(box.X0 - dx, box.Y0 - dy, box.Z0 - dz, box.X1 + dx, box.Y1 + dy, box.Z1 + dz);
    }

    private static int Up(double mm) => (int)Math.Ceiling(mm);
}
