using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Labour;

namespace Wainwright.Access;

/// <summary>Replays a plan step by step on the job as it stands, by plain collision tests, and says what is wrong with it.</summary>
/// <remarks>
/// Shares nothing with the search or its free-space engine: it reads the job, the labour table and the plan. A way is walked
/// slide by slide and turn by turn; it does not look for another one.
/// </remarks>
public sealed class PlanAudit
{
    private const double SumMinutes = 1e-6;

    private readonly Job job;
    private readonly AccessOptions options;
    private readonly RemovalPlan plan;
    private readonly ILookup<int, HandWay> hands;
    private readonly Hull hull;
    private readonly Hull open;
    private readonly WhatHolds holds;
    private readonly List<StandingSolid> standing;
    private readonly List<string> faults = [], notShown = [];
    private readonly HashSet<PartId> held = [];
    private int loads, handsWalked;

    private PlanAudit(Job job, AccessOptions options, RemovalPlan plan, IReadOnlyList<HandWay> hands)
    {
        (this.job, this.options, this.plan, this.hands) = (job, options, plan, hands.ToLookup(h => h.Step));
        (hull, open) = (new(job.Vehicle), new(job.Vehicle with { Openings = [.. job.Vehicle.Openings.Select(o => o with { Passable = true })] }));
        holds = new(job, options.AlreadyOut);
        standing = [.. job.Parts.Where(p => !options.AlreadyOut.Contains(p.Id)).SelectMany(StandingSolid.Of)];
    }

    /// <summary>All that is wrong with a plan.</summary>
    /// <param name="job">The job.</param>
    /// <param name="options">What the planner was told beside.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="hands">How hand and tool come to the fixings, see <see cref="RemovalPlanner.HandWays"/>.</param>
    /// <param name="doneBefore">Steps done before the plan begins, taken as done.</param>
    public static AuditReport Of(Job job, AccessOptions options, RemovalPlan plan, IReadOnlyList<HandWay> hands, IReadOnlyList<RemovalStep>? doneBefore = null)
    {
        var audit = new PlanAudit(job, options, plan, hands);
        foreach (var step in doneBefore ?? []) audit.TakeAsDone(step);
        return audit.Run();
    }

    private void TakeAsDone(RemovalStep step)
    {
        if (step.Medium is { } medium) holds.Safe.Add(medium);
        if (step is { Kind: StepKind.Hold, Part: { } propped }) held.Add(propped);
        if (step.Joint is { } joint) holds.Undone.Add(joint);
        if (step.Line is { } line) holds.TakenOff[line] = holds.TakenOff.GetValueOrDefault(line) + 1;
        if (step.Kind is not (StepKind.TakeOut or StepKind.TakePiece)) return;
        var ids = step.With.Prepend(step.Part!.Value).ToList();
        standing.RemoveAll(s => ids.Contains(s.Part!.Id) && (step.Piece is null || s.Piece == step.Piece));
        holds.TookOut(ids.Where(i => !standing.Exists(s => s.Part!.Id == i)));
    }

    private AuditReport Run()
    {
        foreach (var step in plan.Steps)
        {
            void Fault(string what) => faults.Add(string.Create(CultureInfo.InvariantCulture, $"step {step.Number} ({step.Action}): {what}"));
            foreach (var fault in Replay(step)) Fault(fault);
            if (step.OutMinutes < 0 || step.BackMinutes < 0 || step.DamageMinutes < 0) Fault("minutes below nought");
        }
        Sums();
        foreach (var target in plan.Steps.Count == 0 ? [] : WantedOut().Where(t => !options.AlreadyOut.Contains(t) && !holds.Gone.Contains(t)))
            faults.Add($"{target} was wanted out and is still in at the end");
        return new([.. faults], [.. notShown.Distinct()], loads, handsWalked);
    }

    private IEnumerable<string> Replay(RemovalStep step)
    {
        switch (step.Kind)
        {
            case StepKind.MakeSafe:
                holds.Safe.Add(step.Medium!.Value);
                return [];
            case StepKind.Undo:
                var joint = job.Joints.FirstOrDefault(j => j.Id == step.Joint);
                if (joint is null) return ["there is no such joint"];
                List<string> wrong = [.. holds.Unsafe(joint.Id), .. Reached(step, joint), .. Minutes(step, joint)];
                if (!holds.Undone.Add(joint.Id)) wrong.Add("it was undone before");
                return wrong;
            case StepKind.Disconnect:
                var line = job.Lines.FirstOrDefault(l => l.Id == step.Line);
                if (line is null) return ["there is no such line"];
                List<string> off = [.. holds.Unsafe(line), .. Reached(step, null)];
                holds.TakenOff[line.Id] = holds.TakenOff.GetValueOrDefault(line.Id) + 1;
                return off;
            case StepKind.TakeOut:
                return TakenOut(step);
            case StepKind.TakePiece:
                return PieceTaken(step);
            case StepKind.Reach:
                return Reached(step, null);
            case StepKind.Hold:
                held.Add(step.Part!.Value);
                return [];
            case StepKind.See:
                notShown.Add($"{step.Action}: lines of sight are not walked.");
                return [];
            default:
                return [];
        }
    }

    private List<string> TakenOut(RemovalStep step)
    {
        var ids = step.With.Prepend(step.Part!.Value).ToList();
        var load = job.Parts.Where(p => ids.Contains(p.Id)).ToList();
        List<string> wrong = [.. ids.Where(i => holds.Gone.Contains(i)).Select(i => $"{i} is out already"), .. holds.Faults(load), .. People(step, load)];
        if (load.Find(p => p.Overhead && !held.Contains(p.Id)) is { } loose && !load.Exists(p => held.Contains(p.Id))) wrong.Add($"{loose.Id} drops and nobody holds it");
        if (ids.Find(i => options.MustStay.Contains(i)) is { Text: not null } stays) wrong.Add($"{stays} was to stay in");
        var own = standing.Where(s => s.Part is { } p && ids.Contains(p.Id)).ToList();
        wrong.AddRange(Walked(step, [.. own.Where(s => !s.Part!.Outside)]));
        standing.RemoveAll(own.Contains);
        holds.TookOut(ids);
        return wrong;
    }

