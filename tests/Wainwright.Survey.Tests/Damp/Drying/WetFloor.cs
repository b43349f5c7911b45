using Wainwright.Fitout;
using Wainwright.Survey.Damp;

namespace Wainwright.Survey.Tests.Damp.Drying;

/// <summary>A bare van with a floor of 12 mm birch ply on its metal, read wet or dry at points, and whatever lies on it.</summary>
static class WetFloor
{
    const double LengthMm = 1200, WidthMm = 800;

    public static readonly DateTimeOffset Day = new(2026, 3, 2, 9, 0, 0, TimeSpan.FromHours(1));

    public static Part Ply(string id = "S1", double z = 0) => new Part
    {
        Id = new(id), Name = "subfloor", System = PartSystem.Floor, Known = Known.Seen, Made = [new() { Material = "birch ply", ThicknessMm = 12 }],
    }.At(400, 400, z, LengthMm, WidthMm, 12);

    public static Part Vinyl(double z = 12) => new Part
    {
        Id = new("V1"), Name = "vinyl 2 mm", System = PartSystem.Floor, Known = Known.Seen, Made = [new() { Material = "vinyl", ThicknessMm = 2, HeldBy = "full-face glue" }],
    }.At(400, 400, z, LengthMm, WidthMm, 2);

    public static Part Cupboard() => new Part { Id = new("C1"), Name = "cupboard bottom", System = PartSystem.Furniture, Known = Known.Seen, Made = [new() { Material = "poplar ply", ThicknessMm = 12 }] }
        .At(400, 400, 80, LengthMm, WidthMm, 12);

    /// <summary>The van with every one of twelve points reading the same.</summary>
    public static Job Read(double percent, params IReadOnlyList<Part> parts)
    {
        List<ReadingPoint> points = [];
        foreach (var x in new[] { 500.0, 850, 1150, 1500 })
            foreach (var y in new[] { 500.0, 800, 1100 }) points.Add(new() { Id = new($"P{points.Count + 1:00}"), At = new(x, y, 12), Where = "floor", Part = parts[0].Id, Material = "birch ply" });
        return A.Van(parts) with
        {
            Points = points,
            Readings = [.. points.Select(p => new Reading
            {
                Id = new($"{p.Id}-d0"), Quantity = Quantity.Moisture, Value = percent, Unit = "%", Point = p.Id, TakenAt = Day, TakenBy = "fitter 1", Instrument = "pin meter, corrected", AirC = 19, AirRhPercent = 55,
            })],
        };
    }

    public static DampMap Map(double percent, params IReadOnlyList<Part> parts) => DampMapping.Of(Read(percent, parts), cellMm: 200)!;
}
