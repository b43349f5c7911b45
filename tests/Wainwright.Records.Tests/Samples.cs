using System.Text;
using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

/// <summary>A small job, photos of a few bytes, and words for changing both.</summary>
internal static class Samples
{
    public static Job Small(string id = "TEST-1") => new()
    {
        Format = Job.CurrentFormat,
        Id = id,
        Title = "small van",
        Vehicle = new Vehicle
        {
            Name = "small panel van",
            LoadSpace = new LoadSpace { LengthMm = 2000, WidthMm = 1500, HeightMm = 1300 },
            Openings = [new Opening { Name = "rear doors", Face = Face.Rear, FromMm = 100, WidthMm = 1300, SillMm = 0, HeightMm = 1200, Passable = true, Known = Known.Measured }],
            Axles = [new Axle { Name = "front", XMm = -900, RatingKg = 1400 }, new Axle { Name = "rear", XMm = 1800, RatingKg = 1600 }],
        },
        Parts = [Part("P1"), Part("P2") with { StandsOn = [new("P1")] }, Part("P3")],
        Joints = [new Joint { Id = new("J1"), Part = new("P1"), Type = FixingType.WoodScrew, Size = "5x40", Drive = Drive.CrossRecess, Count = 4, State = FixingState.Sound, Known = Known.Seen, Release = new Release { Way = ReleaseWay.Unscrew, From = Direction.Up } }],
        Points = [new ReadingPoint { Id = new("Q1"), At = new(200, 0, 100), Where = "foot", Part = new("P1") }],
        Readings = [Reading("R1", 18.5)],
        Findings = [new Finding { Id = new("F1"), What = "foot is damp — “nass”", Parts = [new("P1")], Known = Known.Measured, Readings = [new("R1")], Severity = Severity.Negligible, Likelihood = Likelihood.Probable, Urgency = Urgency.U2 }],
    };

    public static Part Part(string id) => new()
    {
        Id = new(id), Name = "box", System = PartSystem.Furniture, Known = Known.Measured, MassKg = 12, Solids = [new BoxSolid { At = new(100, 0, 0), Size = new(400, 300, 500) }],
    };

    public static Reading Reading(string id, double percent) => new()
    {
        Id = new(id), Quantity = Quantity.Moisture, Value = new Measured(percent, 1), Unit = "%", Point = new("Q1"), TakenAt = new(2026, 3, 2, 9, 0, 0, TimeSpan.FromHours(1)),
    };

    public static Photo Photo(PhotoHash hash, string mediaType = "image/jpeg") => new() { Hash = hash, Shows = "the foot", MediaType = mediaType };

    /// <summary>Bytes that begin as a JPEG does, different for every number.</summary>
    public static byte[] Jpeg(int number, int length = 3000)
    {
        var bytes = new byte[length];
        new Random(number).NextBytes(bytes);
        ((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF, 0xE0]).CopyTo(bytes);
        return bytes;
    }

    public static string Text(Job job) => Encoding.UTF8.GetString(JobFile.Write(job));

    public static Change Note(Job job, string note) => new($"note {note}", [Edit.Field(job, "note", note)]);

    public static Change PutPart(Job job, Part part) => new($"put {part.Id}", [Edit.Put(job, "parts", part.Id.Text, part)]);

    public static Change TakeOut(Job job, string list, string id) => new($"take out {id}", [Edit.TakeOut(job, list, id)]);
}
