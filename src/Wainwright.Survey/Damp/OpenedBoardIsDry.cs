using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Moisture.Practice;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Survey.Damp;

/// <summary>A board that was read wet is dry before it is covered again.</summary>
public static class OpenedBoardIsDry
{
    /// <summary>One check for each part that has a point read wet, once points of the job are read again: before that there is no drying to judge.</summary>
    public static IEnumerable<Check> Of(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var visits = new PointVisits(job, null);
        if (!job.Points.Any(p => visits.Of(p.Id).Count > 1)) yield break;
        var rule = new CoverUpGate.Rule();
        foreach (var part in job.Parts)
        {
            var points = job.Points.Where(p => p.Part == part.Id).ToList();
            if (points.Exists(p => visits.Of(p.Id).Any(v => v.AtLeast || v.Made.Percent > rule.TargetPercent))) yield return Judged(part, points, visits, rule);
        }
    }

    private static Check Judged(Part part, List<ReadingPoint> points, PointVisits visits, CoverUpGate.Rule rule)
    {
        var draft = new Draft("opened-board-is-dry", "A board that was wet is dry before it is covered", part.Subject(), CoverUpGate.Basis,
            string.Create(CultureInfo.InvariantCulture, $"at or under {rule.TargetPercent:0} % and {rule.ReferencePoints:0} points over its dry reference, flat over {rule.WindowHours:0} h"), Urgency.U2, Use.SleepIn)
        {
            Remedy = "leave it open and dry on; read again twice, two days apart, with the heat off",
        };
        List<(ReadingPoint Point, CoverUpGate.Result Gate)> gates = [.. points.Select(p => (p, visits.Gate(p, rule)))];
        foreach (var (point, gate) in gates)
        {
            if (visits.Of(point.Id) is [.., var last])
                draft.Use($"moisture at {point.Id}, {point.Where}", string.Create(CultureInfo.InvariantCulture, $"{(last.AtLeast ? "at least " : "")}{last.Made.Percent:0.0} %"), $"readings[{last.Reading.Id}]", Known.Measured);
            foreach (var gap in gate.Missing) draft.Miss($"{point.Id}: {gap}");
        }
        bool Any(CoverUpGate.Verdict verdict) => gates.Exists(g => g.Gate.Verdict == verdict);
        string Those(CoverUpGate.Verdict verdict) => string.Join("; ", gates.Where(g => g.Gate.Verdict == verdict).Select(g => $"{g.Point.Id} {DryingLogs.Says(g.Gate)}"));
        if (Any(CoverUpGate.Verdict.Shut)) return draft.FallsShort(Those(CoverUpGate.Verdict.Shut));
        if (Any(CoverUpGate.Verdict.CannotTell)) return draft.CannotTell($"{string.Join(", ", gates.Where(g => g.Gate.Verdict == CoverUpGate.Verdict.CannotTell).Select(g => g.Point.Id))} cannot be told");
        return draft.Holds($"{string.Join(", ", gates.Select(g => g.Point.Id))} under target and flat");
    }
}
