using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Moisture.Practice;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Survey.Tests.Damp.Drying;

public sealed class DryingLogsTests(ITestOutputHelper said)
{
    static readonly Job Camper = A.Read("demo", "touring-camper");

    static readonly DryingLog Log = DryingLogs.Of(Camper)!;

    static PointDrying Of(DryingLog log, string point) => log.Points.Single(p => p.Point.Id.Text == point);

    [Fact]
    public void The_bow_batten_and_the_plinth_are_the_last_over_fifteen_percent()
    {
        Assert.Equal(["P06", "P19"], Log.Points.Where(p => p.Visits[^1].Percent > 15).Select(p => p.Point.Id.Text).Order());
        Assert.Equal("P19", Log.Points[0].Point.Id.Text);
        Assert.Equal(24, Log.Points.Count);
        Assert.Equal(CoverUpGate.Verdict.Shut, Log.MayCover);
    }

    [Fact]
    public void Every_visit_stands_beside_what_the_earlier_ones_foretold()
    {
        Assert.All(Log.Points, p => Assert.Equal(5, p.Visits.Count));
        Assert.All(Log.Points, p => Assert.Null(p.Visits[0].Foretold));
        var foretold = Log.Points.SelectMany(p => p.Visits.Skip(1)).ToList();
        // a limit of the meter holds when it is not above the band
        var inside = foretold.Count(v => v.AtLeast ? v.Foretold!.Value.High >= v.Percent : v.Percent >= v.Foretold!.Value.Low && v.Percent <= v.Foretold!.Value.High);
        said.WriteLine(string.Create(CultureInfo.InvariantCulture, $"visits within their 90 % band: {inside} of {foretold.Count}"));
        Assert.InRange(inside / (double)foretold.Count, 0.8, 1);
    }

    [Fact]
    public void A_target_counts_the_dry_reference_in()
    {
        // P24 reads 11.0 on the last day: 14.0 is nearer than 15
        Assert.Equal(14, Of(Log, "P19").TargetPercent, tolerance: 1e-9);
        Assert.Equal(15, Of(Log, "P06").TargetPercent);
        Assert.Contains("a dry reference of the same material where no water came", CoverUpGate.Of([], null, new()).Missing.Concat(new PointVisits(Camper with { Readings = [.. Camper.Readings.Select(r => r.Point?.Text == "P06" ? r with { Value = 12 } : r)] }, null).Gate(Camper.Points.Single(p => p.Id.Text == "P06"), new()).Missing));
    }

    [Fact]
    public void The_day_a_point_is_dry_was_foretold_a_week_before()
    {
        var before = DryingLogs.Of(Camper, new DateOnly(2026, 3, 16))!;
        // P09 reads 14.8 on day 14 and 13.7 on day 21, its target 14
        var foretold = Of(before, "P09").DryOnDay;
        Assert.InRange(foretold.Likely, 14, 21);
        Assert.Equal(DryingPace.OnTime, Of(before, "P09").Pace);
        Assert.Equal(DryingPace.Dry, Of(Log, "P09").Pace);
        Assert.InRange(Of(Log, "P09").DryOnDay.Likely, foretold.Low, foretold.High);
    }

    [Fact]
    public void A_promise_that_will_be_missed_is_warned_of_early()
    {
        var log = DryingLogs.Of(Camper, new DateOnly(2026, 3, 10), new DateOnly(2026, 3, 16))!;
        Assert.Equal(DryingPace.Late, Of(log, "P19").Pace);
        Assert.Contains("after the promised day", Of(log, "P19").Because, StringComparison.Ordinal);
        Assert.NotEqual(DryingPace.Late, Of(DryingLogs.Of(Camper, new DateOnly(2026, 3, 10), new DateOnly(2026, 6, 1))!, "P19").Pace);
    }

    [Fact]
    public void A_point_that_dries_slower_than_foretold_or_gets_wetter_is_late()
    {
        Job With(double last) => Camper with { Readings = [.. Camper.Readings.Select(r => r.Id.Text == "P16-d14" ? r with { Value = last } : r)] };
        var on = new DateOnly(2026, 3, 16);
        Assert.Contains("slower than foretold", Of(DryingLogs.Of(With(19.2), on)!, "P16").Because, StringComparison.Ordinal);
        Assert.Contains("it has risen", Of(DryingLogs.Of(With(22), on)!, "P16").Because, StringComparison.Ordinal);
        Assert.Equal(DryingPace.OnTime, Of(DryingLogs.Of(With(16.6), on)!, "P16").Pace);
    }

    [Fact]
    public void What_nobody_noted_stays_cannot_tell_with_its_name()
    {
        var gate = Of(Log, "P20").Gate;
        Assert.Equal(CoverUpGate.Verdict.CannotTell, gate.Verdict);
        Assert.Equal(["whether heat was off before each reading", "a reading with long pins in the core"], gate.Missing);
        var noted = Camper with { Readings = [.. Camper.Readings.Select(r => r.Point?.Text == "P20" ? r with { Conditions = "heat off, long pins" } : r)] };
        Assert.Equal(CoverUpGate.Verdict.Open, Of(DryingLogs.Of(noted)!, "P20").Gate.Verdict);
    }

    [Fact]
    public void Of_one_day_the_last_reading_counts_and_a_corrected_one_does_not()
    {
        var first = Camper.Readings.Single(r => r.Id.Text == "P20-d04");
        var again = Camper with { Readings = [.. Camper.Readings, first with { Id = new("again"), Value = 14.1, TakenAt = first.TakenAt.AddHours(2) }] };
        Assert.Equal(14.1, Of(DryingLogs.Of(again)!, "P20").Visits[1].Percent, tolerance: 1e-9);
        Assert.Equal(5, Of(DryingLogs.Of(again)!, "P20").Visits.Count);
    }

    [Fact]
    public void The_last_is_ready_no_sooner_than_any_of_them()
    {
        Assert.All(Log.Points, p => Assert.True(Log.ReadyOnDay.Likely >= p.DryOnDay.Likely - 0.01));
        Assert.True(Log.ReadyOnDay.Low <= Log.ReadyOnDay.Likely && Log.ReadyOnDay.Likely <= Log.ReadyOnDay.High);
    }

    [Fact]
    public void A_job_that_was_read_once_and_dry_has_no_log() =>
        Assert.Null(DryingLogs.Of(Camper with { Readings = [.. Camper.Readings.Where(r => r.Id.Text is "P01-d00" or "P22-d00")] }));
}
