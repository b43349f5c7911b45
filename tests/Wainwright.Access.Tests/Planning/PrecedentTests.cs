using Wainwright.Geometry;

namespace Wainwright.Access.Tests.Planning;

/// <summary>A search begun with another question's plan and proof comes to the same price, whatever that proof says.</summary>
public class PrecedentTests
{
    [Fact]
    public void Begun_with_the_proof_of_other_prices_with_some_done_or_of_another_puzzle_the_price_is_that_of_the_best_subset()
    {
        var random = new Random(4242);
        var (solved, asked, askedAfresh) = (0, 0, 0);
        for (var n = 0; n < 400; n++)
        {
            var first = RandomPuzzleTests.Random(random);
            var count = first.Count;
            if (new Planner(first).Plan([0], null, SearchBudget.Usual, CancellationToken.None) is not Solved before) continue;
            var precedent = new Precedent(ItemSet.Of(count, before.Order), before.Proof.Cuts);
            var given = ItemSet.Of(count, before.Order.Take(random.Next(0, 3)));
            var next = (n % 3) switch
            {
                0 => first with { Costs = [.. first.Costs.Select(c => random.Next(4) == 0 ? c + random.Next(1, 30) : c)] },
                1 => first.With(first.Costs, given),
                _ => Another(random, count),
            };
            var best = BruteForce.Cheapest(next, [0]);

            var outcome = Begun(next, precedent);

            if (best is null)
            {
                Assert.IsType<Unreachable>(outcome);
                continue;
            }
            solved++;
            var plan = Assert.IsType<Solved>(outcome);
            Assert.Equal((best, best), (plan.Cost, plan.LowerBound));
            Assert.Empty(CertificateCheck.Faults(next, ItemSet.All(count), plan));
            if (n % 3 == 2) continue;
            asked += plan.Questions;
            askedAfresh += new Planner(next).Plan([0], null, SearchBudget.Usual, CancellationToken.None).Questions;
        }
        Assert.InRange(solved, 150, 400);
        Assert.True(asked < askedAfresh, $"{asked} questions, afresh {askedAfresh}");
    }

    [Fact]
    public void Sentences_that_are_false_here_are_not_believed()
    {
        var puzzle = new Ways("t1: a | b c; a7; b2; c3").Puzzle;
        // that the target never goes, that it needs the dear one, that the cheap ones never go
        var lies = new Precedent(ItemSet.Of(4, 0, 1), [new(0, new(4)), new(0, ItemSet.Of(4, 1)), new(2, new(4)), new(3, new(4))]);

        var plan = Assert.IsType<Solved>(Begun(puzzle, lies));

        Assert.Equal((6, 6), (plan.Cost, plan.LowerBound));
        Assert.Empty(CertificateCheck.Faults(puzzle, ItemSet.All(4), plan));
    }

    private static Outcome Begun(Puzzle puzzle, Precedent precedent) => new Planner(puzzle).Plan([0], null, SearchBudget.Usual, null, precedent, CancellationToken.None);

    private static Puzzle Another(Random random, int count)
    {
        while (true)
            if (RandomPuzzleTests.Random(random) is var puzzle && puzzle.Count == count) return puzzle;
    }
}
