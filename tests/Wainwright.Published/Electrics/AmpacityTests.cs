using Wainwright.Methods.Electrics;

namespace Wainwright.Published.Electrics;

public sealed class AmpacityTests
{
    // Source:    A cable maker's table for UL 1426 boat cable, 105 °C: 12 AWG in an engine space 38.3 A; five loaded together 27 A outside, 23.0 A inside;
    //            14 AWG, three loaded together, outside 24.5 A.
    // Seen:      in that table (address withheld): another origin than the regulation's table the method reads.
    // Tolerance: printed to 0.1, half of it and the binary rounding of 38.25: 0.06.
    [Theory]
    [InlineData(12, true, 1, 38.3)]
    [InlineData(12, false, 5, 27.0)]
    [InlineData(12, true, 5, 23.0)]
    [InlineData(14, false, 3, 24.5)]
    public void Boat_cable_carries_what_its_maker_tables(int gauge, bool engineSpace, int together, double amp) =>
        Assert.Equal(amp, Ampacity.Of(new(gauge, 105, engineSpace, together)).Amp, tolerance: 0.06);
}
