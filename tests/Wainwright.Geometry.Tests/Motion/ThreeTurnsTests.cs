using Wainwright.Geometry;

namespace Wainwright.Geometry.Tests.Motion;

/// <summary>Three rooms, each too tight for all turns but one, so that a thing comes to the last as wide, deep and high as found but lying a quarter turned.</summary>
public class ThreeTurnsTests
{
    private static readonly Shell Van = new(new(0, 0, 0, 16, 14, 8), 1, [new("hatch", Heading.PlusZ, new(0, 0, 0, 16, 14, 0)), new("door", Heading.PlusX, new(0, 0, 0, 0, 14, 8))], []);

    // 4 deep, 4 wide and 3 high; one arm half as thick as the other, so that it is no mirror image of itself
    private static readonly Box[] Angle = [new(0, 0, 0, 1, 4, 3), new(1, 0, 0, 4, 2, 3)];

    private static readonly Box[] Rooms =
    [
        new(0, 0, 0, 4, 6, 6), // about x only
        new(4, 0, 0, 8, 3, 4), // 3 wide and 4 high
        new(8, 0, 0, 14, 6, 4), // about z only
        new(8, 6, 0, 11, 10, 4), // 3 deep and 4 high
        new(8, 10, 0, 14, 14, 6), // about y only
    ];

    [Fact]
    public void Turned_about_three_axes_in_turn_an_angle_does_not_pass_a_slot_cut_for_it_as_found() =>
        Assert.IsType<Stuck>(Ask(Angle, [.. Angle.Select(b => Up(b.Moved(8, 10, 0)))]));

    [Fact]
    public void By_those_turns_it_comes_out_of_a_low_door_that_takes_its_bounds_as_wide_and_high_as_found()
    {
        var way = Assert.IsType<WayOut>(Ask(Angle, [new(14, 10, 0, 16, 14, 3)]));

        Assert.Equal([0, 2, 1], way.Path[^1].TurnedAbout);
    }

    [Fact]
    public void As_found_the_angle_passes_the_slot_cut_for_it() =>
        Assert.IsType<WayOut>(Ask([.. Angle.Select(b => b.Moved(8, 10, 0))], [.. Angle.Select(b => Up(b.Moved(8, 10, 0)))]));

    private static Box Up(Box footprint) => footprint with { Z0 = 0, Z1 = 8 };

    private static Answer Ask(IReadOnlyList<Box> moving, IReadOnlyList<Box> slot)
    {
        IEnumerable<Box> solid = [Van.Room];
        foreach (var hollow in Rooms.Concat(slot)) solid = [.. solid.SelectMany(b => b.Without(hollow))];
        return new Mover(moving, [new Obstacle(0, [.. solid])], Van, Fit.Exact, Moves.SlidesAndQuarterTurns).Ask(new(1));
    }
}
