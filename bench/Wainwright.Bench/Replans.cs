using Wainwright.Access;
using Wainwright.Bench.Vans;
using Wainwright.Fitout;

namespace Wainwright.Bench;

/// <summary>What a new plan takes after the first step is done and one thing turned out otherwise.</summary>
static class Replans
{
    public static int Run(Family family, int parts, int seeds)
    {
        var table = new Dictionary<string, List<(double CpuS, int Questions)>>();
        for (var seed = 0; seed <= seeds; seed++)
        {
            // the first van twice: once for the compiler
            var van = BoxVan.Make(family, parts, Math.Max(1, seed));
            var job = JobFile.Read(JobFile.Write(VanJob.Of(van))).Job!;
            foreach (var (change, spent, next) in Each(job, [.. van.Targets.Select(VanJob.IdOf)], null))
                if (seed > 0) (table.TryGetValue(change, out var own) ? own : table[change] = []).Add((spent.CpuS, next.Plan.Effort.Questions));
        }
        foreach (var (change, own) in table)
            Console.WriteLine(FormattableString.Invariant($"| {family.ToString().ToLowerInvariant()} {parts} | {change} | {own.Count} | {own.Select(o => o.CpuS).Order().ElementAt(own.Count / 2):0.000} | {own.Max(o => o.CpuS):0.000} | {own.Select(o => o.Questions).Order().ElementAt(own.Count / 2)} |"));
        return 0;
    }

    /// <summary>The same for one job, change by change.</summary>
    public static void Tell(Job job, IReadOnlyList<PartId> wanted, PartId? glued)
    {
        foreach (var (change, spent, next) in Each(job, wanted, glued))
            Console.WriteLine(FormattableString.Invariant($"  {change}: {spent.CpuS:0.000} s of cpu, {spent.WallS:0.000} by the clock; {next.Plan.TotalMinutes:0.0} min {next.Plan.Proof}, {next.Plan.Effort.Questions} questions"));
    }

    /// <summary>Each change after a first plan of its own, so that none finds what another learned.</summary>
    private static IEnumerable<(string Change, Spent Spent, Replanned Next)> Each(Job job, IReadOnlyList<PartId> wanted, PartId? glued)
    {
        var first = RemovalPlanner.Remove(job, wanted);
        if (first.Steps.Count < 2) yield break;
        var other = first.Steps.Skip(1).FirstOrDefault(s => s.Kind == StepKind.TakeOut && s.Part is { } p && !wanted.Contains(p))?.Part;
        var joint = first.Steps.Skip(1).FirstOrDefault(s => s.Kind == StepKind.Undo)?.Joint;
        var changes = new List<(string, Reality)> { ("first step done, nothing else", new() { Done = [1] }) };
        if (joint is { } j) changes.Add(("a joint is sheared", new() { Done = [1], Joints = new Dictionary<JointId, JointNow> { [j] = JointNow.Sheared } }));
        if ((glued ?? other) is { } g) changes.Add(("a part is glued", new() { Done = [1], Glued = [g] }));
        if (other is { } p2) changes.Add(("a part on the way does not move", new() { Done = [1], DoNotMove = [p2] }));
        foreach (var (name, change) in changes)
        {
            var planner = new RemovalPlanner(job);
            var plan = planner.Remove(wanted);
            var (next, spent) = Spent.On(() => planner.Replan(plan, change));
            yield return (name, spent, next);
        }
    }
}
