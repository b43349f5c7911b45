using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>One step as work for the crew: how long, how many, with what, where.</summary>
/// <param name="Step">The step.</param>
/// <param name="Item">Its item in the scene.</param>
/// <param name="Tenths">How long [0.1 s].</param>
/// <param name="People">How many at once; none for what takes no time.</param>
/// <param name="Tool">The tool in hand; absent for bare hands.</param>
/// <param name="Zones">Stretches of the load space it takes up, from the front; none outside.</param>
/// <param name="Past">Items that must be done for a load to go the way the plan shows.</param>
internal sealed record CrewWork(RemovalStep Step, int Item, long Tenths, int People, string? Tool, IReadOnlyList<int> Zones, ItemSet Past)
{
    /// <summary>The opening a load is carried through; one load at a time.</summary>
    public string? Door => Step.Kind is StepKind.TakeOut or StepKind.TakePiece ? Step.Through : null;

    public bool SharesRoom(CrewWork other) => (Door is { } door && door == other.Door) || Zones.Any(other.Zones.Contains);
}

/// <summary>The steps of a plan as work, and what must be done before each.</summary>
internal sealed class CrewWorks
{
    private readonly Scene scene;
    private readonly Planner planner;
    private readonly Dictionary<int, HashSet<int>> enough = [];
    private readonly ItemSet follows; // what counts as done by itself when others are

    public CrewWorks(Job job, RemovalPlan plan, AccessOptions options, CrewOptions crew)
    {
        scene = new(job, options, optimistic: false);
        planner = new(scene.Puzzle);
        follows = ItemSet.Of(scene.Items.Count, Enumerable.Range(0, scene.Items.Count).Where(i => scene.Items[i] is IsOut or Spoiled));
        var (free, zones) = (Enumerable.Range(0, scene.Items.Count).ToList(), new Zones(job, crew.StandingMm));
        var gone = follows.Copy();
        All = [.. HeldByTheCarrier(plan.Steps).Select(step =>
        {
            var at = free.FindIndex(i => Is(step, scene.Items[i]));
            if (at < 0) throw new ArgumentException($"Step {step.Number} ({step.Action}) is not of this job and these options.", nameof(plan));
            var item = free[at];
            free.RemoveAt(at);
            var tenths = (long)Math.Round(step.OutMinutes * TenthsOfASecond.InAMinute / step.People);
            // as far as the steps before it in the plan have cleared the way
            var past = step.Path.Count > 0 ? scene.Room.WayOf(item, planner.Doable(gone))?.Through : null;
            gone.Add(item);
            return new CrewWork(step, item, tenths, tenths == 0 ? 0 : step.People, ToolOf(scene.Items[item]), zones.Of(scene, scene.Items[item], step), past ?? new(scene.Items.Count));
        })];
    }

    public IReadOnlyList<CrewWork> All { get; }

    /// <summary>Holding a part while its last fixing goes and carrying it out are one work of the same hands.</summary>
    private static IEnumerable<RemovalStep> HeldByTheCarrier(IReadOnlyList<RemovalStep> steps)
    {
        var holding = steps.Where(s => s.Kind == StepKind.Hold).ToList();
        foreach (var step in steps.Where(s => s.Kind != StepKind.Hold))
        {
            var own = step.Kind == StepKind.TakeOut ? holding.Where(h => step.With.Prepend(step.Part!.Value).Contains(h.Part!.Value)).ToList() : [];
            // the plan holds right before the last fixing goes: whoever undoes that is told, and whoever carries
            var held = own.Concat(holding.Where(h => h.Number == step.Number - 1)).Distinct().ToList();
            yield return held.Count == 0 ? step : step with
            {
                OutMinutes = step.OutMinutes + own.Sum(h => h.OutMinutes),
                Cautions = [.. held.Select(h => $"{h.Action}."), .. held.SelectMany(h => h.Cautions), .. step.Cautions],
            };
        }
    }

