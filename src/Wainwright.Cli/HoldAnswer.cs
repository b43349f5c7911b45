using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Survey;
using Wainwright.Survey.Retention;

namespace Wainwright.Cli;

/// <summary>What holds and what does not, as it is shown: to a person as a table, to a program as JSON.</summary>
internal sealed class HoldAnswer(JobHolding holding, bool inFull, IReadOnlyList<HoldingOdds.Odds>? odds = null)
{
    private const int NameWide = 34;

    /// <summary>The worst of all: what falls short beats what cannot be told.</summary>
    private readonly Verdict worst = holding.Parts.Any(p => p.Verdict == Verdict.FallsShort) ? Verdict.FallsShort
        : holding.Parts.Any(p => p.Verdict == Verdict.CannotTell) ? Verdict.CannotTell : Verdict.Holds;

    public int Exit => worst switch { Verdict.Holds => Cli.Exit.Done, Verdict.FallsShort => Cli.Exit.FallsShort, _ => Cli.Exit.CannotTell };

    public object ForPrograms() => new
    {
        job = holding.Job.Id,
        title = holding.Job.Title,
        verdict = worst,
        caution = JobHolding.Caution,
        cases = holding.Cases,
        chance = odds?.Select(o => new
        {
            load = o.Case,
            notHolding = o.Result.Any.NotHolding,
            standardError = o.Result.Any.StandardError,
            ways = o.Ways.Zip(o.Result.Ways, (w, c) => new { words = w.Words, demandG = w.G, notHolding = c.NotHolding, standardError = c.StandardError }),
            looks = o.Result.Looks.Select(l => new { look = l.Unknown, settles = l.Settles }),
        }),
        counts = new { holds = Count(Verdict.Holds), fallsShort = Count(Verdict.FallsShort), cannotTell = Count(Verdict.CannotTell) },
        parts = holding.Parts.Select(p => new
        {
            id = p.Part.Id,
            name = p.Part.Name,
            verdict = p.Verdict,
            because = p.Because,
            heldBy = p.HeldBy,
            ladenKg = Ends(p.LadenKg),
            stop = Ends(p.InG(ThrownWord.Stop)),
            swerve = Ends(p.InG(ThrownWord.Swerve)),
            bump = Ends(p.InG(ThrownWord.Bump)),
            roll = Ends(p.InG(ThrownWord.Roll)),
            cases = p.Cases.Select(c => new { load = c.Case, verdict = c.Verdict, worst = c.Worst, demandG = c.DemandG, factorG = Ends(c.FactorG), governing = c.Governing }),
            weakest = p.Weakest,
            givesBy = p.GivesBy,
            through = p.Through,
            riders = p.Riders,
            nextLook = p.NextLook,
            assumed = p.Assumed,
            directions = p.Directions.Select(d => new { way = new[] { d.Way.X, d.Way.Y, d.Way.Z }, words = d.Words, factorG = Ends(d.FactorG), firstYieldG = Finite(d.FirstYieldG), governing = d.Governing, first = d.First }),
        }),
    };

