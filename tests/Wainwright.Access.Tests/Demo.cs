using Wainwright.Fitout;

namespace Wainwright.Access.Tests;

/// <summary>The invented jobs that ship with the program.</summary>
internal static class Demo
{
    public static Job Case(string name) => Read(Path.Combine("cases", $"{name}.wain.json"));

    public static Job Camper { get; } = Read("touring-camper.wain.json");

    public static Job Workshop { get; } = Read("bicycle-workshop.wain.json");

    public static IReadOnlyList<PartId> Parts(string ids) => [.. ids.Split(' ').Select(id => new PartId(id))];

    public static string Names(IEnumerable<PartId> parts) => string.Join(' ', parts.Select(p => p.Text));

    private static Job Read(string name)
    {
        var reading = JobFile.Read(File.ReadAllBytes(Path.Combine(Top(), "demo", name)));
        return reading.Job ?? throw new InvalidOperationException(string.Join(Environment.NewLine, reading.Issues));
    }

    private static string Top()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Wainwright.slnx"))) return folder.FullName;
        throw new InvalidOperationException($"no Wainwright.slnx above {AppContext.BaseDirectory}");
    }
}
