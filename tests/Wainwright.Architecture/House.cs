using System.Xml.Linq;

namespace Wainwright.Architecture;

/// <summary>The repository on disk: its rooms, their project files and their compiled assemblies.</summary>
static class House
{
    const string Prefix = "Wainwright.";

    public static string Top { get; } = FindTop();

    public static IReadOnlyList<string> Rooms { get; } =
        [.. Directory.GetDirectories(Path.Combine(Top, "src")).Select(d => Path.GetFileName(d)).Where(n => n.StartsWith(Prefix, StringComparison.Ordinal)).Select(n => n[Prefix.Length..]).Order()];

    public static XDocument Project(string room) => XDocument.Load(Path.Combine(Folder(room), $"{Prefix}{room}.csproj"));

    public static string Folder(string room) => Path.Combine(Top, "src", Prefix + room);

    public static string Assembly(string room) =>
        Path.Combine(AppContext.BaseDirectory, $"{Project(room).Descendants("AssemblyName").SingleOrDefault()?.Value ?? Prefix + room}.dll");

    /// <summary>Files a person wrote, as paths from the top with forward slashes.</summary>
    public static IEnumerable<string> Written(params string[] endings) =>
        from folder in (string[])["src", "tests", "bench"]
        from file in Directory.EnumerateFiles(Path.Combine(Top, folder), "*", SearchOption.AllDirectories)
        let path = Path.GetRelativePath(Top, file).Replace('\\', '/')
        where endings.Contains(Path.GetExtension(path)) && !path.Split('/').Any(p => p is "bin" or "obj" or "node_modules" or "BenchmarkDotNet.Artifacts")
        select path;

    static string FindTop()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Wainwright.slnx"))) return folder.FullName;
        throw new InvalidOperationException($"no Wainwright.slnx above {AppContext.BaseDirectory}");
    }
}
