using Wainwright.Methods.Retention;

namespace Wainwright.Methods.Tests.Retention.Statics;

public sealed class HoldingChanceTests
{
    const double OneInTwenty = 1.6448536269514722;

    static Held Plate(double massKg) =>
        Some.One(massKg, new(0, 0, -10), [new("screw", default, Some.Down, Some.Strength(1, 1, Sharing.Apart), 0)], []);

    static DoubtfulFixing Screw(Spread pull, string unknown = "length", double shared = 0.5) => new(pull, Spread.Exactly(500), unknown, shared);

    static HoldingChance.Result Ask(Held held, IReadOnlyList<DoubtfulFixing> fixings, double g, int draws = 4_000, Vector3D? way = null) =>
        HoldingChance.Of(new(held, fixings, [new(way ?? Some.Down, g)], draws, Seed: 7));

    // one screw, low 200, likely 400, high 800 N: log-normal, so the chance is that of one normal number
    [Theory]
    [InlineData(400, 0.5)]
    [InlineData(300, 0.247268)]
    [InlineData(200, 0.05)]
    [InlineData(120, 0.0021375)]
    [InlineData(80, 0.0000668)]
    public void One_screw_lets_go_as_often_as_its_strength_is_below_the_load(double loadN, double expected)
    {
        var byLaw = Math.Log(loadN / 400) / (Math.Log(2) / OneInTwenty);
        var answer = Ask(Plate(5), [Screw(new(200, 400, 800))], loadN / (5 * Some.GravityMPerS2) - 1);
        var way = answer.Ways[0];
        Assert.InRange(byLaw, -4, 1e-12);
        Assert.InRange(way.NotHolding, expected - 4 * way.StandardError, expected + 4 * way.StandardError);
        Assert.Equal(expected < 0.0025, way.Rare);
        Assert.InRange(way.StandardError, 0, way.Rare ? 0.1 * expected : 0.01);
        Assert.Equal(way, answer.Any);
    }

    [Fact]
    public void Two_screws_that_share_their_luck_fail_together_and_two_that_do_not_help_each_other()
    {
        var two = Some.One(5, new(0, 0, -10), [new("a", default, Some.Down, Some.Strength(1, 1, Sharing.Apart), 0), new("b", default, Some.Down, Some.Strength(1, 1, Sharing.Apart), 0)], []);
        var g = 500 / (5 * Some.GravityMPerS2) - 1;
        DoubtfulFixing[] With(double shared) => [Screw(new(200, 400, 800), "length", shared), Screw(new(200, 400, 800), "length", shared)];
        var together = Ask(two, With(1), g).Ways[0].NotHolding;
        var apart = Ask(two, With(0), g).Ways[0].NotHolding;
        // the sum of two alike is below 500 when one is below 250
        var alone = Ask(Plate(5), [Screw(new(200, 400, 800))], 250 / (5 * Some.GravityMPerS2) - 1).Ways[0].NotHolding;
        Assert.Equal(alone, together, tolerance: 0.02);
        Assert.InRange(apart, 0.01, together - 0.03);
    }

    [Fact]
    public void The_draws_say_the_same_as_a_limit_analysis_for_each_and_need_far_fewer()
    {
        var held = Some.Cupboard(11, 8);
        DoubtfulFixing[] fixings = [.. held.Fixings.Select((f, i) => new DoubtfulFixing(new(0.5 * f.Strength.PullN, f.Strength.PullN, 2 * f.Strength.PullN), new(0.6 * f.Strength.ShearN, f.Strength.ShearN, 1.5 * f.Strength.ShearN), i < 4 ? "upper" : "lower", 1))];
        var likely = LoadFactor.Of(held, Some.OffWall).LowG;
        var answer = Ask(held, fixings, 0.9 * likely, 2_000, Some.OffWall);
        // by brute force with other luck: fixings of one unknown all at one quantile
        var chance = new Random(99);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
        static double At(Spread s, double z) => s.Likely * Math.Pow((z < 0 ? s.Low : s.High) / s.Likely, Math.Abs(z) / OneInTwenty);
        var lost = 0;
        for (var n = 0; n < 2_000; n++)
        {
            double[] luck = [Normal(), Normal()];
            var drawn = held with { Fixings = [.. held.Fixings.Select((f, i) => f with { Strength = f.Strength with { PullN = At(fixings[i].PullN, luck[i < 4 ? 0 : 1]), ShearN = At(fixings[i].ShearN, luck[i < 4 ? 0 : 1]) } })] };
            var factor = LoadFactor.Of(drawn, [Some.OffWall], firstYield: false)[0];
            if (!factor.CarriesItself || factor.LowG < 0.9 * likely) lost++;
        }
        Assert.InRange(lost / 2_000.0, 0.1, 0.9);
        Assert.Equal(lost / 2_000.0, answer.Ways[0].NotHolding, tolerance: 4 * Math.Sqrt(2) * answer.Ways[0].StandardError);
        Assert.InRange(answer.Solved, 1, answer.Asked / 10);
    }

