using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Survey.Tests.Damp.Drying;

public sealed class LogBesideForecastTests
{
    static readonly DampMap Map = DampMapping.Of(A.Read("demo", "touring-camper"), new DateOnly(2026, 3, 2), cellMm: 300)!;

    static readonly DryingLog Log = DryingLogs.Of(Map.Job, new DateOnly(2026, 3, 16))!;

    /// <summary>Every piece falls from a start by so much a day, 30 days in all.</summary>
    static DryingForecast Falling(double from, double fast, double likely, double slow)
    {
        IReadOnlyList<double> All(double percent) => [.. Enumerable.Repeat(percent, Map.Net.Cells.Count)];
        return new(DryingCare.OneSideOpened, 16, 30, [.. Enumerable.Range(0, 31).Select(d => new DampFrame(d, All(from - (fast * d)), All(from - (likely * d)), All(from - (slow * d))))], [], []);
    }

    static PointDrying Of(DryingLog log, string point) => log.Points.Single(p => p.Point.Id.Text == point);

    [Fact]
    public void The_day_of_each_end_is_the_first_frame_from_which_it_stays_under_the_target()
    {
        // 30 % to the plinth's target of 14: 16 points at 2, 1 and 0.5 a day; the map's newest reading is 1 h 55 min after the log begins
        var days = Of(LogBesideForecast.Of(Log, Map, Falling(30, 2, 1, 0.5)), "P19").ByPhysics!.Value;
        var from = (Map.Newest!.Value - Log.FirstDay).TotalDays;
        Assert.Equal(from + 8, days.Low, tolerance: 1e-9);
        Assert.Equal(from + 16, days.Likely, tolerance: 1e-9);
        Assert.Equal(double.PositiveInfinity, days.High);
    }

    [Fact]
    public void A_reading_over_the_slow_end_is_late_and_one_under_it_is_not()
    {
        // on day 14 the plinth reads 19.2
        Assert.Equal(DryingPace.OnTime, Of(Log, "P19").Pace);
        var late = Of(LogBesideForecast.Of(Log, Map, Falling(30, 2, 1.5, 1)), "P19");
        Assert.Equal(DryingPace.Late, late.Pace);
        Assert.Contains("slower than the slow end worked out, 16.", late.Because, StringComparison.Ordinal);
        Assert.Equal(DryingPace.OnTime, Of(LogBesideForecast.Of(Log, Map, Falling(30, 2, 1, 0.5)), "P19").Pace);
    }
}
