namespace Wainwright.Methods.Moisture.Field.Sparse;

/// <summary>A symmetric matrix by rows, both triangles kept, columns ascending in each row, the diagonal always present.</summary>
sealed class SparseSymmetric(int[] start, int[] column, double[] value)
{
    public int Size => start.Length - 1;

    public int[] Start => start;

    public int[] Column => column;

    public double[] Value => value;

    /// <summary>The same places with other values.</summary>
    public SparseSymmetric With(double[] others) => new(start, column, others);

    /// <summary>Builds from the sum of given entries; each off-diagonal pair given once.</summary>
    public static SparseSymmetric Of(int size, IReadOnlyList<(int Row, int Column, double Value)> entries)
    {
        var rows = new SortedDictionary<int, double>[size];
        for (var i = 0; i < size; i++) rows[i] = new() { [i] = 0 };
        foreach (var (r, c, v) in entries)
        {
            rows[r][c] = rows[r].GetValueOrDefault(c) + v;
            if (r != c) rows[c][r] = rows[c].GetValueOrDefault(r) + v;
        }
        var start = new int[size + 1];
        for (var i = 0; i < size; i++) start[i + 1] = start[i] + rows[i].Count;
        return new(start, [.. rows.SelectMany(r => r.Keys)], [.. rows.SelectMany(r => r.Values)]);
    }

    /// <summary>Where entry (row, column) stands; it must exist.</summary>
    public int At(int row, int col) => Array.BinarySearch(column, start[row], start[row + 1] - start[row], col);

    public double[] Times(ReadOnlySpan<double> x)
    {
        var y = new double[Size];
        for (var i = 0; i < Size; i++)
        {
            double sum = 0;
            for (var k = start[i]; k < start[i + 1]; k++) sum += value[k] * x[column[k]];
            y[i] = sum;
        }
        return y;
    }
}
