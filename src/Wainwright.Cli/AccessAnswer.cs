using System.Globalization;
using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Cli;

/// <summary>What service costs as built, and what would save most: to a person as tables, to a program as JSON.</summary>
internal sealed class AccessAnswer(string named, Job job, Upkeep upkeep, WhatIfs changes)
{
    private const int MostVisits = 12, MostLooks = 8;

    public int Exit => upkeep.Open.Any(v => v.Minutes.Sureness == Sureness.Unreachable) ? Cli.Exit.FallsShort
        : upkeep.Open.Any() || !upkeep.IsWhole ? Cli.Exit.CannotTell : Cli.Exit.Done;

    public object ForPrograms() => new
    {
        job = job.Id,
        title = job.Title,
        whole = upkeep.IsWhole,
        hoursPerYear = upkeep.HoursPerYear,
        lowHoursPerYear = upkeep.LowHoursPerYear,
        timesPerYear = upkeep.TimesPerYear,
        meanMinutes = upkeep.MeanMinutes,
        openVisits = upkeep.Open.Count(),
        parts = upkeep.Parts.Select(p => new
        {
            part = p.Part.Text,
            name = p.Name,
            depth = p.Depth,
            see = Of(p.See),
            reach = Of(p.Reach),
            remove = Of(p.Remove),
            visits = p.Visits.Select(v => new
            {
                what = v.Need.What,
                everyMonths = v.Need.EveryMonths,
                access = v.Need.Access,
                timesPerYear = v.TimesPerYear,
                lowMinutesPerYear = v.LowMinutesPerYear,
                highMinutesPerYear = v.HighMinutesPerYear,
            }),
        }),
        changes = changes.Ranked.Select(c => new
        {
            number = c.Number,
            kind = c.Kind,
            what = c.What,
            savedMinutesPerYear = c.SavedMinutesPerYear,
            proved = c.IsProved,
            gains = c.Gains.Select(g => new { part = g.Visit.Part.Text, what = g.Visit.Need.What, wasMinutes = g.WasMinutes, nowMinutes = g.NowMinutes, savedMinutesPerYear = g.SavedMinutesPerYear }),
            heed = c.Heed,
        }),
        changesThought = changes.Thought,
        changesPlanned = changes.Planned,
        restSavesAtMostMinutesPerYear = double.IsFinite(changes.RestSavesAtMost) ? changes.RestSavesAtMost : (double?)null,
        assumes = upkeep.Assumes,
        toMeasure = upkeep.ToMeasure,
        cautions = upkeep.Cautions,
    };

    public void InWords(Terminal at)
    {
        var ink = new Ink(at.Colour);
        void Say(string text) => at.Out.WriteLine(Shown.Plain(text));
        at.Out.WriteLine(ink.Strong(Shown.Plain($"Service access as built: {job.Title}")));
        if (upkeep.Parts.Count == 0)
        {
            Say("no part says how often it asks for service: note that first");
            return;
        }
        Sum(at, ink);
        at.Out.WriteLine();
        at.Out.WriteLine("  min/year     see   reach  remove  depth  part");
        foreach (var part in upkeep.Parts)
            Say(string.Create(CultureInfo.InvariantCulture, $"{PerYear(part),10}{Cell(part.See),8}{Cell(part.Reach),8}{Cell(part.Remove),8}{part.Depth?.ToString(CultureInfo.InvariantCulture) ?? "?",7}  {part.Part} {part.Name}"));
        at.Out.WriteLine(ink.Faint("  minutes there and back, all people together; depth: fewest parts out before a hand is on it; no: no way; ?: cannot tell"));
        Visits(at, ink);
        Changes(at, ink);
        at.Out.WriteLine();
        Lines(at, ink, "measure", upkeep.ToMeasure);
        foreach (var caution in upkeep.Cautions) at.Out.WriteLine($"{ink.Doubt("caution")}  {Shown.Plain(caution)}");
    }

    private void Sum(Terminal at, Ink ink)
    {
        var proved = upkeep.Visits.All(v => v.Minutes.Sureness == Sureness.Proved);
        var hours = Hours(upkeep.HoursPerYear);
        var between = upkeep.LowHoursPerYear < upkeep.HoursPerYear - 0.005 ? $"{Hours(upkeep.LowHoursPerYear)} to {hours}" : hours;
        var line = upkeep.MeanMinutes is { } mean
            ? string.Create(CultureInfo.InvariantCulture, $"{between} a year to get at what asks for service and to close up again: {upkeep.TimesPerYear:0} visits a year, {mean:0.0} min each on average")
            : "no visit has a plan, so no hours can be added up yet";
        at.Out.WriteLine(proved ? ink.Good($"{line}; proved") : ink.Doubt(line));
        if (!upkeep.IsWhole) at.Out.WriteLine(ink.Doubt($"stopped after {upkeep.Done} of {upkeep.Total} questions: the sum lacks the rest"));
        if (upkeep.Open.Any()) at.Out.WriteLine(ink.Bad($"{Count(upkeep.Open.Count(), "visit")} without a way or an answer: not in that sum, named below"));
    }

