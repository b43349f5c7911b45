using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Plans;

public class ReplanTests
{
    private static readonly Lazy<(RemovalPlanner Planner, RemovalPlan Plan)> Trap = new(() =>
    {
        var planner = new RemovalPlanner(Camper);
        return (planner, planner.Remove(Parts("A40")));
    });

    [Fact]
    public void What_is_done_is_not_planned_again_and_what_is_left_costs_what_was_left()
    {
        var (planner, plan) = Trap.Value;
        for (var n = 0; n <= plan.Steps.Count; n += 3)
        {
            var anew = planner.Replan(plan, new() { Done = [.. Enumerable.Range(1, n)] });

            Assert.Equal(plan.Steps.Skip(n).Select(s => s.Key).Order(), anew.Plan.Steps.Select(s => s.Key).Order());
            Assert.Equal(0, anew.MoreMinutes!.Value, 0.02);
            Assert.Empty(anew.Planner.Audit(anew.Plan).Faults);
        }
    }

    [Fact]
    public void A_sheared_joint_is_drilled_and_costs_more_as_a_plan_made_afresh_says_too()
    {
        var (planner, plan) = Trap.Value;
        var undo = plan.Steps.First(s => s is { Kind: StepKind.Undo, Joint: { } } && s.Action.StartsWith("Unscrew", StringComparison.Ordinal));

        var anew = planner.Replan(plan, new() { Joints = new Dictionary<JointId, JointNow> { [undo.Joint!.Value] = JointNow.Sheared } });

        var job = Camper with { Joints = [.. Camper.Joints.Select(j => j.Id == undo.Joint ? j with { State = FixingState.Sheared, StateCount = null, Release = j.Release with { Way = ReleaseWay.Drill, Minutes = null } } : j)] };
        Assert.Equal(RemovalPlanner.Remove(job, Parts("A40")).TotalMinutes, anew.Plan.TotalMinutes, 0.01);
        Assert.Contains(anew.Changed, c => c.Contains("sheared: drill it", StringComparison.Ordinal));
        Assert.True(anew.MoreMinutes > 0);
        Assert.Empty(anew.Planner.Audit(anew.Plan).Faults);
        Assert.Empty(anew.Planner.Check(PlanCertificate.Of(anew.Plan), anew.Plan));
    }

    [Fact]
    public void A_glued_part_is_spoiled_and_a_part_that_does_not_move_is_gone_round()
    {
        var (planner, plan) = Trap.Value;
        var glued = planner.Replan(plan, new() { Done = [1, 2, 3, 4], Glued = Parts("A38") });
        Assert.Contains(glued.Plan.Steps, s => s.Part?.Text == "A38" && s.Action.StartsWith("Pry off", StringComparison.Ordinal));
        Assert.True(glued.Plan.DamageMinutes > 0);
        Assert.Empty(glued.Planner.Audit(glued.Plan).Faults);

        var stays = planner.Replan(plan, new() { DoNotMove = Parts("A38") });
        Assert.DoesNotContain(stays.Plan.Steps, s => s.Kind == StepKind.TakeOut && s.Part?.Text == "A38");
        Assert.Contains(stays.Changed, c => c.Contains("does not move", StringComparison.Ordinal));
        Assert.Equal(new RemovalPlanner(Camper, new() { MustStay = Parts("A38") }).Remove(Parts("A40")).Proof, stays.Plan.Proof);
    }

    [Fact]
    public void A_part_found_in_the_way_comes_out_too_and_no_stored_way_goes_through_it()
    {
        var planner = new RemovalPlanner(Case("way-round-a-narrow-slot"));
        var plan = planner.Remove(Parts("A"));
        Part Board(string id, double y, double width) => new()
        {
            Id = new(id), Name = "board over the cupboards", System = PartSystem.Furniture, Known = Known.Measured, MassKg = 3,
            Solids = [new BoxSolid { At = new(700, y, 900), Size = new(60, width, 500) }],
        };

        var anew = planner.Replan(plan, new() { Found = [Board("X", 0, 700), Board("Y", 700, 500)] });

        Assert.Contains(anew.Plan.Steps, s => s.Part?.Text is "X" or "Y");
        Assert.Contains(anew.Changed, c => c.Contains("board over the cupboards", StringComparison.Ordinal) && c.StartsWith("Comes out too", StringComparison.Ordinal));
        Assert.Empty(anew.Planner.Audit(anew.Plan).Faults);
    }

    [Fact]
    public void Planning_anew_asks_fewer_questions_of_room_than_planning_afresh()
    {
        var (planner, plan) = Trap.Value;
        var anew = planner.Replan(plan, new() { Joints = new Dictionary<JointId, JointNow> { [new("A34-edge brackets front")] = JointNow.Sheared } });

        var afresh = RemovalPlanner.Remove(Camper, Parts("A40"));

        // nothing new to prove: hardly anything is asked; at another price the proof is new, and some of it is known
        Assert.True(planner.Replan(plan, new() { Done = [1, 2, 3] }).Plan.Effort.Questions * 20 < afresh.Effort.Questions);
        Assert.True(anew.Plan.Effort.Questions < afresh.Effort.Questions, $"anew {anew.Plan.Effort.Questions}, afresh {afresh.Effort.Questions}");
    }

    [Fact]
    public void One_change_after_another_is_planned_on()
    {
        var (planner, plan) = Trap.Value;
        var once = planner.Replan(plan, new() { Done = [1, 2, 3] });
        var twice = once.Planner.Replan(once.Plan, new() { Done = [1, 2], Glued = Parts("A35") });

        Assert.Equal(5, twice.Done.Count);
        Assert.DoesNotContain(twice.Plan.Steps, s => twice.Done.Any(d => d.Key == s.Key));
        Assert.Empty(twice.Planner.Audit(twice.Plan).Faults);
    }

    [Fact]
    public void What_is_not_there_is_refused()
    {
        var (planner, plan) = Trap.Value;
        Assert.Throws<ArgumentException>(() => planner.Replan(plan, new() { Done = [999] }));
        Assert.Throws<ArgumentException>(() => planner.Replan(plan, new() { Joints = new Dictionary<JointId, JointNow> { [new("X")] = JointNow.Glued } }));
        Assert.Throws<ArgumentException>(() => planner.Replan(plan, new() { DoNotMove = Parts("X") }));
        Assert.Throws<ArgumentException>(() => planner.Replan(plan, new() { Found = [Camper.Parts[0]] }));
    }
}
