using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Web.Tests;

public sealed class WaysTests
{
    private static readonly WayQuestion Asked = new([new("A20")], AccessKind.Remove, [], []);

    private static readonly Job Stripped = SmallVan.Job with
    {
        Stages =
        [
            new() { Id = new("ST1"), Name = "as found", Kind = StageKind.AsFound, On = new(2026, 3, 1) },
            new() { Id = new("ST2"), Name = "worktop out", Kind = StageKind.StripDown, On = new(2026, 3, 9), PartsOut = [new("A21")] },
        ],
    };

    [Fact]
    public void A_plan_starts_from_the_last_stage_and_says_so()
    {
        Assert.Equal([new("A21")], Asked.Told(Stripped).AlreadyOut);
        Assert.Equal("the van at stage “worktop out” of 2026-03-09: A21 out", WayQuestion.From(Stripped));
        Assert.Equal("the van at stage “as found” of 2026-03-01: everything in", WayQuestion.From(Stripped with { Stages = [Stripped.Stages[0]] }));
    }

    [Fact]
    public void Without_a_stage_it_starts_from_the_van_with_everything_in()
    {
        Assert.Empty(Asked.Told(SmallVan.Job).AlreadyOut);
        Assert.Equal("the van with everything in: no stage is recorded", WayQuestion.From(SmallVan.Job));
    }

    [Fact]
    public void What_is_named_as_out_beside_the_stage_is_out_once()
    {
        var beside = Asked with { OutAlready = [new("A21"), new("A20")] };
        Assert.Equal([new("A21"), new("A20")], beside.Told(Stripped).AlreadyOut);
    }

    [Fact]
    public void Tilting_past_what_comes_out_is_asked_for_and_another_question()
    {
        var tilted = Asked with { TiltPast = true };
        Assert.NotEqual(Asked.Key, tilted.Key);
        Assert.Equal((false, true), (Asked.Told(SmallVan.Job).Tilting.ToSpare, tilted.Told(SmallVan.Job).Tilting.ToSpare));
        Assert.EndsWith("tilt=past", Go.Way("T-1", tilted), StringComparison.Ordinal);
    }
}
