namespace Wainwright.Cli.Tests;

/// <summary>Making pages through the command line. What stands on them is the business of the room that lays them out.</summary>
public sealed class ReportTests : IDisposable
{
    readonly TempFolder folder = new();

    static string Workshop => Path.Combine(Repository.Top, "demo", "bicycle-workshop.wain.json");

    public void Dispose() => folder.Dispose();

    [Theory, InlineData("owners"), InlineData("stop-use"), InlineData("isolation")]
    public void A_page_as_HTML_is_one_file_that_needs_nothing_from_outside(string page)
    {
        var ran = Ran.Wain("report", Workshop, "--page", page, "--on", "2026-06-01", "--out", folder.At("page.html"));
        Assert.Equal(Exit.Done, ran.Exit);
        var html = File.ReadAllText(folder.At("page.html"));
        Assert.StartsWith("<!doctype html>", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("src=\"http", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(["page.html"], Directory.GetFiles(folder.Path).Select(f => Path.GetFileName(f)));
    }

    [Fact]
    public void Photos_beside_the_job_file_are_in_the_owners_page()
    {
        Ran.Wain("report", Workshop, "--out", folder.At("page.html"));
        Assert.Contains("data:image/png;base64,", File.ReadAllText(folder.At("page.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_from_the_store_carries_the_hash_of_its_record_and_its_photos()
    {
        Ran.Wain("import", Workshop, "--store", folder.At("store"));
        var hash = Ran.Wain("verify", "DEMO-02", "--store", folder.At("store"), "--json").Json.GetProperty("lastHash").GetString()!;
        Assert.Equal(Exit.Done, Ran.Wain("report", "DEMO-02", "--store", folder.At("store"), "--out", folder.At("page.html")).Exit);
        var html = File.ReadAllText(folder.At("page.html"));
        Assert.Contains(hash, html, StringComparison.Ordinal);
        Assert.Contains("data:image/png;base64,", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_PDF_is_printed_where_a_browser_is_and_otherwise_the_missing_program_is_named()
    {
        var ran = Ran.Wain("report", Workshop, "--page", "isolation", "--out", folder.At("page.pdf"));
        Assert.Equal(Exit.Done, ran.Exit);
        Assert.Equal("%PDF-"u8.ToArray(), File.ReadAllBytes(folder.At("page.pdf"))[..5]);

        var before = Environment.GetEnvironmentVariable("WAIN_CHROMIUM");
        Environment.SetEnvironmentVariable("WAIN_CHROMIUM", folder.At("no-such-program"));
        try
        {
            var without = Ran.Wain("report", Workshop, "--page", "isolation", "--out", folder.At("other.pdf"));
            Assert.Equal(Exit.BadInput, without.Exit);
            Assert.Contains("no-such-program", without.Error, StringComparison.Ordinal);
            Assert.Contains("other.html", without.Error, StringComparison.Ordinal);
            Assert.False(File.Exists(folder.At("other.pdf")));
        }
        finally
        {
            Environment.SetEnvironmentVariable("WAIN_CHROMIUM", before);
        }
    }

    [Fact]
    public void Another_ending_another_page_or_the_job_file_itself_is_bad_input()
    {
        var job = folder.Write("job.html", SmallVan.Text());
        Assert.Contains("ends in .html or .pdf", Ran.Wain("report", job, "--out", folder.At("page.docx")).Error, StringComparison.Ordinal);
        Assert.Contains("owners, stop-use, isolation", Ran.Wain("report", job, "--page", "poster", "--out", folder.At("page.html")).Error, StringComparison.Ordinal);
        Assert.Equal(Exit.BadInput, Ran.Wain("report", job, "--out", job).Exit);
        Assert.Equal(SmallVan.Text(), File.ReadAllText(job));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_said_plainly_and_nothing_half_made_stays()
    {
        var ran = Ran.Wain("report", Workshop, "--out", folder.At("no/such/page.html"));
        Assert.Equal(Exit.BadInput, ran.Exit);
        Assert.Contains("cannot be written", ran.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(folder.Path, "*", SearchOption.AllDirectories));
    }
}
