using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Audit;

/// <summary>Plans spoiled on purpose: the replay says what is wrong.</summary>
public class PlantedFaultTests
{
    private static readonly RemovalPlanner Planner = new(Workshop);
    private static readonly RemovalPlan Good = Planner.Remove(Parts("B16"));
    private static readonly IReadOnlyList<HandWay> Hands = Planner.HandWays(Good);

    [Fact]
    public void The_plan_as_made_holds() => Assert.Empty(Faults(Good));

    [Fact]
    public void A_part_carried_before_what_stands_in_its_way_runs_into_it()
    {
        var washer = Step("B30", StepKind.TakeOut);
        Says(Without(washer), "B30 parts washer");
    }

    [Fact]
    public void A_part_carried_before_its_joint_is_undone_is_still_held()
    {
        var bolts = Good.Steps.First(s => s.Joint?.Text == "B16-bolts");
        Says(Without(bolts), "joint B16-bolts still holds it");
    }

    [Fact]
    public void A_joint_undone_while_the_way_of_the_hand_is_filled_is_not_reached()
    {
        var bolts = Good.Steps.First(s => s.Joint?.Text == "B16-bolts");
        Says(Reordered([bolts, .. Good.Steps.Where(s => s != bolts)]), "hand and tool do not get there");
    }

    [Fact]
    public void A_live_line_is_not_touched() =>
        Says(Good with { Steps = [.. Good.Steps.Where(s => s.Kind != StepKind.MakeSafe)] }, "low-voltage DC is not made safe before");

    [Fact]
    public void A_way_through_the_wall_is_found()
    {
        var washer = Step("B30", StepKind.TakeOut);
        Says(With(washer with { Path = [new(new(0, 0, 0), []), new(new(0, 0, 5000), [])] }), "into the van itself");
        Says(With(washer with { Path = [new(new(0, 0, 0), []), new(new(0, 0, 5), [])] }), "its way ends inside the van");
        Says(With(washer with { Path = [] }), "no way out is given");
    }

    [Fact]
    public void A_way_that_does_not_begin_where_the_load_stands_is_found()
    {
        var washer = Step("B30", StepKind.TakeOut);
        var last = washer.Path[^1];
        Says(With(washer with { Path = [last], Through = null }), "does not begin where it stands");
        Says(With(washer with { Path = [last] }), "does not begin where it stands");
        Says(With(washer with { Path = [.. washer.Path.Skip(1)] }), "does not begin where it stands");
        Says(With(washer with { Path = [washer.Path[0] with { Turned = new(1, 0, 0, 0) }, .. washer.Path.Skip(1)] }), "does not begin where it stands");
    }

    [Fact]
    public void A_way_out_by_no_opening_named_is_found() => Says(With(Step("B30", StepKind.TakeOut) with { Through = null }), "no opening is named");

    [Fact]
    public void A_soft_load_folded_elsewhere_than_where_it_lies_is_found()
    {
        var planner = new RemovalPlanner(Case("mattress-that-bends"));
        var plan = planner.Remove(Parts("A"));
        var step = plan.Steps.First(s => s.FoldedMm is not null);
        Assert.Empty(planner.Audit(plan).Faults);
        var outside = plan with { Steps = [.. plan.Steps.Select(s => s == step ? s with { Path = [s.Path[^1]] } : s)] };
        Assert.Contains(planner.Audit(outside).Faults, f => f.Contains("not folded where it lies", StringComparison.Ordinal));
    }

    [Fact]
    public void A_turn_where_there_is_no_room_for_it_is_found()
    {
        var bench = new RemovalPlanner(Case("way-round-a-narrow-slot"));
        var plan = bench.Remove(Parts("A"));
        var step = plan.Steps[^1];
        var turned = plan with { Steps = [.. plan.Steps.SkipLast(1), step with { Path = [step.Path[0], new(new(0, 0, 0), [Axis.X]), .. step.Path.Skip(1).Select(p => p with { QuarterTurnsAbout = [Axis.X] })] }] };
        Assert.Contains(PlanAudit.Of(Case("way-round-a-narrow-slot"), new(), turned, bench.HandWays(plan)).Faults, f => f.Contains("while it is turned", StringComparison.Ordinal));
    }

    [Fact]
    public void Another_door_than_the_one_it_passes_is_found()
    {
        var washer = Step("B30", StepKind.TakeOut);
        Says(With(washer with { Through = "roof hatch" }), "it is said to leave by roof hatch");
    }

    [Fact]
    public void Too_few_people_for_the_weight_are_found()
    {
        var heavier = Workshop with { Parts = [.. Workshop.Parts.Select(p => p.Id.Text == "B30" ? p with { MassKg = 60 } : p)] };
        Assert.Contains(PlanAudit.Of(heavier, new(), Good, Hands).Faults, f => f.Contains("60 kg take 4 people, not 1", StringComparison.Ordinal));
    }

    [Fact]
    public void Sums_that_do_not_add_up_and_minutes_that_are_not_the_tables_are_found()
    {
        Says(Good with { OutMinutes = Good.OutMinutes + 1 }, "the steps add up to");
        var undo = Good.Steps.First(s => s.Kind == StepKind.Undo);
        Says(With(undo with { OutMinutes = undo.OutMinutes - 1 }), "not those of the labour table");
        Says(Good with { LowerBoundMinutes = Good.TotalMinutes + 5 }, "above the plan's own minutes");
    }

    [Fact]
    public void What_stands_on_it_what_is_out_already_and_what_was_to_stay_are_found()
    {
        Says(Good with { Steps = [.. Good.Steps, Step("B30", StepKind.TakeOut)] }, "is out already");
        Assert.Contains(PlanAudit.Of(Workshop, new() { MustStay = Parts("B30") }, Good, Hands).Faults, f => f.Contains("B30 was to stay in", StringComparison.Ordinal));
        Says(Good with { Steps = [.. Good.Steps.Where(s => s.Part?.Text != "B16")] }, "was wanted out and is still in");
    }

    [Fact]
    public void A_fixing_without_a_way_for_the_hand_and_a_hand_too_small_are_found()
    {
        Assert.Contains(PlanAudit.Of(Workshop, new(), Good, []).Faults, f => f.Contains("a way of the hand is given for 0 of", StringComparison.Ordinal));
        var thin = Hands.Select(h => h with { Boxes = [(new(-2, -2, 0), new(2, 2, 100))] }).ToList();
        Assert.Contains(PlanAudit.Of(Workshop, new(), Good, thin).Faults, f => f.Contains("smaller than a hand", StringComparison.Ordinal));
    }

    private static RemovalStep Step(string part, StepKind kind) => Good.Steps.First(s => s.Part?.Text == part && s.Kind == kind);

    private static RemovalPlan With(RemovalStep changed) => Good with { Steps = [.. Good.Steps.Select(s => s.Number == changed.Number ? changed : s)] };

    private static RemovalPlan Without(RemovalStep gone) => Good with { Steps = [.. Good.Steps.Where(s => s != gone)] };

    private static RemovalPlan Reordered(IReadOnlyList<RemovalStep> steps) => Good with { Steps = steps };

    private static void Says(RemovalPlan plan, string words) => Assert.Contains(Faults(plan), f => f.Contains(words, StringComparison.Ordinal));

    private static IReadOnlyList<string> Faults(RemovalPlan plan) => PlanAudit.Of(Workshop, new(), plan, Hands).Faults;
}
