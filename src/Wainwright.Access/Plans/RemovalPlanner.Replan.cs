using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Access;

public sealed partial class RemovalPlanner
{
    /// <summary>A new plan for what is left when the van is not as recorded. What is done stays done, and what was learned is used.</summary>
    /// <param name="before">A plan of this planner.</param>
    /// <param name="now">How the van turned out to be.</param>
    /// <exception cref="ArgumentException">A step, a joint or a part is not there, or a part found has an id that is taken.</exception>
    public Replanned Replan(RemovalPlan before, Reality now)
    {
        if (before.Question is not { } question) throw new ArgumentException("This plan was not made by a planner.", nameof(before));
        var steps = now.Done.Distinct().Order().Select(n => before.Steps.FirstOrDefault(s => s.Number == n) ?? throw new ArgumentException($"The plan has no step {n}.", nameof(now))).ToList();
        List<RemovalStep> done = [.. doneBefore, .. steps, .. UndoneAnyway(now).Select(i => StandIn(scene.Items[i]))];
        var job = AsFound(now);
        var told = options with { MustStay = [.. options.MustStay, .. now.DoNotMove] };
        if (now.DoNotMove.FirstOrDefault(p => scene.PartOf(p) is null) is { Text: not null } unknown) throw new ArgumentException($"No part {unknown} in this job.", nameof(now));
        var next = ReferenceEquals(job, scene.Job)
            ? new RemovalPlanner(scene, told, done, planner, () => Given(favourable.Value, done))
            : Made(job, told, done, now);
        var plan = next.Plan(question.Wanted, before.Kind, before.Proved is { Outcome: Solved was, Keys: var keys } ? (was, keys) : null);
        double Left(RemovalPlan p, Func<RemovalStep, bool> open) => p.Steps.Where(open).Sum(s => s.OutMinutes + s.BackMinutes + s.DamageMinutes);
        double? more = before.Steps.Count == 0 || (plan.Steps.Count == 0 && plan.Proof == Proof.ProvedUnreachable) ? null : Left(plan, _ => true) - Left(before, s => !now.Done.Contains(s.Number));
        return new(next, plan, done, [.. Said(now), .. Differences(before, now, plan, more)], more);
    }

    private static (Scene Scene, Planner Planner) Given((Scene Scene, Planner Planner) of, List<RemovalStep> done) =>
        (of.Scene, of.Planner.With(of.Scene.Puzzle.Costs, AlreadyDone.In(of.Scene, done)));

    /// <summary>A planner of the changed job that knows what this one has learned, as far as it still holds.</summary>
    private RemovalPlanner Made(Job job, AccessOptions told, List<RemovalStep> done, Reality now)
    {
        var (changed, found) = (now.Joints.Keys.Select(j => $"undo {j}").ToHashSet(), now.Found.Select(p => p.Id).ToList());
        var next = new RemovalPlanner(new(job, told, optimistic: false), told, done, null, () =>
        {
            var loose = new Scene(job, told, optimistic: true);
            var its = new Planner(loose.Puzzle).With(loose.Puzzle.Costs, AlreadyDone.In(loose, done));
            if (favourable.IsValueCreated) Carryover.From(favourable.Value.Scene, favourable.Value.Planner, AlreadyDone.In(favourable.Value.Scene, doneBefore), loose, its, changed, found);
            return (loose, its);
        });
        Carryover.From(scene, planner, given, next.scene, next.planner, changed, found);
        return next;
    }

    private List<int> UndoneAnyway(Reality now) => [.. scene.Items.Select((item, i) => (item, i))
        .Where(p => p.item is Undo undo && now.Joints.TryGetValue(undo.Joint.Id, out var state) && state == JointNow.Undone).Select(p => p.i)];

    private static RemovalStep StandIn(Item item) => new()
    {
        Number = 0, Kind = StepKind.Undo, Joint = ((Undo)item).Joint.Id, Part = ((Undo)item).Joint.Part, Key = ItemKey.Of(item), Action = "found undone",
        OutMinutes = 0, BackMinutes = 0, DamageMinutes = 0, Origin = "", People = 1, Why = new(null, null, "found undone", false), Path = [], With = [], Cautions = [],
    };

