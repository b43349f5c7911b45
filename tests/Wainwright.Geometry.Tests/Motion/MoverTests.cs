using Wainwright.Geometry;
using static Wainwright.Geometry.Tests.Motion.VanOfBlocks;

namespace Wainwright.Geometry.Tests.Motion;

// The instances and their verdicts were set up for this planner and checked by a second method (a plain walk on the lattice).
public class MoverTests
{
    [Fact]
    public void A_bar_slides_out_between_two_blocks_at_exactly_no_clearance()
    {
        var mover = Mover(Bar, new(1000, 0, 0, 4000, 950, 1700), new(1000, 1050, 0, 4000, 2000, 1700));

        var way = Assert.IsType<WayOut>(mover.Ask(new(2)));

        Assert.Equal("rear door", way.Gap!.Name);
        Assert.True(way.Through.IsEmpty);
    }

    [Fact]
    public void One_millimetre_too_little_holds_the_bar_and_the_wall_names_both_blocks()
    {
        Box[] blocks = [new(1400, 0, 0, 4000, 951, 2000), new(1000, 1050, 0, 4000, 2000, 2000)];
        var mover = Mover(Bar, blocks);

        var stuck = Assert.IsType<Stuck>(mover.Ask(new(2)));

        Assert.Equal([0, 1], stuck.Wall);
        Assert.Contains(mover.Hindrances(new(2)), h => h == new Hindrance(Heading.PlusX, 0, 100, 1, Heading.PlusY));
        Assert.IsType<WayOut>(mover.Ask(ItemSet.Of(2, 0)));
    }

    [Fact]
    public void A_block_as_high_as_the_room_passes_no_door()
    {
        var mover = Mover(new(1400, 0, 0, 4000, 951, 2000));

        Assert.True(Assert.IsType<Stuck>(mover.Ask(new(0))).Wall.IsEmpty);
    }

    [Fact]
    public void Another_way_round_is_found_when_the_straight_slot_is_too_narrow()
    {
        var mover = Mover(
            Bar, new(1400, 300, 0, 4000, 951, 1700), new(1400, 1050, 0, 4000, 1700, 1700),
            new(0, 1050, 0, 1300, 2000, 2000), new(0, 0, 0, 1300, 950, 2000));

        Assert.IsType<WayOut>(mover.Ask(new(4)));
    }

    [Theory]
    [InlineData(1801, false)]
    [InlineData(1800, true)]
    public void A_board_leaves_when_it_is_just_as_wide_as_the_door_and_not_a_millimetre_wider(int toY, bool leaves)
    {
        var mover = Mover(new(0, 200, 0, 1500, toY, 500));

        Assert.Equal(leaves, mover.Ask(new(0)) is WayOut);
    }

    [Fact]
    public void A_way_runs_straight_along_one_axis_at_a_time_and_ends_outside()
    {
        var mover = Mover(new(100, 0, 0, 400, 300, 1750));

        var way = mover.ShortWay(new(0))!;

        Assert.All(way.Path.Zip(way.Path.Skip(1)), leg =>
            Assert.Single(new[] { leg.Second.ShiftMm.XMm - leg.First.ShiftMm.XMm, leg.Second.ShiftMm.YMm - leg.First.ShiftMm.YMm, leg.Second.ShiftMm.ZMm - leg.First.ShiftMm.ZMm }, d => d != 0));
        Assert.Equal(4050 - 100, way.Path[^1].ShiftMm.XMm);
        Assert.Equal(new Point(0, 0, 0), way.Path[0].ShiftMm);
    }

    [Fact]
    public void A_way_names_the_gone_thing_whose_room_it_uses_and_holds_with_that_alone_gone()
    {
        var mover = Mover(Bar, new(1300, 0, 0, 1400, 2000, 2000), new(0, 0, 0, 100, 100, 100));

        var way = Assert.IsType<WayOut>(mover.Ask(ItemSet.All(2)));

        Assert.Equal([0], way.Through);
        Assert.IsType<WayOut>(mover.Ask(way.Through));
    }

