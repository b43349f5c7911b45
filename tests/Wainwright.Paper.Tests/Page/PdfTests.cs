using UglyToad.PdfPig;

namespace Wainwright.Paper.Tests;

public sealed class PdfTests
{
    [Fact]
    public void A_browser_named_but_absent_is_named_in_the_answer()
    {
        var (browser, missing) = Pdf.Browser("/nowhere/browser");
        Assert.Null(browser);
        Assert.Contains("/nowhere/browser", missing, StringComparison.Ordinal);
        Assert.Contains("any browser", new PrintOutcome.NoBrowser(missing).Says, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_page_prints_and_its_text_can_be_read_back_or_the_missing_program_is_named()
    {
        var file = Path.Combine(Directory.CreateTempSubdirectory("print-test-").FullName, "page.pdf");
        var outcome = await Pdf.Print("<!doctype html><title>t</title><p>27.5 % at P1</p>", file, TestContext.Current.CancellationToken);
        if (outcome is PrintOutcome.NoBrowser none)
        {
            Assert.False(File.Exists(file));
            Assert.Contains(Pdf.Variable, none.Says, StringComparison.Ordinal);
            return;
        }
        Assert.IsType<PrintOutcome.Printed>(outcome);
        using var pdf = PdfDocument.Open(file);
        Assert.Equal("27.5 % at P1", pdf.GetPage(1).Text.Trim());
    }

    [Fact]
    public async Task A_print_that_is_called_off_leaves_no_file()
    {
        var file = Path.Combine(Directory.CreateTempSubdirectory("print-test-").FullName, "page.pdf");
        using var stop = new CancellationTokenSource();
        await stop.CancelAsync();
        if (Pdf.Browser(Environment.GetEnvironmentVariable(Pdf.Variable)).Browser is not null)
            await Assert.ThrowsAnyAsync<OperationCanceledException>(() => Pdf.Print("<p>late</p>", file, stop.Token));
        Assert.False(File.Exists(file));
    }
}
