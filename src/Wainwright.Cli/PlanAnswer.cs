using System.Globalization;
using Wainwright.Access;
using Wainwright.Fitout;

namespace Wainwright.Cli;

/// <summary>A removal plan as it is shown: to a person in words, to a program as JSON.</summary>
internal sealed class PlanAnswer(Job job, RemovalPlan plan)
{
    /// <summary>More lines of what holds what than a person reads.</summary>
    private const int MostHeld = 12, MostChanges = 6;

    /// <summary>The replay of the plan; absent when it was not asked for.</summary>
    public AuditReport? Audit { get; init; }

    /// <summary>The certificate that was written; absent when none was.</summary>
    public CertificateFile? Certificate { get; init; }

    /// <summary>The stage of the job that the plan starts from; absent when the job has none.</summary>
    public Stage? From { get; init; }

    /// <summary>What changed where it was planned anew.</summary>
    public Replanned? Anew { get; init; }

    /// <summary>Other plans; absent when they were not asked for.</summary>
    public OtherPlans? Others { get; init; }

    /// <summary>What keeping parts in costs; absent when it was not asked.</summary>
    public IReadOnlyList<KeepingPrice>? Keeping { get; init; }

    /// <summary>Single changes with which there would be a way; none where there is one.</summary>
    public IReadOnlyList<FreeingChange> Changes { get; init; } = [];

    /// <summary>What blocks the parts asked about; absent when it was not asked.</summary>
    public IReadOnlyList<Blocking>? WhatBlocks { get; init; }

    /// <summary>The plan when the measures are off; absent when it was not asked.</summary>
    public TightLoose? Tape { get; init; }

    public int Exit => Audit is { Holds: false } || Certificate is { Faults.Count: > 0 } ? Cli.Exit.OurFault : plan.CannotTell ? Cli.Exit.CannotTell : plan.Proof == Proof.ProvedUnreachable ? Cli.Exit.FallsShort : Cli.Exit.Done;

    private bool Proved => Exit != Cli.Exit.OurFault && plan.IsProved;