    [Fact]
    public void Clearance_is_wanted_only_where_there_was_some_as_found()
    {
        Box[] runners = [new(1000, 0, 0, 4000, 950, 1700), new(1000, 1050, 0, 4000, 2000, 1700)];
        Box[] loose = [new(1000, 0, 0, 4000, 946, 1700), new(1000, 1054, 0, 4000, 2000, 1700)];
        Box[] slot = [new(1400, 0, 0, 4000, 946, 2000), new(1400, 1054, 0, 4000, 2000, 2000)];
        Mover With(Box bar, Box[] others) => new([bar], Obstacles(others), Van, new Fit(5, 0), Moves.Slides);

        Assert.IsType<WayOut>(With(Bar, runners).Ask(new(2)));
        Assert.IsType<WayOut>(With(Bar, loose).Ask(new(2)));
        // 4 mm on either side, but the bar must first be brought in line with the slot, so 5 are wanted
        Assert.IsType<Stuck>(With(Bar.Moved(0, 300, 0), slot).Ask(new(2)));
    }

    [Fact]
    public void An_overlap_of_a_measuring_error_counts_as_touching_and_a_larger_one_holds()
    {
        Box[] under = [new(900, 900, 0, 1400, 1100, 102)];
        Mover With(int shaveMm) => new([new(1000, 950, 100, 1300, 1050, 400)], Obstacles(under), Van, new Fit(0, shaveMm), Moves.Slides);

        Assert.IsType<WayOut>(With(2).Ask(new(1)));
        Assert.Equal([0], Assert.IsType<Stuck>(With(1).Ask(new(1))).Wall);
        Assert.Equal([(0, 2)], With(1).FoundWithin(new(1)));
        Assert.Empty(With(2).FoundWithin(new(1)));
    }

    [Fact]
    public void A_tall_panel_leaves_only_when_it_may_be_laid_down()
    {
        Box panel = new(1000, 100, 0, 1015, 845, 1900);
        Mover With(Moves moves) => new([panel], [], Van, Fit.Exact, moves);

        Assert.IsType<Stuck>(With(Moves.Slides).Ask(new(0)));
        var way = Assert.IsType<WayOut>(With(Moves.SlidesAndQuarterTurns).Ask(new(0)));
        Assert.NotEmpty(way.Path[^1].TurnedAbout);
    }

    [Fact]
    public void What_stands_where_the_panel_would_swing_holds_it()
    {
        Box panel = new(1000, 100, 0, 1015, 845, 1900);
        Box[] packed = [new(0, 0, 0, 1000, 2000, 1000), new(1015, 0, 0, 4000, 2000, 1000)];
        var mover = new Mover([panel], Obstacles(packed), Van, Fit.Exact, Moves.SlidesAndQuarterTurns);

        Assert.False(Assert.IsType<Stuck>(mover.Ask(new(2))).Wall.IsEmpty);
        Assert.IsType<WayOut>(mover.Ask(ItemSet.All(2)));
    }

    [Fact]
    public void A_folded_sheet_starts_anywhere_within_its_room()
    {
        var mover = FoldedIn(new(0, 0, 0, 4000, 2000, 100));

        Assert.IsType<WayOut>(mover.Ask(new(1)));
    }

    private static Mover FoldedIn(Box room) =>
        Geometry.Mover.Folded(new(0, 0, 0, 900, 100, 100), room, Obstacles(new Box(0, 0, 0, 2000, 2000, 1000)), Van);

    [Fact]
    public void A_garage_wall_close_behind_the_van_keeps_a_long_board_in()
    {
        Shell At(int? landingMm) => new(new(0, 0, 0, 4000, 2000, 2000), 50, [new("rear door", Heading.PlusX, new(0, 200, 0, 0, 1800, 1800), landingMm)], []);
        Box board = new(500, 500, 0, 3000, 700, 50);

        Assert.IsType<WayOut>(new Mover([board], [], At(2600), Fit.Exact, Moves.Slides).Ask(new(0)));
        Assert.IsType<Stuck>(new Mover([board], [], At(2400), Fit.Exact, Moves.Slides).Ask(new(0)));
    }
}
