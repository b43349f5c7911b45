using Wainwright.Methods.Weight;

namespace Wainwright.Methods.Tests.Weight;

public sealed class MassRulesTests
{
    const double KgPerLb = 0.45359237;

    [Theory]
    [InlineData(4, 5_990, 99.9)]
    [InlineData(2, 5_410, 74.1)]
    public void Pay_mass_is_ten_kilograms_for_each_person_and_metre(int people, double mm, double kg) =>
        Assert.Equal(kg, PayMass.Of(new(people, mm)).LeastPayMassKg, tolerance: 1e-9);

    [Fact]
    public void Pay_mass_and_personal_load_are_not_the_same_sum() =>
        Assert.NotEqual(PayMass.Of(new(4, 6_000)).LeastPayMassKg, PersonalLoad.Of(new(3, 6_000)).PersonalKg);

    [Theory]
    [InlineData(5_000, 75)]
    [InlineData(6_000, 90)]
    [InlineData(9_000, 100)]
    public void The_relabel_threshold_is_one_and_a_half_percent_up_to_a_hundred_pounds(double grossLb, double thresholdLb) =>
        Assert.Equal(thresholdLb, Relabel.Of(new(grossLb * KgPerLb)).ThresholdKg / KgPerLb, tolerance: 1e-9);

    [Fact]
    public void Stability_falls_as_the_centre_rises_and_a_square_tips_at_45_degrees()
    {
        Assert.True(StaticStability.Of(new(1_720, 900)).Factor < StaticStability.Of(new(1_720, 800)).Factor);
        Assert.Equal(45, StaticStability.Of(new(1_600, 800)).TiltLimitDegrees, tolerance: 1e-9);
    }

    [Fact]
    public void Water_adds_to_a_sheet_in_proportion() =>
        Assert.Equal(1.25, PanelMass.Of(new(1_000, 1_000, 12, 500, 0.25)).MassKg / PanelMass.Of(new(1_000, 1_000, 12, 500)).MassKg, tolerance: 1e-12);

    [Fact]
    public void Nonsense_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => PayMass.Of(new(0, 6_000)));
        Assert.Throws<ArgumentOutOfRangeException>(() => PersonalLoad.Of(new(-1, 6_000)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Relabel.Of(new(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => StaticStability.Of(new(1_700, 0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => PanelMass.Of(new(1_000, 1_000, 12, 500, -0.1)));
    }
}
