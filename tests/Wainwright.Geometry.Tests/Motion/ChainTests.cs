namespace Wainwright.Geometry.Tests.Motion;

/// <summary>Limbs against a plain walk, place by place, of everything a chain may do.</summary>
public class ChainTests
{
    private const int Items = 5, Room = 8, Wall = 1;

    private static readonly Shell Van = new(new(0, 0, 0, Room, Room, Room), Wall, [new("door", Heading.PlusX, new(0, 1, 0, 0, Room - 1, Room - 1))], [new(0, 0, 0, 2, 2, 3)]);

    private sealed record Scene(IReadOnlyList<Obstacle> Obstacles, IReadOnlyList<Box> Links, IReadOnlyList<Box> Starts, IReadOnlyList<Tether> Tethers, ItemSet Gone);

    /// <param name="seed">Of the chances.</param>
    /// <param name="isFar">Whether it begins apart from the core, and its tethers let it go farther; more is gone then.</param>
    private static Scene Make(int seed, bool isFar = false)
    {
        var chance = new Random(seed);
        Box Within(int most)
        {
            int[] low = [chance.Next(Room), chance.Next(Room), chance.Next(Room)];
            int Long() => 1 + chance.Next(most);
            return new(low[0], low[1], low[2], Math.Min(Room, low[0] + Long()), Math.Min(Room, low[1] + Long()), Math.Min(Room, low[2] + Long()));
        }
        var obstacles = Enumerable.Range(0, Items).Select(i => new Obstacle(i, [Within(6), Within(6)])).ToList();
        var links = new List<Box> { new(0, 0, 0, 1, 1, 1), new(-1, -1, -1, 1, 1, 1), new(-1, -1, -1, 2, 2, 2) }.Skip(chance.Next(2)).ToList();
        var at = Within(2);
        var core = new Box(at.X0, at.Y0, at.Z0, at.X0 + chance.Next(2), at.Y0, at.Z0);
        var range = 1 + (isFar ? 8 : 3) * chance.NextDouble();
        IReadOnlyList<Tether> tethers = [.. Enumerable.Range(0, links.Count - 1).Select(i => new Tether(core, range + 2.0 * i))];
        return new(obstacles, links, [isFar ? Within(2) : at], tethers, ItemSet.Of(Items, Enumerable.Range(0, Items).Where(_ => chance.Next(3) == 0 || (isFar && chance.Next(2) == 0))));
    }

    private static Answer Ask(Scene scene, ItemSet gone) =>
        new Chain(scene.Links, scene.Obstacles, Van).Reach(gone, new(Items), scene.Starts, scene.Tethers);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_chain_gets_out_exactly_when_a_plain_walk_does_and_its_ways_and_walls_are_proofs(bool isFar)
    {
        var (out_, stuck) = (0, 0);
        for (var seed = 0; seed < 400; seed++)
        {
            var scene = Make(seed, isFar);
            var expected = Walk(scene, scene.Gone);
            switch (Ask(scene, scene.Gone))
            {
                case WayOut way:
                    out_++;
                    Assert.True(expected, $"seed {seed}");
                    Assert.True(way.Through.IsWithin(scene.Gone));
                    Assert.True(Walk(scene, way.Through), $"seed {seed}: what the way passes through is enough");
                    break;
                case Stuck held:
                    stuck++;
                    Assert.False(expected, $"seed {seed}");
                    Assert.False(held.Wall.Meets(scene.Gone));
                    Assert.False(Walk(scene, ItemSet.All(Items).Without(held.Wall)), $"seed {seed}: the wall alone holds it");
                    break;
            }
        }
        Assert.True(out_ > 30 && stuck > 30, $"{out_} out, {stuck} stuck");
    }

    [Fact]
    public void The_more_is_gone_the_more_gets_out()
    {
        for (var seed = 200; seed < 400; seed++)
        {
            var scene = Make(seed);
            var chain = new Chain(scene.Links, scene.Obstacles, Van);
            var (gone, wasOut) = (new ItemSet(Items), false);
            for (var item = 0; item <= Items; item++)
            {
                var isOut = chain.Reach(gone, new(Items), scene.Starts, scene.Tethers) is WayOut;
                Assert.True(isOut || !wasOut, $"seed {seed}");
                wasOut = isOut;
                if (item < Items) gone.Add((item * 3 + seed) % Items);
            }
        }
    }

