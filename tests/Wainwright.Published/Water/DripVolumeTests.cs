using Wainwright.Methods.Water;

namespace Wainwright.Published.Water;

public sealed class DripVolumeTests
{
    // Source:    A drip calculator's page: four taps at 25 drops a minute, 15 140 drops to the US gallon: 66.57 gallons a week.
    // Seen:      calculator.academy. It prints 9.541 gallons a day: a misprint, a seventh of its own 66.57 is 9.510.
    // Tolerance: printed to two places: the last place.
    [Fact]
    public void Four_dripping_taps_waste_the_gallons_of_the_page()
    {
        const double gallonL = 3.785411784;
        Assert.Equal(66.57, DripVolume.Of(new(4 * 25, 7, DropMl: gallonL * 1000 / 15_140)).Litres / gallonL, tolerance: 0.011);
    }

    // Source:    US Geological Survey drip calculator: 4 000 drops to the litre, 15 100 (rounded) to the US gallon.
    // Seen:      water.usgs.gov.
    // Tolerance: the page rounds 15 141 to the hundred: 60.
    [Fact]
    public void A_tap_drop_goes_as_often_into_a_gallon_as_the_survey_says() =>
        Assert.Equal(15_100, 3_785.411784 / DripVolume.TapDropMl, tolerance: 60);
}
