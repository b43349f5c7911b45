using CsCheck;
using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Air;

namespace Wainwright.Methods.Tests.Moisture;

public sealed class EquilibriumLawTests
{
    // regression: our own runs of the equation
    [Theory]
    [InlineData(20, 0.65, 11.996)]
    [InlineData(20, 0.50, 9.271)]
    [InlineData(25, 0.80, 15.808)]
    [InlineData(5, 0.85, 18.470)]
    public void Equilibrium_keeps_its_numbers(double airC, double rh, double percent) => Assert.Equal(percent, WoodEquilibrium.Of(new(airC, rh)).MoisturePercent, tolerance: 0.002);

    [Theory]
    [InlineData(20, 16, 79.89)]
    [InlineData(20, 20, 89.06)]
    [InlineData(10, 16, 78.90)]
    public void The_inverse_keeps_its_numbers(double airC, double percent, double rhPercent) =>
        Assert.Equal(rhPercent, 100 * PanelEquilibrium.HumidityFraction(percent, airC), tolerance: 0.05);

    [Fact]
    public void Humidity_and_moisture_are_inverse() =>
        Gen.Select(Gen.Double[0, 60], Gen.Double[0.01, 0.99], Gen.Double[0.8, 1]).Sample((airC, rh, factor) =>
            Assert.Equal(rh, PanelEquilibrium.HumidityFraction(factor * WoodEquilibrium.Of(new(airC, rh)).MoisturePercent, airC, factor), tolerance: 1e-9));

    [Fact]
    public void Wetter_than_air_can_make_it_is_saturated() => Assert.Equal(1, PanelEquilibrium.HumidityFraction(35, 20));

    [Fact]
    public void A_panel_settles_between_four_fifths_and_all_of_wood()
    {
        var wood = WoodEquilibrium.Of(new(20, 0.8)).MoisturePercent;
        var panel = PanelEquilibrium.Of(new(20, 0.8));
        Assert.Equal((0.8 * wood, wood), (panel.LowPercent, panel.HighPercent));
    }

    [Fact]
    public void The_slope_keeps_its_number() => Assert.Equal(125.93, PanelEquilibrium.SlopeKgPerM3(500, 20, 0.6, 0.8), tolerance: 0.1);

    [Theory]
    [InlineData(0.40, 185.1)]
    [InlineData(0.50, 135.1)]
    [InlineData(0.60, 101.7)]
    public void The_most_water_keeps_its_numbers(double gravity, double percent) => Assert.Equal(percent, WaterInWood.MostPercent(gravity), tolerance: 0.05);

    [Fact]
    public void Water_of_a_floor_from_wet_to_dry() => Assert.Equal(0.960, WaterInWood.KgPerM2(500, 12, 28) - WaterInWood.KgPerM2(500, 12, 12), tolerance: 1e-9);

    // our own arithmetic; the coefficient is from memory
    [Theory]
    [InlineData(1, 0.240)]
    [InlineData(24, 1.176)]
    public void Uptake_follows_the_root_of_time(double hours, double kg) => Assert.Equal(kg, LiquidUptake.KgPerM2(0.004, hours), tolerance: 0.001);

    [Fact]
    public void A_full_sheet_drinks_no_more() => Assert.Equal(0.5, LiquidUptake.KgPerM2(0.004, 24, 0.5));

    [Theory]
    [InlineData(20, 0.5, 0.007262, 9.27, 8.644)]
    public void State_of_air_keeps_its_numbers(double airC, double rh, double ratio, double dewC, double gram)
    {
        var air = MoistAir.Of(new(airC, rh));
        Assert.Equal(ratio, air.HumidityRatio, tolerance: 1e-6);
        Assert.Equal(dewC, air.DewPointC, tolerance: 0.01);
        Assert.Equal(gram, air.GramPerM3, tolerance: 0.005);
    }

    [Fact]
    public void Warm_wet_air_keeps_its_numbers()
    {
        var air = MoistAir.Of(new(30, 0.8));
        Assert.Equal(26.17, air.DewPointC, tolerance: 0.01);
        Assert.Equal(24.28, air.GramPerM3, tolerance: 0.01);
    }

    [Fact]
    public void Two_forms_of_saturation_stay_within_a_fifth_of_a_percent() =>
        Gen.Double[0, 60].Sample(airC => Assert.InRange(SaturationPressure.Of(new(airC)).PressurePa / SteamTables.SaturationPa(airC), 0.998, 1.002));

    [Fact]
    public void Dew_point_of_steam_tables_inverts_them() =>
        Gen.Double[-60, 90].Sample(airC => Assert.Equal(airC, SteamTables.DewPointC(SteamTables.SaturationPa(airC)), tolerance: 1e-9));

    [Fact]
    public void Air_without_water_has_no_dew_point() => Assert.Equal(double.NegativeInfinity, MoistAir.Of(new(20, 0)).DewPointC);
}
