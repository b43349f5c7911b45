using Wainwright.Fitout;
using Wainwright.Survey.Damp;

namespace Wainwright.Survey.Tests.Damp;

public sealed class MeterChecksTests
{
    static readonly DateTimeOffset Day = new(2026, 4, 1, 9, 0, 0, TimeSpan.Zero);

    static Reading Moisture(string id, double percent, string? point, string? what, DateTimeOffset at, string meter = "pin meter") => new()
    {
        Id = new(id), Quantity = Quantity.Moisture, Value = percent, Unit = "%", Point = point is null ? null : new(point), What = what, TakenAt = at, Instrument = meter, AirC = 20, AirRhPercent = 50,
    };

    static DampMap Map(params Reading[] checks)
    {
        var floor = new Part { Id = new("S1"), Name = "subfloor", System = PartSystem.Floor, Known = Known.Seen, Made = [new() { Material = "birch ply", ThicknessMm = 12 }] }.At(0, 0, 0, 1000, 1000, 12);
        var job = A.Van(floor) with
        {
            Points = [new() { Id = new("P1"), At = new(500, 500, 6), Where = "middle", Part = new("S1") }],
            Readings = [Moisture("R1", 14, "P1", null, Day), .. checks],
        };
        return DampMapping.Of(job, cellMm: 200)!;
    }

    [Fact]
    public void A_meter_two_points_off_its_block_is_doubted_by_as_much_and_told()
    {
        var right = Map(Moisture("C1", 18.2, null, "check block 18 %", Day));
        var high = Map(Moisture("C1", 20, null, "check block, marked 18 %", Day.AddDays(-1)));
        Assert.Empty(right.Told);
        Assert.Equal(right.Readings[0].Made.SpreadPoints + 2, high.Readings[0].Made.SpreadPoints, 1e-9);
        Assert.StartsWith("pin meter read 2.0 points high on its check block on 2026-03-31", Assert.Single(high.Told), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("another meter", 0)]
    [InlineData("pin meter", 8)]
    public void A_check_of_another_meter_or_of_another_week_is_none(string meter, int daysLater)
    {
        var map = Map(Moisture("C1", 18, null, "check block 18 %", Day.AddDays(daysLater), meter));
        Assert.Contains("no check on its block is written within 7 days of 1 reading;", Assert.Single(map.Told), StringComparison.Ordinal);
    }

    [Fact]
    public void A_reading_without_point_and_block_is_still_left_out_by_name() =>
        Assert.Contains(Map(Moisture("C1", 18, null, "somewhere behind the tank", Day)).Told, t => t == "C1 left out: it names no numbered point");
}