    private void Visits(Terminal at, Ink ink)
    {
        var dear = upkeep.Visits.Where(v => v.HighMinutesPerYear > 0).ToList();
        if (dear.Count > 0) Head(at, ink, "What costs most");
        foreach (var v in dear.Take(MostVisits))
        {
            var out_ = v.Minutes.PartsOut.Where(p => p != v.Part).ToList();
            at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture,
                $"{v.HighMinutesPerYear,10:0.0}  {v.Part} {NameOf(v.Part)}: {v.Need.What}; {Often(v.Need.EveryMonths)}, {Minutes(v.Minutes)} each time{(out_.Count > 0 ? $", out {(out_.Count == 1 ? "comes" : "come")} {string.Join(", ", out_)}" : "")}")));
            if (v.Minutes.Sureness == Sureness.Bracket) at.Out.WriteLine(ink.Doubt(Shown.Plain($"            {v.Minutes.Because}")));
        }
        if (dear.Count > MostVisits) at.Out.WriteLine($"          … and {dear.Count - MostVisits} more; --json has all");
        if (!upkeep.Open.Any()) return;
        Head(at, ink, "No way, or cannot tell");
        foreach (var v in upkeep.Open)
            at.Out.WriteLine(Shown.Plain($"  {v.Part} {NameOf(v.Part)}: {v.Need.What} ({Word(v.Need.Access)}): {(v.Minutes.Sureness == Sureness.Unreachable ? "no way" : "cannot tell")}: {v.Minutes.Because}"));
    }

    private void Changes(Terminal at, Ink ink)
    {
        if (changes.Thought == 0) return;
        Head(at, ink, "Single changes that would save most");
        foreach (var change in changes.Ranked)
        {
            at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"{change.SavedMinutesPerYear,10:0.0}  {change.Number}. {change.What}{(change.IsProved ? "" : " (plans not proved)")}")));
            foreach (var gain in change.Gains)
                at.Out.WriteLine(ink.Faint(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"              {gain.Visit.Part} {gain.Visit.Need.What}: {(gain.WasMinutes is { } was ? $"{was:0.#} min" : "no way")} now, {gain.NowMinutes:0.#} min then"))));
            at.Out.WriteLine(ink.Faint($"              {change.Heed}"));
        }
        if (changes.Ranked.Count == 0) at.Out.WriteLine("  none that was planned saves as much as half a minute a year");
        var rest = changes.Planned < changes.Thought && double.IsFinite(changes.RestSavesAtMost)
            ? string.Create(CultureInfo.InvariantCulture, $"; none of the others saves more than {changes.RestSavesAtMost:0.0} min a year") : "";
        at.Out.WriteLine(ink.Faint($"  each planned on the changed van; {(changes.IsWhole ? "" : "stopped early: ")}{changes.Planned} of {changes.Thought} planned{rest}"));
        if (changes.Ranked.Count > 0) at.Out.WriteLine(ink.Faint(Shown.Plain($"  wain access {named} --change 1 --out FILE writes the job with change 1 made")));
    }

    private static void Head(Terminal at, Ink ink, string text)
    {
        at.Out.WriteLine();
        at.Out.WriteLine(ink.Strong(text));
    }

    private static void Lines(Terminal at, Ink ink, string word, IReadOnlyList<string> lines)
    {
        foreach (var line in lines.Take(MostLooks)) at.Out.WriteLine($"{ink.Doubt(word)}  {Shown.Plain(line)}");
        if (lines.Count > MostLooks) at.Out.WriteLine($"{ink.Doubt(word)}  … and {lines.Count - MostLooks} more; --json has all");
    }

    private static object Of(AccessMinutes minutes) => new
    {
        known = minutes.Sureness,
        lowMinutes = minutes.LowMinutes,
        highMinutes = minutes.HighMinutes,
        partsOut = minutes.PartsOut.Select(p => p.Text),
        because = minutes.Because,
    };

    private string NameOf(PartId id) => job.Parts.First(p => p.Id == id).Name;

    private static string PerYear(PartAccess part)
    {
        if (part.Visits.All(v => v.Minutes.HighMinutes is null)) return part.Visits.Any(v => v.Minutes.Sureness == Sureness.Unreachable) ? "no" : "?";
        var sum = part.Visits.Sum(v => v.HighMinutesPerYear ?? 0).ToString("0.0", CultureInfo.InvariantCulture);
        return part.Visits.Any(v => v.Minutes.HighMinutes is null) ? $"{sum}+?" : sum;
    }

    private static string Cell(AccessMinutes m) => m.Sureness switch
    {
        Sureness.Proved => m.HighMinutes!.Value.ToString("0", CultureInfo.InvariantCulture),
        Sureness.Bracket => string.Create(CultureInfo.InvariantCulture, $"{m.LowMinutes:0}-{m.HighMinutes:0}"),
        Sureness.Unreachable => "no",
        Sureness.NotAsked => "…",
        _ => "?",
    };

    private static string Minutes(AccessMinutes m) => m.Sureness == Sureness.Bracket
        ? string.Create(CultureInfo.InvariantCulture, $"{m.LowMinutes:0.#} to {m.HighMinutes:0.#} min")
        : string.Create(CultureInfo.InvariantCulture, $"{m.HighMinutes:0.#} min");

    private static string Hours(double hours) => string.Create(CultureInfo.InvariantCulture, $"{hours:0.0} h");

    private static string Count(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";

    private static string Word(ServiceAccess how) => how switch { ServiceAccess.See => "look at it", ServiceAccess.Reach => "get a hand to it", _ => "take it out" };

    private static string Often(double months) => months switch
    {
        12 => "once a year",
        < 12 when 12 / months % 1 == 0 => string.Create(CultureInfo.InvariantCulture, $"{12 / months:0} times a year"),
        > 12 when months / 12 % 1 == 0 => string.Create(CultureInfo.InvariantCulture, $"every {months / 12:0} years"),
        _ => string.Create(CultureInfo.InvariantCulture, $"every {months:0.##} months"),
    };
}
