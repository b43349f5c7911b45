using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Practice;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>The drying log of one point.</summary>
internal sealed class PointLog(Job job, PointVisits visits, ReadingPoint point, DateTimeOffset first, CoverUpGate.Rule rule)
{
    // a spot read again differs by this, and by so much of what it is over dry; a reference by this from where the point will end [points]. Own rules
    private const double AgainPoints = 0.7, AgainShare = 0.05, ReferencePoints = 0.7;

    // a rise of more than this is new water or another spot [points]; own rule
    private const double RisePoints = 1.5;

    private readonly IReadOnlyList<PointVisit> own = visits.Of(point.Id);

    public (PointDrying Point, DryingCurve? Curve) Of(DampSheet? sheet, double? promisedDay)
    {
        var target = visits.TargetPercent(point, rule);
        var made = own.Select((v, i) => new DryingVisit(v.Reading, Day(v), v.Made.Percent, v.AtLeast, i == 0 ? null : Foretold(i))).ToList();
        var gate = visits.Gate(point, rule);
        var met = Met(target);
        var curve = met is null ? Curve(own.Count) : null;
        var last = made[^1];
        var dryOn = met ?? new(Later(curve!.DayUnder(target, 0.05)), Later(curve.DayUnder(target, 0.5)), Later(curve.DayUnder(target, 0.95)));
        double Later(double day) => Math.Max(day, last.Day);
        var (pace, because) = Pace(made, target, met, dryOn, promisedDay);
        return (new(point, sheet, made, target, dryOn, pace, gate, because), curve);
    }

    private static (DryingPace, string) Pace(List<DryingVisit> made, double target, Span? met, Span dryOn, double? promisedDay)
    {
        var last = made[^1];
        var (read, aim) = (string.Create(CultureInfo.InvariantCulture, $"{(last.AtLeast ? "at least " : "")}{last.Percent:0.0} %"), string.Create(CultureInfo.InvariantCulture, $"{target:0.0} %"));
        if (met is not null) return (DryingPace.Dry, $"{read}, target {aim}");
        if (made.Count < 2) return (DryingPace.CannotTell, $"{read} against {aim}, read once: read it again");
        var when = $"{read} against {aim}: dry {DryingLogs.Days(dryOn)}";
        if (made[^1].Percent > made[^2].Percent + RisePoints && !made[^2].AtLeast) return (DryingPace.Late, $"{when}; it has risen: is the leak stopped, is it the same spot");
        // a limit of the meter is no value that could be over what was foretold
        if (last is { AtLeast: false, Foretold: { } band } && last.Percent > band.High) return (DryingPace.Late, string.Create(CultureInfo.InvariantCulture, $"{when}; slower than foretold, {band.Low:0.0} to {band.High:0.0} %"));
        if (promisedDay is { } day && dryOn.Likely > day) return (DryingPace.Late, string.Create(CultureInfo.InvariantCulture, $"{when}; after the promised day {day:0}"));
        return (DryingPace.OnTime, promisedDay is { } end && dryOn.High > end ? string.Create(CultureInfo.InvariantCulture, $"{when}; the promised day {end:0} is not sure") : when);
    }

    private Span Foretold(int visit)
    {
        var curve = Curve(visit);
        double At(double share) => curve.Percent(Day(own[visit]), share, Again(own[visit - 1].Made.Percent, Rest(Day(own[visit - 1])).Percent));
        return new(At(0.05), At(0.5), At(0.95));
    }

    /// <summary>The courses that the first visits leave.</summary>
    private DryingCurve Curve(int count)
    {
        var rest = Rest(Day(own[count - 1]));
        return DryingCurve.Of([.. own.Take(count).Select(v => new DryingCurve.Seen(Day(v), v.Made.Percent, Again(v.Made.Percent, rest.Percent), v.Made.Bound))], rest.Percent, rest.SigmaPoints);
    }

    private static double Again(double percent, double rest) => Math.Sqrt((AgainPoints * AgainPoints) + Math.Pow(AgainShare * Math.Max(0, percent - rest), 2));

    /// <summary>What it dries to, as known on a day: its dry reference so far, else the equilibrium of the air.</summary>
    private (double Percent, double SigmaPoints) Rest(double day)
    {
        var reference = visits.Reference(point).Where(v => Day(v) <= day + 0.5).ToList();
        if (reference.Count > 0) return (reference.Average(v => v.Made.Percent), ReferencePoints);
        var latest = own.Where(v => Day(v) <= day + 0.5).Last();
        var dry = DryBoard.Of(job, [new(point.Id, latest.Reading, 0, 0, latest.Made, false)]);
        return (visits.IsPanel(point) ? dry.PanelPercent : dry.WoodPercent, dry.SigmaPoints);
    }

    /// <summary>When it met its target and stayed there; null while it has not.</summary>
    private Span? Met(double target)
    {
        var from = own.Count;
        while (from > 0 && !own[from - 1].AtLeast && own[from - 1].Made.Percent <= target) from--;
        if (from == own.Count) return null;
        if (from == 0) return Span.Exactly(Day(own[0]));
        var (before, after) = (own[from - 1], own[from]);
        var share = (before.Made.Percent - target) / Math.Max(1e-9, before.Made.Percent - after.Made.Percent);
        return new(Day(before), Day(before) + (share * (Day(after) - Day(before))), Day(after));
    }

    private double Day(PointVisit visit) => (visit.Reading.TakenAt - first).TotalDays;
}
