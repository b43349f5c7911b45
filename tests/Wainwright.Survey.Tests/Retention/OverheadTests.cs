using Wainwright.Fitout;

namespace Wainwright.Survey.Tests.Retention;

public sealed class OverheadTests
{
    static Job Van(params Joint[] joints) => A.Van(A.Part("locker") with { Overhead = true, MassKg = 11 }) with { Joints = joints };

    static Joint Screws(FixingState state, int? inState = null, FixingType type = FixingType.WoodScrew) => new()
    {
        Id = new($"{type}-{state}"), Part = new("locker"), Type = type, Count = 8, State = state, StateCount = inState, Release = new() { Way = ReleaseWay.Unscrew }, Known = Known.Seen,
    };

    [Fact]
    public void All_sound_holds() => Assert.Equal(Verdict.Holds, Van(Screws(FixingState.Sound)).Check("overhead-fixings").Verdict);

    [Theory]
    [InlineData(FixingState.Missing)]
    [InlineData(FixingState.Sheared)]
    [InlineData(FixingState.Loose)]
    public void A_bad_fixing_falls_short(FixingState state)
    {
        var held = Van(Screws(state, 2)).Check("overhead-fixings");
        Assert.Equal(Verdict.FallsShort, held.Verdict);
        Assert.Equal(6, held.Capacity!.Value.Likely);
    }

    [Fact]
    public void Fixings_that_nobody_touched_cannot_tell() => Assert.Equal(Verdict.CannotTell, Van(Screws(FixingState.NotSeen)).Check("overhead-fixings").Verdict);

    [Fact]
    public void A_part_without_recorded_fixings_cannot_tell() => Assert.Equal(Verdict.CannotTell, Van().Check("overhead-fixings").Verdict);

    [Fact]
    public void A_plug_holds_nothing_up() => Assert.Equal(Verdict.CannotTell, Van(Screws(FixingState.Sound, type: FixingType.Plug)).Check("overhead-fixings").Verdict);

    [Fact]
    public void A_part_on_the_floor_is_not_asked() =>
        Assert.DoesNotContain(Checks.All(A.Van(A.Part("box")), A.Day), c => c.Id == "overhead-fixings");
}
