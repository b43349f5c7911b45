using Wainwright.Methods.Moisture;

namespace Wainwright.Published.Moisture;

public sealed class SaturationPressureTests
{
    // Source:    ASHRAE Handbook – Fundamentals (2017), chapter 1, table 3: 103.24 Pa at −20 °C (ice), 872.6 at 5, 3169.7 at 25.
    // Seen:      quoted in a psychrometric library's test file; the handbook was not opened.
    // Tolerance: the ISO forms part from that table by 0.12 % over water, 0.5 % over ice.
    [Theory]
    [InlineData(-20, 103.24, 0.006)]
    [InlineData(5, 872.6, 0.0015)]
    [InlineData(25, 3_169.7, 0.0015)]
    public void Saturation_pressure_is_the_handbooks(double airC, double pa, double part) =>
        Assert.Equal(pa, SaturationPressure.Of(new(airC)).PressurePa, tolerance: part * pa);

    // Source:    An encyclopedia's table of the vapour pressure of water: 15, 20, 30, 40, 60 °C.
    // Seen:      in a copy of it.
    // Tolerance: the ISO form is at most 0.2 % from the steam tables here, and the table up to 0.1 % from them: 0.25 %.
    [Theory]
    [InlineData(15, 1_705.6)]
    [InlineData(20, 2_338.8)]
    [InlineData(30, 4_245.5)]
    [InlineData(40, 7_381.4)]
    [InlineData(60, 19_932)]
    public void Saturation_pressure_is_the_encyclopedias(double airC, double pa) =>
        Assert.Equal(pa, SaturationPressure.Of(new(airC)).PressurePa, tolerance: 0.0025 * pa);

    // Source:    An open implementation of ISO 13788:2002, its tests: 2336.951 Pa at 20 °C, 1285.323 Pa at 55 %.
    // Seen:      in its test file.
    // Tolerance: the same equation: the last place.
    [Fact]
    public void Saturation_and_vapour_pressure_are_those_of_another_program()
    {
        Assert.Equal(2_336.951, SaturationPressure.Of(new(20)).PressurePa, tolerance: 0.001);
        Assert.Equal(1_285.323, DewPoint.Of(new(20, 0.55)).VapourPa, tolerance: 0.001);
    }
}
