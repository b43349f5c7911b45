using Wainwright.Methods.Water;

namespace Wainwright.Published.Water;

public sealed class PipeHeadLossTests
{
    // Source:    engineeringtoolbox.com d_797: 200 US gallons a minute, 3.048 in, C 140: 9 ft per 100 ft; 2.7 ft in 30 ft.
    // Seen:      on that page, which uses the US form of the formula.
    // Tolerance: the US form reads 1.4 % above the SI form used here, and the page prints one or two figures: 2 %.
    [Theory]
    [InlineData(100, 9.0)]
    [InlineData(30, 2.7)]
    public void A_pipe_loses_the_head_of_the_worked_line(double feet, double headFt) =>
        Assert.Equal(headFt, PipeHeadLoss.Of(new(3.048 * 25.4, feet * 304.8, 200 * 3.785411784, 140)).HeadMm / 304.8, tolerance: 0.02 * headFt);
}
