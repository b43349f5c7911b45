using Wainwright.Fitout;

namespace Wainwright.Paper;

/// <summary>What to have in hand for a fixing, in the workshop's words.</summary>
public static class Tools
{
    /// <summary>The tool for a fixing.</summary>
    public static string For(Joint joint) => joint.Release.Way switch
    {
        ReleaseWay.Drill => "drill, bit to suit",
        ReleaseWay.Cut => joint.Type is FixingType.Adhesive or FixingType.Sealant ? "cutting wire or blade" : "saw or knife",
        ReleaseWay.Pry => "flat lever, wedge",
        ReleaseWay.ByHand => "by hand",
        _ => joint.Drive switch
        {
            Drive.Hand => joint.Type is FixingType.HandKnob or FixingType.Clamp or FixingType.Strap or FixingType.PushFit or FixingType.Pin ? "by hand" : "driver to suit: not noted",
            Drive.Slot => "slot driver",
            Drive.CrossRecess => "cross-recess driver",
            Drive.Square => "square driver",
            Drive.HexSocket => "hexagon key",
            Drive.Hexalobular => "hexalobular driver",
            Drive.HexHead => "spanner or socket",
            _ => "blade",
        },
    };

    /// <summary>What goes into the bag: counted and typed.</summary>
    public static string Fixings(Joint joint) => $"{joint.Count} × {Name(joint.Type)}{(joint.Size is { } size ? $" {size}" : "")}";

    /// <summary>Whether undoing it leaves something to keep in a bag.</summary>
    public static bool Bagged(Joint joint) => joint is { Release: { Destructive: false, Way: ReleaseWay.Unscrew or ReleaseWay.ByHand } }
        && joint.Type is not (FixingType.Adhesive or FixingType.Sealant or FixingType.Weld or FixingType.HookTape or FixingType.Plug or FixingType.PushFit or FixingType.Runner);

    private static string Name(FixingType type) => string.Concat(type.ToString().Select((c, i) => i > 0 && char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : char.ToLowerInvariant(c).ToString()));
}
