using Wainwright.Methods.Labour;

namespace Wainwright.Published.Labour;

public sealed class LearningCurveTests
{
    // Source:    R package learningCurve 1.1.2, its vignette and tests: unit 125 after a first unit of 100 h.
    // Seen:      in the package's files.
    // Tolerance: printed to five places: the last.
    [Theory]
    [InlineData(0.80, 21.13225)]
    [InlineData(0.825, 26.18401)]
    [InlineData(0.85, 32.23647)]
    [InlineData(0.875, 39.44942)]
    [InlineData(0.90, 48.00243)]
    public void Crawfords_125th_unit_takes_the_hours_of_the_vignette(double rate, double hours) =>
        Assert.Equal(hours, LearningCurve.CrawfordUnit(new(100, rate), 125), tolerance: 1e-5);

    // Source:    the same: units 1 to 125 at 85 %, first 100 h: 5201.085 h exactly summed (its closed approximation gives 5202.988).
    // Tolerance: printed to three places: half of the last.
    [Fact]
    public void Crawfords_total_is_the_exact_sum_of_the_vignette() =>
        Assert.Equal(5_201.085, LearningCurve.CrawfordTotal(new(100, 0.85), 125), tolerance: 5e-4);

    // Source:    the same: Wright, first 110 h, 88.5 %: unit 2200 takes 23.34001 h; first 75 h, 85 %: units 201 to 250 take 806.77 h.
    // Tolerance: the last printed place.
    [Fact]
    public void Wrights_unit_and_block_take_the_hours_of_the_vignette()
    {
        Assert.Equal(23.34001, LearningCurve.WrightUnit(new(110, 0.885), 2_200), tolerance: 1e-5);
        var curve = new LearningCurve.Input(75, 0.85);
        Assert.Equal(806.77, LearningCurve.WrightTotal(curve, 250) - LearningCurve.WrightTotal(curve, 200), tolerance: 0.01);
    }

    // Source:    An aerospace text on a 75 % curve: 120 h at unit 100 mean 812 h for the first unit.
    // Seen:      gristprojectmanagement.us.
    // Tolerance: the text works with a rounded factor: 1 h.
    [Fact]
    public void The_first_unit_is_found_back_from_the_hundredth() =>
        Assert.Equal(812, 120 / LearningCurve.CrawfordUnit(new(1, 0.75), 100), tolerance: 1);

    // Source:    Wright's form at 80 %: the second unit takes 60 % of the first, the average of four 64 %.
    // Seen:      maxwideman.com, appendix 2.
    // Tolerance: exact.
    [Fact]
    public void Wrights_eighty_percent_curve_has_the_appendix_values()
    {
        var curve = new LearningCurve.Input(1, 0.80);
        Assert.Equal(0.60, LearningCurve.WrightUnit(curve, 2), tolerance: 1e-9);
        Assert.Equal(0.64, LearningCurve.WrightTotal(curve, 4) / 4, tolerance: 1e-9);
    }
}
