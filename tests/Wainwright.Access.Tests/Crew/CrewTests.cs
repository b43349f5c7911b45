using Wainwright.Fitout;
using static Wainwright.Access.Tests.Crew.CrewVan;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Crew;

/// <summary>Schedules small enough to lay out by hand. Carrying one of these boxes takes 1.5 min, its joint as long as it says.</summary>
public class CrewTests
{
    private static readonly Part Front = Box("F", 200, 800, 0, 300, 300, 300), Rear = Box("R", 3500, 800, 0, 300, 300, 300), BesideRear = Box("S", 3500, 300, 0, 300, 300, 300);

    private static CrewSchedule Schedule(Job job, string targets, CrewOptions? crew = null) => Access.Crew.Of(job, RemovalPlanner.Remove(job, Parts(targets)), crew);

    [Fact]
    public void Two_at_opposite_ends_work_at_once_and_carry_one_after_the_other()
    {
        var job = With([Front, Rear], [Held("F", 10), Held("R", 10)]);

        Assert.Equal(23, Schedule(job, "F R", new() { People = 1 }).Minutes, 1e-9);
        // 0–10 both undo; by the side door and the rear door each carries out at once
        var two = Schedule(job, "F R");
        Assert.Equal(11.5, two.Minutes, 1e-9);
        Assert.True(two.IsProved);
        Assert.Equal(23, two.LabourMinutes, 1e-9);
    }

    [Fact]
    public void In_one_stretch_of_the_van_a_second_person_saves_nothing()
    {
        var job = With([Rear, BesideRear], [Held("R", 10), Held("S", 10)]);

        var two = Schedule(job, "R S");
        Assert.Equal(23, two.Minutes, 1e-9);
        Assert.True(two.IsProved);
        Assert.Contains(two.Critical, l => l.Why == WaitFor.Room);
    }

    [Fact]
    public void One_driver_serves_one_at_a_time_and_a_second_driver_mends_it()
    {
        var job = With([Front, Rear], [Held("F", 10, Drive.CrossRecess), Held("R", 10, Drive.CrossRecess)]);

        var one = Schedule(job, "F R");
        Assert.Equal(21.5, one.Minutes, 1e-9);
        Assert.True(one.IsProved);
        Assert.Contains(one.Critical, l => l.Why == WaitFor.Tool && l.Words.Contains("cross-recess driver", StringComparison.Ordinal));
        Assert.Equal(11.5, Schedule(job, "F R", new() { ToolsOfAKind = 2 }).Minutes, 1e-9);
    }

    [Fact]
    public void A_heavy_part_takes_both_at_once_and_one_alone_is_told_which_step()
    {
        var heavy = With([Rear with { MassKg = 25 }], [Held("R", 10)]);

        var alone = Schedule(heavy, "R", new() { People = 1 });
        Assert.Empty(alone.Tasks);
        Assert.False(alone.IsProved);
        Assert.Equal("R", Assert.Single(alone.TooFew).Part!.Value.Text);
        // 10 min by one, then 3 min of labour by two
        var two = Schedule(heavy, "R");
        Assert.Equal(11.5, two.Minutes, 1e-9);
        Assert.Equal([1, 2], two.Tasks.Single(t => t.Step.Kind == StepKind.TakeOut).People);
    }

    [Fact]
    public void A_load_waits_for_what_its_own_way_passes_and_not_for_what_shuts_another_way()
    {
        // T leaves by the side door once B is out; A only shuts the rear door
        var job = With(
            [Front with { Id = new("T") }, Box("A", 2500, 0, 0, 300, 2000, 1990), Box("B", 700, 1500, 0, 1200, 300, 1000)],
            [Held("A", 30), Held("B", 5)]);

        var two = Schedule(job, "B T A");
        var (t, b) = (two.Tasks.Single(x => x.Step.Part == new PartId("T")), two.Tasks.Single(x => x.Step.Part == new PartId("B") && x.Step.Kind == StepKind.TakeOut));
        // A is longer than 1200 mm: 2.5 min to carry
        Assert.Equal(32.5, two.Minutes, 1e-9);
        Assert.True(two.IsProved);
        Assert.Equal("side door", t.Step.Through);
        Assert.InRange(t.FromMinutes, b.ToMinutes, 29);
    }

    [Fact]
    public void The_chain_that_sets_the_length_begins_at_nought_and_ends_with_the_last_step()
    {
        var two = Schedule(With([Front, Rear], [Held("F", 10, Drive.CrossRecess), Held("R", 4, Drive.CrossRecess)]), "F R");

        Assert.Equal(WaitFor.Nothing, two.Critical[0].Why);
        var byNumber = two.Tasks.ToDictionary(t => t.Step.Number);
        Assert.Equal(0, byNumber[two.Critical[0].Number].FromMinutes);
        Assert.Equal(two.Minutes, byNumber[two.Critical[^1].Number].ToMinutes);
        foreach (var (first, then) in two.Critical.Zip(two.Critical.Skip(1)))
            Assert.Equal(byNumber[first.Number].ToMinutes, byNumber[then.Number].FromMinutes, 1e-9);
    }

    [Fact]
    public void Everything_is_made_safe_before_anybody_begins()
    {
        var plan = RemovalPlanner.Remove(Camper, Parts("A40"));
        var two = Access.Crew.Of(Camper, plan);

        var safe = two.Tasks.Where(t => t.Step.Kind == StepKind.MakeSafe).Max(t => t.ToMinutes);
        Assert.All(two.Tasks.Where(t => t.Step.Kind != StepKind.MakeSafe), t => Assert.True(t.FromMinutes >= safe));
        Assert.Equal(plan.Steps.Count, two.Tasks.Count);
        Assert.InRange(two.Minutes, Math.Max(plan.OutMinutes / 2, two.LowerBoundMinutes) - 0.1, plan.OutMinutes + 0.1);
    }

    [Fact]
    public void Asked_twice_it_answers_alike()
    {
        var plan = RemovalPlanner.Remove(Camper, Parts("A54"));
        string Said() => string.Join('|', Access.Crew.Of(Camper, plan).Tasks.Select(t => $"{t.Step.Number} {t.FromMinutes} {string.Join('+', t.People)}"));
        Assert.Equal(Said(), Said());
    }

    [Fact]
    public void A_plan_of_another_van_is_refused() =>
        Assert.Throws<ArgumentException>(() => Access.Crew.Of(Workshop, RemovalPlanner.Remove(Camper, Parts("A52"))));
}
