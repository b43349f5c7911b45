using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Plans;

public class WhatAPlanSaysTests
{
    [Fact]
    public void What_people_usually_take_out_first_changes_no_plan()
    {
        var job = Workshop;
        var without = job with { Parts = [.. job.Parts.Select(p => p with { TakeOutFirst = [] })] };
        Assert.Contains(job.Parts, p => p.TakeOutFirst.Count > 0);

        foreach (var id in new[] { "B04", "B14", "B26a" })
            Assert.Equal(
                RemovalPlanner.Remove(job, Parts(id)).Steps.Select(s => s.Action),
                RemovalPlanner.Remove(without, Parts(id)).Steps.Select(s => s.Action));
    }

    [Fact]
    public void Asking_twice_gives_the_same_plan_and_one_planner_serves_many_questions()
    {
        var shared = new RemovalPlanner(Workshop);
        shared.Remove(Parts("B17"));

        var (again, fresh) = (shared.Remove(Parts("B14")), RemovalPlanner.Remove(Workshop, Parts("B14")));

        Assert.Equal(fresh.TotalMinutes, again.TotalMinutes);
        Assert.Equal(fresh.LowerBoundMinutes, again.LowerBoundMinutes);
    }

    [Fact]
    public void Every_step_but_the_wanted_ones_says_for_what_it_is_done()
    {
        var plan = RemovalPlanner.Remove(Workshop, Parts("B16"));

        Assert.All(plan.Steps, s => Assert.NotEmpty(s.Why.Words));
        Assert.All(plan.Steps.Where(s => s.Why.ForPart is null && s.Kind != StepKind.MakeSafe), s => Assert.Equal("wanted", s.Why.Words));
        Assert.Equal("B16", plan.Steps[^1].Part!.Value.Text);
    }

    [Fact]
    public void Each_part_carried_out_goes_by_an_opening_and_along_a_path()
    {
        var plan = RemovalPlanner.Remove(Workshop, Parts("B14"));

        Assert.All(plan.Steps.Where(s => s.Kind == StepKind.TakeOut), s =>
        {
            Assert.NotNull(s.Through);
            Assert.Equal(new Place(0, 0, 0), s.Path[0].ShiftMm);
            Assert.True(s.Path.Count > 1);
        });
    }

    [Fact]
    public void The_sum_of_the_steps_is_the_price_and_putting_back_is_its_own_sum()
    {
        var plan = RemovalPlanner.Remove(Workshop, Parts("B04"));

        Assert.Equal(plan.Steps.Sum(s => s.OutMinutes), plan.OutMinutes, 1e-9);
        Assert.Equal(plan.Steps.Sum(s => s.BackMinutes), plan.BackMinutes, 1e-9);
        Assert.NotEqual(plan.OutMinutes, plan.BackMinutes);
        Assert.Equal(plan.TotalMinutes, plan.LowerBoundMinutes, 0.01);
    }

    [Fact]
    public void Electrics_and_water_are_made_safe_before_anything_else()
    {
        var kinds = RemovalPlanner.Remove(Workshop, Parts("B14")).Steps.Select(s => s.Kind).ToList();

        Assert.Equal(StepKind.MakeSafe, kinds[0]);
        Assert.True(kinds.LastIndexOf(StepKind.MakeSafe) < kinds.FindIndex(k => k != StepKind.MakeSafe));
    }

    [Fact]
    public void A_part_that_is_out_already_costs_nothing_and_its_joints_are_gone()
    {
        var before = RemovalPlanner.Remove(Workshop, Parts("B14"));
        var after = RemovalPlanner.Remove(Workshop, Parts("B14"), new() { AlreadyOut = Parts("B30") });

        Assert.Contains(before.Steps, s => s.Part?.Text == "B30");
        Assert.DoesNotContain(after.Steps, s => s.Part?.Text == "B30");
        Assert.True(after.TotalMinutes < before.TotalMinutes);
    }

    [Fact]
    public void A_part_that_must_stay_is_gone_round_or_the_plan_says_what_it_holds()
    {
        var plan = RemovalPlanner.Remove(Workshop, Parts("B14"), new() { MustStay = Parts("B30") });

        Assert.DoesNotContain(plan.Steps, s => s.Part?.Text == "B30");
        if (plan.Proof == Proof.ProvedUnreachable) Assert.Contains(plan.HeldForGood, h => h.ByParts.Contains(new("B30")));
    }

    [Fact]
    public void Getting_a_hand_to_a_part_never_costs_more_than_taking_it_out()
    {
        var planner = new RemovalPlanner(Workshop);
        foreach (var id in new[] { "B14", "B17", "B16", "B13", "B04" })
        {
            var (reach, remove) = (planner.Reach(Parts(id)), planner.Remove(Parts(id)));
            Assert.Equal(StepKind.Reach, reach.Steps[^1].Kind);
            Assert.True(reach.TotalMinutes <= remove.TotalMinutes, id);
        }
    }

    [Theory]
    [InlineData("A52")]
    [InlineData("A35")]
    public void The_proof_of_a_plan_for_the_camper_holds_on_a_model_made_afresh(string part) =>
        Assert.Empty(new RemovalPlanner(Camper).ProofFaults(Parts(part)));

    [Fact]
    public void The_proof_of_a_plan_for_the_workshop_holds_on_a_model_made_afresh() =>
        Assert.Empty(new RemovalPlanner(Workshop).ProofFaults(Parts("B16")));

    [Fact]
    public void A_part_nobody_knows_is_refused() =>
        Assert.Throws<ArgumentException>(() => RemovalPlanner.Remove(Workshop, Parts("X99")));

    [Fact]
    public void A_search_cut_short_gives_its_best_and_an_honest_bound()
    {
        var proved = RemovalPlanner.Remove(Case("shared-blocker-paid-once"), Parts("P Q"));
        var cut = RemovalPlanner.Remove(Case("shared-blocker-paid-once"), Parts("P Q"), new() { Budget = new(0, 0) });

        Assert.Equal(Proof.BestFound, cut.Proof);
        Assert.InRange(cut.LowerBoundMinutes, 0, proved.TotalMinutes);
        Assert.True(cut.TotalMinutes >= proved.TotalMinutes);
    }
}
