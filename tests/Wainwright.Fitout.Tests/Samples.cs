using System.Text;
using System.Text.Json.Nodes;

namespace Wainwright.Fitout.Tests;

/// <summary>A small van with one of everything, for tests to bend.</summary>
internal static class Samples
{
    public static Job Small() => new()
    {
        Format = Job.CurrentFormat,
        Id = "TEST-1",
        Title = "small van",
        Vehicle = new Vehicle
        {
            Name = "small panel van",
            LoadSpace = new LoadSpace { LengthMm = 2000, WidthMm = 1500, HeightMm = 1300 },
            Openings = [new Opening { Name = "rear doors", Face = Face.Rear, FromMm = 100, WidthMm = 1300, SillMm = 0, HeightMm = 1200, Passable = true, Known = Known.Measured }],
            Axles = [new Axle { Name = "front", XMm = -900, RatingKg = 1400 }, new Axle { Name = "rear", XMm = 1800, RatingKg = 1600 }],
        },
        Parts =
        [
            new Part { Id = new("P1"), Name = "box", System = PartSystem.Furniture, Known = Known.Measured, MassKg = 12, Solids = [new BoxSolid { At = new(100, 0, 0), Size = new(400, 300, 500) }] },
            new Part { Id = new("P2"), Name = "lid", System = PartSystem.Furniture, Known = Known.Seen, StandsOn = [new("P1")], Solids = [new BoxSolid { At = new(100, 0, 500), Size = new(400, 300, 20) }] },
        ],
        Joints = [new Joint { Id = new("J1"), Part = new("P1"), Type = FixingType.WoodScrew, Size = "5x40", Drive = Drive.CrossRecess, Count = 4, State = FixingState.Sound, Known = Known.Seen, Release = new Release { Way = ReleaseWay.Unscrew, From = Direction.Up } }],
        Points = [new ReadingPoint { Id = new("Q1"), At = new(200, 0, 100), Where = "foot", Part = new("P1") }],
        Readings = [new Reading { Id = new("R1"), Quantity = Quantity.Moisture, Value = new Measured(18.5, 1), Unit = "%", Point = new("Q1"), TakenAt = new(2026, 3, 2, 9, 0, 0, TimeSpan.Zero) }],
        Findings = [new Finding { Id = new("F1"), What = "foot is damp", Parts = [new("P1")], Known = Known.Measured, Readings = [new("R1")], Severity = Severity.Negligible, Likelihood = Likelihood.Probable, Urgency = Urgency.U2 }],
    };

    public static string Text(Job job) => Encoding.UTF8.GetString(JobFile.Write(job));

    public static JobReading Read(string text) => JobFile.Read(Encoding.UTF8.GetBytes(text));

    /// <summary>Reads the small van after something in its document was changed.</summary>
    public static JobReading Bent(Action<JsonObject> bend)
    {
        var document = JsonNode.Parse(Text(Small()))!.AsObject();
        bend(document);
        return Read(document.ToJsonString());
    }
}
