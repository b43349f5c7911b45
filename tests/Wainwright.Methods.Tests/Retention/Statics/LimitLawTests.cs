using Wainwright.Methods.Retention;

namespace Wainwright.Methods.Tests.Retention.Statics;

/// <summary>What must hold whatever the numbers are.</summary>
public sealed class LimitLawTests
{
    public static TheoryData<int> Numbers => [.. Enumerable.Range(1, 40)];

    static Held Any(int number) => Some.Cupboard(number, 1 + number % 9, 1 + number % 3);

    [Theory, MemberData(nameof(Numbers))]
    public void Both_bounds_are_proved_by_their_own_evidence_and_meet(int number)
    {
        var held = Any(number);
        Assert.All(LoadFactor.Of(held, ThrowDirections.All), f =>
        {
            Assert.Empty(LimitCheck.Of(held, f));
            if (double.IsFinite(f.HighG)) Assert.InRange(f.HighG - f.LowG, -1e-9 * (1 + Math.Abs(f.HighG)), 1e-7 * (1 + Math.Abs(f.HighG)));
            Assert.InRange(f.FirstYieldG, f.CarriesItself ? 0 : -1, f.LowG);
        });
    }

    [Fact]
    public void Whatever_is_held_however_oddly_both_bounds_are_proved_and_meet()
    {
        var (never, fallen, held) = (0, 0, 0);
        for (var number = 1; number <= 500; number++)
        {
            var odd = Some.Odd(number);
            foreach (var f in LoadFactor.Of(odd, ThrowDirections.All, firstYield: number % 10 == 0))
            {
                Assert.Empty(LimitCheck.Of(odd, f, 1e-6));
                if (double.IsInfinity(f.LowG)) never++;
                else Assert.InRange(f.HighG - f.LowG, -1e-6 * (1 + Math.Abs(f.HighG)), 1e-6 * (1 + Math.Abs(f.HighG)));
                if (!f.CarriesItself) fallen++;
                else if (double.IsFinite(f.LowG)) held++;
            }
        }
        Assert.True(never > 100 && fallen > 1000 && held > 300, $"{never} {fallen} {held}");
    }

    [Fact]
    public void A_claim_that_is_not_true_does_not_pass_the_check()
    {
        var held = Some.Cupboard(3, 6);
        var factor = LoadFactor.Of(held, Some.OffWall);
        Assert.Empty(LimitCheck.Of(held, factor));
        Assert.NotEmpty(LimitCheck.Of(held, factor with { LowG = factor.LowG * 1.001 }));
        Assert.NotEmpty(LimitCheck.Of(held, factor with { HighG = factor.HighG * 0.999 }));
        Assert.NotEmpty(LimitCheck.Of(held, factor with { Mechanism = [.. factor.Mechanism.Select(m => m with { Velocity = -m.Velocity })] }));
        Assert.NotEmpty(LimitCheck.Of(held, factor with { ContactN = [.. factor.ContactN.Select(c => c + 1)] }));
        Assert.NotEmpty(LimitCheck.Of(held with { Fixings = [.. held.Fixings.Select(f => f with { Strength = f.Strength with { PullN = f.Strength.PullN * 0.99, ShearN = f.Strength.ShearN * 0.99 } })] }, factor));
    }

    [Theory, MemberData(nameof(Numbers))]
    public void One_more_screw_never_lets_go_sooner(int number)
    {
        var held = Any(number);
        var more = held with { Fixings = [.. held.Fixings, Some.Screw(10 * number - 200, 15 * number, Some.Strength(300, 400))] };
        foreach (var (before, after) in LoadFactor.Of(held, ThrowDirections.All).Zip(LoadFactor.Of(more, ThrowDirections.All)))
            Assert.True(after.HighG >= before.LowG - 1e-6 * (1 + Math.Abs(before.LowG)) || double.IsPositiveInfinity(after.HighG), $"{before.LowG} then {after.HighG}");
    }

