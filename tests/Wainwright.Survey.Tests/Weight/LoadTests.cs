using Wainwright.Fitout;
using Wainwright.Survey.Weight;

namespace Wainwright.Survey.Tests.Weight;

public sealed class LoadTests
{
    static Job Van(params Part[] parts)
    {
        var van = A.Van(parts);
        return van with
        {
            Vehicle = van.Vehicle with
            {
                PlatedMassKg = 3_000,
                TrackMm = 1_700,
                Axles =
                [
                    new() { Name = "front", XMm = -1_000, RatingKg = 1_600, BareKg = new(1_200, 5) },
                    new() { Name = "rear", XMm = 2_500, RatingKg = 1_700, BareKg = new(800, 5) },
                ],
                Seats = [new() { Name = "driver", XMm = -300, YMm = 500, UsedOnRoad = true }, new() { Name = "passenger", XMm = -300, YMm = 1_300, UsedOnRoad = true }],
            },
        };
    }

    static Part Heavy(double kg, double x, double y = 850) => (A.Part("box") with { MassKg = new(kg, 1) }).At(x - 50, y, 0);

    static Weighing Weighed(double front, double rear, int people = 0) => new()
    {
        Id = "W", PeopleAboard = people, State = "as found", UnlistedKg = 0,
        Axles = [new() { Axle = "front", LoadKg = new(front, 5) }, new() { Axle = "rear", LoadKg = new(rear, 5) }],
    };

    [Fact]
    public void A_load_over_the_rear_axle_weighs_on_it_alone()
    {
        var rear = Van(Heavy(300, 2_500)).Check("axle-load", "rear");
        Assert.Equal(800 + 300 + 75 * 0.2, rear.Demand!.Value.Likely, tolerance: 1e-6);
        Assert.Equal(Verdict.Holds, rear.Verdict);
    }

    [Fact]
    public void A_load_behind_the_rear_axle_relieves_the_front()
    {
        var front = Van(Heavy(350, 3_500 - 1_000 + 700)).Check("axle-load", "front");
        Assert.Equal(1_200 - 350 * 0.2 + 75 * 0.8, front.Demand!.Value.Likely, tolerance: 1e-6);
    }

    [Fact]
    public void An_overloaded_axle_falls_short_though_the_whole_holds()
    {
        var van = Van(Heavy(900, 2_600));
        Assert.Equal(Verdict.FallsShort, van.Check("axle-load", "rear").Verdict);
        Assert.Equal(Verdict.Holds, van.Check("plated-mass").Verdict);
    }

    [Fact]
    public void A_weighing_speaks_before_the_mass_sheet()
    {
        var van = Van(Heavy(900, 2_600)) with { Weighings = [Weighed(1_250, 900)] };
        Assert.Equal(Verdict.Holds, van.Check("axle-load", "rear").Verdict);
        Assert.Equal(900 + 75 * 0.2, van.Check("axle-load", "rear").Demand!.Value.Likely, tolerance: 1e-6);
    }

    [Fact]
    public void A_driver_aboard_at_the_weighing_is_not_counted_twice() =>
        Assert.Equal(900, (Van() with { Weighings = [Weighed(1_250, 900, people: 1)] }).Check("axle-load", "rear").Demand!.Value.Likely, tolerance: 1e-6);

    [Fact]
    public void Fully_loaded_counts_the_passenger_and_fills_the_water()
    {
        var tank = (A.Part("tank", new Tank { Holds = Medium.Water, VolumeL = 100, FilledL = 20 }) with { MassKg = new(8, 1) }).At(2_450, 850, 0);
        var van = Van(tank) with { Weighings = [Weighed(1_250, 900, people: 1)] };
        Assert.Equal(2_150 + 75 + 80, van.Check("plated-mass-loaded").Demand!.Value.Likely, tolerance: 1e-6);
        Assert.Equal(2_150, van.Check("plated-mass").Demand!.Value.Likely, tolerance: 1e-6);
    }

