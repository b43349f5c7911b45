using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Survey;
using Wainwright.Survey.Retention;
using Wainwright.Survey.Retention.Fix;

namespace Wainwright.Cli;

/// <summary>What would make a part hold, as it is shown: to a person in words, to a program as JSON.</summary>
internal sealed class MendAnswer(Job job, Mend mend, string? file)
{
    /// <summary>The job with all of it done; absent when nothing was found that would do.</summary>
    public Job? Made => mend.Mended;

    /// <summary>As the part is held once mended; as found where nothing was found that would do.</summary>
    public int Exit => Then.Verdict switch
    {
        Verdict.Holds when mend.ChecksAfter.All(c => c.Verdict == Verdict.Holds) => Cli.Exit.Done,
        Verdict.FallsShort => Cli.Exit.FallsShort,
        _ => Cli.Exit.CannotTell,
    };

    private PartHolding Then => mend.After ?? mend.Before;

    public object ForPrograms() => new
    {
        job = job.Id,
        part = mend.Part,
        caution = JobHolding.Caution,
        before = new { verdict = mend.Before.Verdict, because = mend.Before.Because },
        steps = mend.Steps.Select(s => new { what = s.What, count = s.Count, at = s.At.Select(p => new[] { p.XMm, p.YMm, p.ZMm }), minutes = s.Minutes, material = s.Material }),
        price = Math.Round(mend.Price, 2),
        currency = job.Currency,
        isCheapest = mend.IsCheapest,
        whyNot = mend.WhyNot,
        cautions = mend.Cautions,
        after = mend.After is { } after ? new { verdict = after.Verdict, because = after.Because } : null,
        checksAfter = mend.ChecksAfter.Select(c => new { id = c.Id, claim = c.Claim, verdict = c.Verdict, because = c.Because }),
        file = mend.Mended is null ? null : file,
    };

    public void InWords(Terminal at)
    {
        var ink = new Ink(at.Colour);
        var part = mend.Before.Part;
        at.Out.WriteLine($"{HoldAnswer.Word(ink, mend.Before.Verdict)}  {ink.Strong(Shown.Plain($"{part.Id} {part.Name}"))} as found: {Shown.Plain(mend.Before.Because)}");
        if (mend.WhyNot is { } why) at.Out.WriteLine(Shown.Plain($"no mend found: {why}"));
        foreach (var step in mend.Steps)
            at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"  {step.What}: {step.Minutes:0} min, {step.Material:0.##} material{(step.At.Count > 0 ? $"; at {string.Join("; ", step.At)}" : "")}")));
        if (mend.Steps.Count > 0)
            at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"  together {mend.Price:0.00}{(job.Currency is { } money ? $" {money}" : "")}{(mend.IsCheapest ? ", and no other choice of these fixings is cheaper" : ", the cheapest that was found")}; minutes and prices are common practice, no source")));
        if (mend.After is { } after) at.Out.WriteLine($"{HoldAnswer.Word(ink, after.Verdict)}  once that is done: {Shown.Plain(after.Because)}");
        foreach (var check in mend.ChecksAfter) at.Out.WriteLine($"{HoldAnswer.Word(ink, check.Verdict)}  {Shown.Plain(check.Claim)}: {Shown.Plain(check.Because)}");
        if (file is not null && mend.Mended is not null) at.Out.WriteLine(Shown.Plain($"{file}: {job.Id} with that done, as planned; look at each fixing once it is in"));
        foreach (var caution in mend.Cautions) at.Out.WriteLine(ink.Faint(Shown.Plain($"caution: {caution}")));
    }
}
