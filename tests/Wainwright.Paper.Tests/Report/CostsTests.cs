namespace Wainwright.Paper.Tests;

public sealed class CostsTests
{
    private static Costs Mend => Costs.Of(SmallJob.Job).Single(c => c.Option == "mend");

    [Fact]
    public void An_option_is_its_own_lines_and_those_that_belong_to_all()
    {
        // 2+4, 3+6, 5+11 h at 60, and 40+80 of materials
        Assert.Equal((6.0 * 60 + 120, 9.0 * 60 + 120, 16.0 * 60 + 120), ((double)Mend.Money!.Value.Easy, (double)Mend.Money.Value.Likely, (double)Mend.Money.Value.Hard));
        Assert.Equal(["mend", "rebuild"], Costs.Of(SmallJob.Job).Select(c => c.Option));
    }

    [Fact]
    public void What_may_be_needed_is_kept_apart_from_what_is_certain()
    {
        Assert.Equal("E3", Assert.Single(Mend.Possible).Id);
        Assert.Equal(Mend.Money!.Value.Hard + 14 * 60 + 120, Mend.MoneyWithPossible!.Value.Hard);
    }

    [Fact]
    public void The_range_hangs_most_on_the_line_with_the_widest_spread() => Assert.Equal("E2", Mend.Driver!.Id);

    [Fact]
    public void Without_a_rate_there_are_hours_and_no_money()
    {
        var costs = Costs.Of(SmallJob.Job with { RatePerHour = null })[0];
        Assert.Null(costs.Money);
        Assert.Equal(16, costs.Hours.Hard);
    }

    [Fact]
    public void A_job_without_an_estimate_has_no_costs() => Assert.Empty(Costs.Of(SmallJob.Job with { Estimate = [] }));
}
