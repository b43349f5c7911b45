using Wainwright.Methods.Reach;

namespace Wainwright.Published.Reach;

public sealed class ToolRoomTests
{
    // Source:    roymech.co.uk head clearances: M8 heads 30 mm apart at least.
    // Seen:      the page's table.
    // Tolerance: exact.
    [Fact]
    public void Hexagon_heads_in_a_row_are_free_at_the_tabled_pitch_and_not_below()
    {
        Assert.True(SpannerRoom.FreeInARow(8, 30));
        Assert.False(SpannerRoom.FreeInARow(8, 29));
    }

    // Source:    the same: M6 a 14, b 10, c 15 mm.
    // Seen:      the page's table, not the figure that defines the letters: the largest counts.
    // Tolerance: exact.
    [Fact]
    public void A_nut_close_to_a_wall_does_not_take_every_spanner()
    {
        Assert.False(SpannerRoom.AnySpannerBesideWall(6, 13));
        Assert.True(SpannerRoom.AnySpannerBesideWall(6, 15));
    }

    // Source:    NUREG-0700 rev. 3, table 11.4: functional reach of the small woman 67.7 cm, shoulder pushed forward 73.5 cm.
    // Seen:      the table.
    // Tolerance: exact.
    [Theory]
    [InlineData(677, StandingReach.Within.Reach)]
    [InlineData(735, StandingReach.Within.ExtendedReach)]
    [InlineData(850, StandingReach.Within.Neither)]
    public void A_small_woman_reaches_as_far_as_the_table_says(double fromWallMm, StandingReach.Within within) =>
        Assert.Equal(within, StandingReach.At(StandingReach.Person.SmallWoman, fromWallMm));

    // Source:    Ergonomics 2007, maximum screwdriving torque: plastic handle 15 % less than rubber; horizontal 4.69 of 5.9 N m.
    // Seen:      the abstract.
    // Tolerance: half of the last place of the ratios 0.848 and 0.795.
    [Fact]
    public void Handle_and_posture_cost_what_the_twelve_men_lost()
    {
        Assert.Equal(0.848, HandTorque.WithHandleNm(false) / HandTorque.WithHandleNm(true), tolerance: 0.0005);
        Assert.Equal(0.795, HandTorque.MeanNm(HandTorque.Work.Horizontal) / HandTorque.MeanNm(HandTorque.Work.Vertical), tolerance: 0.0005);
    }

    // Source:    MIL-STD-1472E, 5.9.10.5: above 14 N m external hexagon; cross recess only as wood screw or as bought in.
    // Seen:      a scan of the page.
    // Tolerance: exact.
    [Fact]
    public void A_cross_recess_suits_a_wood_screw_and_not_a_tight_bolt()
    {
        Assert.False(FastenerRules.Suits(FastenerRules.Drive.SlotOrCross, 18));
        Assert.True(FastenerRules.Suits(FastenerRules.Drive.SlotOrCross, 6, isWoodScrew: true));
        Assert.True(FastenerRules.Suits(FastenerRules.Drive.ExternalHexagon, 18));
    }

    // Source:    MIL-STD-1472E, 5.9.10.6: room for hand and tool also when the fastener is loose, so the whole of it must come out.
    // Seen:      a scan of the page; the figures of the case are ours.
    // Tolerance: exact.
    [Fact]
    public void A_screw_longer_than_the_room_before_its_head_cannot_be_drawn() => Assert.Equal(5, FastenerRules.ShortToDrawMm(45, 40));
}
