using Wainwright.Geometry;

namespace Wainwright.Geometry.Tests.Tilting;

public class TilterTests
{
    private static readonly TiltBudget Usual = new(20_000, 13);

    // 1600 high in front of an opening 1500 high, in a van too low and too narrow to lay it down
    private static readonly Shell Tall = new(new(0, 0, 0, 2400, 1200, 1660), 40, [new("side door", Heading.PlusY, new(800, 0, 0, 1600, 0, 1500))], []);
    private static readonly Box Tank = new(300, 300, 0, 800, 700, 1600);

    // a flat tray in a stand whose upper edge is turned inwards all round
    private static readonly Shell Low = new(new(0, 0, 0, 2900, 1680, 1390), 40, [new("rear doors", Heading.PlusX, new(0, 140, 0, 0, 1540, 1290))], []);
    private static readonly Box Tray = new(2467, 1205, 13, 2845, 1625, 23);
    private static readonly Box[] Stand =
    [
        new(2465, 1195, 12, 2865, 1197, 285), new(2863, 1197, 12, 2865, 1645, 260), new(2465, 1635, 12, 2478, 1645, 285), new(2790, 1643, 12, 2863, 1645, 285),
        new(2465, 1195, 285, 2485, 1630, 287), new(2465, 1630, 285, 2478, 1645, 287), new(2845, 1195, 285, 2865, 1550, 287), new(2845, 1590, 285, 2865, 1645, 287),
        new(2485, 1195, 285, 2520, 1250, 287), new(2485, 1590, 285, 2520, 1630, 287), new(2805, 1195, 285, 2845, 1250, 287), new(2805, 1590, 285, 2845, 1645, 287),
        new(2422, 1190, 12, 2440, 1660, 290), new(20, 10, 0, 2870, 1670, 12),
    ];

    [Fact]
    public void A_tank_taller_than_the_door_comes_out_tilted_though_no_slide_or_quarter_turn_takes_it_out()
    {
        Assert.IsType<Stuck>(new Mover([Tank], [], Tall, Fit.Exact, Moves.SlidesAndQuarterTurns).Ask(new(0)));

        var way = Assert.IsType<TiltedWay>(Ask(Tall, Tank, [], Fit.Exact));

        Assert.Equal("side door", way.Gap?.Name);
        AssertClear(way, Tank, Tall, []);
    }

    [Fact]
    public void The_gap_it_leaves_by_is_named_though_it_stands_in_another_nearly_all_the_way()
    {
        // wider than the room, it stands 20 into a recess that runs along the whole of one side and leads nowhere
        var shell = new Shell(
            new(0, 0, 0, 2400, 400, 1660), 40, [new("recess", Heading.PlusY, new(0, 0, 0, 2440, 0, 1660), 0), new("rear door", Heading.PlusX, new(0, 0, 0, 0, 440, 1500))], []);

        Assert.Equal("rear door", Assert.IsType<TiltedWay>(Ask(shell, new(300, 0, 0, 700, 420, 1600), [], Fit.Exact)).Gap?.Name);
    }

    [Fact]
    public void Lower_by_the_height_it_swings_through_no_tilt_is_found_and_the_tries_are_told()
    {
        // upright it is 1600, on its way down at least 1649: the square root of 1600² + 400²
        var shell = new Shell(new(0, 0, 0, 2400, 1200, 1640), 40, Tall.Gaps, []);

        Assert.Equal(3000, Assert.IsType<NoneFound>(Ask(shell, Tank, [], Fit.Exact, new(3000, 1))).Tries);
    }

    [Fact]
    public void A_tray_tilts_out_from_under_edges_that_hold_it_flat()
    {
        var obstacles = Stand.Select((box, i) => new Obstacle(i, [box])).ToList();
        Assert.IsType<Stuck>(new Mover([Tray], obstacles, Low, Fit.Exact, Moves.SlidesAndQuarterTurns).Ask(new(Stand.Length)));

        var way = Assert.IsType<TiltedWay>(Ask(Low, Tray, Stand, Fit.Exact));

        Assert.True(way.Through.IsEmpty);
        AssertClear(way, Tray, Low, Stand);
    }

