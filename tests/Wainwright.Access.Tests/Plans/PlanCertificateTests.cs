using System.Text.Json;
using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Plans;

public class PlanCertificateTests
{
    private static readonly AccessOptions Usual = new();
    private static readonly Lazy<PlanCertificate> OfTheTray = new(() => PlanCertificate.Of(new RemovalPlanner(Workshop).Remove(Parts("B16"))));

    [Fact]
    public void A_certificate_written_and_read_back_holds()
    {
        var text = JsonSerializer.Serialize(OfTheTray.Value);
        Assert.Empty(JsonSerializer.Deserialize<PlanCertificate>(text)!.Faults(Workshop, Usual));
    }

    [Fact]
    public void A_hundred_planted_falsehoods_are_all_refused()
    {
        var random = new Random(100);
        // a dearer plan beside the best: what it says of cheaper plans is of plans that there are
        var both = PlanCertificate.Of(new RemovalPlanner(Workshop).Remove(Parts("B13 B16")));
        var dearer = both with { Targets = ["out B16"], LowerBound = 0, Cuts = [], Necessary = [], LeftOut = [] };
        var planted = Falsehoods(OfTheTray.Value, dearer, random).Take(100).ToList();

        Assert.Equal(100, planted.Count);
        Assert.Empty(dearer.Faults(Workshop, Usual));
        var afresh = new CertificateReading.Afresh(Workshop, Usual);
        Assert.Empty(new CertificateReading(OfTheTray.Value, Workshop, Usual, afresh).Faults());
        Assert.All(planted, p => Assert.True(new CertificateReading(p.False, Workshop, Usual, afresh).Faults().Count > 0, p.How));
    }

    [Theory]
    [InlineData("stuck-by-one-millimetre", "A"), InlineData("built-in-before-the-walls", "A"), InlineData("mattress-that-bends", "B")]
    public void That_there_is_no_way_is_certified_by_its_wall(string van, string part)
    {
        var job = Case(van);
        var certificate = PlanCertificate.Of(RemovalPlanner.Remove(job, Parts(part)));

        Assert.NotEmpty(certificate.Walls);
        Assert.Empty(certificate.Faults(job, Usual));
        var other = job with { Vehicle = job.Vehicle with { Openings = [.. job.Vehicle.Openings.Select(o => o with { WidthMm = o.WidthMm.Value + 400, HeightMm = o.HeightMm.Value + 400, FromMm = 0, SillMm = 0 })] } };
        Assert.NotEmpty((certificate with { Model = PlanCertificate.ModelOf(other) }).Faults(other, Usual));
    }

    [Fact]
    public void A_wall_that_does_not_hold_is_refused()
    {
        var certificate = PlanCertificate.Of(new RemovalPlanner(Workshop, new() { MustStay = Parts("B30") }).Remove(Parts("B14")));
        var options = new AccessOptions { MustStay = Parts("B30") };
        Assert.NotEmpty(certificate.Walls);
        Assert.Empty(certificate.Faults(Workshop, options));
        Assert.NotEmpty((certificate with { Walls = [new("out B13", [])], Targets = ["out B13"] }).Faults(Workshop, options));
        Assert.NotEmpty((certificate with { Walls = [.. certificate.Walls.Skip(1)] }).Faults(Workshop, options));
    }

    [Fact]
    public void At_the_end_of_a_budget_both_ends_of_the_bracket_can_be_checked_again()
    {
        var options = new AccessOptions { Budget = new(60, 0) };
        var planner = new RemovalPlanner(Camper, options);
        var plan = planner.Remove(Parts("A40"));

        Assert.Equal(Proof.BestFound, plan.Proof);
        Assert.True(plan.LowerBoundMinutes < plan.TotalMinutes);
        Assert.Empty(planner.Check(PlanCertificate.Of(plan), plan));
        Assert.Empty(planner.Audit(plan).Faults);
        Assert.NotEmpty((PlanCertificate.Of(plan) with { LowerBound = PlanCertificate.Of(plan).Cost }).Faults(Camper, options));
    }

    [Fact]
    public void A_certificate_of_another_van_or_another_question_is_refused()
    {
        Assert.Contains("another van", Assert.Single(OfTheTray.Value.Faults(Camper, Usual)), StringComparison.Ordinal);
        Assert.Contains("another question", Assert.Single(OfTheTray.Value.Faults(Workshop, new() { ClearanceMm = 3 })), StringComparison.Ordinal);
        Assert.NotEmpty((OfTheTray.Value with { Targets = ["out A99"] }).Faults(Workshop, Usual));
    }

