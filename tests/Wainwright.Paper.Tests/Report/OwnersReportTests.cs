using System.Text.RegularExpressions;
using UglyToad.PdfPig;
using Wainwright.Fitout;
using Wainwright.Survey;

namespace Wainwright.Paper.Tests;

public sealed partial class OwnersReportTests
{
    private static readonly DateOnly Today = new(2026, 3, 10);

    private static readonly Answers Answers = Answers.Of(SmallJob.Job, Today);

    private static Task<string> Html(Job job) => OwnersReport.Html(job, Answers.Of(job, Today), _ => null);

    [Fact]
    public async Task The_report_reads_as_approved() => PageText.IsApproved("owners-report", PageText.Of(await OwnersReport.Html(SmallJob.Job, SmallAnswers.Of(SmallJob.Job), _ => null, "3b1f")));

    [Fact]
    public async Task It_needs_nothing_from_outside_and_runs_nothing()
    {
        var html = await Html(SmallJob.Job);
        Assert.DoesNotMatch(Fetches(), Regex.Replace(html, "xmlns=\"http://www.w3.org/2000/svg\"", ""));
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("default-src 'none'", html, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_finding_stands_in_it_with_how_it_is_known()
    {
        var text = PageText.Of(await Html(SmallJob.Job));
        Assert.All(SmallJob.Job.Findings, f => Assert.Contains(f.What, text, StringComparison.Ordinal));
        Assert.Contains("not inspected", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_check_stands_in_it_and_what_cannot_be_told_names_what_would_tell()
    {
        var text = PageText.Of(await Html(SmallJob.Job));
        Assert.NotEmpty(Answers.Checks);
        Assert.All(Answers.Checks, c => Assert.Contains(c.Claim, text, StringComparison.Ordinal));
        Assert.All(Answers.Checks, c => Assert.Contains(c.Caution, text, StringComparison.Ordinal));
        Assert.Contains(Answers.Checks, c => c.Verdict == Verdict.CannotTell);
        Assert.All(Answers.Checks.SelectMany(c => c.Missing), gap => Assert.Contains(gap, text, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public async Task What_must_not_be_used_stands_before_everything_else()
    {
        var text = PageText.Of(await Html(SmallJob.Job));
        Assert.True(text.IndexOf("Do not drive the van", StringComparison.Ordinal) < text.IndexOf("What is wrong", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_clean_looking_job_is_not_called_clean()
    {
        var text = PageText.Of(await Html(SmallJob.Job with { Findings = [], Parts = [], Joints = [], Estimate = [], Readings = [], Points = [] }));
        Assert.Contains("That is no permission", text, StringComparison.Ordinal);
        Assert.Contains("That is not a clean bill", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Readings_carry_their_units_and_a_corrected_one_is_not_lost()
    {
        var wrong = SmallJob.Job.Readings[0];
        var right = wrong with { Id = new("R9"), Value = 24.5, Corrects = wrong.Id, Note = "pins were not fully in" };
        var text = PageText.Of(await Html(SmallJob.Job with { Readings = [.. SmallJob.Job.Readings, right] }));
        Assert.Contains("24.5 %", text, StringComparison.Ordinal);
        Assert.Contains("27.5 % on 2 Mar 2026 09:00, corrected by 24.5 %", text, StringComparison.Ordinal);
        Assert.Contains("pins were not fully in", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_photo_that_is_not_at_hand_is_said_to_be_missing_and_a_photo_shown_twice_is_printed_once()
    {
        var job = SmallJob.Job with { Findings = [.. SmallJob.Job.Findings.Select(f => f with { Photos = [SmallJob.Picture] })] };
        var text = PageText.Of(await Html(job));
        Assert.Single(Regex.Matches(text, "Photo kept elsewhere"));
        Assert.Contains("Photo no. 9f86d081: shown at 1", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hostile_text_is_only_text()
    {
        const string hostile = "<script>alert(1)</script><img src=http://example.org/x onerror=alert(2)>";
        var job = SmallJob.Job;
        job = job with
        {
            Id = hostile,
            Title = hostile,
            Currency = hostile,
            Vehicle = job.Vehicle with { Name = hostile },
            Intake = job.Intake! with { OwnersWords = [hostile] },
            Parts = [.. job.Parts.Select(p => p with { Name = hostile })],
            Findings = [.. job.Findings.Select(f => f with { What = hostile, Evidence = hostile, Remedies = [hostile], WouldTell = hostile, ReservedFor = hostile })],
            Readings = [.. job.Readings.Select(r => r with { What = hostile, Unit = hostile, Instrument = hostile })],
            Estimate = [.. job.Estimate.Select(e => e with { What = hostile, Option = hostile })],
            Tests = [.. job.Tests.Select(t => t with { What = hostile, Result = hostile })],
            Photos = [.. job.Photos.Select(p => p with { Shows = hostile, MediaType = hostile })],
        };
        var html = await Html(job);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", html, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task None_of_the_words_that_promise_or_belittle_stand_in_what_the_page_itself_says() =>
        Assert.DoesNotMatch(Belittling(), await File.ReadAllTextAsync(Path.Combine(AppContext.BaseDirectory, "Approved", "owners-report.txt"), TestContext.Current.CancellationToken));

    [Fact]
    public async Task On_paper_the_summary_is_one_page_and_the_text_can_be_read_back()
    {
        var file = Path.Combine(Directory.CreateTempSubdirectory("report-test-").FullName, "report.pdf");
        if (await Pdf.Print(await Html(SmallJob.Job), file, TestContext.Current.CancellationToken) is PrintOutcome.NoBrowser none)
        {
            Assert.Contains("any browser", none.Says, StringComparison.Ordinal);
            return;
        }
        using var pdf = PdfDocument.Open(file);
        Assert.Contains("DANGER: do not use now", pdf.GetPage(1).Text, StringComparison.Ordinal);
        Assert.Contains("What we do not know yet", pdf.GetPage(1).Text, StringComparison.Ordinal);
        Assert.Contains("1. Hazards and faults", pdf.GetPage(2).Text, StringComparison.Ordinal);
        Assert.Contains($"page {pdf.NumberOfPages} of {pdf.NumberOfPages}", pdf.GetPage(pdf.NumberOfPages).Text, StringComparison.Ordinal);
    }

    [GeneratedRegex("https?://|url\\(|@import|<link(?! rel=\"icon\" href=\"data:,\")|srcset|<iframe|<object", RegexOptions.IgnoreCase)]
    private static partial Regex Fetches();

    [GeneratedRegex("\\b(fine|OK|okay|should be|minor damp|perfect|guarantee[ds]?)\\b", RegexOptions.IgnoreCase)]
    private static partial Regex Belittling();
}
