using Wainwright.Methods.Moisture.Vapour;

namespace Wainwright.Published.Moisture;

public sealed class LayeredWallTests
{
    // Source:    An open program for condensation after ISO 13788:2002, its tests: brick, light mortar, 30 mm EPS, hollow brick, gypsum; 5 °C 96 % outside, 20 °C 55 % inside.
    // Seen:      in its test files.
    // Tolerance: temperatures are printed to 1e-8 from resistances printed to 1e-8; pressures follow: 1e-5.
    static readonly LayeredWall.Input Wall = new(
        [new("gypsum", 0.01754386, 0.06), new("hollow brick", 0.06741573, 0.30), new("EPS", 0.80, 0.60), new("light mortar", 0.02439024, 0.10), new("brick", 0.16491754, 1.10)],
        20, 0.55, 5, 0.96);

    static LayeredWall.Plane After(string layer) => LayeredWall.Of(Wall).Planes.Last(p => p.After == layer);

    [Theory]
    [InlineData("", 18.43281272, 2119.6372278)]
    [InlineData("gypsum", 18.22131646, 2091.7093046)]
    [InlineData("hollow brick", 17.40860050, 1987.3647453)]
    [InlineData("EPS", 7.76437110, 1055.1221101)]
    [InlineData("light mortar", 7.47033972, 1034.1390998)]
    [InlineData("brick", 5.48221147, 901.6494126)]
    public void Planes_have_the_programs_temperature_and_saturation(string layer, double c, double saturationPa)
    {
        Assert.Equal(c, After(layer).TemperatureC, tolerance: 2e-7);
        Assert.Equal(saturationPa, After(layer).SaturationPa, tolerance: 2e-5);
    }

    // Source:    The same tests: water falls out, 31.397530032 g/m² in a month of 30 days, on both sides of the light mortar.
    // Seen:      in its test files.
    // Tolerance: resistances printed to 1e-8: 1e-4 g.
    [Fact]
    public void As_much_falls_out_as_in_the_program()
    {
        Assert.Equal(31.397530032, 30 * LayeredWall.Of(Wall).Planes.Sum(p => p.CondensesGramPerM2Day), tolerance: 1e-4);
        Assert.True(After("EPS").CondensesGramPerM2Day > 0 && After("light mortar").CondensesGramPerM2Day > 0);
    }

    // Source:    The same tests: at 10.7 °C 79 % outside nothing falls out.
    // Seen:      in its test files.
    // Tolerance: none.
    [Fact]
    public void In_mild_weather_nothing_falls_out() =>
        Assert.All(LayeredWall.Of(Wall with { OutsideC = 10.7, OutsideHumidityFraction = 0.79 }).Planes, p => Assert.Equal(0, p.CondensesGramPerM2Day));

    // Source:    The same tests, vapour pressures of the straight line, which hold where nothing falls out: 836.99 outside, 1 285.32 inside.
    // Seen:      in its test files.
    // Tolerance: printed to 0.01.
    [Fact]
    public void Both_ends_have_the_airs_vapour_pressure()
    {
        Assert.Equal(1285.32, After("").VapourPa, tolerance: 0.005);
        Assert.Equal(836.99, After("brick").VapourPa, tolerance: 0.005);
    }
}
