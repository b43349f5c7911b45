using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Wainwright.Methods.Moisture.Drying;

/// <summary>
/// (M + G) x = b on cells of a multiple of four slices: conjugate gradients whose preconditioner solves every cell's column through the thickness
/// exactly. Symmetric and positive as long as every M is above 0 and no G below.
/// </summary>
/// <remarks>
/// Slices of a cell lie side by side, so a link between two cells is a few vector instructions; columns are solved four cells at a time.
/// Only the cells and links chosen take part.
/// </remarks>
sealed partial class LineSystem(int cells, int slices, int[] linkA, int[] linkB)
{
    const int MostRounds = 400;

    /// <summary>How many more numbers than nodes an array must have whose next slice is read a vector at a time: what lies past the end of a column counts nothing.</summary>
    public const int Spare = 4;

    readonly double[] _fixed = new double[cells * slices], _diagonal = new double[cells * slices];
    readonly double[] _z = new double[cells * slices], _p = new double[(cells * slices) + Spare], _ap = new double[cells * slices];
    readonly int[] _cells = new int[cells + 3], _links = new int[linkA.Length];
    readonly int[] _from = new int[cells + 1], _toNode = new int[2 * linkA.Length], _byPlace = new int[2 * linkA.Length]; // ways along the sheet of the cells chosen: first slice there, first in Along
    readonly int[] _allFrom = WaysFrom(cells, linkA, linkB), _allLinks = WaysOf(cells, linkA, linkB);
    int _cellCount, _linkCount;
    bool _hasAll;

    /// <summary>Storage over the step, per node.</summary>
    public double[] Storage { get; } = new double[cells * slices];

    /// <summary>Conductance from a node to the next one below in its cell; 0 at the last.</summary>
    public double[] Down { get; } = new double[cells * slices];

    /// <summary>Conductance of a node to something whose potential is given.</summary>
    public double[] Outward { get; } = new double[cells * slices];

    /// <summary>Conductance of a link, per slice.</summary>
    public double[] Along { get; } = new double[linkA.Length * slices];

    public int Rounds { get; private set; }

    /// <summary>Bytes read and written so far: each array once for each time it is gone through.</summary>
    public long MovedBytes { get; private set; }

    /// <summary>Counts arrays gone through over the cells and the links that take part.</summary>
    public void Moves(int ofNodes, int ofLinks = 0) => MovedBytes += 8L * slices * (((long)ofNodes * _cellCount) + ((long)ofLinks * _linkCount));

    /// <summary>Cells that take part.</summary>
    public ReadOnlySpan<int> Cells => _cells.AsSpan(0, _cellCount);

    /// <summary>Links that take part.</summary>
    public ReadOnlySpan<int> Links => _links.AsSpan(0, _linkCount);

    /// <summary>Everything takes part, or only cells that are marked and links that touch one of them.</summary>
    public void Choose(bool[]? marked)
    {
        if (marked is null && _hasAll) return;
        _hasAll = marked is null;
        (_cellCount, _linkCount) = (0, 0);
        for (var link = 0; link < linkA.Length; link++)
            if (marked is null || marked[linkA[link]] || marked[linkB[link]]) _links[_linkCount++] = link;
        var touched = (bool[]?)marked?.Clone();
        if (touched is not null)
            foreach (var link in Links) touched[linkA[link]] = touched[linkB[link]] = true;
        var ways = 0;
        for (var cell = 0; cell < cells; cell++)
        {
            if (touched is not null && !touched[cell]) continue;
            for (var way = _allFrom[cell]; way < _allFrom[cell + 1]; way++)
            {
                var link = _allLinks[way];
                if (marked is not null && !marked[linkA[link]] && !marked[linkB[link]]) continue;
                (_toNode[ways], _byPlace[ways]) = ((linkA[link] == cell ? linkB[link] : linkA[link]) * slices, link * slices);
                ways++;
            }
            _cells[_cellCount++] = cell;
            _from[_cellCount] = ways;
        }
        // fours are filled up with the last cell, which is then solved more than once and counted once
        for (var i = _cellCount; i > 0 && i % 4 != 0; i++) _cells[i] = _cells[_cellCount - 1];
    }

    static int[] WaysFrom(int cells, int[] linkA, int[] linkB)
    {
        var from = new int[cells + 1];
        foreach (var cell in linkA) from[cell + 1]++;
        foreach (var cell in linkB) from[cell + 1]++;
        for (var cell = 0; cell < cells; cell++) from[cell + 1] += from[cell];
        return from;
    }

