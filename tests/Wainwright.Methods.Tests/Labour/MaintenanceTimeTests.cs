using Wainwright.Methods.Labour;

namespace Wainwright.Methods.Tests.Labour;

public sealed class MaintenanceTimeTests
{
    // Rates 0.2, 0.5, 0.1 a year; times 1.5, 0.75, 6 h: 0.3 + 0.375 + 0.6 = 1.275 h a year over 0.8 visits. Our own arithmetic.
    [Fact]
    public void Three_rates_and_times_give_the_sum_of_a_year_and_the_weighted_mean()
    {
        var year = MaintenanceTime.Of([new(0.2, 1.5), new(0.5, 0.75), new(0.1, 6)]);
        Assert.Equal(0.8, year.TimesPerYear, 1e-12);
        Assert.Equal(1.275, year.PerYear, 1e-12);
        Assert.Equal(1.594, year.Mean!.Value, 0.001);
    }

    [Fact]
    public void Nothing_to_visit_has_no_mean() => Assert.Equal(new(0, 0, null), MaintenanceTime.Of([]));

    [Fact]
    public void A_rate_or_a_time_below_nought_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MaintenanceTime.Of([new(-1, 1)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => MaintenanceTime.Of([new(1, double.NaN)]));
    }
}
