using Wainwright.Fitout;

namespace Wainwright.Survey.Tests;

/// <summary>Small vans for the tests: what is not said is not there.</summary>
static class A
{
    public static readonly DateOnly Day = new(2026, 3, 1);

    public static Job Van(params IReadOnlyList<Part> parts) => new()
    {
        Format = Job.CurrentFormat,
        Id = "T",
        Title = "test van",
        Vehicle = new() { Name = "panel van", LoadSpace = new() { LengthMm = 3_000, WidthMm = 1_800, HeightMm = 1_900 } },
        Parts = parts,
    };

    public static Part Part(string id, params IReadOnlyList<Device> devices) => new() { Id = new(id), Name = id, System = PartSystem.Furniture, Known = Known.Seen, Devices = devices };

    public static Part At(this Part part, double x, double y, double z, double dx = 100, double dy = 100, double dz = 100, double? plusMinus = 1) =>
        part with { Solids = [new BoxSolid { At = new(x, y, z), Size = new(dx, dy, dz), PlusMinusMm = plusMinus }] };

    public static Check The(this IReadOnlyList<Check> checks, string id) => Assert.Single(checks, c => c.Id == id);

    public static Check Check(this Job job, string id) => Checks.All(job, Day).The(id);

    public static Check Check(this Job job, string id, string subject) => Assert.Single(Checks.All(job, Day), c => c.Id == id && c.Subject.Id == subject);

    static readonly System.Collections.Concurrent.ConcurrentDictionary<(string, string), Job> Seen = new();

    public static Job Read(string folder, string name) => Seen.GetOrAdd((folder, name), key => Opened(key.Item1, key.Item2));

    static Job Opened(string folder, string name)
    {
        var reading = JobFile.Read(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, folder, $"{name}.wain.json")));
        return reading.Job ?? throw new InvalidDataException(string.Join('\n', reading.Issues));
    }
}
