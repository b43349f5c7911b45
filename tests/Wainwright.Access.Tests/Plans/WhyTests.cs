using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Plans;

public class WhyTests
{
    [Fact]
    public void A_step_shows_the_sentence_of_the_proof_in_which_the_plan_does_it_alone()
    {
        var plan = RemovalPlanner.Remove(Case("shared-blocker-paid-once"), Parts("P Q"));
        var shared = plan.Steps.First(s => s.Part?.Text == "S" && s.Kind == StepKind.TakeOut);

        Assert.NotNull(shared.Why.OneOfFor);
        Assert.StartsWith("S ", shared.Why.OneOf[0], StringComparison.Ordinal);
        Assert.True(shared.Why.OneOf.Count > 1, "U or W would do too");
        Assert.All(shared.Why.OneOf.Skip(1), other => Assert.DoesNotContain(plan.PartsOut, p => other.StartsWith($"{p} ", StringComparison.Ordinal)));
    }

    [Fact]
    public void What_stands_in_the_way_is_met_in_some_direction_with_its_millimetres()
    {
        var all = RemovalPlanner.Remove(Case("two-that-wait-for-each-other"), Parts("T")).Steps.Where(s => s.Why.Reason == OrderReason.Geometry && s.Kind == StepKind.TakeOut).ToList();

        Assert.NotEmpty(all);
        Assert.Contains(all, s => s.Why.Wall.Count > 0);
        Assert.All(all.SelectMany(s => s.Why.Wall.Select(b => (s, b))), x => Assert.True(x.b.ShortMm > 0 && x.b.FreeMm >= 0 && x.b.Part == x.s.Part));
    }

    [Fact]
    public void Every_part_says_what_blocks_it_and_less_when_that_is_out()
    {
        var planner = new RemovalPlanner(Case("way-round-a-narrow-slot"));
        var rear = planner.WhatBlocks(new("A")).Single(b => b.Direction == Direction.Rearward);

        Assert.Equal((100, 1), (rear.FreeMm, rear.ShortMm));
        Assert.Equal("B", rear.Part!.Value.Text);
        Assert.NotEqual("B", planner.WhatBlocks(new("A"), Parts("B")).FirstOrDefault(b => b.Direction == Direction.Rearward)?.Part?.Text);
        Assert.Throws<ArgumentException>(() => planner.WhatBlocks(new("Z")));
    }

    [Theory]
    [InlineData("door-too-small-by-32-mm", 32)]
    [InlineData("stuck-by-one-millimetre", 1)]
    [InlineData("built-in-before-the-walls", 100)]
    public void Where_there_is_no_way_the_least_change_is_found_by_trying_and_it_works(string name, int leastMm)
    {
        var job = Case(name);
        var wanted = job.Parts[0].Id;
        var planner = new RemovalPlanner(job, new() { Tilting = Tilting.Off });
        var changes = planner.WhatWouldFree(planner.Remove([wanted]));

        Assert.Equal(leastMm, changes[0].Mm);
        Assert.Equal(changes.OrderBy(c => c.Mm ?? int.MaxValue).Select(c => c.Mm), changes.Select(c => c.Mm));
        var opening = changes.First(c => c.Kind == ChangeKind.Opening);
        Assert.Contains($"Open {opening.Opening} by {opening.Mm} mm", opening.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_size_is_called_the_least_only_when_a_millimetre_less_was_tried()
    {
        var job = Case("door-too-small-by-32-mm");
        var options = new AccessOptions { Tilting = Tilting.Off };
        var plan = RemovalPlanner.Remove(job, [job.Parts[0].Id], options);
        IReadOnlyList<FreeingChange> After(int trials) => new Freeing(job, options, plan.Question!, [], plan, trials).Smallest();

        Assert.All(After(160), c => Assert.True(c.IsLeast && !c.Words.Contains("Less may do", StringComparison.Ordinal), c.Words));
        for (var trials = 1; trials < 40; trials++)
            foreach (var change in After(trials).Where(c => c.Mm is not null))
            {
                Assert.Equal(!change.IsLeast, change.Words.Contains("Less may do", StringComparison.Ordinal));
                Assert.True(change.IsLeast ? After(160).Contains(change) : change.Mm >= 32, change.Words);
            }
        Assert.Contains(Enumerable.Range(1, 39).SelectMany(After), c => !c.IsLeast);
    }

    [Fact]
    public void What_was_to_stay_and_ground_outside_are_tried_too()
    {
        var options = new AccessOptions { MustStay = Parts("A") };
        var planner = new RemovalPlanner(Case("two-that-wait-for-each-other"), options);
        Assert.Contains(planner.WhatWouldFree(planner.Remove(Parts("T"))), c => c.Kind == ChangeKind.LetOut && c.Part!.Value.Text == "A");

        var walled = new RemovalPlanner(Case("landing-blocked-by-a-wall"));
        var parts = Case("landing-blocked-by-a-wall").Parts.Select(p => walled.Remove([p.Id])).Where(p => p.Proof == Proof.ProvedUnreachable).ToList();
        Assert.NotEmpty(parts);
        Assert.Contains(walled.WhatWouldFree(parts[0]), c => c.Kind == ChangeKind.Ground && c.Mm > 0);
    }

    [Fact]
    public void A_plan_that_is_there_wants_no_change() =>
        Assert.Empty(new RemovalPlanner(Workshop) is var planner ? planner.WhatWouldFree(planner.Remove(Parts("B13"))) : []);
}
