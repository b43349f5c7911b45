using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Web.Tests;

public sealed class PlanDeskTests
{
    private static readonly PartId Base = new("A20");

    private static readonly Job Job = SmallVan.Job with
    {
        Vehicle = SmallVan.Job.Vehicle with { Openings = [new() { Name = "rear doors", Face = Face.Rear, FromMm = 50, WidthMm = 1600, SillMm = 0, HeightMm = 1800, Passable = true, Known = Known.Measured }] },
        Parts = [SmallVan.Job.Parts[0]],
        Joints = [SmallVan.Job.Joints[0]],
        Lines = [],
        Findings = [],
    };

    private static CancellationToken Now => TestContext.Current.CancellationToken;

    [Fact]
    public async Task Forgetting_what_was_found_keeps_what_was_learned_of_the_van_as_recorded()
    {
        var desk = new PlanDesk(Job, new());
        var (first, plan) = await desk.Ask(p => (p, p.Remove([Base])), stop: Now);
        Assert.Equal(Proof.ProvedCheapest, plan.Proof);
        var anew = await desk.Replan(plan, new() { Joints = new Dictionary<JointId, JointNow> { [new("J1")] = JointNow.Sheared } }, stop: Now);
        Assert.Same(anew.Planner, await desk.Ask(p => p, stop: Now));
        await desk.Forget();
        Assert.Same(first, await desk.Ask(p => p, stop: Now));
        await desk.Forget();
        Assert.Same(first, await desk.Ask(p => p, stop: Now));
    }

    [Fact]
    public async Task A_planner_that_was_stopped_is_replaced_and_told_again_what_was_found()
    {
        var desk = new PlanDesk(Job, new());
        var plan = await desk.Ask(p => p.Remove([Base]), stop: Now);
        using var stop = new CancellationTokenSource();
        await stop.CancelAsync();
        var stopped = await desk.Replan(plan, new() { Joints = new Dictionary<JointId, JointNow> { [new("J1")] = JointNow.Sheared } }, stop: stop.Token);
        var next = await desk.Ask(p => p, stop: Now);
        Assert.NotSame(stopped.Planner, next);
        Assert.Equal(FixingState.Sheared, next.Job.Joints.Single().State);
        Assert.Equal(Proof.ProvedCheapest, (await desk.Ask(p => p.Remove([Base]), stop: Now)).Proof);
    }

    [Fact]
    public async Task What_was_found_of_a_joint_that_is_not_there_is_refused_and_changes_nothing()
    {
        var desk = new PlanDesk(Job, new());
        var (first, plan) = await desk.Ask(p => (p, p.Remove([Base])), stop: Now);
        await Assert.ThrowsAsync<ArgumentException>(() => desk.Replan(plan, new() { Joints = new Dictionary<JointId, JointNow> { [new("J9")] = JointNow.Sheared } }, stop: Now));
        Assert.Same(first, await desk.Ask(p => p, stop: Now));
    }
}
