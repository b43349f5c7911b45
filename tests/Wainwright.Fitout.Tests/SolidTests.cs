namespace Wainwright.Fitout.Tests;

public class SolidTests
{
    [Fact]
    public void A_box_turned_a_quarter_swaps_length_and_width_about_its_middle()
    {
        var (low, high) = new BoxSolid { At = new(0, 0, 0), Size = new(400, 200, 100), YawDeg = 90 }.Bounds();
        Assert.Equal(100, low.XMm, 6);
        Assert.Equal(300, high.XMm, 6);
        Assert.Equal(-100, low.YMm, 6);
        Assert.Equal(300, high.YMm, 6);
    }

    [Fact]
    public void A_tilted_box_grows_in_height_by_the_sine_rule()
    {
        var (low, high) = new BoxSolid { At = new(0, 0, 0), Size = new(400, 200, 100), TiltDeg = 30 }.Bounds();
        Assert.Equal(200 * Math.Sin(Math.PI / 6) + 100 * Math.Cos(Math.PI / 6), high.ZMm - low.ZMm, 6);
    }

    [Fact]
    public void A_cylinder_has_the_volume_and_the_bounds_of_its_axis()
    {
        var tank = new CylinderSolid { At = new(100, 200, 300), Along = Axis.Y, DiameterMm = 100, LengthMm = 500 };
        Assert.Equal(Math.PI * 50 * 50 * 500, tank.VolumeMm3(), 3);
        Assert.Equal((new Place(50, 200, 250), new Place(150, 700, 350)), tank.Bounds());
    }

    [Fact]
    public void A_prism_has_the_area_of_its_outline_times_its_length()
    {
        var wedge = new PrismSolid { Along = Axis.X, LengthMm = 10, Outline = [new(0, 0, 0), new(0, 30, 0), new(0, 0, 40)] };
        Assert.Equal(0.5 * 30 * 40 * 10, wedge.VolumeMm3(), 6);
        Assert.Equal((new Place(0, 0, 0), new Place(10, 30, 40)), wedge.Bounds());
    }

    [Fact]
    public void A_mass_follows_from_density_and_volume_only_when_none_is_given()
    {
        var sheet = new Part { Id = new("S"), Name = "sheet", System = PartSystem.Floor, Known = Known.Measured, DensityKgPerM3 = 700, Solids = [new BoxSolid { At = default, Size = new(2400, 1200, 12) }] };
        Assert.Equal(24.192, sheet.EmptyKg!.Value.Value, 6);
        Assert.Equal(20, (sheet with { DensityKgPerM3 = null, MassKg = 20 }).EmptyKg!.Value.Value);
        Assert.Null((sheet with { DensityKgPerM3 = null }).EmptyKg);
    }
}