    [Fact]
    public void A_certificate_that_holds_for_a_narrower_question_is_refused_for_the_wider_one()
    {
        var planner = new RemovalPlanner(Workshop);
        var tray = planner.Remove(Parts("B16"));
        // each of them is true of its own question
        var (staying, told) = (new RemovalPlanner(Workshop, new() { MustStay = Parts("B23") }), new AccessOptions { MustStay = Parts("B23") });
        var withMoreToStay = PlanCertificate.Of(staying.Remove(Parts("B16")));
        Assert.Empty(withMoreToStay.Faults(Workshop, told));
        Assert.Contains("to stay", Assert.Single(withMoreToStay.Faults(Workshop, Usual)), StringComparison.Ordinal);
        Assert.NotEmpty((withMoreToStay with { Stays = [] }).Faults(Workshop, told));

        var anew = planner.Replan(tray, new() { Done = [1, 2] });
        var withMoreDone = PlanCertificate.Of(anew.Plan);
        Assert.NotEmpty(withMoreDone.Given);
        Assert.Empty(anew.Planner.Check(withMoreDone, anew.Plan));
        Assert.Contains("done before", Assert.Single(planner.Check(withMoreDone, tray)), StringComparison.Ordinal);
        Assert.NotEmpty(withMoreDone.Faults(Workshop, Usual));
        Assert.NotEmpty(anew.Planner.Check(withMoreDone with { Given = [.. withMoreDone.Given.Skip(1)] }, anew.Plan));

        var withFewerTargets = PlanCertificate.Of(planner.Remove(Parts("B13")));
        Assert.Empty(withFewerTargets.Faults(Workshop, Usual));
        Assert.Contains("other targets", Assert.Single(planner.Check(withFewerTargets, planner.Remove(Parts("B13 B16")))), StringComparison.Ordinal);
    }

    [Fact]
    public void Another_plan_is_certified_with_what_it_keeps_in()
    {
        var planner = new RemovalPlanner(Case("shared-blocker-paid-once"));
        var others = planner.Others([new(new("P"), AccessKind.Remove), new(new("Q"), AccessKind.Remove)], 1);
        var other = Assert.Single(others.Others).Plan;
        Assert.NotEmpty(PlanCertificate.Of(other).Stays);
        Assert.Empty(planner.Check(PlanCertificate.Of(other), other));
        Assert.NotEmpty(planner.Check(PlanCertificate.Of(other), others.Best));
    }

    [Theory]
    [InlineData(Objective.FewestPartsOut), InlineData(Objective.LeastDestroyed)]
    public void Plans_for_other_aims_are_certified_too(Objective aim)
    {
        var options = new AccessOptions { Objective = aim };
        Assert.Empty(PlanCertificate.Of(RemovalPlanner.Remove(Workshop, Parts("B16"), options)).Faults(Workshop, options));
    }

    /// <summary>Sentences bent one at a time so that they are false: no true certificate among them.</summary>
    private static IEnumerable<(PlanCertificate False, string How)> Falsehoods(PlanCertificate good, PlanCertificate dearer, Random random)
    {
        int Any(int count) => random.Next(count);
        var needless = good.LeftOut.Except(good.Order).ToList();
        while (true)
        {
            yield return (good with { Cost = good.Cost - 1 - Any(1000) }, "a price that is not the sum");
            yield return (good with { LowerBound = good.Cost + 1 + Any(1000) }, "a bound above the price");
            var at = Any(good.Order.Count);
            yield return (good with { Order = [.. good.Order.Where((_, i) => i != at)] }, $"without {good.Order[at]}");
            yield return (good with { Order = [.. good.Order, good.Order[at]] }, $"{good.Order[at]} twice");
            yield return (good with { Order = [good.Order[^1], .. good.Order.SkipLast(1)] }, "the last first");
            yield return (good with { Targets = [] }, "no target");
            yield return (good with { Necessary = [], Cuts = [], LeftOut = [] }, "a bound without sentences");
            var (done, other) = (good.Order[at], needless[Any(needless.Count)]);
            yield return (dearer with { Cuts = [new(done, [])] }, $"{done} can never be done");
            yield return (dearer with { Cuts = [new("out B16", [other])] }, $"the target waits for {other}");
            yield return (dearer with { Necessary = [other] }, $"{other} called necessary");
            yield return (dearer with { LeftOut = [done] }, $"{done} left out");
            yield return (dearer with { LowerBound = good.Cost + 1 + Any(100) }, "a bound above the best price");
        }
    }
}
