using Wainwright.Methods.Electrics;

namespace Wainwright.Published.Electrics;

public sealed class AdiabaticCableTests
{
    // Source:    BS 7671, k of copper: 115 in a 70 °C PVC cable (70 to 160 °C), 143 for a separate conductor (30 to 160 °C).
    // Seen:      in two explainers of the wiring regulations.
    // Tolerance: printed to the unit: half of it.
    [Theory]
    [InlineData(70, 115)]
    [InlineData(30, 143)]
    public void Copper_has_the_k_of_the_wiring_regulations(double startC, double k) => Assert.Equal(k, AdiabaticCable.K(startC, 160), tolerance: 0.5);
}
