using Wainwright.Geometry;

namespace Wainwright.Geometry.Tests.Motion;

/// <summary>The divided space against a plain walk over every half millimetre with a plain overlap test.</summary>
public class PlainWalkTests
{
    [Fact]
    public void Way_out_and_stuck_agree_with_a_walk_over_every_position()
    {
        var random = new Random(20260);
        var (ways, stuck) = (0, 0);
        for (var n = 0; n < 400; n++)
        {
            var (moving, others, shell) = Scene(random);
            var mover = new Mover(moving, [.. others.Select((b, i) => new Obstacle(i, b))], shell, Fit.Exact, Moves.Slides);
            var gone = ItemSet.Of(others.Count, Enumerable.Range(0, others.Count).Where(_ => random.Next(4) == 0));

            var answer = mover.Ask(gone);
            var standing = others.Where((_, i) => !gone.Has(i)).SelectMany(b => b).Concat(shell.Blocks).ToList();

            Assert.Equal(WalksOut(moving, standing, shell), answer is WayOut);
            if (answer is WayOut way)
            {
                ways++;
                Assert.True(IsClear(way, moving, standing));
                // with only those gone whose room it uses, it must still be a way
                Assert.True(IsClear(way, moving, [.. others.Where((_, i) => !way.Through.Has(i)).SelectMany(b => b), .. shell.Blocks]));
                Assert.IsType<WayOut>(mover.ShortWay(gone));
                Assert.True(IsClear(mover.ShortWay(gone)!, moving, standing));
            }
            else
            {
                stuck++;
                var wall = ((Stuck)answer).Wall;
                Assert.False(wall.Meets(gone));
                // the wall alone holds it
                Assert.False(WalksOut(moving, [.. others.Where((_, i) => wall.Has(i)).SelectMany(b => b), .. shell.Blocks], shell));
            }
        }
        Assert.InRange(ways, 100, 300);
        Assert.InRange(stuck, 100, 300);
    }

    private static (Box[] Moving, List<Box[]> Others, Shell Shell) Scene(Random random)
    {
        var shell = new Shell(new(0, 0, 0, 12, 9, 8), 1, [new("door", Heading.PlusX, new(0, 2, 0, 0, 6, 5)), new("side", Heading.PlusY, new(4, 0, 0, 8, 0, 4))], []);
        var taken = new List<Box>();
        Box[] Thing(int most)
        {
            var boxes = new List<Box>();
            for (var tries = 0; boxes.Count == 0 || (boxes.Count < 2 && tries < 4); tries++)
            {
                var (w, d, h) = (random.Next(1, most), random.Next(1, most), random.Next(1, most));
                var (x, y, z) = (random.Next(0, 13 - w), random.Next(0, 10 - d), random.Next(0, 9 - h));
                var box = new Box(x, y, z, x + w, y + d, z + h);
                if (taken.Exists(box.Overlaps)) continue;
                boxes.Add(box);
                taken.Add(box);
            }
            return [.. boxes];
        }
        var moving = Thing(5);
        return (moving, [.. Enumerable.Range(0, random.Next(2, 7)).Select(_ => Thing(6))], shell);
    }

    private static bool WalksOut(Box[] moving, List<Box> standing, Shell shell)
    {
        bool Free((int X, int Y, int Z) t) => !moving.Any(m => standing.Any(s => OverlapsHalf(m, t, s)));
        bool Out((int X, int Y, int Z) t) => !moving.Any(m => OverlapsHalf(Box.Around(moving), t, shell.Outside));
        if (!Free((0, 0, 0))) return false;
        var seen = new HashSet<(int, int, int)> { (0, 0, 0) };
        var open = new Queue<(int X, int Y, int Z)>(seen);
        while (open.TryDequeue(out var t))
        {
            if (Out(t)) return true;
            foreach (var (dx, dy, dz) in new[] { (1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0), (0, 0, 1), (0, 0, -1) })
            {
                var next = (X: t.X + dx, Y: t.Y + dy, Z: t.Z + dz);
                if (Math.Abs(next.X) > 40 || Math.Abs(next.Y) > 40 || Math.Abs(next.Z) > 40) continue;
                if (!seen.Contains(next) && Free(next))
                {
                    seen.Add(next);
                    open.Enqueue(next);
                }
            }
        }
        return false;
    }

    /// <summary>Overlap with the moving box displaced by half millimetres.</summary>
    private static bool OverlapsHalf(Box m, (int X, int Y, int Z) t, Box s) =>
        2 * m.X0 + t.X < 2 * s.X1 && 2 * s.X0 < 2 * m.X1 + t.X
        && 2 * m.Y0 + t.Y < 2 * s.Y1 && 2 * s.Y0 < 2 * m.Y1 + t.Y
        && 2 * m.Z0 + t.Z < 2 * s.Z1 && 2 * s.Z0 < 2 * m.Z1 + t.Z;

    private static bool IsClear(WayOut way, Box[] moving, List<Box> standing)
    {
        foreach (var (from, to) in way.Path.Zip(way.Path.Skip(1)))
        {
            (int X, int Y, int Z) Half(Waypoint w) => ((int)(2 * w.ShiftMm.XMm), (int)(2 * w.ShiftMm.YMm), (int)(2 * w.ShiftMm.ZMm));
            var (a, b) = (Half(from), Half(to));
            var steps = Math.Max(1, Math.Max(Math.Abs(a.X - b.X), Math.Max(Math.Abs(a.Y - b.Y), Math.Abs(a.Z - b.Z))));
            for (var i = 0; i <= steps; i++)
            {
                var t = (a.X + (b.X - a.X) * i / steps, a.Y + (b.Y - a.Y) * i / steps, a.Z + (b.Z - a.Z) * i / steps);
                if (moving.Any(m => standing.Any(s => OverlapsHalf(m, t, s)))) return false;
            }
        }
        return true;
    }
}
