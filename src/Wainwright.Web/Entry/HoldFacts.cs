using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>What decides how much a joint holds, fact by fact.</summary>
public static class HoldFacts
{
    /// <summary>The facts in the order one finds them out with a screw in hand: what it bites in, how far, what it holds, what is wrong with it.</summary>
    public static IReadOnlyList<Fact<Joint>> Of(Joint joint, Measures measures)
    {
        ArgumentNullException.ThrowIfNull(joint);
        var f = new FactsOf<Joint>(measures);
        f.Text("Bites in, material", joint.Base, v => joint with { Base = v }, placeholder: "steel sheet, birch plywood");
        f.Length("Thickness of that where it bites", joint.BaseMm, v => joint with { BaseMm = v });
        f.Length("Length that bites in it", joint.PenetrationMm, v => joint with { PenetrationMm = v }, help: "Pull one and measure it");
        f.Text("Under the head, material", joint.UnderHead, v => joint with { UnderHead = v }, placeholder: "as the part is made");
        f.Length("Thickness under the head", joint.UnderHeadMm, v => joint with { UnderHeadMm = v });
        f.Length("Head or washer across", joint.HeadMm, v => joint with { HeadMm = v });
        f.Length("Nearest edge, from a fixing's middle", joint.EdgeMm, v => joint with { EdgeMm = v });
        f.Text("Grade on a bolt's head", joint.Grade, v => joint with { Grade = v }, placeholder: "8.8");
        f.Number("Bonded area of glue or tape, mm²", joint.BondedMm2, v => joint with { BondedMm2 = v });
        f.Force("One carries until it lets go", joint.RatedN, v => joint with { RatedN = v }, help: "Only where its maker or a test says so");
        f.Maybe("Its shank points, head to tip", joint.Axis, v => joint with { Axis = v });
        f.Route("Where the fixings are", joint.Points, v => joint with { Points = v }, help: "One fixing to a line: along, across, up.");
        foreach (var flaw in Enum.GetValues<FixingFlaw>())
            f.Tick(Word(flaw), joint.Flaws.Contains(flaw), on => joint with { Flaws = on ? [.. joint.Flaws.Append(flaw).Distinct().Order()] : [.. joint.Flaws.Where(x => x != flaw)] });
        return [.. f];
    }

    /// <summary>What is known that decides how much it holds; nothing when nothing is.</summary>
    public static string? About(Joint joint, Measures measures)
    {
        ArgumentNullException.ThrowIfNull(joint);
        string? Long(Measured? mm, string what) => mm is { } m ? $"{measures.Length(m.Value)} {what}" : null;
        var said = string.Join(", ", new[]
        {
            joint.Base is { } b ? $"bites in {b}" : null, Long(joint.PenetrationMm, "deep"), Long(joint.EdgeMm, "from the edge"), Long(joint.HeadMm, "head"),
            joint.RatedN is { } n ? $"carries {measures.Force(n.Value)} each" : null, joint.Flaws.Count > 0 ? string.Join(", ", joint.Flaws.Select(f => Words.Of(f))) : null,
        }.Where(t => t is not null));
        return said.Length == 0 ? null : said;
    }

    private static string Word(FixingFlaw flaw) => flaw switch
    {
        FixingFlaw.OverDriven => "Over-driven: its thread gave way",
        FixingFlaw.Wetted => "The wood it bites in was wet, or is",
        FixingFlaw.EndGrain => "Driven into end grain",
        FixingFlaw.BoardEdge => "Driven into the edge of a board",
        FixingFlaw.Rusted => "Rusted: its shank has lost steel",
        FixingFlaw.ReusedHole => "In a hole that held a screw before",
        _ => Words.Capital(Words.Of(flaw)),
    };
}
