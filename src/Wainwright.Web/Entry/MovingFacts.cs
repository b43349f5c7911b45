using Wainwright.Fitout;
using Wainwright.Web.Shown;

namespace Wainwright.Web.Entry;

/// <summary>A drawer, door, flap, lid or slide, fact by fact.</summary>
public static class MovingFacts
{
    /// <summary>The facts; those of hinge and gas springs only where something turns.</summary>
    public static IReadOnlyList<Fact<MovingThing>> Of(MovingThing thing, Measures measures)
    {
        ArgumentNullException.ThrowIfNull(thing);
        var f = new FactsOf<MovingThing>(measures);
        f.Text("Name", thing.Name, t => thing with { Name = t! }, needed: true);
        f.Choice("What it is", thing.Kind, v => thing with { Kind = v }, needed: true);
        f.Choice("Its front goes, when it opens", thing.Opens, v => thing with { Opens = v }, needed: true);
        f.Mass("Mass that moves, with what is in it", thing.MassKg, v => thing with { MassKg = v });
        f.Text("Kept shut by", thing.KeptShutBy, v => thing with { KeptShutBy = v }, placeholder: "push latch; nothing");
        f.Force("Force at the catch that opens it", thing.HoldsN, v => thing with { HoldsN = v }, help: "With a hand gauge, the way it opens");
        if (thing.Kind is MovingKind.Drawer or MovingKind.SlidingDoor or MovingKind.Slide) return [.. f];
        f.Place("Middle of its hinge", thing.Hinge, v => thing with { Hinge = v });
        f.Place("Its centre of mass, shut", thing.CentreShut, v => thing with { CentreShut = v });
        f.Place("Its farthest point from the hinge, shut", thing.FarEdgeShut, v => thing with { FarEdgeShut = v });
        f.Number("Opens by, degrees", thing.OpensDeg, v => thing with { OpensDeg = v });
        if (thing.Springs is not { } springs) return [.. f];
        f.Force("Gas springs: force of one", springs.ForceN, v => thing with { Springs = springs with { ForceN = v } });
        f.Whole("Gas springs: how many", springs.Count, v => thing with { Springs = springs with { Count = v!.Value } }, needed: true);
        f.Place("Gas springs: end on what stays", springs.FixedAt, v => thing with { Springs = springs with { FixedAt = v ?? springs.FixedAt } });
        f.Place("Gas springs: end on the lid, shut", springs.MovingAt, v => thing with { Springs = springs with { MovingAt = v ?? springs.MovingAt } });
        return [.. f];
    }

    /// <summary>What is known of it; what decides and is not known is said to be so.</summary>
    public static string About(MovingThing thing, Measures measures)
    {
        ArgumentNullException.ThrowIfNull(thing);
        return string.Join(", ",
            $"{Words.Of(thing.Kind)}, opens {Words.Of(thing.Opens)}",
            thing.MassKg is { } kg ? measures.Mass(kg.Value) : "mass not known",
            thing.KeptShutBy is { } by ? $"kept shut by {by}" : "nobody looked what keeps it shut",
            thing.HoldsN is { } n ? $"opens at {measures.Force(n.Value)}" : "opening force not measured");
    }
}
