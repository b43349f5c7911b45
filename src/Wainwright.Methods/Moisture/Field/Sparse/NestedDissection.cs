namespace Wainwright.Methods.Moisture.Field.Sparse;

/// <summary>An order of elimination: the net is cut in two by a thin strip of cells, each half again, and the strips go last.</summary>
/// <remarks>George 1973, from memory. The cut is a plane across the longest side of the cells' middles: a plane parts any net, folded or not.</remarks>
sealed class NestedDissection
{
    const int SmallEnough = 48;

    readonly SparseSymmetric pattern;
    readonly (double X, double Y, double Z)[] middles;
    readonly int[] half;

    NestedDissection(SparseSymmetric pattern, (double X, double Y, double Z)[] middles)
    {
        this.pattern = pattern;
        this.middles = middles;
        half = new int[pattern.Size];
    }

    /// <summary>A piece of the order: its own unknowns, eliminated together, after those of its children.</summary>
    public sealed record Node(int[] Own, Node[] Children);

    /// <summary>The tree of pieces. Unknowns beyond the middles given have no place in the net and are eliminated last.</summary>
    public static Node Of(SparseSymmetric pattern, (double X, double Y, double Z)[] middles)
    {
        var tree = new NestedDissection(pattern, middles).Cut([.. Enumerable.Range(0, middles.Length)]);
        return middles.Length == pattern.Size ? tree : new([.. Enumerable.Range(middles.Length, pattern.Size - middles.Length)], [tree]);
    }

    Node Cut(int[] cells)
    {
        if (cells.Length <= SmallEnough) return new(cells, []);
        var along = Longest(cells);
        var sorted = (int[])cells.Clone();
        Array.Sort([.. sorted.Select(along)], sorted);
        // marks: 1 left, 2 right; whoever on the left touches the right is the strip
        for (var i = 0; i < sorted.Length; i++) half[sorted[i]] = i < sorted.Length / 2 ? 1 : 2;
        var left = new List<int>();
        var strip = new List<int>();
        foreach (var cell in sorted.AsSpan(0, sorted.Length / 2)) (Touches(cell, 2) ? strip : left).Add(cell);
        var right = sorted[(sorted.Length / 2)..];
        foreach (var cell in sorted) half[cell] = 0;
        if (left.Count == 0) return new(cells, []);
        return new([.. strip], [Cut([.. left]), Cut(right)]);
    }

    bool Touches(int cell, int mark)
    {
        for (var k = pattern.Start[cell]; k < pattern.Start[cell + 1]; k++)
            if (pattern.Column[k] < middles.Length && half[pattern.Column[k]] == mark) return true;
        return false;
    }

    Func<int, double> Longest(int[] cells)
    {
        double Side(Func<int, double> along) => cells.Max(along) - cells.Min(along);
        Func<int, double> x = c => middles[c].X, y = c => middles[c].Y, z = c => middles[c].Z;
        var (sx, sy, sz) = (Side(x), Side(y), Side(z));
        return sx >= sy && sx >= sz ? x : sy >= sz ? y : z;
    }
}
