namespace Wainwright.Access.Tests;

/// <summary>The small vans under demo/cases, and what a plan takes out of one.</summary>
internal static class CasesFiles
{
    public static string Folder { get; } = Find();

    public static IEnumerable<string> Names => Directory.EnumerateFiles(Folder, "*.wain.json").Select(f => Path.GetFileName(f)[..^".wain.json".Length]).Order(StringComparer.Ordinal);

    /// <summary>Parts that come out whole or in pieces, each once, by id.</summary>
    public static string WhatComesOut(RemovalPlan plan) => string.Join(' ', plan.Steps
        .Where(s => s.Kind is StepKind.TakeOut or StepKind.TakePiece)
        .SelectMany(s => s.With.Prepend(s.Part!.Value)).Select(p => p.Text).Distinct().Order(StringComparer.Ordinal));

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (Path.Combine(folder.FullName, "demo", "cases") is var cases && Directory.Exists(cases)) return cases;
        throw new InvalidOperationException($"no demo/cases above {AppContext.BaseDirectory}");
    }
}
