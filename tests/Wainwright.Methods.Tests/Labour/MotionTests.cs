using CsCheck;
using Wainwright.Methods.Labour;
using static Wainwright.Methods.Labour.ReachAndMove;

namespace Wainwright.Methods.Tests.Labour;

public sealed class MotionTests
{
    [Theory]
    [InlineData(Case.ReachB, 12, 0, 12.9)]
    [InlineData(Case.MoveB, 12, 10, 18.774)]
    [InlineData(Case.MoveC, 30, 0, 30.7)]
    [InlineData(Case.ReachA, 40, 0, 21.5)]
    public void The_card_is_read_by_inches_and_pounds(Case what, double inches, double pounds, double tmu) =>
        Assert.Equal(tmu, ReachAndMove.Of(new(what, inches * 25.4, pounds * 0.45359237)).Tmu, tolerance: 1e-9);

    [Fact]
    public void A_longer_motion_never_takes_less_time() =>
        Gen.Select(Gen.Int[0, 6], Gen.Double[1, 1_500], Gen.Double[0, 500]).Sample((what, mm, more) =>
            Assert.True(ReachAndMove.Of(new((Case)what, mm + more)).Tmu >= ReachAndMove.Of(new((Case)what, mm)).Tmu));

    [Fact]
    public void Weight_slows_a_move_and_not_a_reach()
    {
        Assert.True(ReachAndMove.Of(new(Case.MoveB, 300, 5)).Tmu > ReachAndMove.Of(new(Case.MoveB, 300)).Tmu);
        Assert.Equal(ReachAndMove.Of(new(Case.ReachB, 300)).Tmu, ReachAndMove.Of(new(Case.ReachB, 300, 5)).Tmu);
    }

    [Fact]
    public void Beyond_the_weight_table_it_says_so() => Assert.NotEmpty(ReachAndMove.Of(new(Case.MoveB, 300, 30)).OutsideRange);

    [Fact]
    public void A_unit_is_36_thousandths_of_a_second() => Assert.Equal(0.4644, ReachAndMove.Of(new(Case.ReachB, 12 * 25.4)).Seconds, tolerance: 1e-9);

    // the card as transcribed: an index covers counts up to its figure, the next count takes the next index
    [Theory]
    [InlineData(1, 3)]
    [InlineData(2, 6)]
    [InlineData(4, 10)]
    [InlineData(6, 16)]
    [InlineData(10, 24)]
    [InlineData(17, 32)]
    [InlineData(18, 42)]
    [InlineData(30, null)]
    public void Wrist_turns_have_the_index_of_the_card(int turns, int? index) => Assert.Equal(index, ToolUse.Of(ToolUse.Motion.WristTurn, turns));

    [Fact]
    public void Four_arm_strokes_have_index_24() => Assert.Equal(24, ToolUse.Of(ToolUse.Motion.ArmStroke, 4));

    [Fact]
    public void More_turns_never_have_a_lower_index() =>
        Assert.All(Enum.GetValues<ToolUse.Motion>(), motion =>
        {
            var indices = Enumerable.Range(1, 70).Select(n => ToolUse.Of(motion, n) ?? int.MaxValue).ToList();
            Assert.Equal(indices.Order(), indices);
        });

    [Theory]
    [InlineData(5, 3)]
    [InlineData(6, 3)]
    [InlineData(10, 6)]
    [InlineData(30, null)]
    public void A_driver_goes_by_thread(double mm, int? index) => Assert.Equal(index, ToolUse.OfPowerDriver(mm));

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ReachAndMove.Of(new(Case.ReachA, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ToolUse.Of(ToolUse.Motion.Tap, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => ToolUse.OfPowerDriver(-1));
    }
}
