using CsCheck;
using Wainwright.Methods.Moisture.Vapour;

namespace Wainwright.Methods.Tests.Moisture;

public sealed class LayeredWallTests
{
    static readonly LayeredWall.Input Van = new([new("lining", 0.05, 0.5), new("insulation", 0.8, 1), new("metal", 0, double.PositiveInfinity)], 18, 0.6, 0, 0.9);

    [Fact]
    public void Behind_a_lining_it_condenses_on_the_metal()
    {
        var result = LayeredWall.Of(Van);
        var wet = Assert.Single(result.Planes, p => p.CondensesGramPerM2Day > 0);
        Assert.Equal("insulation", wet.After);
        Assert.Equal(result.EntersGramPerM2Day, wet.CondensesGramPerM2Day, tolerance: 1e-3);
    }

    [Fact]
    public void Nothing_is_above_saturation_inside_and_what_enters_leaves_or_falls_out() =>
        Gen.Select(Gen.Double[0.01, 1].Array[2, 6], Gen.Double[0.05, 20].Array[6], Gen.Double[0.3, 0.95]).Sample((thermal, air, rh) =>
        {
            var result = LayeredWall.Of(new([.. thermal.Select((r, i) => new LayeredWall.Layer($"{i}", r, air[i]))], 20, rh, -5, 0.9));
            Assert.All(result.Planes.Skip(1).SkipLast(1), p => Assert.True(p.VapourPa <= p.SaturationPa * (1 + 1e-12)));
            Assert.Equal(result.EntersGramPerM2Day, result.LeavesGramPerM2Day + result.Planes.Sum(p => p.CondensesGramPerM2Day), tolerance: 1e-6);
        }, iter: 300);

    [Fact]
    public void A_dry_wall_has_a_straight_line()
    {
        var result = LayeredWall.Of(new([new("a", 0.1, 1), new("b", 0.1, 3)], 20, 0.4, 15, 0.4));
        Assert.Equal(result.Planes[0].VapourPa - ((result.Planes[0].VapourPa - result.Planes[^1].VapourPa) / 4), result.Planes[1].VapourPa, tolerance: 1e-9);
        Assert.Equal(result.EntersGramPerM2Day, result.LeavesGramPerM2Day, tolerance: 1e-9);
    }

    [Fact]
    public void A_wall_of_nothing_is_refused() => Assert.Throws<ArgumentException>(() => LayeredWall.Of(new([], 20, 0.5, 0, 0.9)));
}
