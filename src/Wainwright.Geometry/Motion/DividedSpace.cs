using System.Runtime.CompilerServices;

namespace Wainwright.Geometry;

/// <summary>
/// The displacements of one moving shape, divided into blocks that are wholly free or wholly blocked, and only where
/// somebody asks.
/// </summary>
/// <remarks>
/// A k-d tree over the half-millimetre lattice, the same for every set of gone things: a block knows the forbidden boxes that
/// hold all of it and those that only meet it. It is blocked when one of the first stands, free when none of either stands,
/// and divided otherwise, at a face of the box that fills most of it, so that boxes peel away in a few splits. What one
/// question divides the next finds ready. Compiled with full optimisation at once: it is the inner loop of every question.
/// </remarks>
internal sealed class DividedSpace
{
    private const int LookedAt = 12;
    private const int Undivided = 0, Dead = -1;

    // beyond this the tree starts afresh: memory is shared by all the shapes of a van
    private const int MostNodes = 1500;

    private enum State : byte
    {
        Free,
        Blocked,
        Divided,
    }

    private struct Node
    {
        public Cells Where;
        public int Start, Holding, Meeting, FirstChild, Parent;
        public int Seen; // which entry of the list stood when last looked at: likely to stand again
        public int Run; // in which run the state was looked up
        public State State;
    }

    private readonly Forbidden[] forbidden;
    private readonly int[] itemOf;
    private readonly Cells window;
    private Node[] nodes = new Node[64];
    private int[] lists = new int[256];
    private int nodeCount, listCount, run = 1; // a node that was never looked at has run 0
    private readonly Stack<int> open = new();

    /// <param name="forbidden">All forbidden boxes, largest first.</param>
    /// <param name="window">The displacements that are looked at.</param>
    public DividedSpace(Forbidden[] forbidden, Cells window)
    {
        (this.forbidden, this.window) = (forbidden, window);
        itemOf = [.. forbidden.Select(f => f.Item)];
        Restart();
    }

    /// <summary>How many blocks there are so far.</summary>
    public int Count => nodeCount;

    public Cells Where(int node) => nodes[node].Where;

    /// <summary>Before a run of questions; block numbers are good until the next.</summary>
    public void Begin()
    {
        if (nodeCount > MostNodes) Restart();
        run++;
    }

    /// <summary>Collects the free and the blocked blocks that meet a region when these are gone.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    /// <param name="region">The region.</param>
    /// <param name="near">A block of this run close to it, or 0.</param>
    /// <param name="gone">What is gone.</param>
    /// <param name="free">Free blocks are added here.</param>
    /// <param name="blocked">Blocked blocks are added here.</param>
    public void Find(in Cells region, int near, ItemSet gone, List<int> free, List<int> blocked)
    {
        // the blocks above one that was reached are all divided; the lowest that holds the region will do
        while (near != 0 && !nodes[near].Where.Holds(region)) near = nodes[near].Parent;
        open.Clear();
        open.Push(near);
        while (open.TryPop(out var at))
        {
            ref var node = ref nodes[at];
            if (!node.Where.Meets(region)) continue;
            // a block is looked at from many sides in one run, and the same things are gone throughout
            if (node.Run != run) (node.Run, node.State) = (run, StateOf(ref node, gone));
            switch (node.State)
            {
                case State.Blocked:
                    blocked.Add(at);
                    break;
                case State.Free:
                    free.Add(at);
                    break;
                default:
                    if (node.FirstChild == Undivided) Divide(at, gone);
                    var child = nodes[at].FirstChild;
                    open.Push(child + 1);
                    open.Push(child);
                    break;
            }
        }
    }

