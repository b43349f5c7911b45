using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Practice;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>Keeps the drying log of a job: visits against what was foretold, the day each point is dry, and whether it may be covered.</summary>
public static class DryingLogs
{
    // a point never read wetter than this, and only once, is not in the log [%]
    private const double WetPercent = MoistureThresholds.DryPercent;

    /// <summary>Days looked at for the day on which all are dry [d].</summary>
    private const double LongestDays = 2000;

    /// <summary>The log up to a day.</summary>
    /// <param name="job">The job.</param>
    /// <param name="on">The day; readings taken later are left out. Null for all.</param>
    /// <param name="promised">The day that was promised; null when none was.</param>
    /// <param name="targetPercent">The job's own target [%], 5 to 30; null for the gate's usual. Within 3 points of the dry reference it must be anyhow.</param>
    /// <returns>The log; null when no point was read twice or wet.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The target leaves its range.</exception>
    public static DryingLog? Of(Job job, DateOnly? on = null, DateOnly? promised = null, double? targetPercent = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        if (targetPercent is { } own && !(own is >= 5 and <= 30)) throw new ArgumentOutOfRangeException(nameof(targetPercent), own, "5 to 30 %");
        var gate = targetPercent is { } target ? new CoverUpGate.Rule(target) : new();
        var visits = new PointVisits(job, on);
        var points = job.Points.Where(p => visits.Of(p.Id) is { Count: > 1 } or [{ Made.Percent: > WetPercent }]).ToList();
        if (points.Count == 0) return null;
        var first = points.Min(p => visits.Of(p.Id)[0].Reading.TakenAt);
        var net = DampNet.Of(FloorAsSaid.In(job) ?? job, 200);
        double? promisedDay = promised is { } d ? (d.ToDateTime(TimeOnly.MaxValue) - first.DateTime).TotalDays : null;
        var logged = points.Select(p => new PointLog(job, visits, p, first, gate).Of(Sheet(net, p), promisedDay)).ToList();
        return new(first, [.. logged.Select(l => l.Point).OrderByDescending(p => p.DryOnDay.Likely).ThenByDescending(p => p.Visits[^1].Percent)], Ready(logged), All(logged));
    }

    private static DampSheet? Sheet(DampNet? net, ReadingPoint point) => point.Part is { } part ? net?.Sheets.FirstOrDefault(s => s.Part == part) : null;

    private static CoverUpGate.Verdict All(List<(PointDrying Point, DryingCurve? Curve)> logged) =>
        logged.Exists(l => l.Point.Gate.Verdict == CoverUpGate.Verdict.Shut) ? CoverUpGate.Verdict.Shut
            : logged.Exists(l => l.Point.Gate.Verdict == CoverUpGate.Verdict.CannotTell) ? CoverUpGate.Verdict.CannotTell : CoverUpGate.Verdict.Open;

    /// <summary>The last of them: chances of the points multiplied, as if they knew nothing of each other.</summary>
    private static Span Ready(List<(PointDrying Point, DryingCurve? Curve)> logged)
    {
        var dry = logged.Where(l => l.Curve is null).Select(l => l.Point.DryOnDay).ToList();
        var since = dry.Count == 0 ? new Span(0, 0, 0) : new(dry.Max(d => d.Low), dry.Max(d => d.Likely), dry.Max(d => d.High));
        var wet = logged.Where(l => l.Curve is not null).ToList();
        if (wet.Count == 0) return since;
        var from = wet.Max(l => l.Point.Visits[^1].Day);
        double Chance(double day) => wet.Aggregate(1.0, (c, l) => c * l.Curve!.ChanceUnder(l.Point.TargetPercent, day));
        double When(double share)
        {
            if (Chance(LongestDays) < share) return double.PositiveInfinity;
            var (low, high) = (from, LongestDays);
            for (var i = 0; i < 30; i++)
            {
                var middle = (low + high) / 2;
                if (Chance(middle) < share) low = middle;
                else high = middle;
            }
            return high;
        }
        return new(When(0.05), When(0.5), When(0.95));
    }

    /// <summary>When a day of the log is, as a date.</summary>
    /// <param name="log">The log.</param>
    /// <param name="day">The day [d]; null comes back where it is not finite or past year 9000.</param>
    public static DateOnly? Date(DryingLog log, double day)
    {
        ArgumentNullException.ThrowIfNull(log);
        return double.IsFinite(day) && day < 2e6 ? DateOnly.FromDateTime(log.FirstDay.DateTime.AddDays(day)) : null;
    }

    /// <summary>What the gate says of a point, in words.</summary>
    /// <param name="gate">The gate's result.</param>
    public static string Says(CoverUpGate.Result gate)
    {
        ArgumentNullException.ThrowIfNull(gate);
        return gate.Verdict switch
        {
            CoverUpGate.Verdict.Open => "may be covered",
            CoverUpGate.Verdict.CannotTell => $"cannot tell whether it may be covered; missing: {string.Join(", ", gate.Missing)}",
            _ when gate.TargetMet != true => "not to be covered: over its target",
            _ => string.Create(CultureInfo.InvariantCulture, $"not to be covered: not yet flat under its target, {gate.ChangePoints:0.0} points over the last {gate.SpanHours:0} h"),
        };
    }

    internal static string Days(Span days) => double.IsInfinity(days.Likely) ? "not by itself"
        : string.Create(CultureInfo.InvariantCulture, $"day {days.Low:0} to {(double.IsInfinity(days.High) ? "no end" : days.High.ToString("0", CultureInfo.InvariantCulture))}, likely {days.Likely:0}");
}
