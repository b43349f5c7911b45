using Wainwright.Fitout;

namespace Wainwright.Web.Tests;

/// <summary>A van of two parts to type beside.</summary>
internal static class SmallVan
{
    public static readonly Job Job = new()
    {
        Format = Job.CurrentFormat, Id = "T-1", Title = "small van",
        Vehicle = new() { Name = "panel van", LoadSpace = new() { LengthMm = 3000, WidthMm = 1700, HeightMm = 1900 } },
        Parts =
        [
            new() { Id = new("A20"), Name = "kitchen base", System = PartSystem.Furniture, Known = Known.Measured, Solids = [new BoxSolid { At = new(1000, 1200, 12), Size = new(900, 500, 860) }] },
            new() { Id = new("A21"), Name = "worktop", System = PartSystem.Furniture, Known = Known.Seen, StandsOn = [new("A20")] },
        ],
        Joints =
        [
            new() { Id = new("J1"), Part = new("A20"), Type = FixingType.Bolt, Count = 4, Known = Known.Seen, Release = new() { Way = ReleaseWay.Unscrew } },
            new() { Id = new("J2"), Part = new("A21"), To = new("A20"), Type = FixingType.WoodScrew, Count = 8, Known = Known.Seen, Release = new() { Way = ReleaseWay.Unscrew } },
        ],
        Lines =
        [
            new() { Id = new("L1"), Name = "drain", Medium = Medium.Waste, Build = LineBuild.Hose, From = new() { Part = new("A20"), Joint = new("J1") }, To = new() { Where = "tank" }, Known = Known.Seen },
        ],
        Findings = [new() { Id = new("F1"), What = "loose", Parts = [new("A20")], Joints = [new("J1")], Known = Known.Seen }],
    };
}
