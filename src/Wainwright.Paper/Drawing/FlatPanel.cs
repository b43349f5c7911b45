using Wainwright.Survey.Damp;

namespace Wainwright.Paper;

/// <summary>A solid of a board laid flat: a grid of the pieces that the damp map has a figure for.</summary>
public sealed class FlatPanel
{
    private readonly int[,] cells;
    private readonly Flat shift;

    private FlatPanel(int sheet, FlatFrame frame, Flat shift, double[] u, double[] v, int[,] cells) => (Sheet, Frame, this.shift, U, V, this.cells) = (sheet, frame, shift, u, v, cells);

    /// <summary>The board, by its place in the net's list.</summary>
    public int Sheet { get; }

    /// <summary>How it is looked at.</summary>
    public FlatFrame Frame { get; }

    /// <summary>Borders of its columns from left to right [mm].</summary>
    public IReadOnlyList<double> U { get; }

    /// <summary>Borders of its rows down the page [mm].</summary>
    public IReadOnlyList<double> V { get; }

    /// <summary>The piece in a column and a row, by its place in the net's list.</summary>
    public int Cell(int column, int row) => cells[column, row];

    /// <summary>Whether a piece is of this panel.</summary>
    public bool Has(int cell)
    {
        foreach (var c in cells)
            if (c == cell) return true;
        return false;
    }

    /// <summary>Where a place comes to lie on the page: u to the right, v down.</summary>
    public Flat Flat(Fitout.Place place)
    {
        var flat = Frame.Flat(place);
        return new(flat.U + shift.U, flat.V + shift.V);
    }

    /// <summary>Its pieces, row by row.</summary>
    internal IReadOnlyList<LaidTile> Tiles => [.. from row in Enumerable.Range(0, V.Count - 1) from column in Enumerable.Range(0, U.Count - 1) select new LaidTile(Cell(column, row), new(U[column], V[row], U[column + 1], V[row + 1]))];

    /// <summary>The panel of the pieces of one solid.</summary>
    /// <param name="net">The net.</param>
    /// <param name="of">The pieces: a whole grid.</param>
    /// <param name="frame">How it is looked at.</param>
    internal static FlatPanel Of(DampNet net, IReadOnlyList<int> of, FlatFrame frame)
    {
        var ends = of.Select(c => (Cell: c, A: frame.Flat(net.Cells[c].Low), B: frame.Flat(net.Cells[c].High)))
            .Select(e => (e.Cell, Left: Math.Min(e.A.U, e.B.U), Right: Math.Max(e.A.U, e.B.U), Top: Math.Min(e.A.V, e.B.V), Bottom: Math.Max(e.A.V, e.B.V))).ToList();
        double[] lefts = [.. ends.Select(e => Math.Round(e.Left, 3)).Distinct().Order()], tops = [.. ends.Select(e => Math.Round(e.Top, 3)).Distinct().Order()];
        var cells = new int[lefts.Length, tops.Length];
        foreach (var e in ends) cells[Array.IndexOf(lefts, Math.Round(e.Left, 3)), Array.IndexOf(tops, Math.Round(e.Top, 3))] = e.Cell;
        return new(net.Cells[of[0]].Sheet, frame, default, [.. lefts, ends.Max(e => e.Right)], [.. tops, ends.Max(e => e.Bottom)], cells);
    }

    /// <summary>The same with its upper left corner at another place.</summary>
    internal FlatPanel At(double left, double top)
    {
        var (right, down) = (left - U[0], top - V[0]);
        return new(Sheet, Frame, new(shift.U + right, shift.V + down), [.. U.Select(x => x + right)], [.. V.Select(y => y + down)], cells);
    }

    /// <summary>Area that two panels share on the page [mm²].</summary>
    internal double Shared(FlatPanel other) => Math.Max(0, Math.Min(U[^1], other.U[^1]) - Math.Max(U[0], other.U[0])) * Math.Max(0, Math.Min(V[^1], other.V[^1]) - Math.Max(V[0], other.V[0]));

    internal double AreaMm2 => (U[^1] - U[0]) * (V[^1] - V[0]);
}
