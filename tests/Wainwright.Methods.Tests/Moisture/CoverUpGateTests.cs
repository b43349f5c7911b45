using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Practice;
using static Wainwright.Methods.Moisture.Practice.CoverUpGate;

namespace Wainwright.Methods.Tests.Moisture;

public sealed class CoverUpGateTests
{
    static Visit At(double hours, double percent, MeterReading.Bound bound = MeterReading.Bound.About, bool? heatOff = true, bool? core = true) =>
        new(hours, percent, bound, heatOff, TemperatureTaken: true, core);

    static Result Judge(double? reference, params Visit[] visits) => CoverUpGate.Of(visits, reference, new());

    [Fact]
    public void Met_and_flat_over_two_days_it_opens() => Assert.Equal(Verdict.Open, Judge(12, At(0, 14.5), At(24, 14.2), At(48, 14)).Verdict);

    [Fact]
    public void The_order_of_the_visits_does_not_matter() => Assert.Equal(Verdict.Open, Judge(12, At(48, 14), At(0, 14.5), At(24, 14.2)).Verdict);

    [Fact]
    public void Met_for_one_day_only_it_cannot_tell() => Assert.Equal(Verdict.CannotTell, Judge(12, At(0, 14.5), At(24, 14)).Verdict);

    [Fact]
    public void Too_wet_at_the_start_of_the_window_it_is_shut() => Assert.Equal(Verdict.Shut, Judge(12, At(0, 17), At(24, 15), At(48, 14)).Verdict);

    [Fact]
    public void Still_falling_it_is_shut() => Assert.Equal((Verdict.Shut, true), (Judge(12, At(0, 15), At(48, 13.5)).Verdict, Judge(12, At(0, 15), At(48, 13.5)).TargetMet == true));

    [Fact]
    public void Rising_again_it_is_shut() => Assert.Equal(Verdict.Shut, Judge(12, At(0, 12), At(48, 14)).Verdict);

    [Fact]
    public void Under_target_but_far_from_its_reference_it_is_shut() => Assert.Equal(Verdict.Shut, Judge(9, At(0, 14), At(48, 14)).Verdict);

    [Fact]
    public void Old_wet_readings_before_the_window_do_not_count() => Assert.Equal(Verdict.Open, Judge(12, At(-200, 28), At(0, 14.5), At(60, 14)).Verdict);

    [Fact]
    public void A_reading_at_the_end_of_the_meter_is_never_dry() => Assert.Equal(Verdict.Shut, Judge(30, At(0, 14), At(48, 14, MeterReading.Bound.AtLeast)).Verdict);

    [Theory]
    [InlineData(null, true, true)]
    [InlineData(12.0, false, true)]
    [InlineData(12.0, null, true)]
    [InlineData(12.0, true, false)]
    [InlineData(12.0, true, null)]
    public void What_was_not_noted_is_asked_for(double? reference, bool? heatOff, bool? core)
    {
        var result = Judge(reference, At(0, 14, heatOff: heatOff, core: core), At(48, 14, heatOff: heatOff, core: core));
        Assert.Equal(Verdict.CannotTell, result.Verdict);
        Assert.Single(result.Missing);
    }

    [Fact]
    public void Without_readings_it_cannot_tell() => Assert.Equal(Verdict.CannotTell, Judge(12).Verdict);

    [Fact]
    public void Nonsense_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Judge(12, At(double.NaN, 14)));
}
