using Wainwright.Methods.Combustion;

namespace Wainwright.Published.Combustion;

public sealed class GasTightnessTests
{
    // Source:    A leak-rate article: 5 l that lose 2 mbar in 30 s leak 0.333 mbar·l/s.
    // Seen:      calculator.city 58346.
    // Tolerance: printed to three places: 0.0005.
    [Fact]
    public void A_falling_pressure_is_the_leak_rate_of_the_article()
    {
        var leak = GasTightness.Of(new(VolumeCm3: 5_000, StartMbar: 150, EndMbar: 148, Minutes: 0.5, StartC: 20, EndC: 20));
        Assert.Equal(0.333, leak.LeakMbarLPerS, tolerance: 0.0005);
    }
}
