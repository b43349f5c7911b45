using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Items in the workshop's words.</summary>
internal static class Wording
{
    public static string Name(Part? part) => part is null ? "the van" : $"{part.Id} {part.Name}";

    public static string Name(Medium medium) => medium switch
    {
        Medium.Water => "fresh water",
        Medium.Waste => "waste water",
        Medium.Dc => "low-voltage DC",
        Medium.Mains => "mains",
        Medium.WarmAir => "warm air",
        Medium.CombustionAir => "combustion air",
        Medium.Exhaust => "the burner",
        _ => medium.ToString().ToLowerInvariant(),
    };

    public static Part? PartOf(Scene scene, Item item) => item switch
    {
        Undo undo => scene.PartOf(undo.Joint.Part),
        Disconnect { End.Part: { } at } => scene.PartOf(at),
        Disconnect { Line.Part: { } run } => scene.PartOf(run),
        TakeOut load => load.Part,
        TakePiece piece => piece.Part,
        IsOut out_ => out_.Part,
        Spoiled spoiled => spoiled.Part,
        HandOn hand => hand.Part,
        EyeOn eye => eye.Part,
        _ => null,
    };

    /// <summary>What the item is about, to stand within a sentence.</summary>
    public static string Subject(Scene scene, Item item) => item switch
    {
        Undo undo => $"{Fixings(undo.Joint)} of {Name(scene.PartOf(undo.Joint.Part))}",
        Disconnect end => $"{end.Line.Name} at {(end.End.Part is { } at ? Name(scene.PartOf(at)) : end.End.Where ?? "its end")}",
        MakeSafe safe => Name(safe.Medium),
        TakePiece piece => $"{piece.Name} of {Name(piece.Part)}",
        IsOut { Piece: { } name } piece => $"{name} of {Name(piece.Part)}",
        _ => Name(PartOf(scene, item)),
    };

    public static string Action(Scene scene, Item item) => item switch
    {
        MakeSafe { AlreadyDone: { } done } => $"Check that it still holds: {done.What}",
        MakeSafe { Medium: Medium.Exhaust } => "Let the burner cool and take its fuse out",
        MakeSafe { Medium: Medium.Water or Medium.Waste } safe => $"Drain {Name(safe.Medium)}",
        MakeSafe safe => $"Make {Name(safe.Medium)} safe and prove it",
        Undo undo => $"{Verb(undo.Joint)} {Subject(scene, undo)}{To(scene, undo.Joint)}",
        Disconnect end => $"Undo {Subject(scene, end)}",
        TakeOut { With.Count: > 0 } load => $"Take out {Name(load.Part)} with {string.Join(", ", load.With.Select(p => p.Id))}",
        TakeOut load => $"Take out {Name(load.Part)}",
        TakePiece piece => $"Take off and carry out {Subject(scene, piece)}",
        HandOn hand => $"Reach {Name(hand.Part)}",
        EyeOn eye => $"Look at {Name(eye.Part)}",
        _ => Subject(scene, item),
    };

    public static string? Licence(Scene scene, Item item) => item switch
    {
        Undo { Joint.Release.Licence: { } licence } => licence,
        Undo or Disconnect or TakeOut => PartOf(scene, item)?.ReservedFor,
        _ => null,
    };

