using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Practice;

namespace Wainwright.Methods.Tests.Moisture;

public sealed class DryingCurveTests(ITestOutputHelper said)
{
    const double Rest = 11, Over = 18, Rate = 0.1;

    static double True(double day) => Rest + (Over * Math.Exp(-Rate * day));

    static DryingCurve.Seen At(double day, double percent, double sigma = 0.3) => new(day, percent, sigma, MeterReading.Bound.About);

    static DryingCurve Of(params IReadOnlyList<DryingCurve.Seen> seen) => DryingCurve.Of(seen, Rest, 0.3);

    [Fact]
    public void Readings_on_an_exponential_give_it_back()
    {
        var curve = Of([.. Enumerable.Range(0, 8).Select(i => At(3 * i, True(3 * i)))]);
        // day of 15 %: ln(18/4)/0.1 = 15.04
        Assert.Equal(15.04, curve.DayUnder(15, 0.5), tolerance: 1);
        Assert.InRange(15.04, curve.DayUnder(15, 0.05), curve.DayUnder(15, 0.95));
        Assert.Equal(True(28), curve.Percent(28, 0.5), tolerance: 0.3);
        Assert.Equal(0.5, curve.ChanceUnder(15, curve.DayUnder(15, 0.5)), tolerance: 0.05);
    }

    [Fact]
    public void One_reading_says_little_and_more_readings_say_more()
    {
        double Wide(int count)
        {
            var curve = Of([.. Enumerable.Range(0, count).Select(i => At(4 * i, True(4 * i)))]);
            return curve.Percent(20, 0.95) - curve.Percent(20, 0.05);
        }
        Assert.True(Wide(1) > 5);
        Assert.True(Wide(2) < Wide(1) && Wide(4) < Wide(2));
    }

    [Fact]
    public void Its_ranges_hold_what_they_promise_on_courses_of_its_own_making()
    {
        var chance = new Random(7);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - chance.NextDouble())) * Math.Cos(2 * Math.PI * chance.NextDouble());
        int inside = 0, tried = 250;
        for (var i = 0; i < tried; i++)
        {
            double over = Math.Min(60, 6 * Math.Pow(3.8, Normal())), rate = 0.08 * Math.Pow(2.3, Normal()), rest = 11 + (0.5 * Normal());
            double Course(double day) => rest + (over * Math.Exp(-rate * day));
            var curve = DryingCurve.Of([.. ((double[])[0, 4, 8]).Select(d => At(d, Math.Max(0, Course(d) + (0.7 * Normal())), 0.7))], 11, 0.5);
            var next = Course(14) + (0.7 * Normal());
            if (next >= curve.Percent(14, 0.05, 0.7) && next <= curve.Percent(14, 0.95, 0.7)) inside++;
        }
        said.WriteLine($"within their 90 % band: {inside} of {tried}");
        // 90 % asked: of 250, within three standard deviations of the counting
        Assert.InRange(inside / (double)tried, 0.84, 0.96);
    }

    [Fact]
    public void A_bound_is_no_value()
    {
        var bound = DryingCurve.Of([new(0, 28, 0.5, MeterReading.Bound.AtLeast)], Rest, 0.3);
        Assert.True(bound.Percent(0, 0.05) > 26.5 && bound.Percent(0, 0.95) > 35);
    }

    [Fact]
    public void What_rests_over_the_target_never_meets_it()
    {
        var curve = DryingCurve.Of([At(0, 25), At(5, 22), At(10, 20)], 18, 0.2);
        Assert.Equal(double.PositiveInfinity, curve.DayUnder(15, 0.5));
        Assert.Equal(0, curve.ChanceUnder(15, 1e6), tolerance: 1e-6);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => DryingCurve.Of([], Rest, 0.3));
        Assert.Throws<ArgumentOutOfRangeException>(() => Of(At(double.NaN, 20)));
        Assert.Throws<ArgumentOutOfRangeException>(() => DryingCurve.Of([At(0, 20)], Rest, 0));
    }
}