    /// <summary>Which works must be done first in any schedule, whichever way: every one of these groups gives at least one.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Before(int work)
    {
        var (groups, done) = (new List<IReadOnlyList<int>>(), new HashSet<int>());
        while (Missing(work, done) is { } oneOf)
        {
            groups.Add(oneOf);
            done.UnionWith(With(oneOf[0]));
        }
        enough[work] = done;
        return groups;
    }

    /// <summary>A work and works that suffice for it; in the plan's own order one that another waits for stands before it.</summary>
    private HashSet<int> With(int work)
    {
        if (!enough.ContainsKey(work)) Before(work);
        return [.. enough[work], work];
    }

    /// <summary>Works of which at least one must be done before this one can begin, when those are; nothing when it can.</summary>
    public IReadOnlyList<int>? Missing(int work, IReadOnlyCollection<int> done)
    {
        if (All[work].Step.Kind != StepKind.MakeSafe && Enumerable.Range(0, All.Count).Where(i => All[i].Step.Kind == StepKind.MakeSafe && !done.Contains(i)).ToList() is [var safe, ..])
            return [safe];
        var all = follows.Copy();
        foreach (var other in done) all.Add(All[other].Item);
        var doable = planner.Doable(all);
        if (planner.WallOf(All[work].Item, doable) is { } wall) return [.. Doers(wall, doable)];
        foreach (var item in All[work].Past)
            if (!doable.Has(item)) return [.. Doers(ItemSet.Of(scene.Items.Count, item), doable)];
        return null;
    }

    /// <summary>The works that could break a wall: what counts as done by itself stands for what it waits for.</summary>
    private SortedSet<int> Doers(ItemSet wall, ItemSet doable)
    {
        var (works, seen, open) = (new SortedSet<int>(), new HashSet<int>(), new Stack<int>(wall));
        while (open.TryPop(out var item))
        {
            if (!seen.Add(item)) continue;
            var work = All.Select((w, i) => (w, i)).FirstOrDefault(x => x.w.Item == item, (null!, -1)).i;
            if (work >= 0) works.Add(work);
            else if (follows.Has(item) && planner.WallOf(item, doable) is { } behind)
                foreach (var next in behind) open.Push(next);
        }
        return works;
    }

    private bool Is(RemovalStep step, Item item) => item switch
    {
        MakeSafe safe => step.Kind == StepKind.MakeSafe && step.Medium == safe.Medium,
        Undo undo => step.Kind == StepKind.Undo && step.Joint == undo.Joint.Id,
        Disconnect end => step.Kind == StepKind.Disconnect && step.Line == end.Line.Id && step.Action == Wording.Action(scene, end),
        TakeOut load => step.Kind == StepKind.TakeOut && step.Part == load.Part.Id && step.With.SequenceEqual(load.With.Select(p => p.Id)),
        TakePiece piece => step.Kind == StepKind.TakePiece && step.Part == piece.Part.Id && step.Piece == piece.Name,
        IsOut or Spoiled => false,
        _ => step.Part == Wording.PartOf(scene, item)?.Id && step.Action == Wording.Action(scene, item),
    };

    /// <summary>What is in hand for a fixing, in the workshop's words; one of a kind serves one person at a time.</summary>
    private static string? ToolOf(Item item) => item is not Undo { Joint: var joint } ? null : joint.Release.Way switch
    {
        ReleaseWay.Drill => "drill",
        ReleaseWay.Cut => "knife or wire",
        ReleaseWay.Pry => "flat lever",
        ReleaseWay.ByHand => null,
        _ => joint.Drive switch
        {
            Drive.Slot => "slot driver",
            Drive.CrossRecess => "cross-recess driver",
            Drive.Square => "square driver",
            Drive.HexSocket => "hexagon key",
            Drive.Hexalobular => "hexalobular driver",
            Drive.HexHead => "spanner",
            Drive.Blade => "blade",
            _ => null,
        },
    };
}
