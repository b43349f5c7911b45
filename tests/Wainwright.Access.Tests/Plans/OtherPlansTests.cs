using Wainwright.Access.Tests.Planning;
using Wainwright.Fitout;
using Wainwright.Geometry;
using static Wainwright.Access.Tests.Demo;

namespace Wainwright.Access.Tests.Plans;

public class OtherPlansTests
{
    [Fact]
    public void On_seeded_puzzles_the_next_best_plans_are_those_of_trying_every_subset()
    {
        var random = new Random(1971);
        var compared = 0;
        for (var n = 0; n < 60; n++)
        {
            var puzzle = Random(random);
            if (new Planner(puzzle).Plan([0], null, SearchBudget.Usual, CancellationToken.None) is not Solved best) continue;
            PartId Name(int item) => new($"{item}");
            var ranked = new Ranked(
                q => new Planner(puzzle).Plan([0], ItemSet.Of(puzzle.Count, q.Stays.Select(p => int.Parse(p.Text, System.Globalization.CultureInfo.InvariantCulture))), SearchBudget.Usual, CancellationToken.None),
                p => [.. p.Order.Select(Name)], new HashSet<PartId> { Name(0) }, most: 10_000);

            var found = ranked.After(new(new([], []), best)).Take(3).Select(f => f.Plan.Cost).ToList();

            var expected = ByTryingAll(puzzle, ItemSet.Of(puzzle.Count, best.Order)).Take(3).ToList();
            Assert.Equal(expected, found);
            Assert.True(ranked.IsProved);
            compared += expected.Count;
        }
        Assert.InRange(compared, 20, 180);
    }

    [Theory]
    [InlineData("A40"), InlineData("A35")]
    public void Another_way_keeps_in_a_part_of_every_better_one_is_no_cheaper_and_can_be_walked(string part)
    {
        var planner = new RemovalPlanner(Camper);
        var others = planner.Others([new(new(part), AccessKind.Remove)], 2);

        var better = new List<HashSet<PartId>> { Leaving(others.Best) };
        Assert.NotEmpty(others.Others);
        foreach (var other in others.Others)
        {
            Assert.True(other.More >= -1e-9);
            Assert.Equal(other.Plan.TotalMinutes - others.Best.TotalMinutes, other.More, 0.02);
            Assert.All(better, b => Assert.False(b.IsSubsetOf(Leaving(other.Plan))));
            Assert.Equal(Leaving(others.Best).Except(Leaving(other.Plan)), other.StayIn);
            Assert.Empty(planner.Audit(other.Plan).Faults);
            better.Add(Leaving(other.Plan));
        }
        Assert.Equal(others.Others[0].More, others.Fragility);
        Assert.True(others.AreProved);
    }

    [Fact]
    public void The_least_price_of_keeping_one_of_its_parts_in_is_the_gap_of_the_second_best()
    {
        var planner = new RemovalPlanner(Camper);
        IReadOnlyList<Wanted> wanted = [new(new("A40"), AccessKind.Remove)];
        var others = planner.Others(wanted, 1);

        var prices = planner.PricesOfKeeping(wanted, [.. Leaving(others.Best).Where(p => p.Text != "A40")]);

        Assert.Equal(others.Fragility!.Value, prices.Where(p => p.More is not null).Min(p => p.More!.Value), 1e-9);
        Assert.All(prices, p => Assert.True(p.IsProved));
        Assert.Contains(prices, p => p.More is null); // the tray lies over the trap
    }

    [Fact]
    public void A_part_that_stays_in_anyway_costs_nothing_to_keep() =>
        Assert.Equal(0, Assert.Single(new RemovalPlanner(Camper).PricesOfKeeping([new(new("A52"), AccessKind.Remove)], Parts("A23"))).More);

    [Fact]
    public void Where_only_the_part_itself_comes_out_there_is_no_other_way()
    {
        var others = new RemovalPlanner(Workshop).Others([new(new("B13"), AccessKind.Remove)]);

        Assert.Empty(others.Others);
        Assert.True(others.AreAll);
        Assert.Null(others.Fragility);
    }

    private static HashSet<PartId> Leaving(RemovalPlan plan) =>
        [.. plan.Steps.Where(s => s.Kind is StepKind.TakeOut or StepKind.TakePiece).SelectMany(s => s.With.Prepend(s.Part!.Value))];

    /// <summary>Prices of the cheapest set, that holds none of the sets before it, again and again.</summary>
    private static IEnumerable<long> ByTryingAll(Puzzle puzzle, ItemSet best)
    {
        var feasible = BruteForce.Feasible(puzzle, [0]).OrderBy(s => s.Sum(i => puzzle.Costs[i])).ToList();
        var before = new List<ItemSet> { best };
        while (feasible.Find(s => !before.Exists(b => b.IsWithin(s))) is { } next)
        {
            before.Add(next);
            yield return next.Sum(i => puzzle.Costs[i]);
        }
    }

    private static Puzzle Random(Random random)
    {
        var count = random.Next(6, 10);
        var ways = Enumerable.Range(0, count).Select(item => (IReadOnlyList<ItemSet>)[.. Enumerable.Range(0, random.Next(1, 4)).Select(_ =>
            ItemSet.Of(count, Enumerable.Range(0, random.Next(item == 0 ? 1 : 0, 4)).Select(_ => random.Next(count)).Where(q => q != item)))]);
        // prices that do not tie: the sets then follow from the prices alone
        return Puzzle.OfWays([.. Enumerable.Range(0, count).Select(_ => (long)random.Next(1, 1_000_000))], [.. ways]);
    }
}
