using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>An open shelf or tray, fact by fact.</summary>
public static class ShelfFacts
{
    private static readonly Direction[] Sides = [Direction.Forward, Direction.Rearward, Direction.Left, Direction.Right];

    /// <summary>The facts: how high its lip is, where only the lip keeps things, what stands on it.</summary>
    public static IReadOnlyList<Fact<OpenShelf>> Of(OpenShelf shelf, Measures measures)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        var f = new FactsOf<OpenShelf>(measures);
        f.Text("Name", shelf.Name, t => shelf with { Name = t! }, needed: true);
        f.Length("Height of its lip, 0 for none", shelf.LipMm, v => shelf with { LipMm = v });
        f.Text("What stands on it", shelf.Holds, v => shelf with { Holds = v }, placeholder: "tins and jars");
        f.Mass("Heaviest thing on it", shelf.HeaviestKg, v => shelf with { HeaviestKg = v });
        f.Length("Tallest thing: centre of mass above the shelf", shelf.CentreMm, v => shelf with { CentreMm = v });
        f.Length("Tallest thing: depth of its foot", shelf.FootMm, v => shelf with { FootMm = v });
        f.Length("Height above where a person stands", shelf.HeightMm, v => shelf with { HeightMm = v });
        f.Number("Friction, rise over run where a thing begins to slide", shelf.Friction, v => shelf with { Friction = v });
        foreach (var side in Sides)
            f.Tick($"Open {Words.Of(side)}", shelf.OpenSides.Contains(side), on => shelf with { OpenSides = on ? [.. shelf.OpenSides.Append(side).Distinct().Order()] : [.. shelf.OpenSides.Where(s => s != side)] });
        return [.. f];
    }

    /// <summary>What is known of it.</summary>
    public static string About(OpenShelf shelf, Measures measures)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        return string.Join(", ",
            shelf.LipMm is { } lip ? lip.Value == 0 ? "no lip" : $"lip {measures.Length(lip.Value)}" : "lip not measured",
            shelf.OpenSides.Count > 0 ? $"open {string.Join(" and ", shelf.OpenSides.Select(s => Words.Of(s)))}" : "nobody said which sides are open",
            shelf.Holds ?? "nobody said what stands on it");
    }
}
