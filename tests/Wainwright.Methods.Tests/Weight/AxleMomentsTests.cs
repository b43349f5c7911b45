using CsCheck;
using Wainwright.Methods.Weight;

namespace Wainwright.Methods.Tests.Weight;

public sealed class AxleMomentsTests
{
    static readonly Gen<AxleMoments.Load> Load = Gen.Select(Gen.Double[0, 500], Gen.Double[-500, 6_000], (kg, mm) => new AxleMoments.Load(kg, mm));

    [Fact]
    public void Both_axles_together_carry_every_load() =>
        Load.Array[0, 12].Sample(loads =>
        {
            var van = AxleMoments.Of(new(3_665, 1_180, 920, loads));
            Assert.Equal(2_100 + loads.Sum(l => l.MassKg), van.TotalKg, tolerance: 1e-6);
        });

    [Fact]
    public void Moments_about_the_front_axle_are_kept() =>
        Load.Array[0, 12].Sample(loads =>
        {
            var van = AxleMoments.Of(new(3_665, 1_180, 920, loads));
            Assert.Equal((920 * 3_665) + loads.Sum(l => l.MassKg * l.BehindFrontAxleMm), van.RearAxleKg * 3_665, tolerance: 1e-3);
        });

    [Fact]
    public void A_load_over_an_axle_weighs_on_that_axle_alone()
    {
        var van = AxleMoments.Of(new(3_000, 1_000, 800, [new(100, 3_000), new(50, 0)]));
        Assert.Equal(1_050, van.FrontAxleKg, tolerance: 1e-9);
        Assert.Equal(900, van.RearAxleKg, tolerance: 1e-9);
    }

    [Fact]
    public void A_load_behind_the_rear_axle_lifts_the_front()
    {
        // regression: 120 kg at 0.9 m behind the rear axle, wheelbase 4.035 m
        var van = AxleMoments.Of(new(4_035, 1_000, 1_000, [new(120, 4_935)]));
        Assert.Equal(146.77, van.RearAxleKg - 1_000, tolerance: 0.01);
        Assert.Equal(-26.77, van.FrontAxleKg - 1_000, tolerance: 0.01);
    }

    [Fact]
    public void What_goes_in_and_out_again_changes_nothing()
    {
        var van = AxleMoments.Of(new(3_665, 1_180, 920, [new(75, 1_100), new(-75, 1_100)]));
        Assert.Equal(1_180, van.FrontAxleKg, tolerance: 1e-9);
    }

    [Fact]
    public void A_lifting_axle_leaves_the_range() =>
        Assert.NotEmpty(AxleMoments.Of(new(3_000, 100, 800, [new(1_000, 4_000)])).OutsideRange);

    [Theory]
    [InlineData(0, 1_000, 1_000)]
    [InlineData(double.NaN, 1_000, 1_000)]
    [InlineData(3_000, -1, 1_000)]
    [InlineData(3_000, 1_000, double.PositiveInfinity)]
    public void Nonsense_is_refused(double wheelbase, double front, double rear) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => AxleMoments.Of(new(wheelbase, front, rear, [new(1, 1)])));

    [Fact]
    public void A_refusal_names_the_value_and_the_rule()
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(() => AxleMoments.FrontShare(-2, 0));
        Assert.Contains("wheelbaseMm: must be above 0, is -2", refusal.Message, StringComparison.Ordinal);
    }
}
