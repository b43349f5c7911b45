using CsCheck;
using Wainwright.Methods.Weight;

namespace Wainwright.Methods.Tests.Weight;

public sealed class SideMomentsTests
{
    [Fact]
    public void Mirrored_loads_swap_the_sides() =>
        Gen.Select(Gen.Double[0, 300], Gen.Double[-900, 900]).Array[1, 8].Sample(loads =>
        {
            var here = SideMoments.Of(new(1_650, [.. loads.Select(l => new SideMoments.Load(l.Item1, l.Item2))]));
            var mirrored = SideMoments.Of(new(1_650, [.. loads.Select(l => new SideMoments.Load(l.Item1, -l.Item2))]));
            Assert.Equal(here.LeftKg, mirrored.RightKg, tolerance: 1e-6);
            Assert.Equal(here.LeftKg + here.RightKg, loads.Sum(l => l.Item1), tolerance: 1e-6);
        });

    [Fact]
    public void A_load_left_of_the_middle_weighs_on_the_left()
    {
        // regression: 120 kg, 0.50 m left, track 1.65 m
        var side = SideMoments.Of(new(1_650, [new(120, -500)]));
        Assert.Equal(96.36, side.LeftKg, tolerance: 0.01);
        Assert.Equal(23.64, side.RightKg, tolerance: 0.01);
        Assert.True(side.LeanFraction < 0);
    }

    [Fact]
    public void A_load_outside_the_wheels_leaves_the_range() => Assert.NotEmpty(SideMoments.Of(new(1_650, [new(10, 900)])).OutsideRange);

    [Fact]
    public void A_track_of_nothing_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => SideMoments.Of(new(0, [])));
}
