using Wainwright.Methods.Combustion;

namespace Wainwright.Published.Combustion;

public sealed class StackFlowTests
{
    // Source:    engineeringtoolbox.com d_702: 10 000 m³/h of air warmed by 20 K carries 67 kW.
    // Seen:      on that page.
    // Tolerance: printed to the kilowatt; air taken at 20 °C: 0.2 kW.
    [Fact]
    public void Air_carries_the_heat_of_the_table() => Assert.Equal(67, StackFlow.HeatCarriedW(10_000, 20) / 1000, tolerance: 0.2);

    // Source:    Building Trades Pocketbook, draught of flues in cfm per square foot, half deducted for friction:
    //            10 ft 10 °F 108; 10 ft 15 °F 133; 40 ft 50 °F 484; 100 ft 100 °F 1080.
    // Seen:      chestofbooks.com copy. Its "half deducted" is a discharge coefficient of 0.5; its air is at 495 °R (275 K).
    // Tolerance: printed to the unit, and the 495 °R is read out of the table: 0.5 %.
    [Theory]
    [InlineData(10, 10, 108)]
    [InlineData(10, 15, 133)]
    [InlineData(40, 50, 484)]
    [InlineData(100, 100, 1080)]
    public void A_flue_draws_what_the_pocketbook_tables(double feet, double fahrenheit, double cfmPerFt2)
    {
        const double warmC = 275 - 273.15;
        var flow = StackFlow.Of(new(FreeAreaMm2: 304.8 * 304.8, HeightMm: feet * 304.8, InsideC: warmC, OutsideC: warmC - fahrenheit / 1.8, Discharge: 0.5));
        Assert.Equal(cfmPerFt2, flow.FlowM3PerH / (0.3048 * 0.3048 * 0.3048 * 60), tolerance: 0.005 * cfmPerFt2);
    }
}
