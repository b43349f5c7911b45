using Wainwright.Fitout;

namespace Wainwright.Survey.Tests.Electrics;

public sealed class MainsTests
{
    static Check Device(double? rated, double? once, double? five) => A.Van(A.Part("rcd", new ResidualCurrentDevice
    {
        RatedMa = rated, TripAtRatedMs = once is { } a ? new Measured(a, 1) : null, TripAtFiveTimesMs = five is { } b ? new Measured(b, 1) : null,
    })).Check("residual-current-trips");

    [Theory]
    [InlineData(30.0, null, 32.0, Verdict.Holds)]
    [InlineData(30.0, 210.0, 32.0, Verdict.Holds)]
    [InlineData(30.0, 350.0, 32.0, Verdict.FallsShort)]
    [InlineData(30.0, 210.0, 45.0, Verdict.FallsShort)]
    [InlineData(30.0, 210.0, null, Verdict.CannotTell)]
    [InlineData(30.0, null, null, Verdict.CannotTell)]
    [InlineData(30.0, null, 40.0, Verdict.CannotTell)]
    [InlineData(null, 210.0, 32.0, Verdict.CannotTell)]
    [InlineData(100.0, 210.0, 32.0, Verdict.FallsShort)]
    [InlineData(5.0, null, 200.0, Verdict.Holds)]
    [InlineData(5.0, null, 900.0, Verdict.FallsShort)]
    public void A_device_is_judged_by_rating_and_trip_times(double? rated, double? once, double? five, Verdict verdict) => Assert.Equal(verdict, Device(rated, once, five).Verdict);

    static Job Insulated(params Reading[] readings) => A.Van(A.Part("inlet", new MainsInlet { Volts = 230 })) with { Readings = readings };

    static Reading Megohm(string id, double value, bool atLeast = false) => new()
    {
        Id = new(id), Quantity = Quantity.Insulation, Value = new(value, 0.05), Unit = "MΩ", AtLeast = atLeast, TakenAt = new(2026, 2, 1, 9, 0, 0, TimeSpan.Zero),
    };

    [Fact]
    public void Good_insulation_holds() => Assert.Equal(Verdict.Holds, Insulated(Megohm("1", 6)).Check("mains-insulation").Verdict);

    [Fact]
    public void The_worst_circuit_speaks() => Assert.Equal(Verdict.FallsShort, Insulated(Megohm("1", 6), Megohm("2", 0.4)).Check("mains-insulation").Verdict);

    [Fact]
    public void A_corrected_reading_no_longer_speaks() =>
        Assert.Equal(Verdict.Holds, Insulated(Megohm("1", 0.4), Megohm("2", 6) with { Corrects = new("1") }).Check("mains-insulation").Verdict);

    [Fact]
    public void A_low_pass_asks_for_a_second_look() =>
        Assert.Contains(Insulated(Megohm("1", 1.4)).Check("mains-insulation").Assumptions, a => a.Contains("second look", StringComparison.Ordinal));

    [Fact]
    public void Nobody_measured_cannot_tell() => Assert.Equal(Verdict.CannotTell, Insulated().Check("mains-insulation").Verdict);

    [Fact]
    public void A_meter_at_the_end_of_its_range_is_more_not_less() => Assert.Equal(Verdict.Holds, Insulated(Megohm("1", 200, atLeast: true)).Check("mains-insulation").Verdict);

    static Check Below(double aside, double trapZ = 500) => A.Van(
        A.Part("trap", new WetFitting { Wet = WetKind.Trap }).At(0, 0, trapZ),
        A.Part("charger", new Converter { From = Medium.Mains, To = Medium.Dc }).At(100 + aside, 0, 100)).Check("mains-below-leak");

    [Fact]
    public void Straight_below_a_trap_falls_short() => Assert.Equal(Verdict.FallsShort, Below(-50).Verdict);

    [Fact]
    public void Half_a_metre_aside_holds() => Assert.Equal(Verdict.Holds, Below(500).Verdict);

    [Fact]
    public void A_trap_below_the_charger_drips_on_nothing() => Assert.Equal(Verdict.Holds, Below(-50, trapZ: 0 - 200).Verdict);

    [Fact]
    public void At_the_edge_it_cannot_tell() => Assert.Equal(Verdict.CannotTell, Below(100).Verdict);

    [Fact]
    public void A_trap_without_a_place_cannot_tell() =>
        Assert.Equal(Verdict.CannotTell, A.Van(A.Part("trap", new WetFitting { Wet = WetKind.Trap }), A.Part("inlet", new MainsInlet { Volts = 230 }).At(0, 0, 0)).Check("mains-below-leak").Verdict);
}
