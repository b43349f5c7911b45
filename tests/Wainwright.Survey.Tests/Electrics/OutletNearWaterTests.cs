using Wainwright.Fitout;

namespace Wainwright.Survey.Tests.Electrics;

public sealed class OutletNearWaterTests
{
    const string Id = "mains-outlet-near-water";

    static readonly Part Sink = A.Part("sink", new WetFitting { Wet = WetKind.Sink }).At(1_000, 0, 800);

    static readonly ResidualCurrentDevice Tested = new() { RatedMa = 30, TripAtFiveTimesMs = new(32, 1), Protects = [new("outlet")] };

    static Part Outlet(double gapMm, string? fedBy = "board") =>
        A.Part("outlet", new Outlet { Medium = Medium.Mains, Volts = 230, FedBy = fedBy is null ? null : new PartId(fedBy) }).At(1_100 + gapMm, 0, 800);

    static Part Board(params Device[] devices) => A.Part("board", devices);

    [Fact]
    public void Near_water_without_protection_falls_short()
    {
        var check = A.Van(Sink, Outlet(1_200), Board(new Overcurrent { RatedA = 16 })).Check(Id);
        Assert.Equal(Verdict.FallsShort, check.Verdict);
        Assert.Equal(1_200, check.Capacity!.Value.Likely, tolerance: 1e-9);
        Assert.Equal((1_200.0 - 1_800) / 1_800, check.Margin!.Value.Likely, tolerance: 1e-9);
        Assert.Equal(Urgency.U0, check.IfShort);
    }

    [Fact]
    public void Near_water_behind_a_tested_device_holds() =>
        Assert.Equal(Verdict.Holds, A.Van(Sink, Outlet(300), Board(Tested)).Check(Id).Verdict);

    [Fact]
    public void Far_from_water_holds_without_protection() =>
        Assert.Equal(Verdict.Holds, A.Van(Sink, Outlet(1_900, fedBy: null)).Check(Id).Verdict);

    [Fact]
    public void At_the_very_edge_it_asks_to_measure_closer()
    {
        var check = A.Van(Sink, Outlet(1_800), Board(new Overcurrent())).Check(Id);
        Assert.Equal(Verdict.CannotTell, check.Verdict);
        Assert.Contains(check.Missing, m => m.StartsWith("measure closer", StringComparison.Ordinal));
    }

    [Fact]
    public void A_device_that_was_never_tested_cannot_tell()
    {
        var check = A.Van(Sink, Outlet(300), Board(Tested with { TripAtFiveTimesMs = null })).Check(Id);
        Assert.Equal(Verdict.CannotTell, check.Verdict);
        Assert.Contains(check.Missing, m => m.Contains("five times", StringComparison.Ordinal));
    }

    [Fact]
    public void A_device_whose_label_was_not_read_cannot_tell() =>
        Assert.Equal(Verdict.CannotTell, A.Van(Sink, Outlet(300), Board(Tested with { RatedMa = null })).Check(Id).Verdict);

    [Fact]
    public void A_device_that_is_too_slow_is_no_protection() =>
        Assert.Equal(Verdict.FallsShort, A.Van(Sink, Outlet(300), Board(Tested with { TripAtFiveTimesMs = new(60, 1) })).Check(Id).Verdict);

    [Fact]
    public void A_hundred_milliamp_device_is_no_protection_of_people() =>
        Assert.Equal(Verdict.FallsShort, A.Van(Sink, Outlet(300), Board(Tested with { RatedMa = 100 })).Check(Id).Verdict);

    [Fact]
    public void An_outlet_that_nobody_traced_cannot_tell() =>
        Assert.Equal(Verdict.CannotTell, A.Van(Sink, Outlet(300, fedBy: null)).Check(Id).Verdict);

    [Fact]
    public void A_device_whose_circuits_nobody_traced_may_be_the_one() =>
        Assert.Equal(Verdict.CannotTell, A.Van(Sink, Outlet(300), Board(), A.Part("other", Tested with { Protects = [] })).Check(Id).Verdict);

    [Fact]
    public void A_device_for_other_circuits_does_not_protect_this_one() =>
        Assert.Equal(Verdict.FallsShort, A.Van(Sink, Outlet(300), Board(), A.Part("other", Tested with { Protects = [new("fridge")] })).Check(Id).Verdict);

    [Fact]
    public void Protection_is_found_up_the_chain_of_lines()
    {
        var feed = new Line { Id = new("M"), Name = "feed", Medium = Medium.Mains, Build = LineBuild.Cable, From = new() { Part = new("board") }, To = new() { Part = new("outlet") }, Known = Known.Seen };
        var van = A.Van(Sink, Outlet(300, fedBy: null), Board(Tested with { Protects = [new("board")] })) with { Lines = [feed] };
        Assert.Equal(Verdict.Holds, van.Check(Id).Verdict);
    }

    [Fact]
    public void A_van_without_any_wet_fitting_recorded_cannot_tell() =>
        Assert.Equal(Verdict.CannotTell, A.Van(Outlet(300), Board(new Overcurrent())).Check(Id).Verdict);

    [Fact]
    public void A_sink_without_a_place_cannot_tell_and_is_named()
    {
        var check = A.Van(A.Part("sink", new WetFitting { Wet = WetKind.Sink }), Outlet(300), Board(new Overcurrent())).Check(Id);
        Assert.Equal(Verdict.CannotTell, check.Verdict);
        Assert.Contains(check.Missing, m => m.Contains("sink", StringComparison.Ordinal));
    }

    [Fact]
    public void A_tanks_fitting_counts_as_water()
    {
        var tank = A.Part("tank", new Tank { Holds = Medium.Water, VolumeL = 95, Fittings = [new() { Name = "lid", At = new(1_050, 0, 800) }] }).At(0, 0, 0);
        Assert.Equal(Verdict.FallsShort, A.Van(tank, Outlet(300), Board(new Overcurrent())).Check(Id).Verdict);
    }

    [Fact]
    public void A_low_voltage_outlet_is_not_asked() =>
        Assert.DoesNotContain(Checks.All(A.Van(Sink, A.Part("usb", new Outlet { Medium = Medium.Dc, Volts = 12 }).At(1_100, 0, 800)), A.Day), c => c.Id == Id);
}
