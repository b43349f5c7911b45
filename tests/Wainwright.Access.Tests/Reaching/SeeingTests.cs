using Wainwright.Fitout;

namespace Wainwright.Access.Tests.Reaching;

public class SeeingTests
{
    private static readonly Lazy<RemovalPlanner> Camper = new(() => new(Demo.Camper)), Workshop = new(() => new(Demo.Workshop));

    [Theory]
    [InlineData("A50", "")] // the pump: from the rear doors
    [InlineData("A52", "A29 A30")] // the heater under the seat: box and cushion
    [InlineData("A07", "A17")] // the wall fill: where the window was
    [InlineData("A13", "A15")] // the battens over the ceiling: where the vent was
    public void What_comes_out_to_see_a_part_of_the_camper_is_what_hides_it(string wanted, string comesOut) =>
        Assert.Equal(comesOut, CasesFiles.WhatComesOut(Camper.Value.See(Demo.Parts(wanted))));

    [Theory]
    [InlineData("B17", "B11")] // the fuse plate: over the compressor
    [InlineData("B34", "")] // a frame of tubes is seen by its tubes
    public void What_comes_out_to_see_a_part_of_the_workshop_is_what_hides_it(string wanted, string comesOut) =>
        Assert.Equal(comesOut, CasesFiles.WhatComesOut(Workshop.Value.See(Demo.Parts(wanted))));

    [Fact]
    public void To_see_is_a_step_of_its_own_and_costs_only_what_is_in_the_way()
    {
        var plan = Camper.Value.See(Demo.Parts("A52"));

        Assert.Equal(AccessKind.See, plan.Kind);
        Assert.Equal(Proof.ProvedCheapest, plan.Proof);
        Assert.Equal(StepKind.See, plan.Steps[^1].Kind);
        Assert.Equal(0, plan.Steps[^1].OutMinutes);
        Assert.Contains(plan.Steps, s => s.Why.Reason == OrderReason.Reach);
    }
}
