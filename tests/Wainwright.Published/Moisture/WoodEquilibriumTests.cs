using Wainwright.Methods.Moisture;

namespace Wainwright.Published.Moisture;

public sealed class WoodEquilibriumTests
{
    // Source:    USDA Wood Handbook, FPL-GTR-190, table 4-2 (rows by °F; the stored copy's Celsius labels have slid by one row).
    // Seen:      in a stored copy of that page.
    // Tolerance: printed to 0.1; the Celsius coefficients stay within 0.06 of every cell up to 150 °F: the last place.
    [Theory]
    [InlineData(30, 30, 6.3)]
    [InlineData(30, 90, 21.0)]
    [InlineData(40, 60, 11.3)]
    [InlineData(50, 75, 14.8)]
    [InlineData(60, 40, 7.8)]
    [InlineData(70, 20, 4.5)]
    [InlineData(70, 50, 9.2)]
    [InlineData(70, 65, 12.0)]
    [InlineData(70, 95, 23.9)]
    [InlineData(90, 55, 9.7)]
    [InlineData(110, 95, 22.4)]
    [InlineData(140, 60, 9.1)]
    [InlineData(150, 95, 20.4)]
    public void Wood_settles_where_the_handbook_tables(double fahrenheit, double humidityPercent, double moisture) =>
        Assert.Equal(moisture, WoodEquilibrium.Of(new((fahrenheit - 32) / 1.8, humidityPercent / 100)).MoisturePercent, tolerance: 0.1);

    // Source:    A wood scientist's worked case: 65 °F, 60 %: 11.1 %.
    // Seen:      gowood.blogspot.com, September 2013.
    // Tolerance: printed to 0.1 from the Fahrenheit coefficients, from which the Celsius ones part by up to 0.013: 0.063.
    [Fact]
    public void Wood_settles_where_the_worked_case_says() =>
        Assert.Equal(11.1, WoodEquilibrium.Of(new((65 - 32) / 1.8, 0.60)).MoisturePercent, tolerance: 0.063);
}
