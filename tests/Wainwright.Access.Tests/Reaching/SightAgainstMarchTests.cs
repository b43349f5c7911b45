using Wainwright.Fitout;
using Wainwright.Geometry;
using Place = Wainwright.Geometry.Point;

namespace Wainwright.Access.Tests.Reaching;

/// <summary>Straight lines against a march in small steps, and what is seen and reached as more and more is gone.</summary>
public class SightAgainstMarchTests
{
    private const int Parts = 6;
    private static readonly Shell Van = new(new(0, 0, 0, 2000, 1400, 1600), 40, [new("rear", Heading.PlusX, new(0, 200, 0, 0, 1200, 1600))], []);

    private static Crowd Make(Random chance)
    {
        var boxes = Enumerable.Range(0, Parts).Select(i =>
        {
            // the first is a small thing in a corner, the others stand round it
            if (i == 0) return new Box(0, 0, 0, 80, 60, 50);
            var (x, y, z) = (chance.Next(0, 120), chance.Next(0, 120), chance.Next(0, 120));
            return i % 3 == 0 ? new Box(x, 0, z, x + 40, 900, z + 1000) : i % 3 == 1 ? new Box(0, y + 60, 0, 1200, y + 100, 1500) : new Box(0, 0, z + 50, 1500, 1000, z + 90);
        }).ToList();
        return new(Van, [.. boxes.Select((b, i) => (PartAt(i, b), new Obstacle(i, [b])))], Parts);
    }

    private static Part PartAt(int i, Box b) => new()
    {
        Id = new PartId($"P{i}"),
        Name = "box",
        System = PartSystem.Furniture,
        Known = Known.Measured,
        Solids = [new BoxSolid { At = new(b.X0, b.Y0, b.Z0), Size = new(b.X1 - b.X0, b.Y1 - b.Y0, b.Z1 - b.Z0) }],
    };

    [Fact]
    public void A_line_meets_a_box_exactly_when_a_march_along_it_comes_as_near_as_it_is_thick()
    {
        var chance = new Random(7);
        var met = 0;
        for (var i = 0; i < 4000; i++)
        {
            Place At() => new(chance.Next(0, 400) / 2.0, chance.Next(0, 400) / 2.0, chance.Next(0, 400) / 2.0);
            var (x, y, z) = (chance.Next(0, 150), chance.Next(0, 150), chance.Next(0, 150));
            var box = new Box(x, y, z, x + chance.Next(1, 160), y + chance.Next(1, 160), z + chance.Next(1, 160));
            var stick = new Stick(At(), At(), i % 2 == 0 ? 0 : 5 + 20 * chance.NextDouble());
            var nearest = March(stick, box);
            if (nearest < stick.RadiusMm - 0.05 || (stick.RadiusMm == 0 && nearest < -0.05)) Assert.True(stick.Meets(box), $"{i}: {stick} {box}");
            if (nearest > stick.RadiusMm + 0.05) Assert.False(stick.Meets(box), $"{i}: {stick} {box}");
            if (stick.Meets(box)) met++;
        }
        Assert.InRange(met, 300, 3700);
    }

    /// <summary>Least distance to a box in steps of a twentieth of a millimetre; below nought as deep as the march gets inside.</summary>
    private static double March(Stick stick, Box box)
    {
        var along = stick.To - stick.From;
        var steps = (int)(20 * Math.Sqrt(along.Along(along))) + 1;
        var least = double.MaxValue;
        for (var i = 0; i <= steps; i++)
        {
            var p = stick.From.Towards(along, (double)i / steps);
            double[] beyond = [Math.Max(box.X0 - p.XMm, p.XMm - box.X1), Math.Max(box.Y0 - p.YMm, p.YMm - box.Y1), Math.Max(box.Z0 - p.ZMm, p.ZMm - box.Z1)];
            var off = Math.Sqrt(beyond.Sum(b => b > 0 ? b * b : 0));
            least = Math.Min(least, off > 0 ? off : beyond.Max());
        }
        return least;
    }

    [Fact]
    public void Who_sees_a_part_sees_it_along_a_line_that_a_march_finds_clear_and_whose_way_lists_all_it_crosses()
    {
        var (seen, hidden) = (0, 0);
        for (var seed = 0; seed < 60; seed++)
        {
            var chance = new Random(seed);
            var crowd = Make(chance);
            var target = crowd.Standing[0].Part;
            var sight = new Sight(crowd, Person.Anyone).Of(target);
            var gone = ItemSet.Of(Parts, Enumerable.Range(1, Parts - 1).Where(_ => chance.Next(4) >= seed % 4));
            switch (sight.Ask(gone, new(Parts)))
            {
                case WayOut way:
                    seen++;
                    Assert.True(way.Through.IsWithin(gone));
                    Assert.IsType<WayOut>(new Sight(crowd, Person.Anyone).Of(target).Ask(way.Through, new(Parts)));
                    var line = sight.Clear(gone)!;
                    // the head stands on a grid of 50 mm: the eye is where the line is, within 25 mm of its middle on each axis
                    var eye = Directions.Fine.SelectMany(d => new[] { 200, 300, 450, 650, 900, 1200, 1600, 2100 }.Select(mm => line.At.Towards(d, mm)))
                        .Where(e => Math.Abs(e.XMm - line.End.XMm) <= 25.01 && Math.Abs(e.YMm - line.End.YMm) <= 25.01 && Math.Abs(e.ZMm - line.End.ZMm) <= 25.01);
                    var standing = crowd.Around(target).Where(b => b.Item == Obstacle.Fixed || !gone.Has(b.Item)).Select(b => b.Box).ToList();
                    Assert.Contains(eye, e => standing.TrueForAll(b => March(new(line.At, e, 0), b) > -0.05));
                    break;
                case Stuck stuck:
                    hidden++;
                    Assert.False(stuck.Wall.Meets(gone));
                    Assert.IsType<Stuck>(new Sight(crowd, Person.Anyone).Of(target).Ask(ItemSet.All(Parts).Without(stuck.Wall), new(Parts)));
                    break;
            }
        }
        Assert.True(seen > 10 && hidden > 3, $"{seen} seen, {hidden} hidden");
    }

    [Fact]
    public void More_gone_never_makes_less_seen_or_reached()
    {
        for (var seed = 100; seed < 125; seed++)
        {
            var chance = new Random(seed);
            var crowd = Make(chance);
            var part = crowd.Standing[0].Part;
            RoomQuestion[] questions = [new Sight(crowd, Person.Anyone).Of(part).Ask, new Arm(crowd, Person.Anyone).Onto(part).Ask, new HandReach(crowd, Person.Anyone).Touching(part)];
            foreach (var ask in questions)
            {
                var (gone, was) = (new ItemSet(Parts), false);
                foreach (var next in Enumerable.Range(1, Parts - 1).OrderBy(_ => chance.Next()).Append(-1))
                {
                    var open = ask(gone, new(Parts)) is WayOut;
                    Assert.True(open || !was, $"seed {seed}");
                    was = open;
                    if (next >= 0) gone.Add(next);
                }
            }
        }
    }
}
