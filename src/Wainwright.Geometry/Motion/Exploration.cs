using System.Runtime.CompilerServices;

namespace Wainwright.Geometry;

/// <summary>All that a moving thing can reach from where it starts, nearest first, until it is out or nothing is left.</summary>
internal sealed class Exploration(IReadOnlyList<Pose> poses, IReadOnlyList<QuarterTurn> turns)
{
    private const long TurnCost = 2 * 400; // a turn is worth a detour of so many half millimetres in the choice of a path

    private const int OrderBits = 22; // among equals the first one in the queue; fewer than four million are ever in it

    private readonly Mark[][] marks = [.. poses.Select(_ => Array.Empty<Mark>())];
    private readonly PriorityQueue<Reached, long> queue = new();
    private readonly List<int> free = [], blocked = [];
    private readonly List<(int Pose, int Block)> rim = [];
    private readonly bool[] isSweep = [.. poses.Select((_, pose) => turns.Any(t => t.Sweep == pose))];
    private int run, order;
    private bool endsOutside = true;
    private List<Reached>? visited;
    private ItemSet gone = new(0);

    /// <summary>In which run a block was reached, was put on the rim or into the queue, and at what distance it waits there.</summary>
    private struct Mark
    {
        public int Seen, Rim, Queued;
        public long Cost;
    }

    /// <summary>A block that was reached, at which displacement, from where, and over a face across which axis.</summary>
    internal sealed record Reached(int Pose, int Block, Cell At, Reached? From, QuarterTurn? By, int? AcrossAxis, long Cost, bool IsOut);

    /// <summary>The blocked blocks that the reached region lies against, after a run that found no way.</summary>
    public IReadOnlyCollection<(int Pose, int Block)> Rim => rim;

    /// <summary>For each pose whether anything of it is reached when the search does not end outside.</summary>
    public bool[] PosesReached(ItemSet gone, IEnumerable<Cells> starts)
    {
        endsOutside = false;
        Run(gone, starts);
        endsOutside = true;
        return [.. marks.Select(own => Array.Exists(own, m => m.Seen == run))];
    }

    /// <summary>Every block that is reached when the search does not end outside, each as it was first come to; nothing of the turns between.</summary>
    public IReadOnlyList<Reached> Region(ItemSet gone, IEnumerable<Cells> starts)
    {
        endsOutside = false;
        visited = [];
        Run(gone, starts);
        endsOutside = true;
        var all = visited;
        visited = null;
        return all;
    }

    /// <summary>Runs from the regions given; the last one reached when it is out, nothing when it is stuck.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public Reached? Run(ItemSet gone, IEnumerable<Cells> starts)
    {
        run++;
        order = 0;
        queue.Clear();
        rim.Clear();
        this.gone = gone;
        foreach (var pose in poses) pose.Begin();
        foreach (var start in starts)
        {
            var middle = new Cell((start.X0 + start.X1) / 2, (start.Y0 + start.Y1) / 2, (start.Z0 + start.Z1) / 2);
            Spread(0, start, middle, null, null, null, 0);
        }
        while (queue.TryDequeue(out var next, out _))
        {
            if (next.IsOut) return next;
            if (!IsFirstVisit(next)) continue;
            if (endsOutside) Leave(next);
            else if (!isSweep[next.Pose]) visited?.Add(next);
            Slide(next);
            Turn(next);
        }
        return null;
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Slide(Reached from)
    {
        if (isSweep[from.Pose]) return;
        var where = poses[from.Pose].Space.Where(from.Block);
        for (var face = Heading.MinusX; face <= Heading.PlusZ; face++)
        {
            var beyond = where.Beyond(face);
            if (beyond.Meets(poses[from.Pose].Window)) Spread(from.Pose, beyond, from.At, from, null, face.Axis(), from.Cost);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Turn(Reached from)
    {
        if (turns.Count == 0) return;
        var where = poses[from.Pose].Space.Where(from.Block);
        foreach (var turn in turns)
        {
            if (turn.Sweep == from.Pose)
            {
                // the sweep holds both poses, so both are free wherever it is; the one it came from is known already
                var other = from.From!.Pose == turn.To ? turn.From : turn.To;
                if (turn.IsThereOnly && other == turn.From) continue;
                Spread(other, where, from.At, from, turn, null, from.Cost + TurnCost);
            }
            else if (turn.From == from.Pose || turn.To == from.Pose) Spread(turn.Sweep, where, from.At, from, null, null, from.Cost);
        }
    }

    /// <summary>Puts the free blocks that meet a region into the queue and the blocked ones on the rim.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Spread(int pose, Cells region, Cell at, Reached? from, QuarterTurn? by, int? across, long cost)
    {
        free.Clear();
        blocked.Clear();
        poses[pose].Space.Find(region, from is not null && from.Pose == pose ? from.Block : 0, gone, free, blocked);
        var own = MarksOf(pose);
        foreach (var block in blocked)
        {
            if (own[block].Rim == run) continue;
            own[block].Rim = run;
            rim.Add((pose, block));
        }
        foreach (var block in free)
        {
            ref var mark = ref own[block];
            if (mark.Seen == run) continue;
            var to = poses[pose].Space.Where(block).Common(region).Nearest(at);
            var reached = cost + to.DistanceTo(at);
            var whole = reached + poses[pose].DistanceToExit(to);
            if (mark.Queued == run && mark.Cost <= whole) continue;
            (mark.Queued, mark.Cost) = (run, whole);
            Enqueue(new(pose, block, to, from, by, across, reached, false), whole);
        }
    }

    private void Enqueue(Reached reached, long cost) => queue.Enqueue(reached, (cost << OrderBits) + order++);

    private Mark[] MarksOf(int pose)
    {
        ref var own = ref marks[pose];
        if (own.Length < poses[pose].Space.Count) Array.Resize(ref own, 2 * poses[pose].Space.Count);
        return own;
    }

    /// <summary>Where a reached block meets an exit, the exit's cell is offered at its own distance.</summary>
    private void Leave(Reached at)
    {
        if (isSweep[at.Pose]) return;
        var pose = poses[at.Pose];
        foreach (var exit in pose.Exits)
        {
            var common = pose.Space.Where(at.Block).Common(exit);
            if (common.IsEmpty) continue;
            var to = common.Nearest(at.At);
            var cost = at.Cost + to.DistanceTo(at.At);
            Enqueue(new(at.Pose, at.Block, to, at, null, null, cost, true), cost);
        }
    }

    private bool IsFirstVisit(Reached reached)
    {
        ref var mark = ref marks[reached.Pose][reached.Block];
        if (mark.Seen == run) return false;
        mark.Seen = run;
        return true;
    }
}
