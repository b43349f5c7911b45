using Wainwright.Fitout;

namespace Wainwright.Access.Tests.Plans;

/// <summary>A search says how far it has come, and never takes back what it said.</summary>
public sealed class ProgressTests
{
    [Fact]
    public void The_bound_only_rises_the_best_only_falls_and_they_end_at_the_plan()
    {
        List<SearchProgress> said = [];
        var plan = RemovalPlanner.Remove(Demo.Camper, [new PartId("A40")], new() { Bracket = false, Progress = said.Add });

        Assert.Equal(Proof.ProvedCheapest, plan.Proof);
        Assert.True(said.Count > 3);
        foreach (var (before, after) in said.Zip(said.Skip(1)))
        {
            Assert.True(after.LowerBoundMinutes >= before.LowerBoundMinutes);
            Assert.True(before.BestMinutes is null || after.BestMinutes <= before.BestMinutes);
            Assert.True(after.Questions >= before.Questions);
            Assert.True(after.Cuts >= before.Cuts);
        }
        Assert.Equal(plan.TotalMinutes, said[^1].BestMinutes!.Value, 0.1);
        Assert.True(said[^1].LowerBoundMinutes <= plan.TotalMinutes + 0.1);
    }
}
