using Wainwright.Methods.Labour;

namespace Wainwright.Published.Labour;

public sealed class LiftingEquationTests
{
    // Source:    NIOSH 94-110 (rev. 9/2021), example 4, origin, p. 46: H 10 in, V 22 in, D 37 in, no twist, FM 0.88, fair grip: RWL 34.9 lb.
    // Seen:      in a page-referenced transcription of the manual.
    // Tolerance: the manual rounds every multiplier to two places (0.94, 0.87): a quarter of a percent, 0.1 lb.
    [Fact]
    public void The_manuals_fourth_example_comes_out() =>
        Assert.Equal(34.9, LiftingEquationUs.Of(new(10, 22, 37, 0, 0.88, LiftingEquation.Grip.Fair)).RecommendedLb, tolerance: 0.1);

    // Source:    NIOSH 94-110, p. 16: ten lifts a minute for eight of fifteen minutes count as 5.33 a minute.
    // Seen:      in the same transcription.
    // Tolerance: printed to two places: half of the last.
    [Fact]
    public void Work_with_breaks_counts_as_the_manual_says() => Assert.Equal(5.33, LiftingEquation.SpreadFrequency(10, 8), tolerance: 0.005);
}
