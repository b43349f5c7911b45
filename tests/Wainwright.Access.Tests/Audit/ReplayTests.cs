using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Audit;

/// <summary>Every plan of the demonstrations replayed by code that the planner does not use.</summary>
public class ReplayTests
{
    private static readonly Lazy<RemovalPlanner> CamperPlanner = new(() => new(Camper)), WorkshopPlanner = new(() => new(Workshop));

    public static TheoryData<string> CasesWithPlans => [.. CasesFiles.Names];

    [Theory]
    [MemberData(nameof(CasesWithPlans))]
    public void Every_plan_for_a_part_of_a_case_is_replayed_without_a_fault(string name)
    {
        foreach (var play in (int[])[0, 3])
        {
            var planner = new RemovalPlanner(Case(name), new() { ClearanceMm = play, Bracket = false });
            foreach (var part in Case(name).Parts.Where(p => p.Solids.Count > 0)) AssertHolds(planner, [part.Id]);
        }
    }

    [Theory]
    [InlineData("A52"), InlineData("A40"), InlineData("A54"), InlineData("A04"), InlineData("A35"), InlineData("A10"), InlineData("A06"), InlineData("A49 A50 A51"), InlineData("A20"), InlineData("A46"), InlineData("A12")]
    public void Plans_for_the_camper_are_replayed_without_a_fault(string parts) => AssertHolds(CamperPlanner.Value, Parts(parts));

    [Theory]
    [InlineData("B04"), InlineData("B13"), InlineData("B14"), InlineData("B16"), InlineData("B17"), InlineData("B18"), InlineData("B26a"), InlineData("B28"), InlineData("B01"), InlineData("B29"), InlineData("B14 B13")]
    public void Plans_for_the_workshop_are_replayed_without_a_fault(string parts) => AssertHolds(WorkshopPlanner.Value, Parts(parts));

    private static void AssertHolds(RemovalPlanner planner, IReadOnlyList<PartId> parts)
    {
        foreach (var plan in (RemovalPlan[])[planner.Remove(parts), planner.Reach(parts)])
        {
            var report = planner.Audit(plan);
            Assert.True(report.Holds, $"{Names(parts)}: {string.Join(Environment.NewLine, report.Faults)}");
            Assert.Equal(plan.Steps.Count(s => s.Path.Count > 0), report.Loads);
        }
    }
}
