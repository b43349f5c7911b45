using Wainwright.Fitout;

namespace Wainwright.Paper.Tests;

public sealed class SheetsTests
{
    private static readonly DateOnly Today = new(2026, 3, 10);

    [Fact]
    public async Task The_stop_use_notice_reads_as_approved() =>
        PageText.IsApproved("stop-use", PageText.Of(await Sheets.StopUse(SmallJob.Job, SmallAnswers.Of(SmallJob.Job))));

    [Fact]
    public async Task The_isolation_sheet_reads_as_approved() =>
        PageText.IsApproved("isolation", PageText.Of(await Sheets.Isolation(SmallJob.Job, Today)));

    [Fact]
    public async Task A_service_that_nobody_isolated_is_called_live()
    {
        var text = PageText.Of(await Sheets.Isolation(SmallJob.Job with { Isolation = [] }, Today));
        Assert.Contains("Treat it as live", text, StringComparison.Ordinal);
        Assert.Contains("No step is written down as done", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_still_to_do_is_not_among_what_is_done()
    {
        var step = new IsolationStep { Id = "I2", What = "gas valve shut", Medium = Medium.Gas };
        var text = PageText.Of(await Sheets.Isolation(SmallJob.Job with { Isolation = [step] }, Today));
        Assert.Contains("Still to do: Gas valve shut.", text, StringComparison.Ordinal);
    }
}
