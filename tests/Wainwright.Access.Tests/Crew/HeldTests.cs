using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Crew;

public class HeldTests
{
    [Fact]
    public void Whoever_undoes_the_last_fixing_and_whoever_carries_are_told_to_hold()
    {
        var plan = RemovalPlanner.Remove(Camper, Parts("A25"), new() { Bracket = false });
        var hold = plan.Steps.Single(s => s.Kind == StepKind.Hold && s.Part == new PartId("A25"));
        var schedule = Access.Crew.Of(Camper, plan, new() { People = 2 });

        IEnumerable<RemovalStep> told = [plan.Steps.Single(s => s.Number == hold.Number + 1), plan.Steps.Single(s => s.Kind == StepKind.TakeOut && s.Part == hold.Part)];
        Assert.All(told, step => Assert.Contains($"{hold.Action}.", schedule.Tasks.Single(t => t.Step.Number == step.Number).Step.Cautions));
        Assert.Equal(plan.OutMinutes, schedule.LabourMinutes, 0.1);
    }
}
