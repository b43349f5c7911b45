using UglyToad.PdfPig;
using Wainwright.Access;
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

    [Fact]
    public async Task The_work_sheet_reads_as_approved() => PageText.IsApproved("work-sheet", PageText.Of(await Sheets.Removal(SmallJob.Job, SmallPlan.Locker, Today)));

    [Fact]
    public async Task The_servicing_sheet_gives_hours_visits_and_what_comes_out_and_never_a_silent_number()
    {
        ServiceNeed Every(double months) => new() { What = "tighten the terminals", EveryMonths = months, Access = ServiceAccess.Remove };
        var job = SmallJob.Job with { Parts = [.. SmallJob.Job.Parts.Select(p => p with { Service = p.Id.Text switch { "L1" => [Every(6)], "X1" => [Every(24)], _ => [] } })] };
        job = job with { Parts = [.. job.Parts.Select(p => p.Id.Text == "L1" ? p with { Solids = [new BoxSolid { At = new(400, 700, 900), Size = new(300, 300, 300) }] } : p)] };
        var (asked, stopped) = (UpkeepRound.Of(job), UpkeepRound.Of(job, new() { Stop = new(canceled: true) }));

        var text = PageText.Of(await Sheets.Servicing(job, asked, null, Today));
        Assert.Contains("only to get at what asks for service", text, StringComparison.Ordinal);
        Assert.Contains("2 times a year", text, StringComparison.Ordinal);
        // nobody measured the cable: it is named and not summed
        Assert.Contains("cannot be reached, or cannot be told", text, StringComparison.Ordinal);
        Assert.Contains("cable behind the lining (X1): tighten the terminals. X1 cable behind the lining has no size and place: measure it.", text, StringComparison.Ordinal);

        // what to measure stands on the page, and how sure a change is
        Assert.Contains("Measured, these would make it surer:", text, StringComparison.Ordinal);
        var visit = asked.Visits.First(v => v.Part.Text == "L1");
        WhatIf Changed(bool proved, double? was, double saved) => new() { Number = 1, Kind = WhatIfKind.ByHand, What = "hold it by knobs", Change = new("knobs", []), SavedMinutesPerYear = saved, IsProved = proved, Gains = [new(visit, was, 5)], Heed = "try it" };
        var changed = PageText.Of(await Sheets.Servicing(job, asked, new([Changed(true, 12, 14), Changed(false, null, 0)], 2, 2, double.PositiveInfinity, true), Today));
        Assert.Matches("14 min\\s+proved", changed);
        Assert.Matches("opens a way\\s+by the plans found", changed);

        Assert.Contains("No hours can be added up yet", PageText.Of(await Sheets.Servicing(job, stopped, null, Today)), StringComparison.Ordinal);
        Assert.Contains("Stopped after 0 of 6 questions", PageText.Of(await Sheets.Servicing(job, stopped, null, Today)), StringComparison.Ordinal);
        Assert.Contains("not the same as needing none", PageText.Of(await Sheets.Servicing(SmallJob.Job with { Parts = [] }, UpkeepRound.Of(SmallJob.Job with { Parts = [] }), null, Today)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stop_use_and_isolation_are_one_page_each_on_paper()
    {
        var file = Path.Combine(Directory.CreateTempSubdirectory("sheet-test-").FullName, "sheet.pdf");
        foreach (var html in (string[])[await Sheets.StopUse(SmallJob.Job, SmallAnswers.Of(SmallJob.Job)), await Sheets.Isolation(SmallJob.Job, Today)])
        {
            if (await Pdf.Print(html, file, TestContext.Current.CancellationToken) is PrintOutcome.NoBrowser none)
            {
                Assert.Contains(Pdf.Variable, none.Says, StringComparison.Ordinal);
                continue;
            }
            using var pdf = PdfDocument.Open(file);
            Assert.Equal(1, pdf.NumberOfPages);
        }
    }
}
