using Wainwright.Fitout;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Survey.Tests.Damp;

public sealed class FloorAsSaidTests
{
    static Job Said(params IReadOnlyList<Part> parts) => A.Van(parts) with
    {
        Vehicle = new()
        {
            Name = "panel van",
            LoadSpace = new()
            {
                LengthMm = 3_000, WidthMm = 1_800, HeightMm = 1_900,
                WheelArches = [new() { Side = Direction.Left, FromXMm = 1_800, ToXMm = 2_400, WidthMm = 200, HeightMm = 300 }, new() { Side = Direction.Right, FromXMm = 1_800, ToXMm = 2_400, WidthMm = 200, HeightMm = 300 }],
            },
            Floor = [new() { Material = "pressed steel floor" }, new() { Material = "birch ply", ThicknessMm = 12 }, new() { Material = "vinyl", ThicknessMm = 2 }],
        },
    };

    [Fact]
    public void A_floor_that_is_only_said_is_mapped_round_the_arches_and_told()
    {
        var map = DampMapping.Of(Said(), cellMm: 300)!;
        var sheet = Assert.Single(map.Sheets).Sheet;
        Assert.Equal("floor as said: birch ply", sheet.Name);
        Assert.Equal((3 * 1.8) - (2 * 0.6 * 0.2), sheet.AreaM2, 1e-9);
        Assert.Contains(map.Told, t => t.StartsWith("no floor board is drawn", StringComparison.Ordinal));
        Assert.Contains("under floor as said: vinyl", Forecasting.Of(map, DryingCare.AsBuilt, 1, cancellation: TestContext.Current.CancellationToken).Sheets[0].Closed, StringComparison.Ordinal);
    }

    [Fact]
    public void A_floor_that_is_drawn_is_not_said_again()
    {
        var drawn = new Part { Id = new("S1"), Name = "subfloor", System = PartSystem.Floor, Known = Known.Seen, Made = [new() { Material = "birch ply", ThicknessMm = 12 }] }.At(0, 0, 0, 1000, 1000, 12);
        var map = DampMapping.Of(Said(drawn), cellMm: 300)!;
        Assert.Equal("S1", Assert.Single(map.Sheets).Sheet.Part.Text);
        Assert.Empty(map.Told);
    }

    [Fact]
    public void A_wooden_bulkhead_is_a_board_and_a_steel_one_is_not()
    {
        Part Bulkhead(string material) => new Part { Id = new("B1"), Name = "bulkhead", System = PartSystem.Vehicle, Known = Known.Seen, Made = [new() { Material = material, ThicknessMm = 12 }] }.At(0, 0, 0, 12, 1800, 1900);
        Assert.Contains(DampMapping.Of(Said(Bulkhead("birch ply")), cellMm: 300)!.Sheets, s => s.Sheet.Part.Text == "B1");
        Assert.DoesNotContain(DampMapping.Of(Said(Bulkhead("steel")), cellMm: 300)!.Sheets, s => s.Sheet.Part.Text == "B1");
    }
}