    private List<string> PieceTaken(RemovalStep step)
    {
        var part = job.Parts.First(p => p.Id == step.Part);
        var own = standing.Where(s => s.Part == part && s.Piece == step.Piece).ToList();
        List<string> wrong = [.. holds.Faults([part])];
        if (own.Count == 0) wrong.Add("that piece is not in the van");
        if (options.MustStay.Contains(part.Id)) wrong.Add($"{part.Id} was to stay in");
        wrong.AddRange(Walked(step, own));
        standing.RemoveAll(own.Contains);
        if (!standing.Exists(s => s.Part == part)) holds.TookOut([part.Id]);
        return wrong;
    }

    private IEnumerable<string> Walked(RemovalStep step, List<StandingSolid> own)
    {
        var others = standing.Except(own).ToList();
        if (own.Count == 0 || own[0].Part!.Outside || step.Path.Count == 0)
        {
            notShown.Add($"{step.Action}: its size or its way is not modelled.");
            return own.Count > 0 && !job.Parts.First(p => p.Id == step.Part).Outside && step.Path.Count == 0 ? ["no way out is given for it"] : [];
        }
        loads++;
        var carried = new Carried(hull, others, options.ShaveMm);
        if (step.FoldedMm is not { } folded) return carried.Faults([.. own.Select(s => s.Shape)], step.Path, step.Through, Vec.Zero);
        var part = own[0].Part!;
        if (part.FoldsTo is not { } size || !IsSameSize(size, folded)) return ["it does not fold to that size"];
        notShown.Add($"{step.Action}: that it can be folded where it lies is shown only by the room it needs for it.");
        var begins = Vec.Of(step.Path[0].ShiftMm);
        List<string> wrong = [.. carried.Faults([WalkedSolid.Box(Vec.Zero, Vec.Of(folded))], step.Path, step.Through, begins)];
        if (own.Exists(s => s.Part != part)) wrong.Add("what is carried with it is not folded");
        if (!FoldedInPlace.Is((begins, begins + Vec.Of(folded)), Bounds(own), hull.Room)) wrong.Add("it is not folded where it lies");
        if (!Peeled.ComesOff([.. own.Select(s => s.Shape)], carried)) wrong.Add("it does not come off its place to be folded");
        return wrong;
    }

    private static (Vec Low, Vec High) Bounds(List<StandingSolid> own) => (
        new(own.Min(s => s.Shape.Low.X), own.Min(s => s.Shape.Low.Y), own.Min(s => s.Shape.Low.Z)),
        new(own.Max(s => s.Shape.High.X), own.Max(s => s.Shape.High.Y), own.Max(s => s.Shape.High.Z)));

    private static bool IsSameSize(Place size, Place folded)
    {
        double[] a = [Math.Ceiling(size.XMm), Math.Ceiling(size.YMm), Math.Ceiling(size.ZMm)];
        double[] b = [folded.XMm, folded.YMm, folded.ZMm];
        return a.Order().SequenceEqual(b.Order());
    }

    private IEnumerable<string> People(RemovalStep step, List<Part> load)
    {
        if (load.All(p => p.EmptyKg is not null) && load.Sum(p => p.EmptyKg!.Value.Value) is var kg && !(load[0].LooseGoods && kg <= 10)
            && (TeamLift.PeopleFor(kg, options.Labour.OnePersonKg) ?? 4) is var needed && step.People < needed)
            yield return string.Create(CultureInfo.InvariantCulture, $"{kg:0.#} kg take {needed} people, not {step.People}");
    }

    private IEnumerable<string> Minutes(RemovalStep step, Joint joint)
    {
        var (out_, back, _) = options.Labour.Of(joint);
        if (Math.Abs(out_ - step.OutMinutes) > SumMinutes || Math.Abs(back - step.BackMinutes) > SumMinutes) yield return "its minutes are not those of the labour table";
    }

    private IEnumerable<string> Reached(RemovalStep step, Joint? joint) => new HandWalk(job, open, standing).Faults(step, joint, [.. hands[step.Number]], notShown, ref handsWalked);

    private IEnumerable<PartId> WantedOut() => plan.Question is { } asked
        ? asked.Wanted.Where(w => w.Kind == AccessKind.Remove).Select(w => w.Part)
        : plan.ReachOnly ? [] : plan.Targets;

    private void Sums()
    {
        void Same(string what, double said, double sum)
        {
            if (Math.Abs(said - sum) > SumMinutes) faults.Add(string.Create(CultureInfo.InvariantCulture, $"{what}: {said:0.##} min are said and the steps add up to {sum:0.##}"));
        }
        Same("out", plan.OutMinutes, plan.Steps.Sum(s => s.OutMinutes));
        Same("back", plan.BackMinutes, plan.Steps.Sum(s => s.BackMinutes));
        Same("damage", plan.DamageMinutes, plan.Steps.Sum(s => s.DamageMinutes));
        Same("in all", plan.TotalMinutes, plan.OutMinutes + plan.BackMinutes + plan.DamageMinutes);
        if (plan.LowerBoundMinutes > plan.TotalMinutes + 0.01 && plan.Steps.Count > 0) faults.Add("the lower bound is above the plan's own minutes");
    }
}
