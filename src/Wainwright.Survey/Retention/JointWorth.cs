using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>What one fixing of a joint carries: its measures into the published methods, usual ranges where nobody measured.</summary>
internal static class JointWorth
{
    public static FixingWorth Of(Joint joint, Part part, Part? to, Vehicle vehicle)
    {
        var draft = new WorthDraft();
        var into = Substrate.Of([joint.Base, .. Substrate.WordsOf(to), joint.Into]);
        var sound = joint.RatedN is { } rated ? Rated(joint, rated) : Sound(joint, part, into, draft);
        var (pull, shear) = ConditionOf.Joint(joint, into, draft);
        return draft.Made(sound, pull, shear);
    }

    /// <summary>What its maker or a test says is the load at which it lets go.</summary>
    private static SoundFixing Rated(Joint joint, Measured rated)
    {
        var n = rated.PlusMinus is null ? RatedHold.StrengthN(rated.Value, RatedHold.Rating.Breaking) : FixingSize.Known(rated);
        // a peg or stop keeps from sliding and lets go upwards
        return joint.Type == FixingType.Pin ? new(Spread.Exactly(0), n, Sharing.Apart, "it lifts off its pins", 0, n.Likely) : new(n, n, Sharing.Straight, "its rated strength is reached", n.Likely, n.Likely);
    }

    private static SoundFixing Sound(Joint joint, Part part, Substrate into, WorthDraft draft)
    {
        var size = FixingSize.Of(joint);
        var threaded = joint.Type is FixingType.WoodScrew or FixingType.CupWasherScrew or FixingType.SelfDrillingScrew or FixingType.Bolt or FixingType.RivetNut or FixingType.HandKnob;
        if (!size.Said && (threaded || joint.Type == FixingType.Rivet))
        {
            draft.Assume(string.Create(CultureInfo.InvariantCulture, $"assumed: {size.DiameterMm} mm thick, the least that is usual, for nobody wrote the size of {joint.Id} down"));
            draft.Look("the size of the fixing", 3);
        }
        if (!into.Named && threaded) draft.Look("what it bites in: which wood, or sheet of which thickness", 3);
        UnderHead Under() => new(Substrate.Held(joint, part), HeadThickness(joint, part, draft));
        return joint.Type switch
        {
            FixingType.WoodScrew or FixingType.CupWasherScrew or FixingType.SelfDrillingScrew when !into.IsMetal => InWood.Screw(joint, size, into, Under(), draft),
            FixingType.WoodScrew or FixingType.CupWasherScrew or FixingType.SelfDrillingScrew or FixingType.Rivet or FixingType.RivetNut => InSheet.Of(joint, size, Under(), SheetMm(joint, into, draft), draft),
            FixingType.Brad or FixingType.Staple => InWood.Nailed(joint, size, into, Under(), draft),
            FixingType.Bolt or FixingType.HandKnob => Bolted.Of(joint, size, into, Under(), draft),
            FixingType.Adhesive or FixingType.Sealant or FixingType.HookTape => Stuck.Of(joint, part, draft),
            _ => UsualHold.Of(joint.Type, draft),
        };
    }

    private static Spread HeadThickness(Joint joint, Part part, WorthDraft draft)
    {
        if (joint.UnderHeadMm is { } mm) return FixingSize.Known(mm);
        if (part.Made is [{ ThicknessMm: { } made }]) return FixingSize.Known(made);
        // the thinnest of its solids is its board or sheet, as drawn; a thing drawn as one lump tells nothing
        var thin = part.Solids.OfType<BoxSolid>().Select(b => Math.Min(b.Size.XMm, Math.Min(b.Size.YMm, b.Size.ZMm))).DefaultIfEmpty(100).Min();
        if (thin <= 30) return new(0.9 * thin, thin, 1.1 * thin);
        return part.System is PartSystem.Furniture or PartSystem.Lining
            ? draft.Usual(new(9, 12, 18), "board of 9 to 18 mm under the head", "thickness under the head")
            : draft.Usual(new(1, 1.5, 2.5), "an ear or flange of 1 to 2.5 mm sheet under the head", "what lies under the head: sheet, plastic, how thick");
    }

    private static Spread SheetMm(Joint joint, Substrate into, WorthDraft draft)
    {
        if (joint.BaseMm is { } mm) return FixingSize.Known(mm);
        var range = BodySteel.ThicknessMm(into.Sheet);
        return draft.Usual(range, string.Create(CultureInfo.InvariantCulture, $"sheet of {range.Low} to {range.High} mm"), "thickness of the sheet, at the edge of a hole or by gauge");
    }
}

/// <summary>What lies under the head of a fixing.</summary>
/// <param name="Of">What it is made of.</param>
/// <param name="ThickMm">How thick [mm].</param>
internal readonly record struct UnderHead(Substrate Of, Spread ThickMm);
