using Wainwright.Fitout;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Paper.Tests;

public sealed class WaterSectionTests
{
    private static readonly DateOnly Today = new(2026, 3, 17);

    private static Answers Answers(Job job) => new(Today, [], [], []) { Water = new(() => WaterFound.Of(job)) };

    private static async Task<string> Text(Job job) => PageText.Of(await OwnersReport.Html(job, Answers(job), _ => null));

    [Fact]
    public async Task The_page_says_what_is_known_what_is_not_and_warns_of_mould()
    {
        var text = await Text(WetJob.Job);
        Assert.Contains("Where the water went", text, StringComparison.Ordinal);
        Assert.Contains("Up to 2 March 2026 we read 5 places with a meter; 2 of them were over 16 %", text, StringComparison.Ordinal);
        Assert.Contains(DampMap.Caution, text, StringComparison.Ordinal);
        Assert.Contains("What we do not know", text, StringComparison.Ordinal);
        Assert.Contains("subfloor (F)", text, StringComparison.Ordinal);
        Assert.Contains("not to be covered", text, StringComparison.Ordinal);
        Assert.Contains("a range, not a promise", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Days_worked_out_stand_on_it_when_they_are_given()
    {
        var found = WaterFound.Of(WetJob.Job, stop: TestContext.Current.CancellationToken)!;
        var forecast = new DryingForecast(DryingCare.OneSideOpened, 16, 90, [], [.. found.Wettest.Net.Sheets.Select(s => new SheetDrying(s, new(9, 21, double.PositiveInfinity), new(0, 0, 0), new(0, 0, 0)))], []);
        var answers = new Answers(Today, [], [], []) { Water = new(() => found with { Forecasts = [forecast] }) };
        Assert.Contains("9 to more than 90 days", PageText.Of(await OwnersReport.Html(WetJob.Job, answers, _ => null)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_van_that_was_never_read_wet_has_no_such_page()
    {
        var dry = WetJob.Job with { Readings = [.. WetJob.Job.Readings.Where(r => r.Value.Value < 13)] };
        Assert.Null(WaterFound.Of(dry, stop: TestContext.Current.CancellationToken));
        Assert.DoesNotContain("Where the water went", await Text(dry), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_drying_sheet_has_targets_visits_empty_columns_and_the_rule()
    {
        var log = DryingLogs.Of(WetJob.Job)!;
        var html = await Sheets.Drying(WetJob.Job, log, Today);
        var text = PageText.Of(html);
        Assert.Contains("at least 48 h apart", text, StringComparison.Ordinal);
        Assert.All(log.Points, p => Assert.Contains($"{p.Point.Id} {p.Point.Where}", text, StringComparison.Ordinal));
        Assert.Contains("day 14", text, StringComparison.Ordinal);
        Assert.Contains("≥28.0", text, StringComparison.Ordinal);
        Assert.Contains("Heat off since", text, StringComparison.Ordinal);
        Assert.Contains("Still missing before it can be told", text, StringComparison.Ordinal);
        Assert.Equal((log.Points.Count + 4) * 4, System.Text.RegularExpressions.Regex.Count(html, "<td class=\"blank\">"));
    }
}