    [Fact]
    public void Room_asked_for_is_kept_all_along_where_it_lies_tilted()
    {
        var way = Assert.IsType<TiltedWay>(Ask(Tall, Tank, [], new Fit(4, 0), new(20_000, 17)));

        Assert.True(way.ClearMm >= 4);
        var legs = way.Path.Zip(way.Path.Skip(1)).ToList();
        var tips = legs.Select(leg => Math.Abs(leg.Second.Attitude.After(leg.First.Attitude.Back).X) > 0.01).ToList(); // about x: only tilted through the door
        var tilted = way.Path.Skip(tips.IndexOf(true)).Take(tips.LastIndexOf(true) - tips.IndexOf(true) + 2).ToList();
        Assert.True(tilted.Count > 1);
        // a box grown by 2 lies within 2 · √3, less than 4, of the tank
        Assert.Null(DenseReplay.Collision(tilted, [Separating.Of(Tank.Grown(2))], Middle(Tank), [.. Tall.Blocks.Select(Separating.Of)]));
    }

    [Fact]
    public void The_same_seed_gives_the_same_way_and_another_seed_another()
    {
        TiltedWay With(int seed) => Assert.IsType<TiltedWay>(Ask(Tall, Tank, [], Fit.Exact, new(20_000, seed)));

        Assert.Equal(With(13).Path, With(13).Path);
        Assert.NotEqual(With(13).Path, With(14).Path);
    }

    [Fact]
    public void A_way_names_what_of_the_gone_it_passes_through_and_holds_with_those_alone_gone()
    {
        Box[] others = [new(900, 800, 0, 1500, 1150, 900), new(1900, 100, 0, 2300, 400, 400)];

        var answer = Ask(Tall, Tank, others, Fit.Exact, Usual, ItemSet.All(2));

        var way = Assert.IsType<TiltedWay>(answer);
        Assert.Contains(0, way.Through);
        AssertClear(way, Tank, Tall, [.. others.Where((_, i) => !way.Through.Has(i))]);
    }

    [Fact]
    public void What_stands_in_something_by_its_measures_is_not_tried_at_all() =>
        Assert.Equal(0, Assert.IsType<NoneFound>(Ask(Tall, Tank, [new(700, 600, 0, 900, 800, 900)], Fit.Exact)).Tries);

    [Fact]
    public void A_search_that_is_stopped_says_how_far_it_came()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        var tilter = new Tilter([Tank], [Convex.Of(Tank)], [], [], Tall, Fit.Exact);

        Assert.Equal(0, Assert.IsType<NoneFound>(tilter.Ask(new(0), Usual, stop.Token)).Tries);
    }

    private static TiltAnswer Ask(Shell shell, Box load, Box[] others, Fit fit, TiltBudget? budget = null, ItemSet? gone = null)
    {
        var obstacles = others.Select((box, i) => new Obstacle(i, [box])).ToList();
        var tilter = new Tilter([load], [Convex.Of(load)], obstacles, [.. others.Select((box, i) => (i, Convex.Of(box)))], shell, fit);
        return tilter.Ask(gone ?? new(others.Length), budget ?? Usual, TestContext.Current.CancellationToken);
    }

    private static void AssertClear(TiltedWay way, Box load, Shell shell, Box[] standing)
    {
        Assert.Equal(Posture.AsFound, way.Path[0]);
        Assert.Null(DenseReplay.Collision(way.Path, [Separating.Of(load)], Middle(load), [.. shell.Blocks.Concat(standing).Select(Separating.Of)]));
        Assert.True(DenseReplay.EndsOutside(way.Path, [Separating.Of(load)], Middle(load), shell.Outside));
    }

    private static (double X, double Y, double Z) Middle(Box box) => ((box.X0 + box.X1) / 2.0, (box.Y0 + box.Y1) / 2.0, (box.Z0 + box.Z1) / 2.0);
}
