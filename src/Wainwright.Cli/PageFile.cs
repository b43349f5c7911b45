using Wainwright.Paper;

namespace Wainwright.Cli;

/// <summary>A page to be made: HTML or PDF by the ending of its name. An older page of that name is replaced, the job itself never.</summary>
internal sealed class PageFile
{
    private readonly bool isPdf;

    /// <param name="path">The file named.</param>
    /// <param name="job">The job as named, which the page must not take the place of.</param>
    /// <exception cref="BadInputException">The ending is neither, or something else stands there.</exception>
    public PageFile(string path, string job)
    {
        Path = path;
        isPdf = System.IO.Path.GetExtension(path).ToLowerInvariant() switch
        {
            ".html" or ".htm" => false,
            ".pdf" => true,
            _ => throw new BadInputException($"{path}: the name of a page ends in .html or .pdf"),
        };
        if (Directory.Exists(path) || System.IO.Path.GetFullPath(path) == System.IO.Path.GetFullPath(job)) throw new BadInputException($"{path}: name another file");
    }

    public string Path { get; }

    /// <summary>Writes the page, whole or not at all.</summary>
    public async Task Write(string html, CancellationToken stop)
    {
        if (!isPdf)
        {
            NewFile.Replace(Path, html);
            return;
        }
        switch (await Printed(html, stop).ConfigureAwait(false))
        {
            case PrintOutcome.NoBrowser none: throw new BadInputException($"{none.Says} Try {System.IO.Path.ChangeExtension(Path, ".html")}");
            case PrintOutcome.Failed failed: throw new BadInputException($"no PDF was made: {failed.Because}. Try {System.IO.Path.ChangeExtension(Path, ".html")}");
        }
    }

    private async Task<PrintOutcome> Printed(string html, CancellationToken stop)
    {
        try
        {
            return await Pdf.Print(html, Path, stop).ConfigureAwait(false);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new BadInputException($"{Path} cannot be written: {error.Message}");
        }
    }
}