    public object ForPrograms() => new
    {
        target = string.Join(' ', plan.Targets),
        targets = plan.Targets.Select(t => t.Text),
        reachOnly = plan.ReachOnly,
        stage = From?.Id.Text,
        answer = Exit switch { Cli.Exit.Done => "plan", Cli.Exit.FallsShort => "unreachable", Cli.Exit.OurFault => "fault", _ => "cannotTell" },
        proved = Proved,
        lowerBoundMinutes = plan.LowerBoundMinutes,
        totalMinutes = plan.TotalMinutes,
        outMinutes = plan.OutMinutes,
        backMinutes = plan.BackMinutes,
        damageMinutes = plan.DamageMinutes,
        lowMinutes = plan.Bracket?.LowMinutes ?? plan.LowerBoundMinutes,
        steps = plan.Steps.Select(s => new
        {
            number = s.Number,
            part = s.Part?.Text,
            joint = s.Joint?.Text,
            line = s.Line?.Text,
            kind = s.Kind,
            action = s.Action,
            minutes = s.OutMinutes,
            backMinutes = s.BackMinutes,
            damageMinutes = s.DamageMinutes,
            origin = s.Origin,
            people = s.People,
            why = s.Why.Words,
            whyFor = s.Why.ForPart?.Text,
            inEveryPlan = s.Why.InEveryPlan,
            through = s.Through,
            with = s.With.Select(p => p.Text),
            licence = s.Licence,
            cautions = s.Cautions,
            tilted = s.Path.Any(p => p.Turned is not null),
            key = s.Key,
            onTrial = s.OnTrial,
            lift = s.Lift is null ? null : new { massKg = s.Lift.MassKg, oneKg = s.Lift.OneKg, twoKg = s.Lift.TwoKg, people = s.Lift.People, words = s.Lift.Words },
            whyOneOf = s.Why.OneOf,
            whyOneOfFor = s.Why.OneOfFor,
            whyWall = s.Why.Wall.Select(Block),
        }),
        blockedBy = plan.BlockedBy.Select(Block),
        heldForGood = plan.HeldForGood.Select(h => new { what = h.What, part = h.Part?.Text, by = h.By, byParts = h.ByParts.Select(p => p.Text), nearestOpening = h.NearestOpening, millimetres = h.ShortMm, landing = h.Landing?.Words, tilting = h.Tilt?.Words }),
        assumes = plan.Assumes,
        toMeasure = plan.ToMeasure,
        cautions = plan.Cautions,
        audit = Audit is null ? null : new { holds = Audit.Holds, faults = Audit.Faults, loads = Audit.Loads, hands = Audit.Hands, notShown = Audit.NotShown },
        kind = plan.Kind,
        sought = plan.Sought is null ? null : new { objective = plan.Sought.Objective, value = plan.Sought.Value, noPlanBelow = plan.Sought.NoPlanBelow },
        certificate = Certificate is null ? null : new { file = Certificate.Path, isChecked = Certificate.Faults is not null, faults = Certificate.Faults },
        anew = Anew is null ? null : new { changed = Anew.Changed, moreMinutes = Anew.MoreMinutes, done = Anew.Done.Where(s => s.Number > 0).Select(s => s.Key) },
        others = Others is null ? null : new { fragility = Others.Fragility, areAll = Others.AreAll, areProved = Others.AreProved, plans = Others.Others.Select(Other) },
        keeping = Keeping?.Select(k => new { part = k.Part.Text, more = k.More, proved = k.IsProved }),
        wouldFree = Changes.Select(c => new { kind = c.Kind, words = c.Words, millimetres = c.Mm, isLeast = c.IsLeast, opening = c.Opening, part = c.Part?.Text, joint = c.Joint?.Text }),
        whatBlocks = WhatBlocks?.Select(Block),
        tape = Tape is null ? null : new
        {
            tapeMillimetres = Tape.TapeMm,
            isSettled = Tape.IsSettled,
            tight = Off(Tape.Tight),
            loose = Off(Tape.Loose),
            measureAgain = Tape.MeasureAgain.Select(m => new { part = m.Part.Text, along = m.Along, recordedMillimetres = m.RecordedMm, spareMillimetres = m.SpareMm, beside = m.Beside.Select(p => p.Text), words = m.Words }),
        },
    };

    private static object Off(RemovalPlan off) => new { found = off.Steps.Count > 0, totalMinutes = off.TotalMinutes, partsOut = off.PartsOut.Select(p => p.Text) };

    private static object Block(Blocking b) => new { target = b.Target.Text, part = b.Part?.Text, direction = b.Direction, millimetres = b.ShortMm, freeMillimetres = b.FreeMm, dodge = b.Dodge };

    private static object Other(OtherPlan o) => new
    {
        more = o.More,
        totalMinutes = o.Plan.TotalMinutes,
        stayIn = o.StayIn.Select(p => p.Text),
        comeOutToo = o.ComeOutToo.Select(p => p.Text),
        steps = o.Plan.Steps.Select(s => new { number = s.Number, action = s.Action, minutes = s.OutMinutes, through = s.Through }),
    };

    public void InWords(Terminal at)
    {
        var ink = new Ink(at.Colour);
        void Say(string text) => at.Out.WriteLine(Shown.Plain(text));
        at.Out.WriteLine(ink.Strong(Shown.Plain($"{plan.Kind switch { AccessKind.See => "See", AccessKind.Reach => "Reach", _ => "Take out" }} {string.Join(" and ", plan.Targets.Select(Name))}")));
        if (From is { PartsOut.Count: > 0 } stage) Say($"  from the stage “{stage.Name}” on: {string.Join(", ", stage.PartsOut)} out already");
        foreach (var why in plan.WhyNotTold) at.Out.WriteLine($"{ink.Doubt("cannot tell")}  {Shown.Plain(why)}");
        foreach (var changed in Anew?.Changed ?? []) Say($"  {changed}");
        if (plan.Proof is Proof.ProvedCheapest or Proof.BestFound) Way(at, ink);
        else NoWay(at, ink);

        foreach (var b in plan.BlockedBy) Say($"  with nothing out, {Stopped(b)}");
        foreach (var b in WhatBlocks ?? []) Say($"  {Stopped(b)}; {b.ShortMm} mm {Word(b.Dodge)} would clear it");
        foreach (var look in plan.ToMeasure) at.Out.WriteLine($"{ink.Doubt("measure")}  {Shown.Plain(look)}");
        foreach (var caution in plan.Cautions) at.Out.WriteLine($"{ink.Doubt("caution")}  {Shown.Plain(caution)}");
        new PlanMore(job, plan).InWords(at, ink, this);
    }

