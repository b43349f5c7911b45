using System.CommandLine;
using Wainwright.Fitout;
using Wainwright.Paper;

namespace Wainwright.Cli.Commands;

/// <summary><c>wain report</c>: a page for the owners, the wall or the bench, as HTML or PDF.</summary>
internal static class Report
{
    /// <summary>The pages there are, by the name a person gives.</summary>
    private static readonly Dictionary<string, Func<GivenJob, DateOnly, Task<string>>> Pages = new()
    {
        ["owners"] = (given, on) => OwnersReport.Html(given.Job, Answers.Of(given.Job, on), Bytes(given), given.Seal),
        ["stop-use"] = (given, on) => Sheets.StopUse(given.Job, Answers.Of(given.Job, on)),
        ["isolation"] = (given, on) => Sheets.Isolation(given.Job, on),
    };

    public static Command Command(Terminal at)
    {
        var job = new Argument<string>("JOB") { Description = "A job file, a container, or the id of a job in the store." };
        var to = new Option<string>("--out") { HelpName = "FILE", Required = true, Description = "The page to make: .html, or .pdf where a Chromium is installed. An older page of that name is replaced." };
        var page = new Option<string>("--page") { HelpName = "PAGE", DefaultValueFactory = _ => "owners", Description = $"Which page: {string.Join(", ", Pages.Keys)}." };
        var on = Day.Option();
        var store = StoreFolder.Option();
        var command = new Command("report", "Make the owners' page, a stop-use notice or an isolation sheet.") { job, to, page, on, store }.By("""
            Examples:
              wain report demo/touring-camper.wain.json --out camper.html
              wain report J-014 --out J-014.pdf
              wain report J-014 --page stop-use --out stop.pdf

            A page is one file that needs nothing from outside. Photos of a job file are looked for in the folder “photos” beside it.
            """);
        page.Validators.Add(given =>
        {
            if (!Pages.ContainsKey(given.GetValueOrDefault<string>())) given.AddError($"--page is one of {string.Join(", ", Pages.Keys)}.");
        });
        command.SetAction(async (line, stop) =>
        {
            var (name, file) = (line.GetRequiredValue(job), line.GetRequiredValue(to));
            var pdf = Path.GetExtension(file).ToLowerInvariant() switch
            {
                ".html" or ".htm" => false,
                ".pdf" => true,
                _ => throw new BadInputException($"--out {file}: the name ends in .html or .pdf"),
            };
            if (Directory.Exists(file) || Path.GetFullPath(file) == Path.GetFullPath(name)) throw new BadInputException($"--out {file}: name another file");
            var day = Day.Is(line.GetValue(on), at);
            using var given = GivenJob.Open(name, line.GetValue(store), at);
            var html = await Pages[line.GetRequiredValue(page)](given, day).ConfigureAwait(false);
            if (pdf) await Print(html, file, stop).ConfigureAwait(false);
            else NewFile.Replace(file, html);
            at.Out.WriteLine($"{file}: written");
            return Exit.Done;
        });
        return command;
    }

    private static async Task Print(string html, string file, CancellationToken stop)
    {
        PrintOutcome outcome;
        try
        {
            outcome = await Pdf.Print(html, file, stop).ConfigureAwait(false);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException($"{file} cannot be written: {error.Message}");
        }
        switch (outcome)
        {
            case PrintOutcome.NoBrowser none: throw new BadInputException($"{none.Says} Try --out {Path.ChangeExtension(file, ".html")}");
            case PrintOutcome.Failed failed: throw new BadInputException($"no PDF was made: {failed.Because}. Try --out {Path.ChangeExtension(file, ".html")}");
        }
    }

    private static PhotoBytes Bytes(GivenJob given) => hash =>
    {
        using var photo = given.Photo(hash);
        if (photo is null) return null;
        using var bytes = new MemoryStream();
        photo.CopyTo(bytes);
        return bytes.ToArray();
    };
}
