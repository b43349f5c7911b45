using System.Diagnostics;

namespace Wainwright.Paper;

/// <summary>What became of a print.</summary>
public abstract record PrintOutcome
{
    private PrintOutcome()
    {
    }

    /// <summary>The PDF is there.</summary>
    public sealed record Printed(string File) : PrintOutcome;

    /// <summary>No program to print with; the page itself prints from any browser.</summary>
    public sealed record NoBrowser(string Missing) : PrintOutcome
    {
        /// <summary>What to tell the user.</summary>
        public string Says => $"No PDF was made: {Missing}. The HTML page prints the same from any browser: open it and choose print.";
    }

    /// <summary>The program was there and did not print.</summary>
    public sealed record Failed(string Because) : PrintOutcome;
}

/// <summary>Prints a page to PDF with the Chromium the machine has.</summary>
public static class Pdf
{
    /// <summary>Names the program to print with, when it is not where it usually is.</summary>
    public const string Variable = "WAIN_CHROMIUM";

    private static readonly string[] Usual = ["/usr/bin/chromium", "/usr/bin/chromium-browser"];

    // no network, nothing kept; script is shut out by the page's own policy, for this browser does not print with it switched off
    private static readonly string[] Quiet =
    [
        "--headless", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync", "--disable-quic", "--disable-extensions",
        "--host-resolver-rules=MAP * ~NOTFOUND",
        "--no-pdf-header-footer", "--generate-pdf-document-outline",
    ];

    /// <summary>Prints a self-contained page to <paramref name="file"/>, which is only replaced when all went well.</summary>
    /// <param name="html">The whole page.</param>
    /// <param name="file">The PDF to write.</param>
    /// <param name="stop">Ends the print and the browser with it.</param>
    public static async Task<PrintOutcome> Print(string html, string file, CancellationToken stop = default)
    {
        var (browser, missing) = Browser(Environment.GetEnvironmentVariable(Variable));
        if (browser is null) return new PrintOutcome.NoBrowser(missing);

        var folder = Directory.CreateTempSubdirectory("wain-print-");
        try
        {
            var page = Path.Combine(folder.FullName, "page.html");
            var pdf = Path.Combine(folder.FullName, "page.pdf");
            await File.WriteAllTextAsync(page, html, stop);
            var said = await Run(browser, folder.FullName, page, pdf, stop);
            if (!File.Exists(pdf)) return new PrintOutcome.Failed($"{browser} did not print: {said}");
            File.Move(pdf, Path.GetFullPath(file), overwrite: true);
            return new PrintOutcome.Printed(Path.GetFullPath(file));
        }
        finally
        {
            Clear(folder);
        }
    }

    /// <summary>The program to print with, or what is missing.</summary>
    internal static (string? Browser, string Missing) Browser(string? named)
    {
        if (!string.IsNullOrEmpty(named))
            return File.Exists(named) ? (named, "") : (null, $"{Variable} names {named}, which is not there");
        return Usual.FirstOrDefault(File.Exists) is { } found
            ? (found, "")
            : (null, $"Chromium is not installed at {string.Join(" or ", Usual)}, and {Variable} names no other place");
    }

    private static async Task<string> Run(string browser, string folder, string page, string pdf, CancellationToken stop)
    {
        var start = new ProcessStartInfo(browser) { RedirectStandardError = true, RedirectStandardOutput = true };
        foreach (var option in Quiet) start.ArgumentList.Add(option);
        if (Environment.IsPrivilegedProcess && !OperatingSystem.IsWindows()) start.ArgumentList.Add("--no-sandbox"); // it refuses to start as root with one
        start.ArgumentList.Add($"--user-data-dir={Path.Combine(folder, "profile")}");
        start.ArgumentList.Add($"--print-to-pdf={pdf}");
        start.ArgumentList.Add(new Uri(page).AbsoluteUri);

        using var run = Process.Start(start) ?? throw new InvalidOperationException($"{browser} did not start");
        await using var ended = stop.Register(() => run.Kill(entireProcessTree: true));
        var said = run.StandardError.ReadToEndAsync(stop);
        await run.StandardOutput.ReadToEndAsync(stop);
        await run.WaitForExitAsync(stop);
        return (await said).Trim().Split('\n').LastOrDefault() is { Length: > 0 } last ? last : $"it ended with code {run.ExitCode}";
    }

    private static void Clear(DirectoryInfo folder)
    {
        try
        {
            folder.Delete(recursive: true);
        }
        catch (IOException)
        {
            // the browser's last child may still be writing; the system clears its temporary folder
        }
    }
}
