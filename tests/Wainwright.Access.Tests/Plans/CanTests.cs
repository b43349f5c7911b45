using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Plans;

public class CanTests
{
    private static Job With(string id, Func<Part, Part> changed) => Workshop with { Parts = [.. Workshop.Parts.Select(p => p.Id.Text == id ? changed(p) : p)] };

    private static RemovalPlan Out(Job job, string id) => RemovalPlanner.Remove(job, Parts(id), new() { Bracket = false });

    private static IEnumerable<Medium?> MadeSafe(RemovalPlan plan) => plan.Steps.Where(s => s.Kind == StepKind.MakeSafe).Select(s => s.Medium);

    [Fact]
    public void A_can_is_lifted_out_as_it_is_and_what_is_fixed_is_drained()
    {
        Assert.Empty(MadeSafe(Out(Workshop, "B37")));
        Assert.Contains(Medium.Waste, MadeSafe(Out(With("B37", p => p with { LooseGoods = false }), "B37")));
    }

    [Fact]
    public void A_full_can_is_reckoned_with_what_is_in_it()
    {
        var step = Out(Workshop, "B36").Steps.Single(s => s.Kind == StepKind.TakeOut);

        Assert.Equal((2, 21.0), (step.People, step.Lift!.MassKg));
        Assert.Contains(step.Cautions, c => c.Contains("with 20 kg in it", StringComparison.Ordinal));
    }

    [Fact]
    public void A_level_that_nobody_read_is_full()
    {
        static Part Unread(Part p) => p with { Devices = [.. p.Devices.Select(d => d is Tank t ? t with { FilledL = null } : d)] };

        Assert.Equal(21.0, Out(With("B37", Unread), "B37").Steps.Single(s => s.Kind == StepKind.TakeOut).Lift!.MassKg);
        Assert.Contains(Medium.Waste, MadeSafe(Out(With("B37", p => Unread(p) with { LooseGoods = false }), "B37")));
    }

    [Fact]
    public void Fuel_is_made_safe_in_a_loose_can_too()
    {
        var fuel = With("B37", p => p with { Devices = [.. p.Devices, new Tank { Holds = Medium.Fuel, VolumeL = new(5) }] });

        Assert.Equal([Medium.Fuel], MadeSafe(Out(fuel, "B37")));
    }

    [Fact]
    public void A_hose_that_goes_on_to_another_part_is_made_safe_before_it_comes_off_the_can()
    {
        var on = Workshop with { Lines = [.. Workshop.Lines.Select(l => l.Id.Text == "LQ1" ? l with { From = l.From with { Part = new("B30") } } : l)] };

        Assert.Contains(Medium.Waste, MadeSafe(Out(on, "B37")));
    }
}
