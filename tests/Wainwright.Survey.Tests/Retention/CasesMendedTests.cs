using Wainwright.Fitout;
using Wainwright.Survey.Retention.Fix;

namespace Wainwright.Survey.Tests.Retention;

/// <summary>Each small van that does not hold is mended by the fixer and judged anew by the same checks.</summary>
public sealed class CasesMendedTests
{
    static readonly string[] OfHolding = ["held-in-driving", "held-in-crash", "stays-shut", "shelf-goods-stay"];

    static Mend Mended(Job job) => Mending.Of(job, new("A"), [], TestContext.Current.CancellationToken);

    static List<Check> Short(Job job) => [.. Checks.All(job, A.Day).Where(c => OfHolding.Contains(c.Id) && c.Verdict != Verdict.Holds)];

    [Theory]
    [InlineData("cupboard-two-of-three-screws-sheared", "rivet nut")]
    [InlineData("shelf-with-no-lip", "lip or bar 100 mm")]
    [InlineData("tank-with-no-restraint", "lashing strap")]
    [InlineData("drawer-without-a-latch", "turn button")]
    [InlineData("screws-6-mm-from-a-plywood-edge", "rivet nut")]
    public void What_falls_short_is_mended_and_holds_when_judged_anew(string name, string by)
    {
        var job = A.Read("cases", name);
        Assert.NotEmpty(Short(job));

        var mend = Mended(job);

        Assert.Contains(mend.Steps, s => s.What.Contains(by, StringComparison.Ordinal));
        Assert.True(mend.Price > 0);
        Assert.Equal(Verdict.Holds, mend.After!.Verdict);
        Assert.Empty(Short(mend.Mended!));
        Assert.DoesNotContain(JobRules.Of(mend.Mended!), i => i.Weight == Fitout.Weight.Error);
    }

    [Fact]
    public void Taking_any_one_of_the_added_fixings_away_again_loses_the_hold()
    {
        var mend = Mended(A.Read("cases", "screws-6-mm-from-a-plywood-edge"));
        var added = mend.Mended!.Joints.Where(j => j.Id.Text.StartsWith("A-mend", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(added);
        Assert.All(added, joint => Assert.NotEqual(Verdict.Holds, Survey.Retention.Holding.Of(mend.Mended with { Joints = [.. mend.Mended.Joints.Where(j => j != joint)] }, new PartId("A")).Verdict));
    }

    [Fact]
    public void What_holds_already_is_left_alone()
    {
        var mend = Mended(A.Read("cases", "shelf-with-no-lip"));
        Assert.DoesNotContain(mend.Mended!.Joints, j => j.Id.Text.Contains("mend", StringComparison.Ordinal));
        Assert.Empty(Mended(mend.Mended).Steps);
    }

    [Fact]
    public void A_screw_whose_fellows_sheared_is_not_counted_on()
    {
        var job = A.Read("cases", "cupboard-two-of-three-screws-sheared");
        var mend = Mended(job);
        Assert.True(mend.Steps.Sum(s => s.Count) >= 2, "one bolt would leave the last screw to hold the other end");
        Assert.Contains(mend.Cautions, c => c.Contains("A-left", StringComparison.Ordinal));
        var without = mend.Mended! with { Joints = [.. mend.Mended!.Joints.Where(j => j.Id.Text.StartsWith("A-mend", StringComparison.Ordinal))] };
        Assert.Equal(Verdict.Holds, Survey.Retention.Holding.Of(without, new PartId("A")).Verdict);
    }

    [Fact]
    public void What_is_only_planned_is_not_counted_on_until_somebody_has_seen_it()
    {
        var job = A.Read("cases", "cupboard-two-of-three-screws-sheared");
        var planned = Mended(job).PlannedIn(job)!;
        Assert.Equal(Verdict.CannotTell, Survey.Retention.Holding.Of(planned, new PartId("A")).Verdict);
        Assert.All(job.Joints, j => Assert.Contains(j, planned.Joints));
        var seen = planned with { Joints = [.. planned.Joints.Select(j => job.Joints.Contains(j) ? j : j with { Known = Known.Seen, State = FixingState.Sound })] };
        Assert.Equal(Verdict.Holds, Survey.Retention.Holding.Of(seen, new PartId("A")).Verdict);
    }

    [Fact]
    public void Nothing_is_screwed_to_what_is_soft()
    {
        var job = A.Read("cases", "tank-with-no-restraint");
        var mend = Mended(job with { Parts = [.. job.Parts.Select(p => p.Id.Text == "A" ? p with { FoldsTo = new(600, 400, 300) } : p)] });
        Assert.Null(mend.Mended);
        Assert.Empty(mend.Steps);
        Assert.Contains("tie it down", mend.WhyNot, StringComparison.Ordinal);
    }

    [Fact]
    public void A_mend_says_what_a_drill_may_meet()
    {
        var job = A.Read("cases", "cupboard-two-of-three-screws-sheared");
        var tank = A.Part("T", new Tank { Holds = Medium.Water, VolumeL = 20 }) with { Outside = true };
        var cautions = Mended(job with { Parts = [.. job.Parts, tank.At(400, -120, 1_000, 900, 100, 400)] }).Cautions;
        Assert.Contains(cautions, c => c.Contains("T T", StringComparison.Ordinal));
        Assert.Contains(cautions, c => c.Contains("outer skin", StringComparison.Ordinal));
    }
}
