using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Wainwright.Methods.Moisture.Drying;

/// <summary>
/// (M + G) x = b on cells of a multiple of four slices: conjugate gradients whose preconditioner solves every cell's column through the thickness
/// exactly. Symmetric and positive as long as every M is above 0 and no G below.
/// </summary>
/// <remarks>Slices of a cell lie side by side, so a link between two cells is a few vector instructions. Only the cells and links chosen take part.</remarks>
sealed class LineSystem(int cells, int slices, int[] linkA, int[] linkB)
{
    const int MostRounds = 400;

    readonly double[] _fixed = new double[cells * slices], _pivot = new double[cells * slices], _lower = new double[cells * slices];
    readonly double[] _z = new double[cells * slices], _p = new double[cells * slices], _ap = new double[cells * slices];
    readonly int[] _cells = new int[cells], _links = new int[linkA.Length];
    int _cellCount, _linkCount;

    /// <summary>Storage over the step, per node.</summary>
    public double[] Storage { get; } = new double[cells * slices];

    /// <summary>Conductance from a node to the next one below in its cell; 0 at the last.</summary>
    public double[] Down { get; } = new double[cells * slices];

    /// <summary>Conductance of a node to something whose potential is given.</summary>
    public double[] Outward { get; } = new double[cells * slices];

    /// <summary>Conductance of a link, per slice.</summary>
    public double[] Along { get; } = new double[linkA.Length * slices];

    public int Rounds { get; private set; }

    /// <summary>Cells that take part.</summary>
    public ReadOnlySpan<int> Cells => _cells.AsSpan(0, _cellCount);

    /// <summary>Links that take part.</summary>
    public ReadOnlySpan<int> Links => _links.AsSpan(0, _linkCount);

    /// <summary>Everything takes part, or only cells that are marked and links that touch one of them.</summary>
    public void Choose(bool[]? marked)
    {
        (_cellCount, _linkCount) = (0, 0);
        for (var link = 0; link < linkA.Length; link++)
            if (marked is null || marked[linkA[link]] || marked[linkB[link]]) _links[_linkCount++] = link;
        if (marked is not null)
        {
            var touched = (bool[])marked.Clone();
            foreach (var link in Links) touched[linkA[link]] = touched[linkB[link]] = true;
            marked = touched;
        }
        for (var cell = 0; cell < cells; cell++)
            if (marked is null || marked[cell]) _cells[_cellCount++] = cell;
    }

    /// <summary>To be called when conductances have been set and before solving.</summary>
    public void Assembled()
    {
        foreach (var cell in Cells)
            for (var i = cell * slices; i < (cell + 1) * slices; i++)
                _fixed[i] = Outward[i] + Down[i] + (i > cell * slices ? Down[i - 1] : 0);
        ref double sums = ref MemoryMarshal.GetArrayDataReference(_fixed), gs = ref MemoryMarshal.GetArrayDataReference(Along);
        foreach (var link in Links)
        {
            nuint a = (nuint)(linkA[link] * slices), b = (nuint)(linkB[link] * slices), g = (nuint)(link * slices);
            for (nuint k = 0; k < (nuint)slices; k += 4)
            {
                var conductance = Vector256.LoadUnsafe(ref gs, g + k);
                (Vector256.LoadUnsafe(ref sums, a + k) + conductance).StoreUnsafe(ref sums, a + k);
                (Vector256.LoadUnsafe(ref sums, b + k) + conductance).StoreUnsafe(ref sums, b + k);
            }
        }
    }

    /// <summary>y = G x without <see cref="Outward"/>: what flows out of each node. What one gives the other gets, to the last bit.</summary>
    public void Flow(double[] x, double[] y)
    {
        foreach (var cell in Cells)
        {
            double above = 0;
            for (var k = cell * slices; k < ((cell + 1) * slices) - 1; k++)
            {
                var flow = Down[k] * (x[k] - x[k + 1]);
                y[k] = flow - above;
                above = flow;
            }
            y[((cell + 1) * slices) - 1] = -above;
        }
        AddAlong(x, y);
    }