    [Fact]
    public void The_look_to_take_is_the_one_at_what_is_widest_and_matters()
    {
        var held = Some.Cupboard(11, 8);
        DoubtfulFixing[] fixings = [.. held.Fixings.Select((f, i) =>
        {
            var wide = i < 4 ? 2.5 : 1.05;
            return new DoubtfulFixing(new(f.Strength.PullN / wide, f.Strength.PullN, f.Strength.PullN * wide), new(f.Strength.ShearN / wide, f.Strength.ShearN, f.Strength.ShearN * wide), i < 4 ? "length of the upper screws" : "length of the lower screws", 0.9);
        })];
        var looks = Ask(held, fixings, LoadFactor.Of(held, Some.OffWall).LowG, 2_000, Some.OffWall).Looks;
        Assert.Equal("length of the upper screws", looks[0].Unknown);
        Assert.InRange(looks[0].Settles, 0.4, 1);
        Assert.InRange(looks[1].Settles, 0, 0.05);
    }

    [Fact]
    public void Where_nothing_is_in_doubt_the_chance_is_none_or_all_and_there_is_nothing_to_look_at()
    {
        var sure = new[] { Screw(Spread.Exactly(400)) };
        var holds = Ask(Plate(5), sure, 1, 200);
        var lost = Ask(Plate(5), sure, 20, 200);
        Assert.Equal((0.0, 1.0), (holds.Any.NotHolding, lost.Any.NotHolding));
        Assert.Equal(1 / 200.0, holds.Any.StandardError);
        Assert.Empty(holds.Looks.Concat(lost.Looks));
    }

    [Fact]
    public void The_same_seed_gives_the_same_answer_progress_ends_and_it_can_be_stopped()
    {
        var held = Some.Cupboard(5, 5);
        DoubtfulFixing[] fixings = [.. held.Fixings.Select(f => new DoubtfulFixing(new(0, f.Strength.PullN, 2 * f.Strength.PullN), new(0, f.Strength.ShearN, f.Strength.ShearN), "state"))];
        HoldingChance.Input input = new(held, fixings, [.. ThrowDirections.All.Select(d => new Throw(d, 3))], 100, 3);
        var told = new List<double>();
        var one = HoldingChance.Of(input, new Told(told), TestContext.Current.CancellationToken);
        Assert.Equal(one.Ways, HoldingChance.Of(input, null, TestContext.Current.CancellationToken).Ways);
        Assert.Equal(1, told[^1]);
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        Assert.Throws<OperationCanceledException>(() => HoldingChance.Of(input, null, stop.Token));
        Assert.Throws<ArgumentException>(() => HoldingChance.Of(input with { Fixings = [] }, null, TestContext.Current.CancellationToken));
        Assert.Throws<ArgumentOutOfRangeException>(() => HoldingChance.Of(input with { Fixings = [.. fixings.Select(f => f with { PullN = new(2, 1, 3) })] }, null, TestContext.Current.CancellationToken));
    }

    sealed class Told(List<double> shares) : IProgress<double>
    {
        public void Report(double value) => shares.Add(value);
    }
}
