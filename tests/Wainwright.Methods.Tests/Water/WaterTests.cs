using Wainwright.Methods.Water;

namespace Wainwright.Methods.Tests.Water;

public sealed class WaterTests
{
    [Fact]
    public void A_millimetre_hole_under_a_metre_of_water_lets_go()
    {
        // regression
        var hole = OrificeFlow.Of(new(1, OrificeFlow.WaterHeadPa(1_000)));
        Assert.Equal(2.122, hole.MlPerS, tolerance: 0.0005);
        Assert.Equal(183.3, hole.LitresPerDay, tolerance: 0.05);
    }

    [Fact]
    public void Twice_the_hole_is_four_times_the_flow_and_four_times_the_pressure_twice()
    {
        var once = OrificeFlow.Of(new(1, 1_000)).MlPerS;
        Assert.Equal(4 * once, OrificeFlow.Of(new(2, 1_000)).MlPerS, tolerance: 1e-9);
        Assert.Equal(2 * once, OrificeFlow.Of(new(1, 4_000)).MlPerS, tolerance: 1e-9);
    }

    [Fact]
    public void A_hairline_leaves_the_range() => Assert.NotEmpty(OrificeFlow.Of(new(0.1, 1_000)).OutsideRange);

    [Theory]
    [InlineData(10, DripVolume.FineDropMl, 64.8)]
    [InlineData(20, DripVolume.FineDropMl, 129.6)]
    [InlineData(10, DripVolume.TapDropMl, 324)]
    public void A_drip_of_ninety_days_lets_go(double dropsPerMin, double dropMl, double litres) =>
        Assert.Equal(litres, DripVolume.Of(new(dropsPerMin, 90, dropMl)).Litres, tolerance: 1e-9);

    [Fact]
    public void A_stream_is_no_drip() => Assert.NotEmpty(DripVolume.Of(new(400, 1, 0.05)).OutsideRange);

    [Fact]
    public void A_small_hose_says_that_it_reads_low() => Assert.NotEmpty(PipeHeadLoss.Of(new(12, 5_000, 10, 150)).OutsideRange);

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => OrificeFlow.Of(new(0, 100)));
        Assert.Throws<ArgumentOutOfRangeException>(() => DripVolume.Of(new(1, -1, 0.05)));
        Assert.Throws<ArgumentOutOfRangeException>(() => PipeHeadLoss.Of(new(10, 10, 10, 0)));
    }
}