    void AddAlong(double[] x, double[] y)
    {
        ref double xs = ref MemoryMarshal.GetArrayDataReference(x), ys = ref MemoryMarshal.GetArrayDataReference(y), gs = ref MemoryMarshal.GetArrayDataReference(Along);
        foreach (var link in Links)
        {
            nuint a = (nuint)(linkA[link] * slices), b = (nuint)(linkB[link] * slices), g = (nuint)(link * slices);
            for (nuint k = 0; k < (nuint)slices; k += 4)
            {
                var flow = Vector256.LoadUnsafe(ref gs, g + k) * (Vector256.LoadUnsafe(ref xs, a + k) - Vector256.LoadUnsafe(ref xs, b + k));
                (Vector256.LoadUnsafe(ref ys, a + k) + flow).StoreUnsafe(ref ys, a + k);
                (Vector256.LoadUnsafe(ref ys, b + k) - flow).StoreUnsafe(ref ys, b + k);
            }
        }
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
            if (!double.IsFinite(alpha)) return false;
            if (Forward(x, residual, alpha) <= tolerance) return true;
            var next = Precondition(residual);
            var beta = next / rz;
            foreach (var cell in Cells)
                for (var i = cell * slices; i < (cell + 1) * slices; i++) _p[i] = _z[i] + (beta * _p[i]);
            rz = next;
        }
        return false;
    }

    /// <summary>_ap = (M + G) _p, and the product of both.</summary>
    double Multiply()
    {
        foreach (var cell in Cells)
        {
            double above = 0;
            var last = ((cell + 1) * slices) - 1;
            for (var k = cell * slices; k < last; k++)
            {
                var flow = Down[k] * (_p[k] - _p[k + 1]);
                _ap[k] = ((Storage[k] + Outward[k]) * _p[k]) + flow - above;
                above = flow;
            }
            _ap[last] = ((Storage[last] + Outward[last]) * _p[last]) - above;
        }
        AddAlong(_p, _ap);
        var sum = Vector256<double>.Zero;
        ref double first = ref MemoryMarshal.GetArrayDataReference(_p), second = ref MemoryMarshal.GetArrayDataReference(_ap);
        foreach (var cell in Cells)
            for (var i = (nuint)(cell * slices); i < (nuint)((cell + 1) * slices); i += 4)
                sum += Vector256.LoadUnsafe(ref first, i) * Vector256.LoadUnsafe(ref second, i);
        return Vector256.Sum(sum);
    }

    double Forward(double[] x, double[] residual, double alpha)
    {
        ref double xs = ref MemoryMarshal.GetArrayDataReference(x), rs = ref MemoryMarshal.GetArrayDataReference(residual);
        ref double ps = ref MemoryMarshal.GetArrayDataReference(_p), aps = ref MemoryMarshal.GetArrayDataReference(_ap), ms = ref MemoryMarshal.GetArrayDataReference(Storage);
        var step = Vector256.Create(alpha);
        var worst = Vector256<double>.Zero;
        foreach (var cell in Cells)
            for (var i = (nuint)(cell * slices); i < (nuint)((cell + 1) * slices); i += 4)
            {
                (Vector256.LoadUnsafe(ref xs, i) + (step * Vector256.LoadUnsafe(ref ps, i))).StoreUnsafe(ref xs, i);
                var left = Vector256.LoadUnsafe(ref rs, i) - (step * Vector256.LoadUnsafe(ref aps, i));
                left.StoreUnsafe(ref rs, i);
                worst = Vector256.Max(worst, Vector256.Abs(left) / Vector256.LoadUnsafe(ref ms, i));
            }
        return Math.Max(Math.Max(worst[0], worst[1]), Math.Max(worst[2], worst[3]));
    }

    /// <summary>Pivots of every column: the diagonal with what leaves along the sheet, less what the node above takes.</summary>
    void Factor()
    {
        foreach (var cell in Cells)
        {
            var at = cell * slices;
            var pivot = _pivot[at] = 1 / (Storage[at] + _fixed[at]);
            for (var k = at + 1; k < at + slices; k++)
            {
                var lower = _lower[k] = Down[k - 1] * pivot;
                pivot = _pivot[k] = 1 / (Storage[k] + _fixed[k] - (Down[k - 1] * lower));
            }
        }
    }

    /// <summary>_z = columns solved for r, and the product of both.</summary>
    double Precondition(double[] r)
    {
        double product = 0;
        foreach (var cell in Cells)
        {
            int at = cell * slices, last = at + slices - 1;
            var z = _z[at] = r[at];
            for (var k = at + 1; k <= last; k++) _z[k] = z = r[k] + (_lower[k] * z);
            _z[last] = z *= _pivot[last];
            product += z * r[last];
            for (var k = last - 1; k >= at; k--)
            {
                _z[k] = z = (_pivot[k] * _z[k]) + (_lower[k + 1] * z);
                product += z * r[k];
            }
        }
        return product;
    }
}
