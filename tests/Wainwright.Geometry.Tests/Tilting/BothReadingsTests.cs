using Wainwright.Geometry;

namespace Wainwright.Geometry.Tests.Tilting;

/// <summary>What is found and what is proved impossible never meet, over small rooms made up by seed.</summary>
public class BothReadingsTests
{
    private sealed record Made(Shell Shell, Body Load, Convex Exact, Separating.Polytope Within, List<(Box Box, Convex Exact)> Others);

    [Fact]
    public void No_way_is_found_exactly_or_tilted_for_a_load_whose_ball_is_proved_to_stay()
    {
        var random = new Random(3107);
        var (exact, tilted, impossible, open) = (0, 0, 0, 0);
        for (var n = 0; n < 100; n++)
        {
            var made = Room(random);
            var obstacles = made.Others.Select((o, i) => new Obstacle(i, [o.Box])).ToList();
            var gone = new ItemSet(obstacles.Count);
            var proved = Ball.LargestIn([made.Exact], made.Load.Inner) is { } ball && ball.Leaves(obstacles, made.Shell, gone) is Stuck;
            var slides = new Mover(made.Load.Outer, obstacles, made.Shell, Fit.Exact, Moves.SlidesAndQuarterTurns).Ask(gone) is WayOut;
            var way = slides ? null : Tilter(made, obstacles).Ask(gone, new(proved ? 100 : 800, n), TestContext.Current.CancellationToken) as TiltedWay;

            Assert.False(proved && (slides || way is not null), $"room {n}: found and proved impossible");
            if (way is not null) AssertClear(made, way, n);
            if (slides) exact++;
            else if (way is not null) tilted++;
            else if (proved) impossible++;
            else open++;
        }
        // each answer must have been met, or nothing was shown
        Assert.True(exact > 10 && tilted > 3 && impossible > 10 && open > 0, $"{exact} exact, {tilted} tilted, {impossible} impossible, {open} open");
    }

    [Theory]
    [InlineData(599, true)]
    [InlineData(600, true)]
    [InlineData(601, false)]
    public void A_cube_a_millimetre_too_thick_is_proved_to_stay_and_one_of_the_door_s_width_is_not(int sideMm, bool passes)
    {
        var shell = new Shell(new(0, 0, 0, 2000, 1500, 1500), 40, [new("door", Heading.PlusX, new(0, 300, 0, 0, 900, 1200))], []);
        Box cube = new(200, 200, 0, 200 + sideMm, 200 + sideMm, sideMm);
        var ball = Ball.LargestIn([Convex.Of(cube)], [cube])!;

        Assert.Equal(sideMm / 2.0, ball.RadiusMm);
        Assert.Equal(passes, ball.Leaves([], shell, new(0)) is WayOut);
        Assert.Equal(passes ? 0 : 1, ball.ShortFor(shell.Gaps[0]));
    }

    [Fact]
    public void A_ball_that_stands_in_something_by_its_measures_proves_nothing_until_that_is_gone()
    {
        var shell = new Shell(new(0, 0, 0, 2000, 1500, 1500), 40, [new("door", Heading.PlusX, new(0, 300, 0, 0, 800, 1200))], []);
        Box cube = new(200, 200, 0, 900, 900, 700);
        var ball = Ball.LargestIn([Convex.Of(cube)], [cube])!;
        Obstacle[] into = [new(0, [new(500, 500, 300, 600, 600, 1000)])];

        Assert.IsType<WayOut>(ball.Leaves(into, shell, new(1)));
        Assert.IsType<Stuck>(ball.Leaves(into, shell, ItemSet.All(1)));
        Assert.IsType<WayOut>((ball with { MiddleMm = new(550, 300, 350) }).Leaves([], shell, new(0)));
    }

    [Fact]
    public void Pieces_that_make_up_a_box_hold_a_larger_ball_than_each_of_them()
    {
        Box[] halves = [new(0, 0, 0, 600, 300, 600), new(0, 300, 0, 600, 600, 600)];

        Assert.Equal(300, Ball.LargestIn([.. halves.Select(Convex.Of)], halves)!.RadiusMm);
    }

