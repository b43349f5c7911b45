using Wainwright.Methods.Combustion;

namespace Wainwright.Published.Combustion;

public sealed class CarbonMonoxideTests
{
    // Source:    OSHA chemical data sheet CH_225600: 35 ppm is 40 mg/m³, 200 ppm is 229 mg/m³.
    // Seen:      on that sheet.
    // Tolerance: printed to the milligram: half of it.
    [Theory]
    [InlineData(35, 40)]
    [InlineData(200, 229)]
    public void Parts_per_million_become_the_milligrams_of_the_data_sheet(double ppm, double mg)
    {
        Assert.Equal(mg, CarbonMonoxide.ToMgPerM3(ppm), tolerance: 0.5);
        Assert.Equal(ppm, CarbonMonoxide.ToPpm(mg), tolerance: 0.5);
    }

    // Source:    WHO Air quality guidelines for Europe, second edition: 100 mg/m³ is 87 ppm, 60 is 52, 30 is 26.
    // Seen:      quoted in two texts.
    // Tolerance: printed to the ppm, half of it: the sum gives 87.3, 52.4, 26.2.
    [Theory]
    [InlineData(100, 87)]
    [InlineData(60, 52)]
    [InlineData(30, 26)]
    public void Milligrams_become_the_parts_per_million_of_the_guideline(double mg, double ppm) =>
        Assert.Equal(ppm, CarbonMonoxide.ToPpm(mg), tolerance: 0.5);
}
