using Wainwright.Methods.Weight;

namespace Wainwright.Published.Weight;

public sealed class PanelMassTests
{
    // Source:    A panel supplier's table, 12 mm sheets: poplar 542 kg/m³ 6.5 kg/m², birch 708 8.5, MDF 750 9.0.
    // Seen:      in that table (address withheld).
    // Tolerance: printed to 0.1: half of it.
    [Theory]
    [InlineData(542, 6.5)]
    [InlineData(708, 8.5)]
    [InlineData(750, 9.0)]
    public void Twelve_millimetre_sheet_weighs_per_square_metre_what_the_supplier_prints(double density, double kgPerM2) =>
        Assert.Equal(kgPerM2, PanelMass.Of(new(2_400, 1_200, 12, density)).KgPerM2, tolerance: 0.05);

    // Source:    A plywood page: 2400 × 1200 × 12 mm at 400 and 700 kg/m³ weighs 14 and 24 kg.
    // Seen:      on that page (address withheld).
    // Tolerance: printed to the kilogram: half of it.
    [Theory]
    [InlineData(400, 14)]
    [InlineData(700, 24)]
    public void A_whole_sheet_weighs_what_the_plywood_page_prints(double density, double kg) =>
        Assert.Equal(kg, PanelMass.Of(new(2_400, 1_200, 12, density)).MassKg, tolerance: 0.5);
}
