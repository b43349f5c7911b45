using Wainwright.Fitout;

namespace Wainwright.Survey.Damp;

/// <summary>What of a part is wood that takes up water, as far as its words say it.</summary>
internal static class BoardMaterial
{
    private static readonly string[] Panels = ["ply", "osb", "chipboard", "particleboard", "fibreboard", "mdf", "hardboard", "faced board"];

    private static readonly string[] Solid = ["softwood", "hardwood", "timber", "spruce", "pine", "oak", "beech", "batten", "wood"];

    private static readonly string[] Kinds = ["birch ply", "poplar ply", "light ply", "faced ply"];

    /// <summary>The wood of a part: its layers first, then what its reading points say; null when nothing says wood.</summary>
    public static string? Of(Part part, IEnumerable<ReadingPoint> points) =>
        part.Made.Select(l => l.Material).Concat(points.Where(p => p.Part == part.Id).Select(p => p.Material)).Select(Named).FirstOrDefault(m => m is not null)
        // nobody wrote what it is made of, but its name says it
        ?? (part.Made.Count == 0 ? Named(part.Name) : null);

    public static bool IsPanel(string material) => Panels.Any(p => material.Contains(p, StringComparison.Ordinal));

    /// <summary>The wood that words name; null when they name none.</summary>
    public static string? Named(string? words)
    {
        if (words?.ToLowerInvariant() is not { } said) return null;
        if (said.Contains("plywood", StringComparison.Ordinal)) said = said.Replace("plywood", "ply", StringComparison.Ordinal);
        return Kinds.FirstOrDefault(k => said.Contains(k, StringComparison.Ordinal))
            ?? Panels.FirstOrDefault(k => Whole(said, k))
            ?? (Solid.Any(k => said.Contains(k, StringComparison.Ordinal)) ? "solid wood" : null);
    }

    // "ply" but not "supply"
    private static bool Whole(string said, string word)
    {
        var at = said.IndexOf(word, StringComparison.Ordinal);
        return at == 0 || (at > 0 && !char.IsLetter(said[at - 1]));
    }
}
