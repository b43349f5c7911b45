using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>What a fixing bites in or holds, as far as the words of a job say it.</summary>
/// <param name="IsMetal">Sheet or plate, else wood or board.</param>
/// <param name="SpecificGravity">Of wood [-].</param>
/// <param name="Sheet">Where in the body, for metal.</param>
/// <param name="Named">Whether the words said so; else it was taken for light board.</param>
internal sealed record Substrate(bool IsMetal, Spread SpecificGravity, BodySteel.Place Sheet, bool Named)
{
    private static readonly (string Word, WoodDensity.Wood Wood)[] Woods =
    [
        ("birch", WoodDensity.Wood.BirchPlywood), ("beech", WoodDensity.Wood.Beech), ("oak", WoodDensity.Wood.Oak), ("poplar", WoodDensity.Wood.PoplarPlywood), ("light ply", WoodDensity.Wood.PoplarPlywood),
        ("okoume", WoodDensity.Wood.OkoumePlywood), ("laminate", WoodDensity.Wood.PoplarPlywood), ("softwood", WoodDensity.Wood.Softwood), ("batten", WoodDensity.Wood.Softwood), ("spruce", WoodDensity.Wood.Softwood),
        ("pine", WoodDensity.Wood.Softwood), ("chipboard", WoodDensity.Wood.Particleboard), ("particleboard", WoodDensity.Wood.Particleboard), ("fibreboard", WoodDensity.Wood.Mdf), ("mdf", WoodDensity.Wood.Mdf),
        ("osb", WoodDensity.Wood.Osb), ("worktop", WoodDensity.Wood.PoplarPlywood), ("ply", WoodDensity.Wood.PlywoodUnknown), ("partition", WoodDensity.Wood.PlywoodUnknown), ("lining", WoodDensity.Wood.PlywoodUnknown),
        ("wood", WoodDensity.Wood.PlywoodUnknown), ("board", WoodDensity.Wood.PlywoodUnknown), ("plinth", WoodDensity.Wood.PlywoodUnknown),
    ];

    private static readonly string[] Metals = ["steel", "skin", "rib", "rail", "bow", "pillar", "sill", "gutter", "flange", "bulkhead", "metal", "alumin", "floor member", "tie-down", "rivet nut", "door frame", "bracket", "angle", "racking", "top shelf of bay"];

    /// <summary>Usual light board, for furniture of which nobody said what it is made of.</summary>
    private static readonly Substrate Unnamed = new(false, WoodDensity.SpecificGravity(WoodDensity.Wood.PlywoodUnknown), BodySteel.Place.Rib, false);

    /// <summary>From the most telling words first: the joint's own, then those of the part it goes into.</summary>
    public static Substrate Of(params IReadOnlyList<string?> words)
    {
        foreach (var said in words.OfType<string>().Select(w => w.ToLowerInvariant()))
        {
            if (said.StartsWith("inner panel", StringComparison.Ordinal)) return Metal(said);
            foreach (var (word, wood) in Woods) if (said.Contains(word, StringComparison.Ordinal)) return new(false, WoodDensity.SpecificGravity(wood), BodySteel.Place.Rib, true);
            if (Metals.Any(m => said.Contains(m, StringComparison.Ordinal))) return Metal(said);
        }
        return Unnamed;
    }

    /// <summary>What lies under the head: as said; else by what the part is: board for furniture and lining, the ear of an appliance for the rest.</summary>
    public static Substrate Held(Joint joint, Part part)
    {
        var said = Of([joint.UnderHead, .. WordsOf(part)]);
        return said.Named || part.System is PartSystem.Furniture or PartSystem.Lining or PartSystem.Floor ? said : new(true, default, BodySteel.Place.Rib, false);
    }

    /// <summary>Words of a part that say what it is made of.</summary>
    public static IReadOnlyList<string?> WordsOf(Part? part) => part is null ? [] : [.. part.Made.Select(m => m.Material), part.Name, part.Note?.Split([';', '.', ','])[0]];

    private static Substrate Metal(string said) => new(true, default,
        said.Contains("skin", StringComparison.Ordinal) || said.Contains("inner panel", StringComparison.Ordinal) ? BodySteel.Place.OuterSkin
        : said.Contains("floor", StringComparison.Ordinal) ? BodySteel.Place.Floor : BodySteel.Place.Rib, true);
}