    private static Tilter Tilter(Made made, IReadOnlyList<Obstacle> obstacles) =>
        new(made.Load.Outer, [made.Exact], obstacles, [.. made.Others.Select((o, i) => (i, o.Exact))], made.Shell, Fit.Exact);

    private static void AssertClear(Made made, TiltedWay way, int room)
    {
        var bounds = made.Load.Bounds;
        (double, double, double) middle = ((bounds.X0 + bounds.X1) / 2.0, (bounds.Y0 + bounds.Y1) / 2.0, (bounds.Z0 + bounds.Z1) / 2.0);
        var standing = made.Shell.Blocks.Concat(made.Others.Where((_, i) => !way.Through.Has(i)).Select(o => o.Box)).Select(Separating.Of).ToArray();
        Assert.True(DenseReplay.Collision(way.Path, [made.Within], middle, standing) is null, $"room {room}: {DenseReplay.Collision(way.Path, [made.Within], middle, standing)}");
        Assert.True(DenseReplay.EndsOutside(way.Path, [made.Within], middle, made.Shell.Outside));
    }

    /// <summary>A low room with one door, a load about as large as the door, and a few things about.</summary>
    private static Made Room(Random random)
    {
        var (length, width, height) = (random.Next(900, 1900), random.Next(900, 1500), random.Next(900, 1500));
        var (wide, high) = (random.Next(400, 900), height - random.Next(20, 400));
        var from = random.Next(0, width - wide + 1);
        var shell = new Shell(new(0, 0, 0, length, width, height), 40, [new("door", Heading.PlusX, new(0, from, 0, 0, from + wide, high))], []);
        var (x, y, z) = (Math.Min(length - 100, wide + random.Next(-150, 250)), Math.Min(width, wide + random.Next(-100, 200)), random.Next(Math.Max(250, high - 350), height));
        // every second one is slim and nearly as high as the room: to be laid down it must go through the door meanwhile
        if (random.Next(2) == 0) (x, y, z) = (random.Next(200, 400), random.Next(wide / 2, wide), height - random.Next(10, 60));
        var at = new Box(100, random.Next(0, width - y + 1), 0, 0, 0, 0);
        at = at with { X1 = at.X0 + x, Y1 = at.Y0 + y, Z1 = z };
        var others = new List<(Box Box, Convex Exact)>();
        for (var i = random.Next(0, 3); i > 0; i--)
        {
            var (w, d, h) = (random.Next(100, 400), random.Next(100, 400), random.Next(100, 500));
            var (ox, oy) = (random.Next(0, length - w), random.Next(0, width - d));
            var box = new Box(ox, oy, 0, ox + w, oy + d, h);
            if (!box.Overlaps(at)) others.Add((box, Convex.Of(box)));
        }
        return random.Next(4) switch
        {
            0 => Round(shell, at with { Y1 = at.Y0 + Math.Min(x, y), X1 = at.X0 + Math.Min(x, y) }, others),
            1 => Wedge(shell, at, others),
            _ => new(shell, Body.Of(at), Convex.Of(at), Separating.Of(at), others),
        };
    }

    private static Made Round(Shell shell, Box at, List<(Box, Convex)> others)
    {
        var radius = (at.X1 - at.X0) / 2.0;
        var (x, y) = (at.X0 + radius, at.Y0 + radius);
        return new(
            shell, Body.Cylinder(2, (x, y), radius, at.Z0, at.Z1, default), Convex.Cylinder(2, (x, y), radius, at.Z0, at.Z1), Separating.Within(x, y, radius, at.Z0, at.Z1), others);
    }

    private static Made Wedge(Shell shell, Box at, List<(Box, Convex)> others)
    {
        (double, double)[] outline = [(at.X0, at.Y0), (at.X1, at.Y0), (at.X0, at.Y1)];
        return new(shell, Body.Prism(2, outline, at.Z0, at.Z1, default), Convex.Drawn(2, outline, at.Z0, at.Z1), Separating.Upright(outline, at.Z0, at.Z1), others);
    }
}
