using Wainwright.Geometry;

namespace Wainwright.Geometry.Tests.Motion;

/// <summary>The exact answer against the plain walk, a thousand small rooms for each kind of shape, no difference.</summary>
public class PlainWalkByShapeTests
{
    private const int Rooms = 1000;

    private static readonly Shell Room = new(new(0, 0, 0, 11, 8, 7), 1, [new("door", Heading.PlusX, new(0, 1, 0, 0, 5, 5)), new("side", Heading.PlusY, new(4, 0, 1, 8, 0, 5))], []);

    [Fact]
    public void Boxes() => Compare(801, Moves.Slides, OneBox);

    [Fact]
    public void Unions_of_boxes() => Compare(802, Moves.Slides, (random, taken) => Body.Union([OneBox(random, taken), OneBox(random, taken)]));

    [Fact]
    public void Boxes_that_may_be_turned_by_quarters() => Compare(803, Moves.SlidesAndQuarterTurns, LongBox, OneBox);

    [Fact]
    public void Unions_of_boxes_that_may_be_turned_by_quarters() => Compare(806, Moves.SlidesAndQuarterTurns, Corner, OneBox);

    [Fact]
    public void Cylinders_by_the_boxes_that_hold_them() => Compare(804, Moves.Slides, Cylinder);

    [Fact]
    public void Prisms_by_the_boxes_that_hold_them() => Compare(805, Moves.Slides, Prism);

    private static void Compare(int seed, Moves moves, Func<Random, List<Box>, Body> load, Func<Random, List<Box>, Body>? other = null)
    {
        var random = new Random(seed);
        var (ways, stuck) = (0, 0);
        for (var n = 0; n < Rooms; n++)
        {
            var taken = new List<Box>();
            var moving = load(random, taken);
            var others = Enumerable.Range(0, random.Next(1, 6)).Select(_ => (other ?? load)(random, taken)).ToList();

            var gets = Ask(moving.Outer, [.. others.Select(o => o.Outer)], moves);

            Assert.Equal(new PlainWalk(moving.Outer, [.. others.SelectMany(o => o.Outer), .. Room.Blocks], Room.Outside, moves != Moves.Slides).GetsOut(), gets);
            // taken as large as can be it never passes where, taken as small as can be, it does not
            if (gets && moving.Inner.Count > 0 && !moving.IsExact) Assert.True(Ask(moving.Inner, [.. others.Select(o => o.Inner)], moves));
            if (gets) ways++;
            else stuck++;
        }
        Assert.True(ways > 100 && stuck > 100, $"{ways} ways, {stuck} stuck");
    }

    private static bool Ask(IReadOnlyList<Box> moving, IReadOnlyList<IReadOnlyList<Box>> others, Moves moves) =>
        new Mover(moving, [.. others.Select((boxes, i) => new Obstacle(i, boxes))], Room, Fit.Exact, moves).Ask(new(others.Count)) is WayOut;

    private static Body OneBox(Random random, List<Box> taken) => Body.Of(Free(random, taken, r => (r.Next(1, 6), r.Next(1, 6), r.Next(1, 6))));

    private static Body LongBox(Random random, List<Box> taken) => Body.Of(Free(random, taken, r => (r.Next(1, 4), r.Next(1, 7), r.Next(3, 7))));

    /// <summary>An L as deep as it is wide.</summary>
    private static Body Corner(Random random, List<Box> taken)
    {
        var b = Free(random, taken, r => r.Next(2, 5) is var d ? (d, d, r.Next(1, 6)) : default);
        return Body.Union([Body.Of(b with { X1 = b.X0 + 1 }), Body.Of(b with { Y1 = b.Y0 + 1 })]);
    }

    private static Body Cylinder(Random random, List<Box> taken)
    {
        var bounds = Free(random, taken, r => r.Next(3, 7) is var d ? (d, d, r.Next(1, 6)) : default);
        var radius = (bounds.X1 - bounds.X0) / 2.0;
        return Body.Cylinder(2, (bounds.X0 + radius, bounds.Y0 + radius), radius, bounds.Z0, bounds.Z1, default);
    }

    private static Body Prism(Random random, List<Box> taken)
    {
        var b = Free(random, taken, r => (r.Next(3, 7), r.Next(1, 5), r.Next(3, 6)));
        return Body.Prism(1, [(b.X0, b.Z0), (b.X1, b.Z0), random.Next(2) == 0 ? (b.X0, b.Z1) : (b.X1, b.Z1)], b.Y0, b.Y1, default);
    }

    /// <summary>A place for a thing within the room that nothing has taken; in a full room a smaller one.</summary>
    private static Box Free(Random random, List<Box> taken, Func<Random, (int X, int Y, int Z)> size)
    {
        for (var tries = 0; ; tries++)
        {
            var (x, y, z) = tries < 60 ? size(random) : (1, 1, 1);
            var (x0, y0, z0) = (random.Next(0, 12 - x), random.Next(0, 9 - y), random.Next(0, 8 - z));
            var box = new Box(x0, y0, z0, x0 + x, y0 + y, z0 + z);
            if (taken.Exists(box.Overlaps)) continue;
            taken.Add(box);
            return box;
        }
    }
}
