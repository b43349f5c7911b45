using CsCheck;
using Wainwright.Methods.Moisture.Growth;

namespace Wainwright.Methods.Tests.Moisture;

public sealed class GrowthLawTests
{
    static readonly MouldIndex.State Clean = new(0, 0);

    static double After(MouldSurface surface, double c, double rh, double days, double step = 1) => MouldIndex.Steady(Clean, c, rh, days, surface, 1, step).Index;

    // regression: our own runs of the published equations
    [Theory]
    [InlineData(5, 88.016)]
    [InlineData(10, 82.030)]
    [InlineData(20, 80.040)]
    public void Critical_humidity_keeps_its_numbers(double c, double rh) => Assert.Equal(rh, MouldIndex.CriticalHumidityPercent(c, MouldSurface.VerySensitive), tolerance: 0.001);

    [Fact]
    public void Times_keep_their_numbers()
    {
        var pine = MouldSurface.Original();
        Assert.Equal(1.484, MouldIndex.WeeksToFirst(20, 97, pine), tolerance: 0.001);
        Assert.Equal(4.202, MouldIndex.WeeksToFirst(20, 90, pine), tolerance: 0.001);
        Assert.Equal(7.734, MouldIndex.WeeksToVisible(20, 90, pine), tolerance: 0.001);
        Assert.Equal(2.3796, MouldIndex.Rate(1, 20, 90, pine), tolerance: 0.0005);
    }

    [Fact]
    public void Highest_index_keeps_its_numbers()
    {
        MouldSurface[] all = [MouldSurface.VerySensitive, MouldSurface.Sensitive, MouldSurface.MediumResistant, MouldSurface.Resistant];
        Assert.Equal([5.504, 4.676, 3.040, 1.760], all.Select(s => Math.Round(MouldIndex.Highest(20, 97, s), 3)));
        Assert.All(all.Zip([6.0, 5.3, 3.5, 2.0]), pair => Assert.Equal(pair.Second, MouldIndex.Highest(20, 100, pair.First), tolerance: 1e-9));
    }

    [Fact]
    public void Very_sensitive_keeps_its_numbers()
    {
        Assert.Equal(0.674, After(MouldSurface.VerySensitive, 20, 97, 7), tolerance: 0.005);
        Assert.Equal(1.693, After(MouldSurface.VerySensitive, 20, 97, 14), tolerance: 0.005);
        Assert.Equal(4.357, After(MouldSurface.VerySensitive, 20, 97, 28), tolerance: 0.005);
        Assert.Equal(2.364, After(MouldSurface.VerySensitive, 10, 97, 28), tolerance: 0.005);
    }

    [Theory]
    [InlineData(20, 97, 7, 0.390, 0.003)]
    [InlineData(20, 97, 14, 0.779, 0.003)]
    [InlineData(20, 97, 28, 1.373, 0.003)]
    [InlineData(20, 97, 56, 2.412, 0.005)]
    [InlineData(20, 97, 84, 3.430, 0.005)]
    [InlineData(25, 95, 84, 3.025, 0.005)]
    public void Sensitive_keeps_its_numbers(double c, double rh, double days, double index, double tolerance) => Assert.Equal(index, After(MouldSurface.Sensitive, c, rh, days), tolerance);

    [Fact]
    public void Medium_resistant_keeps_its_number() => Assert.Equal(0.581, After(MouldSurface.MediumResistant, 20, 97, 84), tolerance: 0.002);

    [Fact]
    public void The_original_keeps_its_number() => Assert.Equal(3.091, After(MouldSurface.Original(), 20, 90, 56), tolerance: 0.005);

    [Fact]
    public void A_shorter_step_changes_little() => Assert.Equal(4.360, After(MouldSurface.VerySensitive, 20, 97, 28, 0.1), tolerance: 0.001);

    [Fact]
    public void Drying_out_keeps_its_number() =>
        Assert.Equal(3.917, MouldIndex.Steady(MouldIndex.Steady(Clean, 20, 97, 28, MouldSurface.VerySensitive), 20, 50, 28, MouldSurface.VerySensitive).Index, tolerance: 0.005);

    [Fact]
    public void Wet_nights_and_dry_days_keep_their_number()
    {
        var state = Clean;
        for (var hour = 0; hour < 60 * 24; hour++) state = MouldIndex.Step(state, 20, hour % 24 < 12 ? 97 : 60, 1, MouldSurface.Sensitive, 1);
        Assert.Equal(1.101, state.Index, tolerance: 0.005);
    }

    [Fact]
    public void It_stays_between_none_and_the_highest() =>
        Gen.Select(Gen.Double[0.1, 49], Gen.Double[80, 100], Gen.Double[1, 200]).Sample((c, rh, days) =>
            Assert.InRange(After(MouldSurface.Sensitive, c, rh, days), 0, Math.Max(0, MouldIndex.Highest(c, rh, MouldSurface.Sensitive)) + 1e-9), iter: 30);

    [Fact]
    public void Nothing_grows_in_frost_or_in_dry_air()
    {
        Assert.Equal(0, After(MouldSurface.VerySensitive, -1, 100, 60));
        Assert.Equal(0, After(MouldSurface.VerySensitive, 20, 79, 60));
    }

    [Fact]
    public void Steps_longer_than_an_hour_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => MouldIndex.Step(Clean, 20, 97, 24, MouldSurface.Sensitive, 1));

    // regression: form as quoted
    [Fact]
    public void Rot_keeps_its_numbers()
    {
        Assert.Equal(9.18, DecayDose.DaysToStart(20, 100), tolerance: 0.02);
        Assert.Equal(21.43, DecayDose.DaysToStart(10, 100), tolerance: 0.02);
        Assert.Equal(0.00682, DecayDose.PercentPerHour(20, 100), tolerance: 1e-5);
    }

    [Fact]
    public void Rot_begins_after_its_time_and_only_then_takes_mass()
    {
        var state = new DecayDose.State(0, 0);
        for (var hour = 0; hour < 220; hour++) state = DecayDose.Step(state, 20, 100, 1);
        Assert.Equal((true, 0), (state.Dose < 1, state.MassLostPercent));
        for (var hour = 0; hour < 100; hour++) state = DecayDose.Step(state, 20, 100, 1);
        Assert.Equal(1, state.Dose);
        Assert.InRange(state.MassLostPercent, 0.6, 0.7);
    }

    [Fact]
    public void In_air_of_ninety_five_percent_nothing_rots() => Assert.Equal(double.PositiveInfinity, DecayDose.DaysToStart(20, 95));
}
