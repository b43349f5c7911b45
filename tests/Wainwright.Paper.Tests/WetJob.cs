using Wainwright.Fitout;

namespace Wainwright.Paper.Tests;

/// <summary>A van with a wet floor board, a wall, a ceiling and three dry ones, read on three days.</summary>
internal static class WetJob
{
    private static readonly DateTimeOffset Day0 = new(2026, 3, 2, 9, 0, 0, TimeSpan.Zero);

    public static Job Job { get; } = new()
    {
        Format = Job.CurrentFormat,
        Id = "W-1",
        Title = "wet van",
        Vehicle = new() { Name = "panel van", LoadSpace = new() { LengthMm = 3_000, WidthMm = 1_800, HeightMm = 1_900 } },
        Parts =
        [
            Board("F", "subfloor", PartSystem.Floor, new(0, 0, 20), new(2_000, 1_800, 12), "birch ply"),
            Board("R", "wall lining right", PartSystem.Lining, new(0, 1_790, 100), new(2_000, 5, 1_500), "ply"),
            Board("L", "wall lining left", PartSystem.Lining, new(0, 5, 100), new(2_000, 5, 1_500), "ply"),
            Board("C", "ceiling panel", PartSystem.Lining, new(0, 100, 1_860), new(2_000, 1_600, 5), "ply"),
        ],
        Points =
        [
            Point("P1", "F", new(300, 300, 32), "aisle", null), Point("P2", "F", new(1_500, 1_500, 32), "under the shower", "P1"),
            Point("P3", "R", new(1_500, 1_790, 200), "foot of the wall", "P4"), Point("P4", "L", new(500, 10, 900), "left wall", null), Point("P5", "C", new(500, 900, 1_860), "ceiling", null),
        ],
        Readings = [.. Read("P1", 12, 12.1, 12), .. Read("P2", 34, 26, 19), .. Read("P3", 22, 17, 14.5), .. Read("P4", 11.5, 11.4, 11.6), .. Read("P5", 11, 11.2, 11.1)],
    };

    private static Part Board(string id, string name, PartSystem system, Place at, Place size, string wood) => new()
    {
        Id = new(id), Name = name, System = system, Known = Known.Seen, Made = [new() { Material = wood }], Solids = [new BoxSolid { At = at, Size = size }],
    };

    private static ReadingPoint Point(string id, string part, Place at, string where, string? reference) => new()
    {
        Id = new(id), At = at, Where = where, Part = new PartId(part), DryReference = reference is null ? null : new PointId(reference),
    };

    private static IEnumerable<Reading> Read(string point, params IReadOnlyList<double> percent) => percent.Select((v, i) => new Reading
    {
        Id = new($"{point}-{i}"), Quantity = Quantity.Moisture, Value = v, Unit = "%", Point = new PointId(point), TakenAt = Day0.AddDays(7 * i), AirC = 20, AirRhPercent = 50,
    });
}
