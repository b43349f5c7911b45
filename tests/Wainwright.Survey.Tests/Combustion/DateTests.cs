using Wainwright.Fitout;

namespace Wainwright.Survey.Tests.Combustion;

public sealed class DateTests
{
    static Alarm Monoxide(DateOnly? expires, bool? button) => new() { Senses = Senses.CarbonMonoxide, Expires = expires, TestButtonWorks = button };

    [Fact]
    public void An_alarm_in_date_that_sounds_holds() =>
        Assert.Equal(Verdict.Holds, A.Van(A.Part("alarm", Monoxide(A.Day.AddYears(1), true))).Check("co-alarm-in-date").Verdict);

    [Fact]
    public void An_alarm_past_its_date_falls_short_and_stops_sleeping()
    {
        var alarm = A.Van(A.Part("alarm", Monoxide(A.Day.AddDays(-1), true))).Check("co-alarm-in-date");
        Assert.Equal(Verdict.FallsShort, alarm.Verdict);
        Assert.Contains(Use.SleepIn, alarm.AppliesTo);
    }

    [Fact]
    public void A_dead_button_falls_short_whatever_the_date() =>
        Assert.Equal(Verdict.FallsShort, A.Van(A.Part("alarm", Monoxide(null, false))).Check("co-alarm-in-date").Verdict);

    [Fact]
    public void A_date_or_a_button_that_nobody_tried_cannot_tell()
    {
        Assert.Equal(["date printed on the alarm"], A.Van(A.Part("alarm", Monoxide(null, true))).Check("co-alarm-in-date").Missing);
        Assert.Equal(["press the alarm's test button"], A.Van(A.Part("alarm", Monoxide(A.Day, null))).Check("co-alarm-in-date").Missing);
    }

    [Fact]
    public void Where_something_burns_a_missing_alarm_is_asked_for() =>
        Assert.Equal(Verdict.CannotTell, A.Van(A.Part("hob", new GasAppliance { Kind = "hob" })).Check("co-alarm-present").Verdict);

    [Fact]
    public void A_smoke_alarm_is_no_carbon_monoxide_alarm() =>
        Assert.Equal(Verdict.CannotTell, A.Van(A.Part("hob", new GasAppliance { Kind = "hob" }), A.Part("smoke", new Alarm { Senses = Senses.Smoke })).Check("co-alarm-present").Verdict);

    [Theory]
    [InlineData(-9, Verdict.Holds)]
    [InlineData(-11, Verdict.FallsShort)]
    [InlineData(null, Verdict.CannotTell)]
    public void A_gas_hose_lives_ten_years(int? years, Verdict verdict)
    {
        var hose = new Line
        {
            Id = new("G"), Name = "hose", Medium = Medium.Gas, Build = LineBuild.Hose, From = new(), To = new(), Known = Known.Seen,
            MadeOn = years is { } y ? A.Day.AddYears(y) : null,
        };
        Assert.Equal(verdict, (A.Van() with { Lines = [hose] }).Check("gas-hose-in-date").Verdict);
    }

    [Theory]
    [InlineData(1, Verdict.Holds)]
    [InlineData(-1, Verdict.FallsShort)]
    [InlineData(null, Verdict.CannotTell)]
    public void An_extinguisher_has_a_date(int? days, Verdict verdict) =>
        Assert.Equal(verdict, A.Van(A.Part("e", new Extinguisher { Due = days is { } d ? A.Day.AddDays(d) : null })).Check("extinguisher-in-date").Verdict);

    [Theory]
    [InlineData(12_000.0, Verdict.Holds)]
    [InlineData(3_200.0, Verdict.FallsShort)]
    [InlineData(10_100.0, Verdict.CannotTell)]
    [InlineData(null, Verdict.CannotTell)]
    public void Gas_needs_a_hundred_square_centimetres_to_drop_out(double? mm2, Verdict verdict) =>
        Assert.Equal(verdict, A.Van(A.Part("locker", new GasStore { DropOutMm2 = mm2 is { } v ? new Measured(v) : null })).Check("gas-drop-out").Verdict);
}
