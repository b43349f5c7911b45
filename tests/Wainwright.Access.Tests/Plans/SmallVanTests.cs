using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Plans;

/// <summary>The small vans of one situation each; the right answer stands in each file's note.</summary>
public class SmallVanTests
{
    [Theory]
    [InlineData("leaves-exactly-through-the-door", "A", "A")]
    [InlineData("way-round-a-narrow-slot", "A", "A")]
    [InlineData("drawer-with-no-clearance", "A", "A")]
    [InlineData("drawer-with-no-clearance", "B", "A B")]
    [InlineData("two-that-wait-for-each-other", "T", "D B A T")]
    [InlineData("shared-blocker-paid-once", "P", "U P")]
    [InlineData("shared-blocker-paid-once", "Q", "W Q")]
    [InlineData("mattress-that-bends", "A", "A")]
    [InlineData("duct-through-a-plinth", "A", "A")]
    [InlineData("duct-through-a-plinth", "C", "A B C")]
    [InlineData("screws-reached-only-from-inside", "B", "A B")]
    [InlineData("sheared-screw-to-drill", "A", "A")]
    public void What_comes_out_is_what_the_note_says_and_it_is_proved(string van, string target, string outInOrder)
    {
        var plan = RemovalPlanner.Remove(Case(van), Parts(target));

        Assert.Equal(Proof.ProvedCheapest, plan.Proof);
        Assert.Equal(outInOrder, Names(plan.PartsOut));
        Assert.Equal(plan.LowerBoundMinutes, plan.TotalMinutes, 0.01);
    }

    [Fact]
    public void A_blocker_that_two_share_is_paid_once()
    {
        var plan = RemovalPlanner.Remove(Case("shared-blocker-paid-once"), Parts("P Q"));

        Assert.Equal(["P", "Q", "S"], plan.PartsOut.Select(p => p.Text).Order());
    }

    [Theory]
    [InlineData("stuck-by-one-millimetre", 1)]
    [InlineData("built-in-before-the-walls", 100)]
    public void What_passes_no_door_is_proved_stuck_with_the_door_and_the_millimetres(string van, int shortMm)
    {
        var plan = RemovalPlanner.Remove(Case(van), Parts("A"));

        Assert.Equal(Proof.ProvedUnreachable, plan.Proof);
        Assert.Empty(plan.Steps);
        var held = Assert.Single(plan.HeldForGood);
        Assert.Empty(held.By);
        Assert.Equal(("rear door", shortMm), (held.NearestOpening, held.ShortMm));
    }

    [Fact]
    public void What_comes_apart_leaves_in_pieces_and_their_minutes_are_in_the_price()
    {
        var plan = RemovalPlanner.Remove(Case("built-in-but-comes-apart"), Parts("A"));

        Assert.Equal(Proof.ProvedCheapest, plan.Proof);
        Assert.All(plan.Steps, s => Assert.Equal(StepKind.TakePiece, s.Kind));
        Assert.Equal(2, plan.Steps.Count);
        Assert.InRange(plan.OutMinutes, 12, 30);
    }

    [Fact]
    public void Measures_that_contradict_one_another_give_no_plan_and_name_the_pair_and_the_overlap()
    {
        var plan = RemovalPlanner.Remove(Case("overlap-in-the-measures"), Parts("A"));

        Assert.Equal(Proof.CannotTell, plan.Proof);
        Assert.Contains(plan.ToMeasure, m => m.Contains("A left cupboard", StringComparison.Ordinal) && m.Contains("B right cupboard", StringComparison.Ordinal) && m.Contains("30 mm", StringComparison.Ordinal));
    }

    [Fact]
    public void A_sheared_screw_is_drilled_and_costs_more_than_a_sound_one()
    {
        var job = Case("sheared-screw-to-drill");
        var sound = job with { Joints = [.. job.Joints.Select(j => j with { State = FixingState.Sound, Release = j.Release with { Way = ReleaseWay.Unscrew } })] };

        var (sheared, whole) = (RemovalPlanner.Remove(job, Parts("A")), RemovalPlanner.Remove(sound, Parts("A")));

        Assert.Contains(sheared.Steps, s => s.Action.StartsWith("Drill out", StringComparison.Ordinal));
        Assert.True(sheared.OutMinutes > whole.OutMinutes + 1);
    }

    [Fact]
    public void What_just_passes_is_called_tight()
    {
        var plan = RemovalPlanner.Remove(Case("leaves-exactly-through-the-door"), Parts("A"));

        Assert.Contains(plan.Steps[^1].Cautions, c => c.Contains("less than 5 mm to spare", StringComparison.Ordinal));
        Assert.Equal("rear door", plan.Steps[^1].Through);
    }

    [Fact]
    public void Room_for_fingers_may_be_asked_for_and_then_nothing_passes()
    {
        var plan = RemovalPlanner.Remove(Case("leaves-exactly-through-the-door"), Parts("A"), new() { ClearanceMm = 5 });

        Assert.Equal(Proof.ProvedUnreachable, plan.Proof);
    }
}
