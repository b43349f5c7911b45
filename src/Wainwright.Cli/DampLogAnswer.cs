using System.Globalization;
using Wainwright.Survey;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Cli;

/// <summary>The drying log, as it is shown.</summary>
internal sealed class DampLogAnswer(DryingLog log)
{
    public object ForPrograms() => new
    {
        firstDay = log.FirstDay,
        mayCover = log.MayCover,
        readyOnDay = Ends(log.ReadyOnDay),
        caution = DryingLog.Caution,
        points = log.Points.Select(p => new
        {
            id = p.Point.Id.Text,
            where = p.Point.Where,
            sheet = p.Sheet?.Part.Text,
            targetPercent = p.TargetPercent,
            pace = p.Pace,
            dryOnDay = Ends(p.DryOnDay),
            byPhysics = p.ByPhysics is { } days ? Ends(days) : null,
            because = p.Because,
            gate = new { verdict = p.Gate.Verdict, targetMet = p.Gate.TargetMet, changePoints = p.Gate.ChangePoints, spanHours = p.Gate.SpanHours, missing = p.Gate.Missing },
            visits = p.Visits.Select(v => new { reading = v.Reading.Id.Text, takenAt = v.Reading.TakenAt, day = v.Day, percent = v.Percent, atLeast = v.AtLeast, foretold = v.Foretold is { } f ? Ends(f) : null }),
        }),
    };

    public void InWords(Terminal at)
    {
        var ink = new Ink(at.Colour);
        at.Out.WriteLine(ink.Strong(string.Create(CultureInfo.InvariantCulture, $"drying log from {log.FirstDay:yyyy-MM-dd}, day 0")));
        foreach (var point in log.Points)
        {
            at.Out.WriteLine(Shown.Plain($"{Word(ink, point.Pace)} {point.Point.Id} {point.Point.Where}: {point.Because}{When(point)}{Worked(point)}"));
            at.Out.WriteLine(ink.Faint(Shown.Plain($"{"",-13}{string.Join("  ", point.Visits.Select(Visit))}")));
            at.Out.WriteLine(Shown.Plain($"{"",-13}{point.GateSays}"));
        }
        at.Out.WriteLine(Shown.Plain($"all dry: {Span(log.ReadyOnDay)}; {log.GateSays}"));
        at.Out.WriteLine(ink.Faint($"caution: {DryingLog.Caution}"));
    }

    private static string Visit(DryingVisit visit) => string.Create(CultureInfo.InvariantCulture,
        $"day {visit.Day:0}: {(visit.AtLeast ? "≥" : "")}{visit.Percent:0.0} %{(visit.Foretold is { } f ? string.Create(CultureInfo.InvariantCulture, $" ({f.Low:0.0}–{f.High:0.0})") : "")}");

    private string When(PointDrying point) => point.Pace == DryingPace.Dry || DryingLogs.Date(log, point.DryOnDay.Likely) is not { } day ? "" : string.Create(CultureInfo.InvariantCulture, $" ({day:yyyy-MM-dd})");

    private static string Worked(PointDrying point)
    {
        static string End(double day) => double.IsFinite(day) ? day.ToString("0", CultureInfo.InvariantCulture) : "no end seen";
        return point is { Pace: not DryingPace.Dry, ByPhysics: { } days } ? $"; worked out through its layers: day {End(days.Low)} to {End(days.High)}, likely {End(days.Likely)}" : "";
    }

    private static string Word(Ink ink, DryingPace pace) => pace switch
    {
        DryingPace.Dry => ink.Good("dry         "),
        DryingPace.OnTime => ink.Doubt("on time     "),
        DryingPace.Late => ink.Bad("LATE        "),
        _ => ink.Doubt("cannot tell "),
    };

    private string Span(Span days)
    {
        string Day(double d) => DryingLogs.Date(log, d) is { } date ? string.Create(CultureInfo.InvariantCulture, $"day {d:0} ({date:yyyy-MM-dd})") : "not by itself";
        return $"{Day(days.Low)} to {Day(days.High)}, likely {Day(days.Likely)}";
    }

    // an end that is never reached is null: JSON has no infinity
    private static object Ends(Span span) => new { low = Finite(span.Low), likely = Finite(span.Likely), high = Finite(span.High) };

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
