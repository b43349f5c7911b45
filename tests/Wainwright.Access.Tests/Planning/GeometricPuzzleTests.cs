using Wainwright.Geometry;

namespace Wainwright.Access.Tests.Planning;

/// <summary>Plans over boxes in a van with two doors, against every subset with the same questions asked afresh.</summary>
public class GeometricPuzzleTests
{
    private static readonly Shell Van = new(
        new(0, 0, 0, 2400, 1500, 1500), 40,
        [new("rear doors", Heading.PlusX, new(0, 100, 0, 0, 1400, 1300)), new("side door", Heading.PlusY, new(300, 0, 0, 1000, 0, 1200))], []);

    [Fact]
    public void On_seeded_packings_of_six_to_nine_boxes_the_price_is_that_of_the_best_subset()
    {
        var random = new Random(4711);
        var (solved, unreachable, several) = (0, 0, 0);
        for (var n = 0; n < 40; n++)
        {
            var boxes = Packing(random, random.Next(6, 10));
            var costs = boxes.Select(_ => (long)random.Next(5, 60)).ToList();
            var best = BruteForce.Cheapest(Puzzle(boxes, costs), [0]);

            var outcome = new Planner(Puzzle(boxes, costs)).Plan([0], null, SearchBudget.Usual, CancellationToken.None);

            if (best is null)
            {
                unreachable++;
                Assert.IsType<Unreachable>(outcome);
                continue;
            }
            solved++;
            var plan = Assert.IsType<Solved>(outcome);
            if (plan.Order.Count > 2) several++;
            Assert.Equal(best, plan.Cost);
            Assert.True(plan.IsProved);
            Assert.Empty(CertificateCheck.Faults(Puzzle(boxes, costs), ItemSet.All(boxes.Count), plan));
        }
        Assert.InRange(solved, 15, 40);
        Assert.InRange(unreachable, 1, 25);
        Assert.InRange(several, 5, 40);
    }

    private static Puzzle Puzzle(List<Box> boxes, List<long> costs)
    {
        var movers = boxes.Select((box, i) => new Mover(
            [box], [.. boxes.Select((b, j) => new Obstacle(j, [b])).Where(o => o.Item != i)], Van, Fit.Exact, Moves.Slides)).ToList();
        return new(costs, [.. boxes.Select(_ => new ItemSet(boxes.Count))], (item, gone, stays) => movers[item].Ask(gone, stays) switch
        {
            WayOut way => new Free(way.Through),
            Stuck stuck => new Held(stuck.Wall),
            _ => throw new InvalidOperationException("neither out nor stuck"),
        });
    }

    /// <summary>The room cut up by planes into leaves, of which some are kept, each shrunk a little on some sides.</summary>
    private static List<Box> Packing(Random random, int count)
    {
        var leaves = new List<Box> { new(0, 0, 0, 2400, 1500, 1500) };
        while (leaves.Count < count + 2)
        {
            var largest = leaves.MaxBy(b => b.VolumeMm3);
            var axis = Enumerable.Range(0, 3).MaxBy(a => largest.Length(a) + random.Next(300));
            var at = largest.Low(axis) + largest.Length(axis) * random.Next(3, 8) / 10 / 50 * 50;
            leaves.Remove(largest);
            leaves.Add(axis switch { 0 => largest with { X1 = at }, 1 => largest with { Y1 = at }, _ => largest with { Z1 = at } });
            leaves.Add(axis switch { 0 => largest with { X0 = at }, 1 => largest with { Y0 = at }, _ => largest with { Z0 = at } });
        }
        random.Shuffle(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(leaves));
        return [.. leaves.Take(count).Select(b => b with { Z1 = b.Z1 - 50 * random.Next(1, 5), Y1 = b.Y1 - 50 * random.Next(0, 4), X1 = b.X1 - 50 * random.Next(0, 3) })];
    }
}
