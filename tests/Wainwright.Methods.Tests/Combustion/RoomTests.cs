using CsCheck;
using Wainwright.Methods.Combustion;

namespace Wainwright.Methods.Tests.Combustion;

public sealed class RoomTests
{
    // regression: 10 m³, half an air change an hour, 20 l/h of gas
    [Theory]
    [InlineData(0.25, 470.0)]
    [InlineData(1, 1_573.9)]
    [InlineData(4, 3_458.7)]
    public void A_van_sized_room_fills(double hours, double ppm) => Assert.Equal(ppm, RoomBalance.Of(new(10, 0.5, 0.020e6)).After(hours), tolerance: 0.05);

    [Fact]
    public void Purging_takes_the_logarithm_of_the_ratio() =>
        Assert.Equal(Math.Log(400.0 / 30) / 6, RoomBalance.Of(new(9, 6, 0, StartConcentration: 400)).HoursUntil(30), tolerance: 1e-9);

    [Fact]
    public void It_begins_at_the_start_and_ends_steady() =>
        Gen.Select(Gen.Double[5, 15], Gen.Double[0.1, 10], Gen.Double[0, 1e5], Gen.Double[0, 500]).Sample((volume, changes, source, start) =>
        {
            var room = RoomBalance.Of(new(volume, changes, source, StartConcentration: start));
            Assert.Equal(start, room.After(0), tolerance: 1e-6);
            Assert.Equal(room.SteadyConcentration, room.After(1e4), tolerance: 1e-6 * (1 + room.SteadyConcentration));
        });

    [Fact]
    public void A_concentration_above_the_steady_state_never_comes() =>
        Assert.Equal(double.PositiveInfinity, RoomBalance.Of(new(10, 0.5, 100)).HoursUntil(1_000));

    [Fact]
    public void Sinks_lower_the_steady_state()
    {
        // regression: 320 m³, 0.5 1/h, sinks 0.12 1/h, 18 outside, 90 mg/h
        Assert.Equal(468.145, RoomBalance.Of(new(320, 0.5, 90_000, 18, 0, 0.12)).SteadyConcentration, tolerance: 0.001);
    }

    [Fact]
    public void A_room_without_air_change_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => RoomBalance.Of(new(10, 0, 100)));

    [Fact]
    public void A_cooling_pipe_fakes_the_leak_and_is_taken_out()
    {
        var drop = GasTightness.DriftMbarPerK(150, 20) * 2;
        var test = GasTightness.Of(new(900, 150, 150 - drop, 5, 20, 18));
        Assert.Equal(drop, test.DropMbar, tolerance: 1e-9);
        Assert.Equal(0, test.LeakDropMbar, tolerance: 1e-9);
    }

    [Fact]
    public void Two_and_a_half_kelvin_fake_the_whole_allowance() =>
        Assert.Equal(2.52, GasTightness.MostDropMbar / GasTightness.DriftMbarPerK(150, 20), tolerance: 0.01);

    [Fact]
    public void A_short_test_on_a_small_volume_leaves_the_clause() =>
        Assert.Equal(3, GasTightness.Of(new(500, 100, 99, 3, 20, 20)).OutsideRange.Count);

    [Fact]
    public void The_allowance_is_a_leak_of_about_one_and_a_third_cubic_centimetres_a_minute()
    {
        var test = GasTightness.Of(new(GasTightness.LeastVolumeCm3, 150, 140, 5, 20, 20));
        Assert.Equal(1.382, test.LeakStandardCm3PerMin, tolerance: 0.001);
        Assert.Empty(test.OutsideRange);
    }

    [Fact]
    public void Warm_air_rises_more_with_height_and_not_at_all_without_warmth()
    {
        static double Flow(double mm, double inside) => StackFlow.Of(new(17_678, mm, inside, 15)).FlowM3PerH;
        Assert.Equal(51.8, Flow(1_400, 35), tolerance: 0.1);
        Assert.Equal(2, Flow(2_000, 35) / Flow(500, 35), tolerance: 1e-9);
        Assert.Equal(0, Flow(1_400, 15));
    }
}
