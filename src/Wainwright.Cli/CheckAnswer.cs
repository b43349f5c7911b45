using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Survey;

namespace Wainwright.Cli;

/// <summary>The judgements of a job as they are shown: to a person as a table, to a program as JSON. The words are the checks' own.</summary>
internal sealed class CheckAnswer(Job job, IReadOnlyList<Check> checks, DateOnly on)
{
    /// <summary>The worst of all: what falls short beats what cannot be told.</summary>
    private readonly Verdict worst =
        checks.Any(c => c.Verdict == Verdict.FallsShort) ? Verdict.FallsShort : checks.Any(c => c.Verdict == Verdict.CannotTell) ? Verdict.CannotTell : Verdict.Holds;

    public int Exit => worst switch { Verdict.Holds => Cli.Exit.Done, Verdict.FallsShort => Cli.Exit.FallsShort, _ => Cli.Exit.CannotTell };

    public object ForPrograms() => new
    {
        job = job.Id,
        title = job.Title,
        on,
        verdict = worst,
        counts = new { holds = Count(Verdict.Holds), fallsShort = Count(Verdict.FallsShort), cannotTell = Count(Verdict.CannotTell) },
        checks = checks.Select(c => new
        {
            id = c.Id,
            claim = c.Claim,
            subject = c.Subject.Id,
            subjectKind = c.Subject.Kind,
            subjectName = c.Subject.Name,
            verdict = c.Verdict,
            because = c.Because,
            demand = Ends(c.Demand),
            capacity = Ends(c.Capacity),
            unit = c.Unit,
            margin = Ends(c.Margin),
            governing = c.Governing,
            source = c.Basis.Source,
            provenance = c.Basis.How,
            assumptions = c.Assumptions,
            caution = c.Caution,
            remedy = c.Remedy,
            missing = c.Missing,
            appliesTo = c.AppliesTo,
            ifShort = c.IfShort,
            faults = c.Faults,
            inputs = c.Inputs,
        }),
    };

    public void InWords(Terminal at)
    {
        var ink = new Ink(at.Colour);
        foreach (var check in checks)
        {
            var word = check.Verdict switch
            {
                Verdict.Holds => ink.Good("holds      "),
                Verdict.FallsShort => ink.Bad("FALLS SHORT"),
                _ => ink.Doubt("cannot tell"),
            };
            at.Out.WriteLine($"{word}  {ink.Strong(Shown.Plain($"{check.Subject.Id} {check.Subject.Name}"))}: {Shown.Plain(check.Claim)}");
            Line(at, Shown.Plain(check.Because));
            if (check is { Demand: { } demand, Capacity: { } capacity }) Line(at, $"asked {Shown.Rounded(demand)} {check.Unit}, there {Shown.Rounded(capacity)} {check.Unit}{(check.Margin is { } m ? $", margin {Percent(m)}" : "")}");
            foreach (var look in check.Missing) Line(at, $"{ink.Doubt("measure")}: {Shown.Plain(look)}");
            if (check.Remedy is { } remedy) Line(at, $"mend: {Shown.Plain(remedy)}");
            Line(at, ink.Faint(Shown.Plain($"source: {check.Basis.Source}")));
            Line(at, ink.Faint(Shown.Plain($"caution: {check.Caution}")));
        }
        at.Out.WriteLine(checks.Count == 0
            ? $"{Shown.Plain(job.Id)}: no check applies to what is recorded so far"
            : $"{Shown.Plain(job.Id)}: {Count(Verdict.FallsShort)} fall short, {Count(Verdict.CannotTell)} cannot be told, {Count(Verdict.Holds)} hold");
    }

    private static void Line(Terminal at, string text) => at.Out.WriteLine($"             {text}");

    private int Count(Verdict verdict) => checks.Count(c => c.Verdict == verdict);

    private static object? Ends(Span? span) => span is { } s ? new { low = s.Low, likely = s.Likely, high = s.High } : null;

    private static string Percent(Span margin) => margin.Low == margin.High
        ? string.Create(CultureInfo.InvariantCulture, $"{margin.Likely * 100:0} %")
        : string.Create(CultureInfo.InvariantCulture, $"{margin.Likely * 100:0} % ({margin.Low * 100:0} to {margin.High * 100:0} %)");
}
