using Wainwright.Methods.Moisture;

namespace Wainwright.Published.Moisture;

public sealed class DewPointTests
{
    // Source:    A psychrometric library's header example: 25 °C, 80 %: dew point 21.3094 °C.
    // Seen:      in that library, which uses the ASHRAE equations.
    // Tolerance: ISO and ASHRAE part by 0.004 K here: 0.01 K.
    [Fact]
    public void Dew_point_is_that_of_the_library() => Assert.Equal(21.3094, DewPoint.Of(new(25, 0.80)).DewPointC, tolerance: 0.01);

    // Source:    ASHRAE Handbook – Fundamentals (2017), chapter 1, table 3: 872.6 Pa at 5 °C, 3169.7 Pa at 25 °C.
    // Seen:      quoted in a psychrometric library's test file; the handbook was not opened.
    // Tolerance: 0.12 % of pressure at 25 °C and 0.08 % at 5 °C partly cancel: 0.02 K.
    [Fact]
    public void Air_with_the_vapour_of_five_degrees_dews_at_five_degrees() =>
        Assert.Equal(5, DewPoint.Of(new(25, 872.6 / 3_169.7)).DewPointC, tolerance: 0.02);

    // Source:    northernarchitecture.us, equation 10.2: air at 20 °C 60 % against 0 °C 70 % takes 7.0 g of water out with each cubic metre.
    // Seen:      on that page.
    // Tolerance: printed to 0.1: half of it.
    [Fact]
    public void A_cubic_metre_of_air_carries_out_the_grams_of_the_book() =>
        Assert.Equal(7.0, VapourInAir.GramPerM3(20, 0.60) - VapourInAir.GramPerM3(0, 0.70), tolerance: 0.05);
}