    [Fact]
    public void Tethers_about_different_cores_are_refused()
    {
        var chain = new Chain([new(0, 0, 0, 1, 1, 1), new(0, 0, 0, 1, 1, 1), new(0, 0, 0, 1, 1, 1)], [], Van);
        Box at = new(1, 1, 1, 1, 1, 1);

        Assert.Throws<ArgumentException>(() => chain.Reach(new(0), new(0), [at], [new(at, 5), new(at.Moved(1, 0, 0), 5)]));
    }

    /// <summary>Every half millimetre of every link, from place to place beside it and from link to link on the spot.</summary>
    private static bool Walk(Scene scene, ItemSet gone)
    {
        var boxes = scene.Obstacles.Where(o => !gone.Has(o.Item)).SelectMany(o => o.Boxes).Concat(Van.Blocks).ToList();
        const int Low = -2 * (Wall + 4), High = 2 * (Room + Wall + 4);
        var seen = new HashSet<(int Link, int X, int Y, int Z)>();
        var open = new Queue<(int Link, int X, int Y, int Z)>();
        foreach (var start in scene.Starts)
            for (var x = 2 * start.X0; x <= 2 * start.X1; x++)
                for (var y = 2 * start.Y0; y <= 2 * start.Y1; y++)
                    for (var z = 2 * start.Z0; z <= 2 * start.Z1; z++) Try(0, x, y, z);
        while (open.TryDequeue(out var at))
        {
            if (at.Link == scene.Links.Count - 1 && IsOutside(scene.Links[at.Link], at.X / 2.0, at.Y / 2.0, at.Z / 2.0)) return true;
            if (at.Link < scene.Links.Count - 1) Try(at.Link + 1, at.X, at.Y, at.Z);
            foreach (var (dx, dy, dz) in new[] { (1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0), (0, 0, 1), (0, 0, -1) }) Try(at.Link, at.X + dx, at.Y + dy, at.Z + dz);
        }
        return false;

        void Try(int link, int x, int y, int z)
        {
            if (x < Low || y < Low || z < Low || x > High || y > High || z > High) return;
            if (link < scene.Tethers.Count && Distance(scene.Tethers[link].CoreMm, x, y, z) > scene.Tethers[link].RangeMm) return;
            if (!seen.Add((link, x, y, z))) return;
            var (b, dx, dy, dz) = (scene.Links[link], x / 2.0, y / 2.0, z / 2.0);
            if (boxes.Exists(o => b.X0 + dx < o.X1 && o.X0 < b.X1 + dx && b.Y0 + dy < o.Y1 && o.Y0 < b.Y1 + dy && b.Z0 + dz < o.Z1 && o.Z0 < b.Z1 + dz)) return;
            open.Enqueue((link, x, y, z));
        }
    }

    private static bool IsOutside(Box b, double dx, double dy, double dz)
    {
        var o = Van.Outside;
        return b.X1 + dx <= o.X0 || b.X0 + dx >= o.X1 || b.Y1 + dy <= o.Y0 || b.Y0 + dy >= o.Y1 || b.Z1 + dz <= o.Z0 || b.Z0 + dz >= o.Z1;
    }

    /// <summary>From the core to the nearest place of a cell: an odd one is all that lies between two whole millimetres.</summary>
    private static double Distance(Box core, int x, int y, int z)
    {
        static double Off(int half, int low, int high) => Math.Max(0, Math.Max(low - Math.Ceiling(half / 2.0), Math.Floor(half / 2.0) - high));
        var (a, b, c) = (Off(x, core.X0, core.X1), Off(y, core.Y0, core.Y1), Off(z, core.Z0, core.Z1));
        return Math.Sqrt(a * a + b * b + c * c);
    }
}
