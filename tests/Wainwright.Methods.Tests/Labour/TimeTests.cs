using CsCheck;
using Wainwright.Methods.Labour;

namespace Wainwright.Methods.Tests.Labour;

public sealed class TimeTests
{
    static readonly Gen<ThreePoint.Input> Points = Gen.Double[0, 10].Array[3].Select(v => v.Order().ToArray()).Select(v => new ThreePoint.Input(v[0], v[1], v[2]));

    [Fact]
    public void Both_means_lie_between_easy_and_hard() =>
        Points.Sample(t =>
        {
            Assert.InRange(ThreePoint.OfPert(t).Mean, t.Easy - 1e-9, t.Hard + 1e-9);
            Assert.InRange(ThreePoint.OfTriangle(t).Mean, t.Easy - 1e-9, t.Hard + 1e-9);
        });

    // regression
    [Theory]
    [InlineData(5, 8, 14, 9, 1.8708, 8.804, 10.714)]
    [InlineData(2, 5, 14, 7, 2.5495, 6.652, 9.352)]
    public void The_triangle_keeps_its_numbers(double a, double m, double b, double mean, double sd, double p50, double p80)
    {
        var time = new ThreePoint.Input(a, m, b);
        Assert.Equal(mean, ThreePoint.OfTriangle(time).Mean, tolerance: 1e-9);
        Assert.Equal(sd, ThreePoint.OfTriangle(time).Deviation, tolerance: 5e-5);
        Assert.Equal(p50, ThreePoint.TriangleQuantile(time, 0.5), tolerance: 5e-4);
        Assert.Equal(p80, ThreePoint.TriangleQuantile(time, 0.8), tolerance: 5e-4);
    }

    [Fact]
    public void Quantiles_run_from_easy_to_hard_without_turning_back() =>
        Gen.Select(Points, Gen.Double[0, 1], Gen.Double[0, 1]).Sample((t, p, q) =>
        {
            Assert.Equal(t.Easy, ThreePoint.TriangleQuantile(t, 0), tolerance: 1e-9);
            Assert.Equal(t.Hard, ThreePoint.TriangleQuantile(t, 1), tolerance: 1e-9);
            Assert.True(ThreePoint.TriangleQuantile(t, Math.Min(p, q)) <= ThreePoint.TriangleQuantile(t, Math.Max(p, q)) + 1e-12);
        });

    [Fact]
    public void A_time_without_doubt_has_no_spread()
    {
        Assert.Equal(0, ThreePoint.OfPert(new(3, 3, 3)).Deviation);
        Assert.Equal(3, ThreePoint.TriangleQuantile(new(3, 3, 3), 0.7));
    }

    [Fact]
    public void The_second_unit_takes_the_rate_on_Crawfords_curve() => Assert.Equal(80, LearningCurve.CrawfordUnit(new(100, 0.80), 2), tolerance: 1e-9);

    [Fact]
    public void Wrights_units_add_to_his_total()
    {
        var curve = new LearningCurve.Input(75, 0.85);
        Assert.Equal(LearningCurve.WrightTotal(curve, 20), Enumerable.Range(1, 20).Sum(n => LearningCurve.WrightUnit(curve, n)), tolerance: 1e-9);
    }

    [Fact]
    public void Without_learning_every_unit_takes_the_same() => Assert.Equal(1_000, LearningCurve.CrawfordTotal(new(100, 1), 10), tolerance: 1e-9);

    [Theory]
    [InlineData(3, 2, 5)]
    [InlineData(1, 5, 4)]
    [InlineData(1, double.NaN, 4)]
    public void Points_out_of_order_are_refused(double a, double m, double b) => Assert.Throws<ArgumentOutOfRangeException>(() => ThreePoint.OfPert(new(a, m, b)));

    [Fact]
    public void Nonsense_curves_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => LearningCurve.Exponent(0.4));
        Assert.Throws<ArgumentOutOfRangeException>(() => LearningCurve.CrawfordUnit(new(0, 0.8), 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => LearningCurve.WrightUnit(new(10, 0.8), 0));
    }
}