    [Fact]
    public void A_tank_that_nobody_read_may_be_empty_or_full()
    {
        var tank = A.Part("tank", new Tank { Holds = Medium.Water, VolumeL = 100 }).At(2_450, 850, 0);
        var loaded = (Van(tank) with { Weighings = [Weighed(1_250, 900, people: 2)] }).Check("plated-mass-loaded").Demand!.Value;
        Assert.InRange(loaded.High - loaded.Low, 100, 130);
    }

    [Fact]
    public void A_part_without_mass_cannot_tell_and_is_named()
    {
        var whole = Van(A.Part("wardrobe").At(0, 0, 0)).Check("plated-mass");
        Assert.Equal(Verdict.CannotTell, whole.Verdict);
        Assert.Contains("mass of wardrobe (wardrobe)", whole.Missing);
    }

    [Fact]
    public void The_whole_may_fall_short_before_everything_is_counted() =>
        Assert.Equal(Verdict.FallsShort, Van(Heavy(1_200, 1_000), A.Part("wardrobe").At(0, 0, 0)).Check("plated-mass").Verdict);

    [Fact]
    public void A_plate_that_nobody_read_cannot_tell()
    {
        var van = Van();
        Assert.Equal(Verdict.CannotTell, (van with { Vehicle = van.Vehicle with { PlatedMassKg = null } }).Check("plated-mass").Verdict);
    }

    [Fact]
    public void One_axle_alone_cannot_be_balanced()
    {
        var van = Van();
        Assert.Equal(Verdict.CannotTell, (van with { Vehicle = van.Vehicle with { Axles = [van.Vehicle.Axles[0]] } }).Check("axle-load", "front").Verdict);
    }

    [Theory]
    [InlineData(1_400, 1_380, Verdict.Holds)]
    [InlineData(1_400, 1_200, Verdict.FallsShort)]
    [InlineData(1_400, 1_320, Verdict.CannotTell)]
    public void Weighed_sides_are_compared(double left, double right, Verdict verdict) =>
        Assert.Equal(verdict, (Van() with { Weighings = [Weighed(1_400, 1_380) with { LeftKg = new(left, 7), RightKg = new(right, 7) }] }).Check("sides-level").Verdict);

    [Fact]
    public void Computed_sides_lean_to_the_load()
    {
        var sides = Van(Heavy(300, 1_000, y: 0)).Check("sides-level");
        Assert.Equal(Verdict.FallsShort, sides.Verdict);
        Assert.Equal(2 * 300 * 850 / 1_700.0, sides.Demand!.Value.Likely, tolerance: 1e-6);
    }

    [Fact]
    public void Computed_sides_never_hold_for_the_base_vehicle_may_lean() =>
        Assert.Equal(["weigh left and right wheels"], Van(Heavy(100, 1_000, y: 850)).Check("sides-level").Missing);

    [Theory]
    [InlineData(1_205, 855, Verdict.Holds)]
    [InlineData(1_250, 1_000, Verdict.FallsShort)]
    public void What_is_on_paper_is_compared_with_the_scale(int front, int rear, Verdict verdict)
    {
        var check = (Van(Heavy(60, 1_000)) with { Weighings = [Weighed(front, rear)] }).Check("mass-sheet-agrees");
        Assert.Equal(verdict, check.Verdict);
        Assert.Contains($"weighed {front + rear} kg", check.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void Unlisted_goods_that_nobody_asked_about_cannot_tell() =>
        Assert.Equal(Verdict.CannotTell, (Van(Heavy(60, 1_000)) with { Weighings = [Weighed(1_205, 855) with { UnlistedKg = null }] }).Check("mass-sheet-agrees").Verdict);

    [Fact]
    public void The_sheet_lists_parts_contents_and_what_tanks_hold()
    {
        var tank = (A.Part("tank", new Tank { Holds = Medium.Water, VolumeL = 100, FilledL = 40 }) with
        {
            MassKg = 8, Contents = [new() { What = "hose", MassKg = 2 }],
        }).At(0, 0, 0);
        var sheet = MassSheet.Of(A.Van(tank));
        Assert.Equal(["tank", "hose in tank", "water in tank"], sheet.Rows.Select(r => r.What));
        Assert.Equal(50, sheet.TotalKg.Likely, tolerance: 1e-9);
        Assert.Empty(sheet.Missing);
    }
}
