using Wainwright.Fitout;

namespace Wainwright.Access.Tests.Crew;

/// <summary>A bare van 4 m long with a rear and a side door, to stand a few boxes in.</summary>
internal static class CrewVan
{
    public static Job With(IEnumerable<Part> parts, IEnumerable<Joint> joints) => new()
    {
        Format = Job.CurrentFormat,
        Id = "crew",
        Title = "boxes in a bare van",
        Vehicle = new()
        {
            Name = "bare panel van, invented",
            LoadSpace = new() { LengthMm = 4000, WidthMm = 2000, HeightMm = 2000 },
            Openings =
            [
                new() { Name = "rear door", Face = Face.Rear, FromMm = 0, WidthMm = 2000, SillMm = 0, HeightMm = 2000, Passable = true, Known = Known.Measured },
                new() { Name = "side door", Face = Face.Right, FromMm = 1000, WidthMm = 800, SillMm = 0, HeightMm = 2000, Passable = true, Known = Known.Measured },
            ],
        },
        Parts = [.. parts],
        Joints = [.. joints],
    };

    public static Part Box(string id, double x, double y, double z, double length, double width, double height, double massKg = 5, string? on = null) => new()
    {
        Id = new(id),
        Name = $"box {id}",
        System = PartSystem.Furniture,
        Known = Known.Measured,
        MassKg = massKg,
        StandsOn = on is null ? [] : [new(on)],
        Solids = [new BoxSolid { At = new(x, y, z), Size = new(length, width, height) }],
    };

    public static Joint Held(string part, double minutes, Drive drive = Drive.Hand) => new()
    {
        Id = new($"J{part}"),
        Part = new(part),
        Type = FixingType.Bolt,
        Drive = drive,
        Count = 1,
        Known = Known.Seen,
        State = FixingState.Sound,
        Release = new() { Way = drive == Drive.Hand ? ReleaseWay.ByHand : ReleaseWay.Unscrew, Minutes = minutes },
    };
}
