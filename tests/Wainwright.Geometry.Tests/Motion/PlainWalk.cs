using Wainwright.Geometry;

namespace Wainwright.Geometry.Tests.Motion;

/// <summary>A walk over every half millimetre, one step along one axis at a time, with a plain overlap test.</summary>
/// <remarks>Written from the rules of the moves alone; nothing of the divided space is used.</remarks>
internal sealed class PlainWalk(IReadOnlyList<Box> moving, IReadOnlyList<Box> standing, Box outside, bool turns)
{
    private const int Far = 32, Side = 2 * Far + 1;

    private readonly List<Layer> layers = [];
    private readonly Queue<(int Layer, int X, int Y, int Z)> open = new();

    private sealed record Layer((int X, int Y, int Z) Size, IReadOnlyList<Box> Boxes)
    {
        public bool[] Seen { get; } = new bool[Side * Side * Side];
    }

    /// <summary>Whether it gets out.</summary>
    public bool GetsOut()
    {
        var around = Box.Around(moving);
        layers.Add(new((around.X1 - around.X0, around.Y1 - around.Y0, around.Z1 - around.Z0), moving));
        Come(0, 0, 0, 0);
        while (open.TryDequeue(out var at))
        {
            if (IsOut(layers[at.Layer].Boxes, at.X, at.Y, at.Z)) return true;
            Come(at.Layer, at.X + 1, at.Y, at.Z);
            Come(at.Layer, at.X - 1, at.Y, at.Z);
            Come(at.Layer, at.X, at.Y + 1, at.Z);
            Come(at.Layer, at.X, at.Y - 1, at.Z);
            Come(at.Layer, at.X, at.Y, at.Z + 1);
            Come(at.Layer, at.X, at.Y, at.Z - 1);
            for (var about = 0; turns && about < 3; about++) Turn(at, about);
        }
        return false;
    }

    private void Come(int layer, int x, int y, int z)
    {
        if (Math.Abs(x) > Far || Math.Abs(y) > Far || Math.Abs(z) > Far) return;
        ref var seen = ref layers[layer].Seen[((x + Far) * Side + y + Far) * Side + z + Far];
        if (seen || !IsFree(layers[layer].Boxes, x, y, z)) return;
        seen = true;
        open.Enqueue((layer, x, y, z));
    }

    /// <summary>A quarter turn wherever a square block as wide as the diagonal, and a millimetre, is free.</summary>
    private void Turn((int Layer, int X, int Y, int Z) at, int about)
    {
        var (x, y, z) = layers[at.Layer].Size;
        var size = about switch { 0 => (x, z, y), 1 => (z, y, x), _ => (y, x, z) };
        if (size == (x, y, z)) return;
        static int Diagonal(int a, int b) => (int)Math.Ceiling(Math.Sqrt(a * a + b * b)) + 1;
        var sweep = about switch
        {
            0 => (x, Diagonal(y, z), Diagonal(y, z)),
            1 => (Diagonal(x, z), y, Diagonal(x, z)),
            _ => (Diagonal(x, y), Diagonal(x, y), z),
        };
        if (!IsFree([AboutMiddle(sweep)], at.X, at.Y, at.Z)) return;
        // boxes that fill their bounds in part are never known to lie as found again
        var to = layers.FindIndex(moving.Count > 1 ? 1 : 0, l => l.Size == size);
        if (to < 0)
        {
            to = layers.Count;
            layers.Add(new(size, [AboutMiddle(size)]));
        }
        Come(to, at.X, at.Y, at.Z);
    }

    private Box AboutMiddle((int X, int Y, int Z) size)
    {
        var around = Box.Around(moving);
        int From(int low, int high, int length) => (int)Math.Floor((low + high - length) / 2.0);
        var (x, y, z) = (From(around.X0, around.X1, size.X), From(around.Y0, around.Y1, size.Y), From(around.Z0, around.Z1, size.Z));
        return new(x, y, z, x + size.X, y + size.Y, z + size.Z);
    }

    private bool IsFree(IReadOnlyList<Box> boxes, int x, int y, int z)
    {
        foreach (var box in boxes)
            foreach (var block in standing)
                if (Overlap(box, block, x, y, z)) return false;
        return true;
    }

    private bool IsOut(IReadOnlyList<Box> boxes, int x, int y, int z) => !Overlap(Box.Around(boxes), outside, x, y, z);

    /// <summary>Overlap with the first box displaced by half millimetres.</summary>
    private static bool Overlap(in Box a, in Box b, int x, int y, int z) =>
        2 * a.X0 + x < 2 * b.X1 && 2 * b.X0 < 2 * a.X1 + x
        && 2 * a.Y0 + y < 2 * b.Y1 && 2 * b.Y0 < 2 * a.Y1 + y
        && 2 * a.Z0 + z < 2 * b.Z1 && 2 * b.Z0 < 2 * a.Z1 + z;
}
