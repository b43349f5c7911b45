using System.Globalization;
using Wainwright.Geometry;

namespace Wainwright.Access.Tests.Planning;

// Source:    instances of W. El Morabit et al., "Reactive Disassembly Sequence Planning under Uncertain Component Conditions",
//            IFAC World Congress 2026, repository lauw4/lassy-dsp-grasp, commit 30ca2576; graphs of the second to fourth after
//            A. Scholl, "Data of Assembly Line Balancing Problems" (1993).
// Seen:      the instance files. Their own objective rewards parts taken beyond the targets and is not ours; what is
//            checked is what follows from arcs and costs alone: all that must precede the targets, and its cost.
// Tolerance: none.
public class PublishedPrecedenceTests
{
    [Theory]
    [InlineData("1>2 2>3", "3", "1 1 10", 12, 3)]
    [InlineData("1>2 1>4 2>3 2>5 4>7 5>6", "7 3 6", "9 2 10 10 3 3 9", 46, 7)]
    [InlineData("1>2 2>3 2>4 3>5 3>6 4>6 5>7 6>8", "7", "3 4 10 1 4 4 6 7", 27, 5)]
    [InlineData("1>2 1>3 1>4 1>5 2>6 3>7 4>7 5>7 6>8 7>9 8>10 9>11 10>11", "11", "3 1 5 2 4 5 2 3 2 10 7", 44, 11)]
    [InlineData(
        "1>2 1>3 2>4 3>4 4>6 6>7 7>8 4>5 5>8 2>9 9>10 10>8 3>11 11>12 12>13 13>14 14>8 6>11 5>12 10>13 1>16 16>8 2>15 15>8 3>17 17>8",
        "8", "2 2 2 2 15 2 2 2 2 20 2 2 2 2 25 2 3", 89, 17)]
    [InlineData(
        "1>7 2>7 3>7 4>8 5>8 6>8 7>9 7>11 8>10 10>12 9>13 9>15 10>14 11>15 12>15 12>16 14>16 13>17 15>18 16>18 17>18 17>19 19>20 18>20 20>21 20>22",
        "20", "1 1 1 1 1 1 4 3 1 5 6 7 2 4 8 7 2 9 10 8 5 6", 82, 20)]
    public void All_that_precedes_the_targets_comes_out_and_nothing_else(string arcs, string targets, string costs, long cost, int parts)
    {
        var prices = Numbers(costs, ' ').Select(c => (long)c).ToList();
        var before = prices.Select(_ => new ItemSet(prices.Count)).ToList();
        foreach (var arc in arcs.Split(' ').Select(a => Numbers(a, '>'))) before[arc[1] - 1].Add(arc[0] - 1);
        var puzzle = Puzzle.OfWays(prices, [.. before.Select(b => (IReadOnlyList<ItemSet>)[b])]);

        var plan = Assert.IsType<Solved>(new Planner(puzzle).Plan(Numbers(targets, ' ').Select(t => t - 1), null, SearchBudget.Usual, CancellationToken.None));

        Assert.Equal(cost, plan.Cost);
        Assert.Equal(parts, plan.Order.Count);
        Assert.True(plan.IsProved);
        Assert.Empty(CertificateCheck.Faults(puzzle, ItemSet.All(prices.Count), plan));
    }

    private static int[] Numbers(string text, char between) => [.. text.Split(between).Select(n => int.Parse(n, CultureInfo.InvariantCulture))];
}
