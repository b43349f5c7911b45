using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Bench.Vans;

/// <summary>A made-up van as a job, for everything that reads a job file.</summary>
static class VanJob
{
    public static Job Of(BoxVan van) => new()
    {
        Format = Job.CurrentFormat,
        Id = van.Name.ToLowerInvariant(),
        Title = $"made up for measuring: {van.Name}",
        Vehicle = new()
        {
            Name = "box van",
            LoadSpace = new() { LengthMm = van.LengthMm, WidthMm = BoxVan.AcrossMm, HeightMm = BoxVan.AcrossMm },
            Openings =
            [
                new() { Name = "rear doors", Face = Face.Rear, FromMm = 200, WidthMm = 1600, SillMm = 0, HeightMm = 1800, Passable = true, Known = Known.Measured },
                new() { Name = "side door", Face = Face.Right, FromMm = van.SideDoor.FromMm, WidthMm = van.SideDoor.ToMm - van.SideDoor.FromMm, SillMm = 0, HeightMm = 1700, Passable = true, Known = Known.Measured },
            ],
            Axles = [new() { Name = "front", XMm = -900, RatingKg = 1800 }, new() { Name = "rear", XMm = van.LengthMm * 0.7, RatingKg = 2000 }],
        },
        Parts = [.. van.Parts.Select((p, i) => PartOf(p, i))],
        Joints = [.. van.Joints.Select((j, i) => JointOf(j, i))],
    };

    public static PartId IdOf(int part) => new(FormattableString.Invariant($"P{part + 1:000}"));

    private static Part PartOf(BoxPart part, int number) => new()
    {
        Id = IdOf(number),
        Name = FormattableString.Invariant($"{Word(part.Sort)} {number + 1}"),
        System = part.Sort switch
        {
            Sort.FloorSheet => PartSystem.Floor,
            Sort.Lining or Sort.Ceiling => PartSystem.Lining,
            Sort.Fitted => PartSystem.Water,
            Sort.Box => PartSystem.Loose,
            _ => PartSystem.Furniture,
        },
        Known = Known.Measured,
        Solids = [.. part.Boxes.Select(b => new BoxSolid { At = new(b.X0, b.Y0, b.Z0), Size = new(b.Length(0), b.Length(1), b.Length(2)) })],
        StandsOn = [.. part.StandsOn.Select(IdOf)],
        MassKg = 1 + part.Minutes,
        Overhead = part.Sort == Sort.Ceiling,
        LooseGoods = part.Sort == Sort.Box,
        Service = part.Sort == Sort.Fitted
            ? [new() { What = "look it over", EveryMonths = 12, Access = ServiceAccess.Reach }, new() { What = "replace", EveryMonths = 96, Access = ServiceAccess.Remove }]
            : [],
    };

    private static Joint JointOf(BoxJoint joint, int number) => new()
    {
        Id = new(FormattableString.Invariant($"J{number + 1:000}")),
        Part = IdOf(joint.Part),
        To = joint.To is { } to ? IdOf(to) : null,
        Type = FixingType.WoodScrew,
        Size = "4x30",
        Drive = Drive.CrossRecess,
        Count = joint.Points.Count,
        Points = [.. joint.Points.Select(p => new Place(p.XMm, p.YMm, p.ZMm))],
        Known = Known.Seen,
        State = FixingState.Sound,
        Release = new() { Way = ReleaseWay.Unscrew, From = (Direction)(int)joint.From },
    };

    private static string Word(Sort sort) => sort switch
    {
        Sort.FloorSheet => "floor sheet",
        Sort.Lining => "wall lining",
        Sort.Ceiling => "ceiling panel",
        Sort.Carcass => "carcass",
        Sort.Front => "front",
        Sort.Top => "worktop",
        Sort.Fitted => "pump",
        _ => "box",
    };
}
