namespace Wainwright.Cli.Tests;

/// <summary>The repository that the tests were built from.</summary>
static class Repository
{
    public static string Top { get; } = Find();

    static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Wainwright.slnx"))) return folder.FullName;
        throw new InvalidOperationException($"no Wainwright.slnx above {AppContext.BaseDirectory}");
    }
}
