using Wainwright.Methods.Moisture.Air;

namespace Wainwright.Published.Moisture;

public sealed class SteamTablesTests
{
    // Source:    ASHRAE Handbook – Fundamentals (2017), chapter 1, table 3.
    // Seen:      quoted in a psychrometric library's test file; the handbook was not opened.
    // Tolerance: that library's own: 3e-4.
    [Theory]
    [InlineData(-20, 103.24)]
    [InlineData(5, 872.6)]
    [InlineData(25, 3_169.7)]
    [InlineData(100, 101_418)]
    public void Saturation_is_the_handbooks(double airC, double pa) => Assert.Equal(pa, SteamTables.SaturationPa(airC), tolerance: 3e-4 * pa);

    // Source:    An encyclopedia's table of the vapour pressure of water.
    // Seen:      in a copy of it.
    // Tolerance: 2e-4, and more where that table is known to be older than the equations.
    [Theory]
    [InlineData(15, 1_705.6, 2e-4)]
    [InlineData(20, 2_338.8, 2e-4)]
    [InlineData(30, 4_245.5, 2e-4)]
    [InlineData(40, 7_381.4, 4e-4)]
    [InlineData(60, 19_932, 7e-4)]
    public void Saturation_is_the_encyclopedias(double airC, double pa, double part) => Assert.Equal(pa, SteamTables.SaturationPa(airC), tolerance: part * pa);

    // Source:    SBi direction 224, annex A: 31 and 32 °C; −18 and −19 °C over ice.
    // Seen:      in that annex. An older table, up to 0.3 % away over ice.
    // Tolerance: 1e-3 over water, 3e-3 over ice.
    [Theory]
    [InlineData(31, 4_492, 1e-3)]
    [InlineData(32, 4_755, 1e-3)]
    [InlineData(-18, 125.2, 3e-3)]
    [InlineData(-19, 113.9, 3e-3)]
    public void Saturation_is_the_directions(double airC, double pa, double part) => Assert.Equal(pa, SteamTables.SaturationPa(airC), tolerance: part * pa);

    // Source:    ASHRAE Handbook – Fundamentals (2017), chapter 1, table 2: saturated humidity ratio at 5 and 25 °C.
    // Seen:      quoted in a psychrometric library's test file.
    // Tolerance: the table has the enhancement factor of real air, which the ideal gas has not: 5e-3.
    [Theory]
    [InlineData(5, 0.005425)]
    [InlineData(25, 0.020173)]
    public void Saturated_air_holds_what_the_handbook_tables(double airC, double ratio) =>
        Assert.Equal(ratio, MoistAir.Of(new(airC, 1)).HumidityRatio, tolerance: 5e-3 * ratio);

    // Source:    ASHRAE Handbook – Fundamentals (2017), chapter 1: 30 °C, 0.02 kg/kg: 81 316 J/kg.
    // Seen:      quoted in a psychrometric library's test file.
    // Tolerance: that library's own: 3e-4.
    [Fact]
    public void Heat_of_moist_air_is_the_handbooks() => Assert.Equal(81.316, MoistAir.EnthalpyKjPerKg(30, 0.02), tolerance: 3e-4 * 81.316);

    // Source:    A university's saturated steam table: 2 453.5 kJ/kg at 20 °C.
    // Seen:      in that table.
    // Tolerance: printed to 0.1.
    [Fact]
    public void Heat_of_evaporation_is_the_steam_tables() => Assert.Equal(2_453.5, SteamTables.EvaporationKjPerKg(20), tolerance: 0.1);
}
