using Wainwright.Geometry;

namespace Wainwright.Access.Tests.Planning;

public class RandomPuzzleTests
{
    [Fact]
    public void On_seeded_puzzles_of_six_to_ten_items_the_price_is_that_of_the_best_subset()
    {
        var random = new Random(9001);
        var (solved, unreachable) = (0, 0);
        for (var n = 0; n < 250; n++)
        {
            var puzzle = Random(random);
            IReadOnlyList<int> targets = random.Next(3) == 0 ? [0, 1] : [0];
            var best = BruteForce.Cheapest(puzzle, targets);

            var outcome = new Planner(puzzle).Plan(targets, null, SearchBudget.Usual, CancellationToken.None);

            if (best is null)
            {
                unreachable++;
                var no = Assert.IsType<Unreachable>(outcome);
                Assert.All(no.Walls, wall => Assert.IsType<Held>(puzzle.Ask(wall.Key, ItemSet.All(puzzle.Count).Without(wall.Value), wall.Value)));
                continue;
            }
            solved++;
            var plan = Assert.IsType<Solved>(outcome);
            Assert.Equal(best, plan.Cost);
            Assert.Equal(best, plan.LowerBound);
            Assert.Empty(CertificateCheck.Faults(puzzle, ItemSet.All(puzzle.Count), plan));
        }
        Assert.InRange(solved, 100, 230);
        Assert.InRange(unreachable, 20, 150);
    }

    [Fact]
    public void The_same_puzzle_gives_the_same_plan_twice()
    {
        var puzzle = Random(new Random(5));
        Solved Once() => Assert.IsType<Solved>(new Planner(puzzle).Plan([0], null, SearchBudget.Usual, CancellationToken.None));

        Assert.Equal(Once().Order, Once().Order);
        Assert.Equal(Once().Questions, Once().Questions);
    }

    [Fact]
    public void A_search_without_budget_still_gives_a_plan_and_an_honest_bound()
    {
        var random = new Random(77);
        var open = 0;
        for (var n = 0; n < 60; n++)
        {
            var puzzle = Random(random);
            if (BruteForce.Cheapest(puzzle, [0]) is not { } best) continue;

            var plan = Assert.IsType<Solved>(new Planner(puzzle).Plan([0], null, new SearchBudget(0, 0), CancellationToken.None));

            Assert.InRange(plan.LowerBound, 0, best);
            Assert.InRange(plan.Cost, best, long.MaxValue);
            Assert.Empty(CertificateCheck.Faults(puzzle, ItemSet.All(puzzle.Count), plan));
            if (!plan.IsProved) open++;
        }
        Assert.InRange(open, 5, 60);
    }

    [Fact]
    public void A_search_that_is_called_off_gives_its_best()
    {
        var puzzle = new Ways("t1: a | b c; a7; b2; c3").Puzzle;

        var plan = Assert.IsType<Solved>(new Planner(puzzle).Plan([0], null, SearchBudget.Usual, new CancellationToken(canceled: true)));

        Assert.Empty(CertificateCheck.Faults(puzzle, ItemSet.All(4), plan));
        Assert.False(plan.LowerBound > 6);
    }

    internal static Puzzle Random(Random random)
    {
        var count = random.Next(6, 11);
        var ways = Enumerable.Range(0, count).Select(item => (IReadOnlyList<ItemSet>)[.. Enumerable.Range(0, random.Next(1, 4)).Select(_ =>
            ItemSet.Of(count, Enumerable.Range(0, random.Next(item == 0 ? 1 : 0, 4)).Select(_ => random.Next(count)).Where(q => q != item)))]);
        return Puzzle.OfWays([.. Enumerable.Range(0, count).Select(_ => (long)random.Next(0, 20))], [.. ways]);
    }
}
