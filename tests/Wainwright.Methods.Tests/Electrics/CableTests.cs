using CsCheck;
using Wainwright.Methods.Electrics;

namespace Wainwright.Methods.Tests.Electrics;

public sealed class CableTests
{
    [Theory]
    [InlineData(1.5, 13.3)]
    [InlineData(4, 4.95)]
    [InlineData(50, 0.386)]
    public void Fine_stranded_copper_is_read_from_the_table(double mm2, double ohmPerKm) =>
        Assert.Equal(ohmPerKm, ConductorResistance.Of(new(mm2, ConductorResistance.Make.FinePlain)).OhmPerKm, tolerance: 1e-9);

    [Theory]
    [InlineData(3)]
    [InlineData(95)]
    public void A_size_that_the_table_lacks_is_refused(double mm2) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ConductorResistance.Of(new(mm2, ConductorResistance.Make.Stranded)));

    [Fact]
    public void Fine_strands_resist_more_than_the_nominal_area_says() =>
        Assert.All(ConductorResistance.SizesMm2, mm2 =>
            Assert.InRange(ConductorResistance.Of(new(mm2, ConductorResistance.Make.FinePlain)).OhmPerKm * mm2 / 17.241, 1.10, 1.16));

    [Fact]
    public void Tinned_copper_resists_more_than_plain() =>
        Assert.All(ConductorResistance.SizesMm2, mm2 => Assert.True(
            ConductorResistance.Of(new(mm2, ConductorResistance.Make.FineTinned)).OhmPerKm > ConductorResistance.Of(new(mm2, ConductorResistance.Make.FinePlain)).OhmPerKm));

    // regression: class 5 at 20 °C
    [Theory]
    [InlineData(4, 4_000, 15, 0.594)]
    [InlineData(1.5, 7_000, 5, 0.931)]
    public void A_circuit_loses(double mm2, double oneWayMm, double amp, double volt)
    {
        var ohm = ConductorResistance.Of(new(mm2, ConductorResistance.Make.FinePlain)).OhmPerKm;
        Assert.Equal(volt, VoltageDrop.Of(new(oneWayMm, amp, ohm, 12)).DropVolt, tolerance: 0.0005);
    }

    [Fact]
    public void The_drop_is_proportional_to_length_and_to_current() =>
        Gen.Select(Gen.Double[0, 10_000], Gen.Double[0, 50], Gen.Double[0.1, 40]).Sample((mm, amp, ohm) =>
        {
            var once = VoltageDrop.Of(new(mm, amp, ohm, 12)).DropVolt;
            Assert.Equal(2 * once, VoltageDrop.Of(new(2 * mm, amp, ohm, 12)).DropVolt, tolerance: 1e-9);
            Assert.Equal(2 * once, VoltageDrop.Of(new(mm, 2 * amp, ohm, 12)).DropVolt, tolerance: 1e-9);
        });

    [Fact]
    public void A_drop_above_the_source_is_no_circuit() => Assert.NotEmpty(VoltageDrop.Of(new(1e6, 100, 13.3, 12)).OutsideRange);

    [Fact]
    public void A_gauge_that_nearly_fits_does_not_fit() => Assert.Equal(1, WireGauge.Of(new(2_000 / (0.85 * 10.5), 10, 12, 0.03)).Gauge);

    [Fact]
    public void Three_gauges_down_is_about_half_the_copper() =>
        Assert.Equal(2, WireGauge.AreaMm2(9) / WireGauge.AreaMm2(12), tolerance: 0.01);

    [Fact]
    public void Twelve_gauge_is_three_and_a_third_square_millimetres() => Assert.Equal(3.309, WireGauge.AreaMm2(12), tolerance: 0.001);

    [Fact]
    public void A_thicker_wire_carries_more_at_every_insulation() =>
        Assert.All((int[])[60, 75, 80, 90, 105, 125], c => Assert.All(WireGauge.Stocked.Zip(WireGauge.Stocked.Skip(1)), pair =>
            Assert.True(Ampacity.Of(new(pair.Second, c)).Amp > Ampacity.Of(new(pair.First, c)).Amp)));

    [Theory]
    [InlineData(1, 1)]
    [InlineData(2, 1)]
    [InlineData(3, 0.7)]
    [InlineData(6, 0.6)]
    [InlineData(24, 0.5)]
    [InlineData(25, 0.4)]
    public void A_bundle_leaves(int together, double factor) => Assert.Equal(factor, Ampacity.BundleFactor(together));

    [Fact]
    public void A_fuse_may_be_half_as_large_again_and_no_more() => Assert.Equal(52.5, FuseRule.LargestAmp(Ampacity.Of(new(14, 105)).Amp), tolerance: 1e-9);

    [Theory]
    [InlineData(false, true, true, 178)]
    [InlineData(true, true, true, 1_829)]
    [InlineData(true, true, false, 1_016)]
    [InlineData(true, false, true, 1_016)]
    public void An_unfused_tail_may_be_this_long(bool sheathed, bool post, bool council, double mm) => Assert.Equal(mm, FuseRule.LongestUnfusedMm(sheathed, post, council));

    [Fact]
    public void Size_and_time_of_a_short_circuit_are_each_others_inverse()
    {
        var mm2 = AdiabaticCable.SmallestMm2(3_000, 0.4, AdiabaticCable.CorePvc);
        Assert.Equal(16.499, mm2, tolerance: 0.001);
        Assert.Equal(0.4, AdiabaticCable.LongestSeconds(mm2, 3_000, AdiabaticCable.CorePvc), tolerance: 1e-12);
    }

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => VoltageDrop.Of(new(-1, 1, 1, 12)));
        Assert.Throws<ArgumentOutOfRangeException>(() => WireGauge.CircularMils(41));
        Assert.Throws<ArgumentOutOfRangeException>(() => WireGauge.Of(new(10, 10, 12, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Ampacity.Of(new(13, 105)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Ampacity.Of(new(12, 100)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Ampacity.Of(new(12, 105, LoadedTogether: 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => AdiabaticCable.SmallestMm2(100, 6, 115));
        Assert.Throws<ArgumentOutOfRangeException>(() => InverterCurrent.OfAmp(100, 12, 0));
    }
}
