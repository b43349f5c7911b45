using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Plans;

public class SafetyTests
{
    [Fact]
    public void What_is_made_safe_comes_first_the_burner_before_all_and_the_mains_before_the_battery()
    {
        var media = RemovalPlanner.Remove(Camper, Parts("A52 A49 A48")).Steps.TakeWhile(s => s.Kind == StepKind.MakeSafe).Select(s => s.Medium!.Value).ToList();

        Medium[] order = [Medium.Exhaust, Medium.Mains, Medium.Dc, Medium.Gas, Medium.Fuel, Medium.Water, Medium.Waste];
        Assert.Superset(new HashSet<Medium> { Medium.Exhaust, Medium.Mains, Medium.Dc, Medium.Water }, media.ToHashSet());
        Assert.Equal(media.OrderBy(m => Array.IndexOf(order, m)), media);
    }

    [Theory]
    [InlineData("A25"), InlineData("A26"), InlineData("A09")]
    public void What_hangs_overhead_is_held_before_its_last_fixing_goes(string part)
    {
        var plan = RemovalPlanner.Remove(Camper, Parts(part));
        var steps = plan.Steps.ToList();
        var hold = steps.FindIndex(s => s.Kind == StepKind.Hold && s.Part!.Value.Text == part);
        var last = steps.FindLastIndex(s => s.Kind == StepKind.Undo && Camper.Joints.First(j => j.Id == s.Joint).Part.Text == part);

        Assert.Equal(last - 1, hold);
        Assert.Equal(LabourTable.Usual.HoldOverhead, steps[hold].OutMinutes);
        Assert.Contains("estimate", steps[hold].Origin, StringComparison.Ordinal);
        Assert.Equal(plan.OutMinutes, steps.Sum(s => s.OutMinutes), 1e-9);
        Assert.Equal(Enumerable.Range(1, steps.Count), steps.Select(s => s.Number));
    }

    // a cupboard on the wall, a thin wall that stands, a chest on the floor
    [Theory]
    [InlineData(800, 400, 300, 500, 12, "drops")]
    [InlineData(0, 15, 900, 1200, 12, "tips")]
    [InlineData(0, 500, 500, 500, 12, null)]
    [InlineData(800, 400, 300, 500, 4, null)]
    public void What_would_drop_or_tip_is_found_from_what_carries_it(int zMm, int xMm, int yMm, int highMm, double kg, string? how)
    {
        var job = Van(new BoxSolid { At = new(500, 50, zMm), Size = new(xMm, yMm, highMm) }, kg);
        var plan = RemovalPlanner.Remove(job, Parts("P"));

        Assert.Equal(how is not null, plan.Steps.Any(s => s.Kind == StepKind.Hold));
        if (how is not null) Assert.Contains($"it {how} when its last fixing goes", plan.Steps.Single(s => s.Kind == StepKind.Hold).Action, StringComparison.Ordinal);
        Assert.Empty(new RemovalPlanner(job).Audit(new RemovalPlanner(job).Remove(Parts("P"))).Faults);
    }

    [Fact]
    public void A_part_that_stays_in_and_loses_its_last_fixing_is_to_be_propped()
    {
        var van = Van(new BoxSolid { At = new(500, 50, 800), Size = new(400, 300, 400) }, 12);
        var panel = new Part { Id = new("W"), Name = "wall panel", System = PartSystem.Lining, Known = Known.Measured, MassKg = 6, Solids = [new BoxSolid { At = new(480, 0, 100), Size = new(500, 40, 500) }] };
        // the cupboard hangs on the panel alone: to take the panel the cupboard's screws go, though the cupboard could stay
        var job = van with { Parts = [.. van.Parts, panel], Joints = [van.Joints[0] with { To = new("W") }, van.Joints[0] with { Id = new("K"), Part = new("W"), To = null }] };
        var plan = RemovalPlanner.Remove(job, [new("W")]);

        Assert.DoesNotContain(plan.PartsOut, p => p.Text == "P");
        Assert.Contains(plan.Cautions, c => c.Contains("P box stays in, loses its last fixing here and drops: prop it before", StringComparison.Ordinal));
    }

    // Source:    NIOSH 94-110 in metric units: RWL = 23 · 25/H · (1 − 0.003 |V − 75|) · (0.82 + 4.5/D) · CM; two thirds of the sum for two.
    // Worked:    a box 400 deep with its middle at 600 mm: H = 20 + 20 = 40 cm, V = 60, D = 25 (least), fair grip 0.95 below 75 cm:
    //            23 · 0.625 · 0.955 · 1.0 · 0.95 = 13.04 kg; two at its ends: H = 32.5, so 23 · 0.7692 · 0.955 · 0.95 = 16.05 each, 21.4 together.
    // Tolerance: rounding of the worked sum.
    [Fact]
    public void A_load_is_judged_against_one_and_two_people_by_the_lifting_equation_and_the_two_thirds_rule()
    {
        var step = RemovalPlanner.Remove(Van(new BoxSolid { At = new(500, 100, 350), Size = new(400, 500, 500) }, 15), Parts("P")).Steps.Single(s => s.Kind == StepKind.TakeOut);

        Assert.Equal(13.04, step.Lift!.OneKg, 0.01);
        Assert.Equal(21.4, step.Lift.TwoKg, 0.02);
        Assert.Equal(2, step.Lift.People);
        Assert.Contains("lower", step.Lift.Words, StringComparison.Ordinal);
        Assert.Contains(step.Cautions, c => c.Contains("upper bound: lift with 2", StringComparison.Ordinal));
    }

    [Fact]
    public void Hot_and_sharp_things_are_said()
    {
        var heater = RemovalPlanner.Remove(Camper, Parts("A52"));
        Assert.Contains(heater.Cautions, c => c.StartsWith("A52", StringComparison.Ordinal) && c.Contains("hot", StringComparison.Ordinal));
        Assert.Contains(RemovalPlanner.Remove(Workshop, Parts("B28")).Cautions, c => c.Contains("sharp", StringComparison.Ordinal));
        Assert.Contains(RemovalPlanner.Remove(Case("sheared-screw-to-drill"), Parts("A")).Cautions, c => c.StartsWith("Drilling", StringComparison.Ordinal));
    }

    private static Job Van(Solid solid, double kg) => new()
    {
        Format = 1, Id = "V", Title = "one part",
        Vehicle = new()
        {
            Name = "van", LoadSpace = new() { LengthMm = 2000, WidthMm = 1200, HeightMm = 1400 },
            Openings = [new() { Name = "rear door", Face = Face.Rear, FromMm = 0, WidthMm = 1200, SillMm = 0, HeightMm = 1400, Passable = true, Known = Known.Measured }],
        },
        Parts = [new() { Id = new("P"), Name = "box", System = PartSystem.Furniture, Known = Known.Measured, MassKg = kg, Solids = [solid] }],
        Joints = [new() { Id = new("J"), Part = new("P"), Type = FixingType.WoodScrew, Count = 4, Known = Known.Seen, Release = new() { Way = ReleaseWay.Unscrew } }],
    };
}