    static int[] WaysOf(int cells, int[] linkA, int[] linkB)
    {
        var (next, links) = (WaysFrom(cells, linkA, linkB), new int[2 * linkA.Length]);
        for (var link = 0; link < linkA.Length; link++) links[next[linkA[link]]++] = links[next[linkB[link]]++] = link;
        return links;
    }

    /// <summary>To be called when conductances have been set and before solving.</summary>
    public void Assembled()
    {
        Moves(3, 1);
        ref int place = ref MemoryMarshal.GetArrayDataReference(_byPlace);
        var height = (nuint)slices;
        ref double sums = ref MemoryMarshal.GetArrayDataReference(_fixed), gs = ref MemoryMarshal.GetArrayDataReference(Along);
        ref double downs = ref MemoryMarshal.GetArrayDataReference(Down), outward = ref MemoryMarshal.GetArrayDataReference(Outward);
        for (var number = 0; number < _cellCount; number++)
        {
            var first = (nuint)(_cells[number] * slices);
            int from = _from[number], to = _from[number + 1];
            var above = Vector256<double>.Zero;
            for (nuint k = 0; k < height; k += 4)
            {
                var down = Vector256.LoadUnsafe(ref downs, first + k);
                var sum = Vector256.LoadUnsafe(ref outward, first + k) + down + FromAbove(down, ref above);
                for (var way = from; way < to; way++) sum += Vector256.LoadUnsafe(ref gs, (nuint)Unsafe.Add(ref place, way) + k);
                sum.StoreUnsafe(ref sums, first + k);
            }
        }
    }

    /// <summary>y = G x without <see cref="Outward"/>: what flows out of each node. What one gives the other gets, to the last bit.</summary>
    /// <param name="x">Potential, <see cref="Spare"/> longer than there are nodes.</param>
    /// <param name="y">What flows out.</param>
    public void Flow(double[] x, double[] y)
    {
        Moves(3, 1);
        ref int place = ref MemoryMarshal.GetArrayDataReference(_byPlace), node = ref MemoryMarshal.GetArrayDataReference(_toNode);
        var height = (nuint)slices;
        ref double xs = ref MemoryMarshal.GetArrayDataReference(x), ys = ref MemoryMarshal.GetArrayDataReference(y);
        ref double downs = ref MemoryMarshal.GetArrayDataReference(Down), gs = ref MemoryMarshal.GetArrayDataReference(Along);
        for (var number = 0; number < _cellCount; number++)
        {
            var first = (nuint)(_cells[number] * slices);
            int from = _from[number], to = _from[number + 1];
            var above = Vector256<double>.Zero;
            for (nuint k = 0; k < height; k += 4)
            {
                var own = Vector256.LoadUnsafe(ref xs, first + k);
                var flow = Vector256.LoadUnsafe(ref downs, first + k) * (own - Vector256.LoadUnsafe(ref xs, first + k + 1));
                var sum = flow - FromAbove(flow, ref above);
                for (var way = from; way < to; way++)
                    sum += Vector256.LoadUnsafe(ref gs, (nuint)Unsafe.Add(ref place, way) + k) * (own - Vector256.LoadUnsafe(ref xs, (nuint)Unsafe.Add(ref node, way) + k));
                sum.StoreUnsafe(ref ys, first + k);
            }
        }
    }

    /// <summary>What each slice gets from the one above it, when the four give so much down; the last of them is kept for the next four.</summary>
    static Vector256<double> FromAbove(Vector256<double> flow, ref Vector256<double> above)
    {
        var turned = Vector256.Shuffle(flow, Vector256.Create(3L, 0, 1, 2));
        var got = Vector256.ConditionalSelect(Vector256.Create(-1L, 0, 0, 0).AsDouble(), above, turned);
        above = turned;
        return got;
    }