    public void InWords(Terminal at)
    {
        var ink = new Ink(at.Colour);
        at.Out.WriteLine(ink.Strong(Shown.Plain($"{holding.Job.Id}: in how many g it lets go, above the 1 g down that always acts; judged against {string.Join(", ", holding.Cases.Select(LoadCaseWords.Of))}")));
        if (!inFull) Table(at, ink);
        else foreach (var part in holding.Parts) InFull(at, ink, part);
        foreach (var one in odds ?? [])
        {
            at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"  {LoadCaseWords.Of(one.Case)}: {100 * one.Result.Any.NotHolding:0.##} % that it does not hold (± {100 * one.Result.Any.StandardError:0.##} by the luck of the draws), as good as the ranges that went in")));
            foreach (var look in one.Result.Looks.Where(l => l.Settles > 0.01).Take(3)) at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"    {100 * look.Settles:0} % of that doubt: {look.Unknown}")));
        }
        at.Out.WriteLine(Shown.Plain($"{holding.Job.Id}: {Count(Verdict.FallsShort)} fall short, {Count(Verdict.CannotTell)} cannot be told, {Count(Verdict.Holds)} hold"));
        foreach (var load in inFull ? [] : holding.Cases)
        {
            int Of(Verdict verdict) => holding.Parts.Count(p => p.Cases.Any(c => c.Case == load && c.Verdict == verdict));
            at.Out.WriteLine(ink.Faint($"  against {LoadCaseWords.Of(load)} alone: {Of(Verdict.FallsShort)} fall short, {Of(Verdict.CannotTell)} cannot be told, {Of(Verdict.Holds)} hold"));
        }
        at.Out.WriteLine(ink.Faint($"caution: {JobHolding.Caution}"));
    }

    private void Table(Terminal at, Ink ink)
    {
        at.Out.WriteLine(ink.Faint($"{"",-12} {"",-NameWide}  {"stop",9} {"swerve",9} {"bump",9} {"roll",9}  {"worst against its case",-30}"));
        foreach (var part in holding.Parts)
        {
            var telling = part.Cases.Where(c => c.Verdict == part.Verdict).OrderBy(c => c.FactorG is { } g ? g.Likely / c.DemandG : 0).FirstOrDefault();
            var against = telling is null ? "" : $"{Short(telling.FactorG)} of {telling.DemandG.ToString("0.0#", CultureInfo.InvariantCulture)} {telling.Worst}";
            at.Out.WriteLine($"{Word(ink, part.Verdict)}  {Cut(Shown.Plain($"{part.Part.Id} {part.Part.Name}")),-NameWide}  {Short(part.InG(ThrownWord.Stop)),9} {Short(part.InG(ThrownWord.Swerve)),9} {Short(part.InG(ThrownWord.Bump)),9} {Short(part.InG(ThrownWord.Roll)),9}  {against}");
            if (part.Verdict != Verdict.Holds) at.Out.WriteLine(ink.Faint(Shown.Plain($"{"",-13}{part.Because}")));
            if (part.NextLook is { } look) at.Out.WriteLine($"{"",-13}{ink.Doubt("look")}: {Shown.Plain(look)}");
        }
    }

    private static void InFull(Terminal at, Ink ink, PartHolding part)
    {
        at.Out.WriteLine($"{Word(ink, part.Verdict)}  {ink.Strong(Shown.Plain($"{part.Part.Id} {part.Part.Name}"))}: {Shown.Plain(part.Because)}");
        if (part.NextLook is { } look) at.Out.WriteLine($"  {ink.Doubt("look")}: {Shown.Plain(look)}");
        if (part.LadenKg is { } kg) at.Out.WriteLine($"  holds {Shown.Rounded(kg)} kg");
        if (part.Through.Count > 0) at.Out.WriteLine(Shown.Plain($"  its load passes through {string.Join(", ", part.Through)}"));
        foreach (var load in part.Cases)
            at.Out.WriteLine($"  {Word(ink, load.Verdict)}  {LoadCaseWords.Of(load.Case)}: {Short(load.FactorG)} of {load.DemandG.ToString("0.0#", CultureInfo.InvariantCulture)} g {load.Worst}{(load.Governing is { } by ? Shown.Plain($", {by}") : "")}");
        at.Out.WriteLine(ink.Faint($"  {"",-26} {"lets go at, g",22} {"first yield",12}  by"));
        foreach (var thrown in part.Directions)
            at.Out.WriteLine(Shown.Plain($"  {thrown.Words,-26} {Long(thrown.FactorG),22} {One(thrown.FirstYieldG),12}  {thrown.Governing}"));
        foreach (var assumed in part.Assumed) at.Out.WriteLine(ink.Faint(Shown.Plain($"  {assumed}")));
    }

    private int Count(Verdict verdict) => holding.Parts.Count(p => p.Verdict == verdict);

    /// <summary>A verdict in a word of fixed width.</summary>
    public static string Word(Ink ink, Verdict verdict) => verdict switch
    {
        Verdict.Holds => ink.Good("holds      "),
        Verdict.FallsShort => ink.Bad("FALLS SHORT"),
        _ => ink.Doubt("cannot tell"),
    };

    private static string Cut(string text) => text.Length <= NameWide ? text : text[..(NameWide - 1)] + "…";

    private static string One(double? g) => g is not { } v ? "–" : double.IsPositiveInfinity(v) ? "∞" : v < 0 ? "falls" : v.ToString(v < 9.95 ? "0.0" : "0", CultureInfo.InvariantCulture);

    private static string Short(Span? g) => g is not { } s ? "–" : One(s.Low) == One(s.High) ? One(s.Low) : $"{One(s.Low)}–{One(s.High)}";

    private static string Long(Span? g) => g is not { } s ? "–" : One(s.Low) == One(s.High) ? One(s.Likely) : $"{One(s.Likely)} ({One(s.Low)} to {One(s.High)})";

    private static object? Ends(Span? span) => span is { } s ? new { low = Finite(s.Low), likely = Finite(s.Likely), high = Finite(s.High) } : null;

    /// <summary>JSON has no infinity: what is thrown against something that only pushes has no figure.</summary>
    private static double? Finite(double? g) => g is { } v && double.IsFinite(v) ? v : null;
}
