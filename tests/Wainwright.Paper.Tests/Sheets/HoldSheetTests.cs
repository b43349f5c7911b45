using Wainwright.Fitout;
using Wainwright.Survey.Retention;

namespace Wainwright.Paper.Tests;

public sealed class HoldSheetTests
{
    private static readonly DateOnly Today = new(2026, 3, 10);

    [Fact]
    public async Task The_sheet_reads_as_approved() => PageText.IsApproved("hold", PageText.Of(await Sheets.Hold(SmallJob.Job, SmallAnswers.Held(SmallJob.Job), Today)));

    [Fact]
    public async Task The_caution_stands_on_the_sheet_and_in_the_report_wherever_a_figure_in_g_is()
    {
        var sheet = PageText.Of(await Sheets.Hold(SmallJob.Job, SmallAnswers.Held(SmallJob.Job), Today));
        var report = PageText.Of(await OwnersReport.Html(SmallJob.Job, SmallAnswers.Of(SmallJob.Job), _ => null));
        foreach (var text in new[] { sheet, report })
        {
            Assert.Contains("0.4 g (0.2 to 0.7)", text, StringComparison.Ordinal);
            Assert.Contains("It certifies nothing.", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task A_van_without_parts_is_not_said_to_hold()
    {
        var job = SmallJob.Job with { Parts = [], Joints = [], Findings = [], Points = [], Readings = [] };
        var text = PageText.Of(await Sheets.Hold(job, Holding.Of(job), Today));
        Assert.Contains("nothing can be told", text, StringComparison.Ordinal);
        Assert.Contains("0 hold", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.PositiveInfinity, double.PositiveInfinity, "no end: thrown against what holds it")]
    [InlineData(-0.5, -0.1, "does not carry its own weight")]
    [InlineData(0.5, 2.0, "0.5 g (0.5 to 2.0)")]
    public void Figures_in_g_are_said_in_words_where_a_number_would_mislead(double low, double high, string words) => Assert.Equal(words, PlainWords.G(new(low, low, high)));
}
