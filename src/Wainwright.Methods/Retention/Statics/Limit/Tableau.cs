namespace Wainwright.Methods.Retention.Limit;

/// <summary>What a basic column stands for.</summary>
enum Kind { Rest, Slack, Pattern, Contact, Weight, Throw }

/// <summary>One column of the program and what it stands for.</summary>
/// <param name="Kind">Rest: nothing, a row not yet spanned.</param>
/// <param name="Index">Joint, contact or row.</param>
/// <param name="Rows">Its entries.</param>
/// <param name="Motion">For a pattern: the motion that it resists most.</param>
/// <param name="Most">For the weight: where it stops.</param>
sealed record Column(Kind Kind, int Index, double[] Rows, double[] Motion, double Most = double.PositiveInfinity);

/// <summary>Revised simplex on few rows and endless columns: equilibrium rows with right side 0, one row a joint with right side 1.</summary>
/// <remarks>Columns come from an oracle, so only the basis is kept. The inverse is dense: six rows a body and one a joint.</remarks>
sealed class Tableau
{
    private const double Pivot = 1e-7;
    private const int FreshAfter = 60;

    private readonly int _rows, _degrees;
    private readonly Column[] _basis;
    private readonly double[] _inverse, _right, _exact, _entering;
    private int _sinceFresh;

    public double[] Values { get; }
    public IReadOnlyList<Column> Basis => _basis;

    public Tableau(int degrees, int joints)
    {
        (_degrees, _rows) = (degrees, degrees + joints);
        (_basis, _inverse, _right, _exact, _entering, Values) = (new Column[_rows], new double[_rows * _rows], new double[_rows], new double[_rows], new double[_rows], new double[_rows]);
        for (var r = 0; r < _rows; r++)
        {
            var unit = new double[_rows];
            unit[r] = 1;
            _basis[r] = new(r < degrees ? Kind.Rest : Kind.Slack, r, unit, []);
            _inverse[r * _rows + r] = 1;
            _right[r] = _exact[r] = Values[r] = r < degrees ? 0 : 1;
        }
    }

    public Tableau(Tableau other)
    {
        (_degrees, _rows, _sinceFresh) = (other._degrees, other._rows, other._sinceFresh);
        (_basis, _inverse, _right, _exact, Values) = ([.. other._basis], [.. other._inverse], [.. other._exact], [.. other._exact], [.. other.Values]);
        _entering = new double[_rows];
    }

    /// <summary>Row of the inverse that belongs to the basic column of this kind: the prices when only it is worth anything. Empty when it is not basic.</summary>
    public ReadOnlySpan<double> Prices(Kind worth)
    {
        var row = RowOf(worth);
        return row < 0 ? [] : _inverse.AsSpan(row * _rows, _rows);
    }

    public double Value(Kind kind) => RowOf(kind) is var row and >= 0 ? Values[row] : 0;

    /// <summary>Brings a column in. The weight column, when it is basic, stops at the full weight and is then moved to the right side.</summary>
    /// <returns>What stopped it: the column that left; null when nothing did.</returns>
    public Column? Enter(Column column)
    {
        Times(column.Rows);
        var (leaving, step, at) = (-1, double.PositiveInfinity, 0.0);
        for (var r = 0; r < _rows; r++)
        {
            var by = _entering[r];
            double limit;
            if (_basis[r].Kind == Kind.Rest) { if (Math.Abs(by) <= Pivot) continue; limit = 0; }
            else if (_basis[r].Kind == Kind.Weight && by < -Pivot) limit = (_basis[r].Most - Values[r]) / -by;
            else if (by > Pivot) limit = Math.Max(0, Values[r]) / by;
            else continue;
            // of equals the largest pivot: steady arithmetic
            if (limit > step + 1e-13 || limit > step - 1e-13 && Math.Abs(by) <= Math.Abs(at)) continue;
            (leaving, step, at) = (r, Math.Min(limit, step), by);
        }
        if (column.Kind == Kind.Weight && step >= column.Most)
        {
            Fix(column);
            return column;
        }
        if (leaving < 0) return null;
        var left = _basis[leaving];
        for (var r = 0; r < _rows; r++) Values[r] -= step * _entering[r];
        Values[leaving] = step;
        Exchange(leaving, column);
        if (left.Kind == Kind.Weight && at < 0) Fix(left);
        return left;
    }

    /// <summary>Moves every value a little off its bound, so that a corner with many ties is left and not gone round for ever.</summary>
    /// <param name="by">How far at most: small against 1.</param>
    /// <param name="turn">Another number, other distances.</param>
    public void Nudge(double by, int turn)
    {
        for (var r = 0; r < _rows; r++)
            if (_basis[r].Kind != Kind.Rest) Values[r] = Math.Max(0, Values[r]) + by * (0.5 + (r * 0.6180339887 + turn * 0.7548776662) % 1 / 2);
        Array.Clear(_right);
        for (var c = 0; c < _rows; c++)
            for (var r = 0; r < _rows; r++) _right[r] += _basis[c].Rows[r] * Values[c];
    }

    /// <summary>Takes the nudges back.</summary>
    public void Steady()
    {
        Array.Copy(_exact, _right, _rows);
        Refresh();
    }

    /// <summary>Takes the full weight for granted: moves its column to the right side.</summary>
    private void Fix(Column weight)
    {
        for (var r = 0; r < _rows; r++) _exact[r] -= weight.Most * weight.Rows[r];
        Array.Copy(_exact, _right, _rows);
        Multiply();
    }

    private void Exchange(int leaving, Column column)
    {
        _basis[leaving] = column;
        if (++_sinceFresh >= FreshAfter)
        {
            Refresh();
            return;
        }
        var pivotRow = _inverse.AsSpan(leaving * _rows, _rows);
        var over = 1 / _entering[leaving];
        foreach (ref var cell in pivotRow) cell *= over;
        for (var r = 0; r < _rows; r++)
        {
            if (r == leaving || _entering[r] == 0) continue;
            var row = _inverse.AsSpan(r * _rows, _rows);
            var by = _entering[r];
            for (var c = 0; c < row.Length; c++) row[c] -= by * pivotRow[c];
        }
    }

    private void Times(double[] rows)
    {
        for (var r = 0; r < _rows; r++)
        {
            var row = _inverse.AsSpan(r * _rows, _rows);
            var sum = 0.0;
            for (var c = 0; c < row.Length; c++) sum += row[c] * rows[c];
            _entering[r] = sum;
        }
    }

    private void Multiply()
    {
        for (var r = 0; r < _rows; r++)
        {
            var sum = 0.0;
            for (var c = 0; c < _rows; c++) sum += _inverse[r * _rows + c] * _right[c];
            Values[r] = _basis[r].Kind == Kind.Rest ? 0 : sum;
        }
    }

    /// <summary>Inverts the basis anew, so that rounding does not pile up.</summary>
    private void Refresh()
    {
        _sinceFresh = 0;
        var matrix = new double[_rows, _rows];
        for (var c = 0; c < _rows; c++)
            for (var r = 0; r < _rows; r++) matrix[r, c] = _basis[c].Rows[r];
        Inverse.Into(matrix, _inverse);
        Multiply();
    }

    private int RowOf(Kind kind)
    {
        for (var r = 0; r < _rows; r++)
            if (_basis[r].Kind == kind) return r;
        return -1;
    }
}
