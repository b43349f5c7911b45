using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Paper.Tests;

/// <summary>What the work sheet says of plans that are not simply a proved way out.</summary>
public sealed class WorkSheetTests
{
    private static readonly RemovalPlan None = SmallPlan.Locker with { Steps = [], OutMinutes = 0, BackMinutes = 0, DamageMinutes = 0 };

    private static async Task<string> Of(RemovalPlan plan) => PageText.Of(await Sheets.Removal(SmallJob.Job, plan, new(2026, 3, 10)));

    [Fact]
    public async Task A_plan_that_does_not_exist_says_what_holds_what()
    {
        var text = await Of(None with { Proof = Proof.ProvedUnreachable, HeldForGood = [new("the locker", new("L1"), ["the kitchen box"], [new("K1")], "sliding door", 40)] });
        Assert.Contains("it does not come out as the van stands", text, StringComparison.Ordinal);
        Assert.Contains("The locker: held by the kitchen box; 40 mm too large for sliding door in its best attitude.", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_plan_that_is_only_the_best_found_says_how_much_cheaper_another_could_be() =>
        Assert.Contains("25 min in all; none costs less than 9 min.", await Of(SmallPlan.Locker with { Proof = Proof.BestFound, LowerBoundMinutes = 9 }), StringComparison.Ordinal);

    [Fact]
    public async Task Measures_that_contradict_one_another_are_no_work_of_no_minutes()
    {
        var text = await Of(None with { Proof = Proof.CannotTell });
        Assert.Contains("nobody can tell yet whether it comes out", text, StringComparison.Ordinal);
        Assert.Contains("the measures contradict one another", text, StringComparison.Ordinal);
        Assert.DoesNotContain("0 min", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Proved", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Too_close_to_tell_asks_for_a_trial_fit_and_proves_nothing()
    {
        var text = await Of(None with { Proof = Proof.ProvedUnreachable, Bracket = new(12, []) });
        Assert.Contains("a trial fit tells", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Proved", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(AccessKind.Remove, "it comes out"), InlineData(AccessKind.Reach, "a hand gets to it"), InlineData(AccessKind.See, "it can be seen")]
    public async Task A_part_that_nobody_measured_is_never_proved_free(AccessKind kind, string words)
    {
        // the cable behind the lining has neither size nor place
        var plan = new RemovalPlanner(SmallJob.Job).Plan([new(new("X1"), kind)]);
        Assert.True(plan.CannotTell);
        var text = await Of(plan);
        Assert.Contains($"nobody can tell yet whether {words}", text, StringComparison.Ordinal);
        Assert.Contains("X1 cable behind the lining has no size and place: measure it.", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Proved", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Objective.FewestPartsOut, "takes out fewer than 2 parts")]
    [InlineData(Objective.LeastDestroyed, "spoils less than 2 min to put right")]
    public async Task What_is_proved_is_said_of_what_was_sought(Objective objective, string words)
    {
        var plan = SmallPlan.Locker with { Sought = new(objective, 2, 2) };
        Assert.Contains($"Proved: no plan made of the moves this one knows {words}", await Of(plan), StringComparison.Ordinal);
        Assert.Contains($"none {words}", await Of(plan with { Proof = Proof.BestFound }), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(AccessKind.See, "See upper locker"), InlineData(AccessKind.Reach, "Reach upper locker"), InlineData(AccessKind.Remove, "Take out upper locker")]
    public async Task The_title_says_what_was_asked_for(AccessKind kind, string title) =>
        Assert.StartsWith(title, (await Of(SmallPlan.Locker with { Kind = kind, ReachOnly = kind != AccessKind.Remove })).TrimStart(), StringComparison.Ordinal);

    [Fact]
    public async Task A_row_tells_what_is_to_be_tried_folded_and_taken_along()
    {
        var text = await Of(SmallPlan.Locker with { Steps = [.. SmallPlan.Locker.Steps.Select(s => s.Number switch { 2 => s with { OnTrial = true }, 3 => s with { FoldedMm = new(300, 200, 100), With = [new("K1")] }, _ => s })] });
        Assert.Contains("Try it first: hand and tool get there only past the parts it holds", text, StringComparison.Ordinal);
        Assert.Contains("Folded to 300 × 200 × 100 mm.", text, StringComparison.Ordinal);
        Assert.Contains("With it: Kitchen box", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_holds_a_load_names_the_ground_before_the_door_and_tilting_last()
    {
        var held = new HeldFor("the chest", new("C"), [], [], "rear door", 7);
        Assert.Equal("the chest: held by the van itself; 7 mm too large for rear door in its best attitude", held.Words);
        Assert.Equal("the chest: held by the van itself, or it was to stay; it would pass rear door but cannot get there", (held with { ShortMm = 0 }).Words);
        Assert.Equal("the chest: held by the van itself, or it was to stay", (held with { NearestOpening = null, ShortMm = null }).Words);
        Assert.StartsWith("the chest: held by the van itself; it wants 90 mm more clear ground before rear door. Tilting: no way found in 5 tries",
            (held with { Landing = new("rear door", 90), Tilt = new(false, 5, null, null, null) }).Words, StringComparison.Ordinal);
        Assert.Equal("the chest: held by a, b and 1 more; 7 in too large for rear door in its best attitude", (held with { By = ["a", "b", "c"] }).Told(2, n => $"{n} in"));
    }
}
