namespace Wainwright.Geometry;

/// <summary>
/// The displacements of one moving shape, divided into blocks that are wholly free or wholly blocked, and only where
/// somebody asks.
/// </summary>
/// <remarks>
/// A k-d tree over the half-millimetre lattice. A block is split at a face of the forbidden box that fills most of it, so
/// boxes peel away in a few splits and open room stays in large blocks. Reused from question to question without new memory.
/// </remarks>
internal sealed class DividedSpace
{
    private enum State : byte { Unseen, Free, Blocked, Split }

    private struct Node
    {
        public Cells Where;
        public int ListStart, ListCount, FirstChild;
        public State State;
    }

    private Forbidden[] forbidden = [];
    private Node[] nodes = new Node[1024];
    private int[] lists = new int[8192];
    private int nodeCount, listCount;
    private readonly Stack<int> open = new();

    /// <summary>How many blocks there are so far; a block's number stays the same until <see cref="Begin"/>.</summary>
    public int Count => nodeCount;

    public Cells Where(int node) => nodes[node].Where;

    /// <summary>Forgets everything and starts with those forbidden boxes whose item is not gone.</summary>
    public void Begin(Forbidden[] all, ItemSet gone, Cells window)
    {
        forbidden = all;
        nodeCount = listCount = 0;
        for (var i = 0; i < all.Length; i++)
            if ((all[i].Item == Obstacle.Fixed || !gone.Has(all[i].Item)) && all[i].Where.Meets(window)) Append(i);
        Add(window, 0, listCount);
    }

    /// <summary>Collects the free and the blocked blocks that meet a region.</summary>
    public void Find(in Cells region, List<int> free, List<int> blocked)
    {
        open.Clear();
        open.Push(0);
        while (open.TryPop(out var node))
        {
            if (!nodes[node].Where.Meets(region)) continue;
            if (nodes[node].State == State.Unseen) Divide(node);
            switch (nodes[node].State)
            {
                case State.Free:
                    free.Add(node);
                    break;
                case State.Blocked:
                    blocked.Add(node);
                    break;
                default:
                    open.Push(nodes[node].FirstChild + 1);
                    open.Push(nodes[node].FirstChild);
                    break;
            }
        }
    }

    /// <summary>The items that each by itself block the whole of a block.</summary>
    public IEnumerable<int> Blockers(int node)
    {
        var (start, count) = (nodes[node].ListStart, nodes[node].ListCount);
        for (var i = start; i < start + count; i++)
            if (forbidden[lists[i]].Where.Holds(nodes[node].Where)) yield return forbidden[lists[i]].Item;
    }

    private void Divide(int node)
    {
        ref var n = ref nodes[node];
        if (n.ListCount == 0)
        {
            n.State = State.Free;
            return;
        }
        var (largest, most) = (-1, -1.0);
        for (var i = n.ListStart; i < n.ListStart + n.ListCount; i++)
        {
            var where = forbidden[lists[i]].Where;
            if (where.Holds(n.Where))
            {
                n.State = State.Blocked;
                return;
            }
            var volume = where.Common(n.Where).Volume;
            if (volume > most) (largest, most) = (lists[i], volume);
        }
        var (axis, lastOfLower) = BestFace(n.Where, forbidden[largest].Where);
        n.State = State.Split;
        var (parent, start, count) = (n.Where, n.ListStart, n.ListCount);
        n.FirstChild = nodeCount;
        Child(parent.WithHigh(axis, lastOfLower), start, count);
        Child(parent.WithLow(axis, lastOfLower + 1), start, count);
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

    private void Child(in Cells where, int parentStart, int parentCount)
    {
        var start = listCount;
        for (var i = parentStart; i < parentStart + parentCount; i++)
            if (forbidden[lists[i]].Where.Meets(where)) Append(lists[i]);
        Add(where, start, listCount - start);
    }

    private void Append(int index)
    {
        if (listCount == lists.Length) Array.Resize(ref lists, 2 * listCount);
        lists[listCount++] = index;
    }

    private void Add(in Cells where, int start, int count)
    {
        if (nodeCount == nodes.Length) Array.Resize(ref nodes, 2 * nodeCount);
        nodes[nodeCount++] = new Node { Where = where, ListStart = start, ListCount = count };
    }
}
