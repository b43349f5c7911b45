using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Survey.Retention;

/// <summary>What the figures of a part amount to: verdict, reason, the one look.</summary>
internal static class Worded
{
    public static PartHolding Of(PartHolding part, Job job, IReadOnlyList<LoadCase> cases, JointWorths worth)
    {
        var answers = cases.Select(c => Judged(part, c)).ToList();
        var verdict = answers.Exists(a => a.Verdict == Verdict.FallsShort) ? Verdict.FallsShort : answers.Exists(a => a.Verdict == Verdict.CannotTell) ? Verdict.CannotTell : Verdict.Holds;
        var telling = answers.Where(a => a.Verdict == verdict).OrderBy(Share).First();
        var weakest = telling.Governing is { } id ? worth.Joint(id) : null;
        var gives = weakest is null ? null : worth[weakest.Id].GivesBy;
        return part with
        {
            Cases = answers,
            Verdict = verdict,
            Weakest = weakest?.Id,
            GivesBy = gives,
            Because = Because(part, telling, weakest, gives),
            NextLook = verdict == Verdict.CannotTell ? NextLook(part, job, telling, worth) : null,
        };
    }

    /// <summary>A figure in g as people read it.</summary>
    public static string G(Span g)
    {
        if (double.IsPositiveInfinity(g.Low)) return "thrown against what holds it";
        return One(g.Low) == One(g.High) ? $"{One(g.Likely)} g" : $"{One(g.Likely)} g ({One(g.Low)} to {One(g.High)})";
    }

    private static string One(double v) => double.IsPositiveInfinity(v) ? "no end" : v.ToString(v < 9.95 ? "0.0" : "0", CultureInfo.InvariantCulture);

    private static double Share(CaseAnswer answer) => answer.FactorG is { } g ? g.Likely / answer.DemandG : 1;

    private static CaseAnswer Judged(PartHolding part, LoadCase load)
    {
        CaseAnswer? worst = null;
        foreach (var (way, g) in AskedG.Of(load))
        {
            var thrown = part.Directions.First(d => (d.Way - way).Length < 1e-6);
            var verdict = thrown.FactorG is { } factor ? Check.Judge(Span.Exactly(g), factor) : Verdict.CannotTell;
            var answer = new CaseAnswer(load, verdict, thrown.Words, g, thrown.FactorG, thrown.Governing);
            // every day's driving must leave nothing behind: what keeps a set sooner is short of it, whatever it would bear once
            if (AskedG.IsDriving(load) && part.Pulled is { KeepsAtG: { } keeps, Toward: { } toward } && (PullWay.Of(toward) - way).Length < 1e-6 && keeps.Likely < (thrown.FactorG?.Likely ?? double.PositiveInfinity))
                answer = answer with { Verdict = Check.Judge(Span.Exactly(g), keeps), FactorG = keeps, ByPull = true };
            if (worst is null || Rank(answer) < Rank(worst) || (Rank(answer) == Rank(worst) && Share(answer) < Share(worst))) worst = answer;
        }
        return worst!;
    }

    private static int Rank(CaseAnswer answer) => answer.Verdict switch { Verdict.FallsShort => 0, Verdict.CannotTell => 1, _ => 2 };

    private static string Because(PartHolding part, CaseAnswer telling, Joint? weakest, string? gives)
    {
        var asked = string.Create(CultureInfo.InvariantCulture, $"{telling.DemandG:0.0#} g asked {telling.Worst} ({LoadCaseWords.Of(telling.Case)})");
        if (telling.FactorG is not { } g) return $"as recorded nothing carries it at rest, and yet it is there: what carries it is not recorded; {asked}";
        if (g is { High: <= 0 } && part.HeldBy == HeldBy.Fixings) return $"as recorded it does not stay in its place even at rest: it swings, slips or drops; {asked}{By(part, weakest, gives)}";
        if (telling.ByPull) return $"{(part.Pulled!.Part.Id == part.Part.Id ? "" : $"{part.Pulled.Part.Id}, which holds it: ")}{part.Pulled.Words()}: it keeps a millimetre at {G(g)}; {asked}";
        var loose = part.HeldBy switch { HeldBy.Nothing => "nothing holds it: ", HeldBy.NothingLeft => "none of its fixings is left: ", _ => "" };
        var moves = part.HeldBy is HeldBy.Nothing or HeldBy.NothingLeft ? "it slides, tips or lifts at" : telling.Verdict == Verdict.Holds ? "it holds to" : "it comes loose at";
        return $"{loose}{moves} {G(g)}; {asked}{By(part, weakest, gives)}";
    }

    private static string By(PartHolding part, Joint? weakest, string? gives)
    {
        var through = part.Through.Count > 0 && weakest is not null && weakest.Part != part.Part.Id ? $", which hold {weakest.Part}" : "";
        return weakest is null ? "" : $"; weakest: {JointWords.Of(weakest)}{through}{(gives is null ? "" : $" ({gives})")}";
    }

    /// <summary>Of all that would narrow the doubt, what could change the deciding joint most.</summary>
    private static string NextLook(PartHolding part, Job job, CaseAnswer telling, JointWorths worth)
    {
        if (telling.FactorG is null) return $"what carries {part.Part.Id} {part.Part.Name} at rest: every fixing, its place, and what it stands on";
        var held = new HashSet<PartId>(part.Through) { part.Part.Id };
        var joints = job.Joints.Where(j => held.Contains(j.Part) && HeldChain.Carries(j.Type)).ToList();
        var decides = telling.Governing is { } id ? joints.Where(j => j.Id == id) : [];
        var look = decides.SelectMany(j => worth[j.Id].Looks.Select(l => (Joint: j, Look: l))).OrderByDescending(l => l.Look.Ratio).FirstOrDefault();
        if (look.Look is null) look = joints.SelectMany(j => worth[j.Id].Looks.Select(l => (Joint: j, Look: l))).OrderByDescending(l => l.Look.Ratio).FirstOrDefault();
        return look.Look is null
            ? part.HeldBy is HeldBy.Nothing ? $"at which slope {part.Part.Name} begins to slide" : $"a pull on {part.Part.Name} by hand gauge, with a rule beside it: force and movement in steps"
            : $"{look.Look.What} ({JointWords.Of(look.Joint)}, {look.Joint.Id})";
    }
}