    /// <summary>Solves for x, starting from what is in it.</summary>
    /// <param name="x">Unknown.</param>
    /// <param name="residual">b − (M + G) x at the start, and at the end.</param>
    /// <param name="tolerance">Stops when no node's residual over its storage is larger.</param>
    /// <returns>Whether it got there.</returns>
    public bool Solve(double[] x, double[] residual, double tolerance)
    {
        Factor();
        var rz = Precondition(residual);
        if (rz == 0) return true;
        foreach (var cell in Cells) Array.Copy(_z, cell * slices, _p, cell * slices, slices);
        for (var round = 0; round < MostRounds; round++)
        {
            Rounds++;
            var alpha = rz / Multiply();
            if (!double.IsFinite(alpha)) break;
            if (Forward(x, residual, alpha, tolerance)) return true;
            var next = Precondition(residual);
            Turn(next / rz);
            rz = next;
        }
        Array.Clear(_p); // what is not a number there would get into columns beside it
        return false;
    }

    /// <summary>_p = _z + β _p.</summary>
    void Turn(double beta)
    {
        Moves(3);
        ref double zs = ref MemoryMarshal.GetArrayDataReference(_z), ps = ref MemoryMarshal.GetArrayDataReference(_p);
        var part = Vector256.Create(beta);
        foreach (var cell in Cells)
            for (nuint i = (nuint)(cell * slices), end = i + (nuint)slices; i < end; i += 4)
                (Vector256.LoadUnsafe(ref zs, i) + (part * Vector256.LoadUnsafe(ref ps, i))).StoreUnsafe(ref ps, i);
    }

    /// <summary>_ap = (M + G) _p, and the product of both.</summary>
    double Multiply()
    {
        Moves(4, 1);
        ref int place = ref MemoryMarshal.GetArrayDataReference(_byPlace), node = ref MemoryMarshal.GetArrayDataReference(_toNode);
        var height = (nuint)slices;
        ref double ps = ref MemoryMarshal.GetArrayDataReference(_p), aps = ref MemoryMarshal.GetArrayDataReference(_ap), diagonals = ref MemoryMarshal.GetArrayDataReference(_diagonal);
        ref double downs = ref MemoryMarshal.GetArrayDataReference(Down), gs = ref MemoryMarshal.GetArrayDataReference(Along);
        var product = Vector256<double>.Zero;
        for (var number = 0; number < _cellCount; number++)
        {
            var first = (nuint)(_cells[number] * slices);
            int from = _from[number], to = _from[number + 1];
            var above = Vector256<double>.Zero;
            for (nuint k = 0; k < height; k += 4)
            {
                var own = Vector256.LoadUnsafe(ref ps, first + k);
                var flow = Vector256.LoadUnsafe(ref downs, first + k) * (own - Vector256.LoadUnsafe(ref ps, first + k + 1));
                var sum = (Vector256.LoadUnsafe(ref diagonals, first + k) * own) + flow - FromAbove(flow, ref above);
                for (var way = from; way < to; way++)
                    sum += Vector256.LoadUnsafe(ref gs, (nuint)Unsafe.Add(ref place, way) + k) * (own - Vector256.LoadUnsafe(ref ps, (nuint)Unsafe.Add(ref node, way) + k));
                sum.StoreUnsafe(ref aps, first + k);
                product += sum * own;
            }
        }
        return Vector256.Sum(product);
    }

    /// <returns>Whether every residual over its storage is within the tolerance.</returns>
    bool Forward(double[] x, double[] residual, double alpha, double tolerance)
    {
        Moves(7);
        ref double xs = ref MemoryMarshal.GetArrayDataReference(x), rs = ref MemoryMarshal.GetArrayDataReference(residual);
        ref double ps = ref MemoryMarshal.GetArrayDataReference(_p), aps = ref MemoryMarshal.GetArrayDataReference(_ap), ms = ref MemoryMarshal.GetArrayDataReference(Storage);
        Vector256<double> step = Vector256.Create(alpha), limit = Vector256.Create(tolerance), within = Vector256<double>.AllBitsSet;
        foreach (var cell in Cells)
            for (nuint i = (nuint)(cell * slices), end = i + (nuint)slices; i < end; i += 4)
            {
                (Vector256.LoadUnsafe(ref xs, i) + (step * Vector256.LoadUnsafe(ref ps, i))).StoreUnsafe(ref xs, i);
                var left = Vector256.LoadUnsafe(ref rs, i) - (step * Vector256.LoadUnsafe(ref aps, i));
                left.StoreUnsafe(ref rs, i);
                within &= Vector256.LessThanOrEqual(Vector256.Abs(left), limit * Vector256.LoadUnsafe(ref ms, i));
            }
        return within.AsInt64() == Vector256<long>.AllBitsSet;
    }
}