    [Theory, MemberData(nameof(Numbers))]
    public void Twice_the_mass_at_half_the_throw_and_weight_is_the_same_load(int number)
    {
        // thrown down the throw and the weight add up: (1 + a) m is what the fixings feel
        var held = Any(number);
        var heavy = held with { Bodies = [.. held.Bodies.Select(b => b with { MassKg = 2 * b.MassKg })] };
        var (once, twice) = (LoadFactor.Of(held, Some.Down), LoadFactor.Of(heavy, Some.Down));
        Assert.Equal(1 + once.LowG, 2 * (1 + twice.LowG), tolerance: 1e-6 * (2 + once.LowG));
    }

    [Theory, MemberData(nameof(Numbers))]
    public void Seen_in_a_mirror_it_holds_the_same_the_other_way_round(int number)
    {
        static Vector3D Mirror(Vector3D v) => v with { X = -v.X };
        var held = Any(number);
        Held mirrored = new(
            [.. held.Bodies.Select(b => b with { CentreMm = Mirror(b.CentreMm) })],
            [.. held.Fixings.Select(f => f with { AtMm = Mirror(f.AtMm), PullAxis = Mirror(f.PullAxis) })],
            [.. held.Contacts.Select(c => c with { AtMm = Mirror(c.AtMm), Normal = Mirror(c.Normal) })]);
        foreach (var (one, other) in LoadFactor.Of(held, ThrowDirections.All).Zip(LoadFactor.Of(mirrored, [.. ThrowDirections.All.Select(Mirror)])))
        {
            if (double.IsInfinity(one.LowG)) Assert.Equal(one.LowG, other.LowG);
            else Assert.Equal(0, (one.LowG - other.LowG) / (1 + Math.Abs(one.LowG)), tolerance: 1e-6);
            if (double.IsFinite(one.FirstYieldG)) Assert.Equal(0, (one.FirstYieldG - other.FirstYieldG) / (1 + Math.Abs(one.FirstYieldG)), tolerance: 1e-5);
        }
    }

    [Fact]
    public void Screws_in_one_line_one_screw_and_screws_that_carry_nothing_give_a_clear_answer()
    {
        var none = Some.Strength(0, 0);
        var line = Some.One(8, new(0, 150, 300), [.. Enumerable.Range(0, 4).Select(i => Some.Screw(100 * i - 150, 300, Some.Strength(500, 500)))], []);
        // nothing stops it swinging about the line of screws under its own weight
        Assert.Equal(-1, LoadFactor.Of(line, Some.OffWall).HighG, tolerance: 1e-9);
        var rested = line with { Contacts = [Some.Rest(-200, 0), Some.Rest(200, 0)] };
        Assert.All(LoadFactor.Of(rested, ThrowDirections.All), f => Assert.Empty(LimitCheck.Of(rested, f)));
        Assert.True(LoadFactor.Of(rested, Some.Down).LowG > 1);
        Assert.Equal(-1, LoadFactor.Of(line with { Fixings = [.. line.Fixings.Select(f => f with { Strength = none })] }, Some.Down).HighG, tolerance: 1e-9);
        var twice = line with { Fixings = [line.Fixings[0], line.Fixings[0]], Contacts = rested.Contacts };
        Assert.All(LoadFactor.Of(twice, ThrowDirections.All), f => Assert.Empty(LimitCheck.Of(twice, f)));
    }

    [Fact]
    public void Nonsense_is_refused_at_the_door()
    {
        Assert.Throws<ArgumentException>(() => LoadFactor.Of(new([], [], []), Some.Down));
        Assert.Throws<ArgumentException>(() => LoadFactor.Of(Some.One(1, default, [Some.Screw(0, 0, Some.Strength(1, 1), body: 3)], []), Some.Down));
        Assert.Throws<ArgumentOutOfRangeException>(() => LoadFactor.Of(Some.One(-1, default, [], []), Some.Down));
        Assert.Throws<ArgumentOutOfRangeException>(() => LoadFactor.Of(Some.One(1, default, [Some.Screw(0, 0, Some.Strength(double.NaN, 1))], []), Some.Down));
        Assert.Throws<ArgumentOutOfRangeException>(() => LoadFactor.Of(Some.One(1, default, [], []), Vector3D.Zero));
    }
}