    public static IEnumerable<string> Cautions(Scene scene, Item item)
    {
        if (item is MakeSafe { AlreadyDone.Remains: { } remains }) yield return remains;
        if (item is MakeSafe safe && Danger(safe.Medium) is { } danger) yield return danger;
        if (item is TakeOut load)
        {
            if (load.People > 1) yield return $"{Name(load.Part)}: lift with {load.People} people.";
            else if (Lift.Of([.. load.Load], scene.Options.Labour.OnePersonKg) is { People: not 1 } lift)
                yield return string.Create(CultureInfo.InvariantCulture, $"{Name(load.Part)}: {lift.MassKg:0.#} kg, more than the {lift.OneKg:0.#} kg that the NIOSH lifting equation gives one person for its size and place, and in a van that is an upper bound: {(lift.People is { } n ? $"lift with {n}, or slide it" : "too much for three: slide it, take it apart, or use a hoist")}.");
            if (load.Load.Any(p => p.EmptyKg is null)) yield return $"{Name(load.Part)}: mass not known; weigh or judge it before lifting.";
            if (load.Load.Any(p => p.Devices.Any(d => d is AirHeater))) yield return $"{Name(load.Part)}: hot for half an hour after it ran; do not touch body or exhaust before.";
        }
        if (item is TakeOut { Part: var can } && Can.Is(can)) yield return string.Create(CultureInfo.InvariantCulture, $"{Name(can)}: with {Can.FillKg(can):0.#} kg in it; close it, keep the hose's end up, and stop the pump before the hose comes off.");
        if (item is TakeOut { Part.System: PartSystem.Lining } or TakePiece { Part.System: PartSystem.Lining }) yield return "Behind linings ribs and cut metal are sharp: gloves.";
        if (item is TakeOut { Part: { System: PartSystem.Openings } window }) yield return $"{Name(window)}: glass or brittle plastic, sharp where it breaks: gloves, and two hands on the frame.";
        if (item is Undo { Joint: var j } && (j.Release.Way == ReleaseWay.Drill || LabourTable.Counts(j).Bad > 0)) yield return "Drilling: eyes covered, swarf caught; look what lies behind before the bit goes through.";
        if (item is Undo { Joint.Release.Destructive: true } undo) yield return $"Undoing {Subject(scene, undo)} spoils {Name(scene.PartOf(undo.Joint.Part))}: ask before.";
        if (Licence(scene, item) is { } licence) yield return $"{Subject(scene, item)}: reserved for {licence}; local rules decide.";
    }

    private static string? Danger(Medium medium) => medium switch
    {
        Medium.Mains => "Mains kills: prove dead at the point of work; an inverter feeds it from the battery.",
        Medium.Dc => "Battery leads can start a fire: insulate what is lifted; solar leads stay live in daylight.",
        Medium.Gas => "Gas work is reserved by law in many places: shut, vent, and leave joints to whom it is reserved to.",
        Medium.Fuel => "Fuel: no flame, catch what drips.",
        Medium.Exhaust => "The burner and its exhaust burn skin long after it stops.",
        _ => null,
    };

    private static string Verb(Joint joint) => joint.Release.Way switch
    {
        ReleaseWay.Drill => "Drill out",
        ReleaseWay.Cut => "Cut",
        ReleaseWay.Pry => "Pry off",
        ReleaseWay.ByHand => "Undo by hand",
        _ => "Unscrew",
    };

    private static string To(Scene scene, Joint joint) =>
        joint.To is { } to ? $" from {Name(scene.PartOf(to))}" : joint.Into is { } into ? $" from {into}" : "";

    internal static string Fixings(Joint joint)
    {
        var standing = LabourTable.Counts(joint).Standing;
        var kind = joint.Type switch
        {
            FixingType.WoodScrew => "wood screw",
            FixingType.CupWasherScrew => "cup-washer screw",
            FixingType.SelfDrillingScrew => "self-drilling screw",
            FixingType.RivetNut => "bolt in a rivet nut",
            FixingType.HookTape => "hook tape",
            FixingType.HandKnob => "hand knob",
            FixingType.HoseClip => "hose end",
            FixingType.PushFit => "push-fit end",
            FixingType.CableTie => "cable tie",
            FixingType.Adhesive => "glued place",
            FixingType.Sealant => "sealed seam",
            _ => joint.Type.ToString().ToLowerInvariant(),
        };
        var size = joint.Size is { } s ? $"{s} " : "";
        return standing == 1 ? $"the {size}{kind}" : $"the {standing} {size}{Plural(kind)}";
    }

    private static string Plural(string kind) => kind switch
    {
        "bolt in a rivet nut" => "bolts in rivet nuts",
        "hook tape" => "hook tapes",
        _ => kind + "s",
    };
}
