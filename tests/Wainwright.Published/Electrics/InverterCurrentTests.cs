using Wainwright.Methods.Electrics;

namespace Wainwright.Published.Electrics;

public sealed class InverterCurrentTests
{
    // Source:    Inverter current tables: 500 W at 12 V and 0.92: 45.3 A; 1 000 W and 0.85: 98 A; 1 000 W and 0.90: 92.6 A.
    // Seen:      on two pages. One of them prints 83.6 A for 800 W and 0.88; that is wrong (75.8) and not used.
    // Tolerance: half of the last printed place.
    [Theory]
    [InlineData(500, 0.92, 45.3, 0.05)]
    [InlineData(1_000, 0.85, 98, 0.5)]
    [InlineData(1_000, 0.90, 92.6, 0.05)]
    public void An_inverter_draws_what_the_tables_print(double watt, double efficiency, double amp, double within) =>
        Assert.Equal(amp, InverterCurrent.OfAmp(watt, 12, efficiency), tolerance: within);
}