    /// <summary>Items that stand and each by itself block the whole of a blocked block.</summary>
    public void Blockers(int node, ItemSet gone, List<int> into)
    {
        into.Clear();
        ref var n = ref nodes[node];
        if (n.FirstChild == Dead) into.Add(Obstacle.Fixed);
        else
            foreach (var i in lists.AsSpan(n.Start, n.Holding))
                if (!gone.Has(forbidden[i].Item) && !into.Contains(forbidden[i].Item)) into.Add(forbidden[i].Item);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private State StateOf(ref Node node, ItemSet gone) =>
        node.FirstChild == Dead || Stands(ref node, 0, node.Holding, gone) ? State.Blocked
        : Stands(ref node, node.Holding, node.Holding + node.Meeting, gone) ? State.Divided
        : State.Free;

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool Stands(ref Node node, int from, int to, ItemSet gone)
    {
        if (node.Seen >= from && node.Seen < to && IsStanding(lists[node.Start + node.Seen], gone)) return true;
        for (var i = from; i < to; i++)
            if (IsStanding(lists[node.Start + i], gone))
            {
                node.Seen = i;
                return true;
            }
        return false;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private bool IsStanding(int box, ItemSet gone) => itemOf[box] == Obstacle.Fixed || !gone.Has(itemOf[box]);

    private void Restart()
    {
        nodeCount = listCount = 0;
        for (var i = 0; i < forbidden.Length; i++)
            if (forbidden[i].Where.Meets(window)) Append(i);
        Add(new() { Where = window, Start = 0, Meeting = listCount });
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Divide(int at, ItemSet gone)
    {
        var node = nodes[at];
        var (largest, most) = (-1, -1.0);
        // the lists keep the order of the whole, largest first: the largest share is among the first few
        for (var (i, looked) = (0, 0); i < node.Meeting && looked < LookedAt; i++)
        {
            var candidate = lists[node.Start + node.Holding + i];
            if (!IsStanding(candidate, gone)) continue;
            looked++;
            var volume = forbidden[candidate].Where.Common(node.Where).Volume;
            if (volume > most) (largest, most) = (candidate, volume);
        }
        var (axis, lastOfLower) = BestFace(node.Where, forbidden[largest].Where);
        nodes[at].FirstChild = nodeCount;
        Child(at, node, node.Where.WithHigh(axis, lastOfLower));
        Child(at, node, node.Where.WithLow(axis, lastOfLower + 1));
    }

    /// <summary>The face of a box beyond which most of the block lies.</summary>
    private static (int Axis, int LastOfLower) BestFace(in Cells block, in Cells box)
    {
        var (bestAxis, bestAt, bestShare) = (-1, 0, -1.0);
        for (var axis = 0; axis < 3; axis++)
        {
            double length = block.High(axis) - block.Low(axis) + 1;
            var below = (box.Low(axis) - block.Low(axis)) / length;
            var above = (block.High(axis) - box.High(axis)) / length;
            if (below > 0 && below > bestShare) (bestAxis, bestAt, bestShare) = (axis, box.Low(axis) - 1, below);
            if (above > 0 && above > bestShare) (bestAxis, bestAt, bestShare) = (axis, box.High(axis), above);
        }
        return (bestAxis, bestAt);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Child(int number, in Node parent, in Cells where)
    {
        var start = listCount;
        var (from, to) = (parent.Start + parent.Holding, parent.Start + parent.Holding + parent.Meeting);
        for (var i = from; i < to; i++)
            if (forbidden[lists[i]].Where.Holds(where))
            {
                if (forbidden[lists[i]].Item == Obstacle.Fixed)
                {
                    listCount = start;
                    Add(new() { Where = where, FirstChild = Dead, Parent = number });
                    return;
                }
                Append(lists[i]);
            }
        var holding = listCount - start;
        for (var i = from; i < to; i++)
            if (forbidden[lists[i]].Where.Meets(where) && !forbidden[lists[i]].Where.Holds(where)) Append(lists[i]);
        Add(new() { Where = where, Start = start, Holding = holding, Meeting = listCount - start - holding, Parent = number });
    }

    private void Append(int index)
    {
        if (listCount == lists.Length) Array.Resize(ref lists, 2 * listCount);
        lists[listCount++] = index;
    }

    private void Add(in Node node)
    {
        if (nodeCount == nodes.Length) Array.Resize(ref nodes, 2 * nodeCount);
        nodes[nodeCount++] = node;
    }
}
