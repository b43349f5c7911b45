using Wainwright.Methods.Moisture;

namespace Wainwright.Methods.Tests.Moisture;

public sealed class MeterCheckTests
{
    [Theory]
    [InlineData(18, 18.5, 0.5, true)]
    [InlineData(18, 17.4, -0.6, false)]
    [InlineData(18, 20.1, 2.1, false)]
    public void Half_a_point_off_the_block_counts_as_right(double marked, double read, double off, bool alike)
    {
        var result = MeterCheck.Of(marked, read);
        Assert.Equal(off, result.OffPoints, 1e-9);
        Assert.Equal(alike, result.IsAlike);
    }

    [Fact]
    public void A_meter_that_is_off_is_doubted_not_corrected()
    {
        var right = MeterReading.Of(new(17, 20, IsPanel: true));
        var off = MeterReading.Of(new(17, 20, IsPanel: true, MeterOffPoints: -2.1));
        Assert.Equal(right.Percent, off.Percent);
        Assert.Equal(right.SpreadPoints + 2.1, off.SpreadPoints, 1e-9);
    }

    [Theory]
    [InlineData(0, 18)]
    [InlineData(18, double.NaN)]
    public void No_block_and_no_figure_is_refused(double marked, double read) => Assert.ThrowsAny<ArgumentException>(() => MeterCheck.Of(marked, read));
}