    /// <summary>The job with its joints and parts as found; the same one when none of them changed.</summary>
    private Job AsFound(Reality now)
    {
        var job = scene.Job;
        foreach (var (id, state) in now.Joints)
        {
            if (job.Joints.FirstOrDefault(j => j.Id == id) is not { } joint) throw new ArgumentException($"No joint {id} in this job.", nameof(now));
            if (state == JointNow.Undone) continue;
            var changed = state == JointNow.Sheared
                ? joint with { State = FixingState.Sheared, StateCount = null, Release = joint.Release with { Way = ReleaseWay.Drill, Minutes = null } }
                : joint with { Type = FixingType.Adhesive, Release = joint.Release with { Way = ReleaseWay.Pry, Destructive = true, Minutes = null, ToolMm = null } };
            job = job with { Joints = [.. job.Joints.Select(j => j.Id == id ? changed : j)] };
        }
        foreach (var id in now.Glued)
        {
            if (scene.PartOf(id) is null) throw new ArgumentException($"No part {id} in this job.", nameof(now));
            job = job with { Joints = [.. job.Joints, Glue(id, job)] };
        }
        foreach (var part in now.Found)
        {
            if (job.Parts.Any(p => p.Id == part.Id)) throw new ArgumentException($"There is a part {part.Id} already.", nameof(now));
            job = job with { Parts = [.. job.Parts, part] };
        }
        return job;
    }

    private static Joint Glue(PartId part, Job job)
    {
        var id = Enumerable.Range(1, int.MaxValue).Select(n => new JointId($"{part}-glue found {n}")).First(i => job.Joints.All(j => j.Id != i));
        return new() { Id = id, Part = part, Type = FixingType.Adhesive, Count = 1, Release = new() { Way = ReleaseWay.Pry, Destructive = true }, Known = Known.Seen };
    }

    private IEnumerable<string> Said(Reality now)
    {
        foreach (var (id, state) in now.Joints)
        {
            var joint = scene.Job.Joints.First(j => j.Id == id);
            var what = $"{id} of {Wording.Name(scene.PartOf(joint.Part))}";
            yield return state switch
            {
                JointNow.Undone => $"{what} is undone already.",
                JointNow.Sheared => $"{what} is sheared: drill it.",
                _ => $"{what} is stuck fast: prised or cut, which spoils what it holds.",
            };
        }
        foreach (var id in now.Glued) yield return $"{Wording.Name(scene.PartOf(id))} is glued: prised off, and spoiled.";
        foreach (var id in now.DoNotMove) yield return $"{Wording.Name(scene.PartOf(id))} does not move: it stays in.";
        foreach (var part in now.Found) yield return $"{Wording.Name(part)} was found; it stands in the way like any other part. How it is held is not recorded: it is taken to be loose. Look, and weigh it.";
    }

    private IEnumerable<string> Differences(RemovalPlan before, Reality now, RemovalPlan plan, double? more)
    {
        var was = before.Steps.Where(s => !now.Done.Contains(s.Number)).SelectMany(Out).Distinct().ToList();
        var is_ = plan.Steps.SelectMany(Out).Distinct().ToList();
        if (plan.Steps.Count > 0)
        {
            if (is_.Except(was).ToList() is { Count: > 0 } too) yield return $"Comes out too: {string.Join(", ", too.Select(p => Wording.Name(scene.PartOf(p) ?? now.Found.FirstOrDefault(f => f.Id == p))))}.";
            if (was.Except(is_).ToList() is { Count: > 0 } not) yield return $"Stays in now: {string.Join(", ", not.Select(p => Wording.Name(scene.PartOf(p))))}.";
        }
        if (more is { } minutes)
            yield return Math.Abs(minutes) < 0.05 ? "As long as before." : string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(minutes):0.#} min {(minutes > 0 ? "more" : "less")} than was left.");
        else if (plan.Proof == Proof.ProvedUnreachable) yield return "There is no way any more by these moves.";

        static IEnumerable<PartId> Out(RemovalStep s) => s.Kind is StepKind.TakeOut or StepKind.TakePiece ? s.With.Prepend(s.Part!.Value) : [];
    }
}
