using System.Globalization;
using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Cli;

/// <summary>What a plan's answer says beside the steps when it is asked: audit, certificate, other plans, prices of keeping.</summary>
internal sealed class PlanMore(Job job, RemovalPlan plan)
{
    public void InWords(Terminal at, Ink ink, PlanAnswer answer)
    {
        if (answer.Tape is { } tape) WhenOff(at, ink, tape);
        if (answer.Others is { } others) OtherWays(at, ink, others);
        foreach (var kept in answer.Keeping ?? []) at.Out.WriteLine(Shown.Plain($"  to keep {Name(kept.Part)} in: {Price(kept)}"));
        if (answer.Audit is { } audit) Replayed(at, ink, audit);
        if (answer.Certificate is { } proof) Proved(at, ink, proof);
    }

    private static void WhenOff(Terminal at, Ink ink, TightLoose tape)
    {
        string Told(RemovalPlan off) => off.Steps.Count == 0 ? "no way" : $"{PlanAnswer.Minutes(off.TotalMinutes)}, out: {string.Join(' ', off.PartsOut)}";
        at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"measures off by {tape.TapeMm:0.#} mm: parts larger, {Told(tape.Tight)}; parts smaller, {Told(tape.Loose)}")));
        at.Out.WriteLine(tape.IsSettled ? ink.Good("  the same parts come out either way") : ink.Doubt("  the measures decide which parts come out"));
        foreach (var again in tape.MeasureAgain) at.Out.WriteLine($"{ink.Doubt("measure")}  {Shown.Plain(again.Words)}");
    }

    private void OtherWays(Terminal at, Ink ink, OtherPlans others)
    {
        foreach (var (other, number) in others.Others.Select((o, i) => (o, i + 1)))
        {
            at.Out.WriteLine(Shown.Plain($"another way {number}: {Amount(other.More)} more, {PlanAnswer.Minutes(other.Plan.TotalMinutes)} in all"));
            at.Out.WriteLine(Shown.Plain($"  stays in: {Names(other.StayIn)}{(other.ComeOutToo.Count > 0 ? $"; comes out instead: {Names(other.ComeOutToo)}" : "")}"));
        }
        if (others.AreAll) at.Out.WriteLine(others.Others.Count == 0 ? "there is no really different way: every other plan takes out the same parts, and more" : "there is no further really different way");
        else if (!others.AreProved) at.Out.WriteLine(ink.Doubt("the search for other ways ended early: one may be missing"));
    }

    private string Price(KeepingPrice kept) => kept switch
    {
        { More: null } => "no plan then",
        { IsProved: true, More: < 0.05 } => "costs nothing",
        { IsProved: false, More: { } more } => $"about {Amount(more)} more; the search ended early",
        { More: { } more } => $"{Amount(more)} more",
    };

    private string Amount(double more) => plan.Sought?.Objective == Objective.FewestPartsOut
        ? string.Create(CultureInfo.InvariantCulture, $"{more:0.#} {(Math.Abs(more - 1) < 0.05 ? "part" : "parts")}")
        : PlanAnswer.Minutes(more);

    private static void Replayed(Terminal at, Ink ink, AuditReport audit)
    {
        at.Out.WriteLine(audit.Holds
            ? ink.Good($"audit: replayed step by step without a fault; {audit.Loads} loads and {audit.Hands} hands walked along their ways")
            : ink.Bad("audit: the plan has a fault. It is a fault of the program: do not work by this plan, and send in the job"));
        foreach (var fault in audit.Faults) at.Out.WriteLine(Shown.Plain($"  {fault}"));
        foreach (var dark in audit.NotShown) at.Out.WriteLine(ink.Faint(Shown.Plain($"  not shown: {dark}")));
    }

    private static void Proved(Terminal at, Ink ink, CertificateFile proof)
    {
        at.Out.WriteLine(Shown.Plain($"certificate: {proof.Path}"));
        if (proof.Faults is null) return;
        at.Out.WriteLine(proof.Faults.Count == 0
            ? ink.Good("certificate: read back and checked sentence by sentence; all of it holds")
            : ink.Bad("certificate: it does not hold. It is a fault of the program: do not rely on the proof, and send in the job"));
        foreach (var fault in proof.Faults) at.Out.WriteLine(Shown.Plain($"  {fault}"));
    }

    private string Names(IEnumerable<PartId> parts) => string.Join(", ", parts.Select(Name));

    private string Name(PartId id) => job.Parts.FirstOrDefault(p => p.Id == id) is { } part ? $"{id} {part.Name}" : id.Text;
}