    private void NoWay(Terminal at, Ink ink)
    {
        if (!plan.CannotTell) at.Out.WriteLine(ink.Bad("proved: there is no way by these moves, whatever comes out"));
        foreach (var held in plan.HeldForGood.Take(MostHeld)) at.Out.WriteLine(Shown.Plain($"  {held.Words}"));
        if (Changes.Count > 0) at.Out.WriteLine("what would free it, tried one by one:");
        foreach (var change in Changes.Take(MostChanges)) at.Out.WriteLine(Shown.Plain($"  {change.Words}"));
        if (plan.HeldForGood.Count > MostHeld) at.Out.WriteLine($"  … and {plan.HeldForGood.Count - MostHeld} more; --json has all");
    }

    private void Way(Terminal at, Ink ink)
    {
        at.Out.WriteLine(plan.CannotTell ? ink.Doubt($"{Minutes(plan.TotalMinutes)}, as far as it is measured")
            : Proved ? ink.Good($"{Minutes(plan.TotalMinutes)}, proved: no plan made of these moves {plan.NoOther(Minutes)}")
            : ink.Doubt($"{Minutes(plan.TotalMinutes)}, the best found; {plan.NoneBelow(Minutes)}"));
        at.Out.WriteLine($"  out {Minutes(plan.OutMinutes)}, back {Minutes(plan.BackMinutes)}, to put right what is spoiled {Minutes(plan.DamageMinutes)}");
        if (plan.Bracket is { LowMinutes: { } low } bracket)
            at.Out.WriteLine(Shown.Plain($"  {Minutes(low)} if round and slanting parts are as small as they can be and nothing needs clearance{(bracket.Differs.Count > 0 ? $": a trial fit may save {string.Join(", ", bracket.Differs)}" : "")}"));
        foreach (var step in plan.Steps)
        {
            var more = $"{(step.Through is { } door ? $", through {door}" : "")}{(step.People > 1 ? $", {step.People} people" : "")}{(step.Licence is { } licence ? $" (licence: {licence})" : "")}";
            at.Out.WriteLine(Shown.Plain(string.Create(CultureInfo.InvariantCulture, $"{step.Number,4}  {step.OutMinutes,6:0.0} min  {step.Action}{more}")));
            at.Out.WriteLine(ink.Faint(Shown.Plain($"                  {step.Why.Words}{Wall(step.Why)}")));
            if (step.Why is { OneOf.Count: > 1, OneOfFor: { } whose }) at.Out.WriteLine(ink.Faint(Shown.Plain($"                  {whose} needs one of: {string.Join("; ", step.Why.OneOf)}. The cheapest is the first")));
        }
    }

    private static string Wall(Because why) => why.Wall.Count == 0 ? "" :
        $" ({string.Join("; ", why.Wall.Take(2).Select(b => string.Create(CultureInfo.InvariantCulture, $"{Word(b.Direction)} {b.FreeMm} mm, then {b.ShortMm} mm too large")))})";

    private string Stopped(Blocking b) => string.Create(CultureInfo.InvariantCulture,
        $"{b.Target} {Word(b.Direction)}: {b.FreeMm} mm, then {(b.Part is { } p ? Name(p) : "the van itself")}, {b.ShortMm} mm too large to pass");

    private string Name(PartId id) => $"{id} {job.Parts.First(p => p.Id == id).Name}";

    private static string Word(Direction direction) => direction.ToString().ToLowerInvariant();

    internal static string Minutes(double minutes) => minutes < 90
        ? string.Create(CultureInfo.InvariantCulture, $"{minutes:0.#} min")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(Math.Round(minutes) / 60):0} h {Math.Round(minutes) % 60:00} min");
}
