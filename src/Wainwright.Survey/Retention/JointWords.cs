using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Survey.Retention;

/// <summary>A joint in the words of the workshop: <c>6 wood screws 4x30 into ply lining</c>.</summary>
internal static class JointWords
{
    public static string Of(Joint joint)
    {
        var many = joint.Count != 1;
        var name = joint.Type switch
        {
            FixingType.WoodScrew => "wood screw",
            FixingType.CupWasherScrew => "cup-washer screw",
            FixingType.SelfDrillingScrew => "self-drilling screw",
            FixingType.Bolt => "bolt",
            FixingType.RivetNut => "bolt in rivet nut",
            FixingType.Rivet => "rivet",
            FixingType.Brad => "brad",
            FixingType.Staple => "staple",
            FixingType.Adhesive => "glue spot",
            FixingType.Sealant => "bead of sealant",
            FixingType.HookTape => "strip of hook tape",
            FixingType.HandKnob => "hand knob",
            var other => Spaced(other),
        };
        if (many) name = name switch { "bolt in rivet nut" => "bolts in rivet nuts", "bead of sealant" => "beads of sealant", "strip of hook tape" => "strips of hook tape", _ => name + "s" };
        var into = joint.Base ?? joint.Into;
        return string.Create(CultureInfo.InvariantCulture, $"{joint.Count} {name}{(joint.Size is { } size ? $" {size}" : "")}{(into is null ? "" : $" into {into}")}");
    }

    private static string Spaced(FixingType type) => string.Concat(type.ToString().Select((c, i) => i > 0 && char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : char.ToLowerInvariant(c).ToString()));
}
