using Wainwright.Methods.Retention;
using Wainwright.Survey.Retention.Fix;

namespace Wainwright.Survey.Tests.Retention;

public sealed class CheapestFixingsTests
{
    static readonly Vector3D OffWall = new(0, 1, 0), Down = new(0, 0, -1), Forward = new(-1, 0, 0);

    static HeldFixing Screw(double x, double z, double pullN, double shearN) => new($"screw {x:0} {z:0}", new(x, 0, z), OffWall, new(pullN, shearN, Sharing.Round, 1000, 1000), 0);

    static Held Cupboard(params HeldFixing[] screws) => new(
        [new("cupboard", 20, new(0, 180, 300))], screws,
        [.. from x in (double[])[-400, 400] from z in (double[])[0, 600] select new Contact("rest", new(x, 0, z), OffWall, 0)]);

    static Throw[] Asked(double g) => [new(OffWall, g), new(Down, g), new(Forward, g), new(-Forward, g)];

    static (Held Held, AddedFixing[] Candidates, Throw[] Throws) Made(int number, int count)
    {
        var chance = new Random(number);
        double R(double a, double b) => a + (b - a) * chance.NextDouble();
        return (Cupboard(Screw(-300, 550, R(0, 400), R(0, 400))),
            [.. Enumerable.Range(0, count).Select(_ => new AddedFixing(Screw(R(-380, 380), R(20, 580), R(200, 1200), R(200, 1200)), chance.Next(1, 10)))],
            Asked(R(1, 25)));
    }

    [Fact]
    public void The_cheapest_is_what_trying_every_set_finds()
    {
        var (some, none) = (0, 0);
        for (var number = 1; number <= 60; number++)
        {
            var (held, candidates, throws) = Made(number, 8);
            var answer = CheapestFixings.Of(held, candidates, throws, stop: TestContext.Current.CancellationToken);
            long? byTrying = null;
            for (var set = 0; set < 1 << candidates.Length; set++)
            {
                var cost = candidates.Where((_, i) => (set >> i & 1) == 1).Sum(c => c.Cost);
                if (cost >= byTrying) continue;
                var with = held with { Fixings = [.. held.Fixings, .. candidates.Where((_, i) => (set >> i & 1) == 1).Select(c => c.Fixing)] };
                if (Holds(with, throws)) byTrying = cost;
            }
            Assert.Equal(byTrying, answer.Cost);
            Assert.True(answer.IsProved);
            if (byTrying is null)
            {
                none++;
                Assert.NotEmpty(answer.NotHeld);
                continue;
            }
            some++;
            Assert.Equal(byTrying, answer.LowerBound);
            Assert.True(Holds(held with { Fixings = [.. held.Fixings, .. answer.Chosen.Select(i => candidates[i].Fixing)] }, throws));
        }
        Assert.InRange(some, 20, 55);
        Assert.InRange(none, 5, 40);
    }

    [Fact]
    public void Forty_candidates_in_all_directions_come_to_a_proof()
    {
        var (held, candidates, _) = Made(5, 40);
        var answer = CheapestFixings.Of(held, candidates, [.. ThrowDirections.All.Select(d => new Throw(d, 6))], stop: TestContext.Current.CancellationToken);
        Assert.True(answer.IsProved);
        Assert.InRange(answer.Chosen.Count, 2, 20);
        Assert.InRange(answer.Rounds, 1, 200);
    }

    [Fact]
    public void What_holds_already_needs_nothing_and_what_nothing_helps_names_the_demand()
    {
        var (held, candidates, throws) = Made(1, 6);
        var strong = held with { Fixings = [.. from x in (double[])[-300, 300] from z in (double[])[50, 550] select Screw(x, z, 1e5, 1e5)] };
        var nothing = CheapestFixings.Of(strong, candidates, throws, stop: TestContext.Current.CancellationToken);
        Assert.Empty(nothing.Chosen);
        Assert.Equal(0, nothing.Cost);
        Assert.True(nothing.IsProved);
        var never = CheapestFixings.Of(strong, candidates, [new(OffWall, 1), new(Down, 1e6)], stop: TestContext.Current.CancellationToken);
        Assert.Null(never.Cost);
        Assert.Equal([1], never.NotHeld);
    }

    [Fact]
    public void Stopped_early_it_gives_what_holds_and_a_bound_below_it()
    {
        var (held, candidates, throws) = Made(5, 30);
        var answer = CheapestFixings.Of(held, candidates, throws, mostRounds: 1, TestContext.Current.CancellationToken);
        Assert.True(Holds(held with { Fixings = [.. held.Fixings, .. answer.Chosen.Select(i => candidates[i].Fixing)] }, throws));
        Assert.InRange(answer.LowerBound, 0, answer.Cost!.Value);
        Assert.False(answer.IsProved);
    }

    static bool Holds(Held held, Throw[] throws) =>
        LoadFactor.Of(held, [.. throws.Select(t => t.Direction)], firstYield: false).Zip(throws).All(p => p.First.CarriesItself && p.First.HighG >= p.Second.G - 1e-7);
}
