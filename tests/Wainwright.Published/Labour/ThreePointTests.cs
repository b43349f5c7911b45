using Wainwright.Methods.Labour;

namespace Wainwright.Published.Labour;

public sealed class ThreePointTests
{
    // Source:    A PERT chapter with seven activities (easy, likely, hard) and their expected times; path 1-3-5-7: 24, variance 5.
    // Seen:      flylib.com 3.287.1.117.
    // Tolerance: whole numbers by construction: exact.
    [Theory]
    [InlineData(5, 8, 17, 9)]
    [InlineData(7, 10, 13, 10)]
    [InlineData(3, 5, 7, 5)]
    [InlineData(1, 3, 5, 3)]
    [InlineData(4, 6, 8, 6)]
    [InlineData(3, 3, 3, 3)]
    [InlineData(3, 4, 5, 4)]
    public void Each_activity_has_the_chapters_expected_time(double easy, double likely, double hard, double expected) =>
        Assert.Equal(expected, ThreePoint.OfPert(new(easy, likely, hard)).Mean, tolerance: 1e-9);

    // Source:    the same chapter, path 1-3-5-7.
    // Tolerance: exact.
    [Fact]
    public void The_path_adds_to_the_chapters_mean_and_variance()
    {
        var path = new ThreePoint.Input[] { new(5, 8, 17), new(3, 5, 7), new(4, 6, 8), new(3, 4, 5) }.Select(ThreePoint.OfPert).ToList();
        Assert.Equal(24, path.Sum(a => a.Mean), tolerance: 1e-9);
        Assert.Equal(5, path.Sum(a => a.Deviation * a.Deviation), tolerance: 1e-9);
    }

    // Source:    A worked three-point page: 5, 8, 14: mean 8.5, deviation 1.5.
    // Seen:      schematex.js.org examples.
    // Tolerance: exact.
    [Fact]
    public void Five_eight_fourteen_has_the_pages_mean_and_spread()
    {
        var time = ThreePoint.OfPert(new(5, 8, 14));
        Assert.Equal(8.5, time.Mean, tolerance: 1e-9);
        Assert.Equal(1.5, time.Deviation, tolerance: 1e-9);
    }
}
