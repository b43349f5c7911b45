using Wainwright.Fitout;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Plans;

public class ObjectiveTests
{
    [Theory]
    [InlineData(1), InlineData(2), InlineData(3), InlineData(4), InlineData(5), InlineData(6)]
    public void The_best_of_every_subset_of_parts_is_what_each_aim_finds(int seed)
    {
        var job = SeededVan.Of(seed, 7);
        foreach (var target in (PartId[])[new("P0"), new("P1")])
        {
            var all = SeededVan.OfEverySubset(job, target);
            foreach (var aim in Enum.GetValues<Objective>())
            {
                double First(RemovalPlan p) => aim switch { Objective.FewestPartsOut => p.PartsOut.Count(), Objective.LeastDestroyed => p.DamageMinutes, _ => 0 };
                var plan = RemovalPlanner.Remove(job, [target], new() { Objective = aim });
                if (all.Count == 0)
                {
                    Assert.Equal(Proof.ProvedUnreachable, plan.Proof);
                    continue;
                }
                var best = all.MinBy(p => (First(p), p.TotalMinutes))!;
                Assert.Equal(Proof.ProvedCheapest, plan.Proof);
                Assert.Equal(First(best), First(plan), 0.05);
                Assert.Equal(best.TotalMinutes, plan.TotalMinutes, 0.02);
                Assert.Equal(aim == Objective.LeastLabour ? plan.TotalMinutes : First(plan), plan.Sought!.Value, 0.06);
                Assert.Equal(plan.Sought.Value, plan.Sought.NoPlanBelow, 1e-9);
            }
        }
    }

    [Theory]
    [InlineData("A52"), InlineData("A40"), InlineData("A54")]
    public void No_aim_is_beaten_at_its_own_game_by_another(string part)
    {
        RemovalPlan Plan(Objective aim) => RemovalPlanner.Remove(Camper, Parts(part), new() { Objective = aim });
        var (labour, few, whole) = (Plan(Objective.LeastLabour), Plan(Objective.FewestPartsOut), Plan(Objective.LeastDestroyed));

        Assert.All((RemovalPlan[])[few, whole], p => Assert.True(p.TotalMinutes >= labour.TotalMinutes - 0.01));
        Assert.All((RemovalPlan[])[labour, whole], p => Assert.True(p.PartsOut.Count() >= few.Sought!.Value - 1 || p.Steps.Any(s => s.Kind == StepKind.TakePiece)));
        Assert.All((RemovalPlan[])[labour, few], p => Assert.True(p.DamageMinutes >= whole.DamageMinutes - 0.05));
        Assert.All((RemovalPlan[])[labour, few, whole], p => Assert.Equal(Proof.ProvedCheapest, p.Proof));
    }

    [Fact]
    public void Some_parts_are_taken_out_and_others_reached_or_seen_in_one_plan_that_shares_the_work()
    {
        var planner = new RemovalPlanner(Camper);
        var together = planner.Plan([new(new("A52"), AccessKind.Remove), new(new("A49"), AccessKind.Reach), new(new("A50"), AccessKind.See)]);

        Assert.Equal(Proof.ProvedCheapest, together.Proof);
        Assert.Contains(together.Steps, s => s is { Kind: StepKind.Reach } && s.Part == new PartId("A49"));
        Assert.Contains(together.Steps, s => s is { Kind: StepKind.See } && s.Part == new PartId("A50"));
        Assert.InRange(together.TotalMinutes, planner.Remove(Parts("A52")).TotalMinutes, planner.Remove(Parts("A52")).TotalMinutes + planner.Reach(Parts("A49")).TotalMinutes + planner.See(Parts("A50")).TotalMinutes);
        Assert.Empty(planner.Audit(together).Faults);
    }
}
