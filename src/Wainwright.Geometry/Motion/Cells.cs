using System.Runtime.CompilerServices;

namespace Wainwright.Geometry;

/// <summary>A block of the lattice of half millimetres, both ends included.</summary>
/// <remarks>
/// All planes lie on whole millimetres. An even coordinate 2k means exactly on plane k, an odd one strictly between k and
/// k + 1; all points of one lattice cell are free together or blocked together. A forbidden open box from a to b is therefore
/// the lattice cells 2a + 1 to 2b − 1, and sliding at exactly no clearance is found: it runs along an even coordinate.
/// </remarks>
internal readonly record struct Cells(int X0, int Y0, int Z0, int X1, int Y1, int Z1)
{
    public bool IsEmpty => X1 < X0 || Y1 < Y0 || Z1 < Z0;

    public double Volume => (double)(X1 - X0 + 1) * (Y1 - Y0 + 1) * (Z1 - Z0 + 1);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool Meets(in Cells o) => X0 <= o.X1 && o.X0 <= X1 && Y0 <= o.Y1 && o.Y0 <= Y1 && Z0 <= o.Z1 && o.Z0 <= Z1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public bool Holds(in Cells o) => X0 <= o.X0 && o.X1 <= X1 && Y0 <= o.Y0 && o.Y1 <= Y1 && Z0 <= o.Z0 && o.Z1 <= Z1;

    public Cells Common(in Cells o) => new(
        Math.Max(X0, o.X0), Math.Max(Y0, o.Y0), Math.Max(Z0, o.Z0), Math.Min(X1, o.X1), Math.Min(Y1, o.Y1), Math.Min(Z1, o.Z1));

    public int Low(int axis) => axis switch { 0 => X0, 1 => Y0, _ => Z0 };

    public int High(int axis) => axis switch { 0 => X1, 1 => Y1, _ => Z1 };

    public Cells WithLow(int axis, int value) => axis switch { 0 => this with { X0 = value }, 1 => this with { Y0 = value }, _ => this with { Z0 = value } };

    public Cells WithHigh(int axis, int value) => axis switch { 0 => this with { X1 = value }, 1 => this with { Y1 = value }, _ => this with { Z1 = value } };

    /// <summary>The layer of cells that lies against one face, outside.</summary>
    public Cells Beyond(Heading face)
    {
        var axis = face.Axis();
        var at = face.Sign() < 0 ? Low(axis) - 1 : High(axis) + 1;
        return WithLow(axis, at).WithHigh(axis, at);
    }

    /// <summary>The cell of this block nearest to another.</summary>
    public Cell Nearest(Cell c) => new(Math.Clamp(c.X, X0, X1), Math.Clamp(c.Y, Y0, Y1), Math.Clamp(c.Z, Z0, Z1));

    public static Cells Between(Cell a, Cell b) => new(
        Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Min(a.Z, b.Z), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y), Math.Max(a.Z, b.Z));
}

/// <summary>One cell of the lattice of half millimetres, standing for a displacement.</summary>
internal readonly record struct Cell(int X, int Y, int Z)
{
    public long DistanceTo(Cell o) => (long)Math.Abs(X - o.X) + Math.Abs(Y - o.Y) + Math.Abs(Z - o.Z);

    public int Along(int axis) => axis switch { 0 => X, 1 => Y, _ => Z };

    public Cell With(int axis, int value) => axis switch { 0 => this with { X = value }, 1 => this with { Y = value }, _ => this with { Z = value } };

    public Point ToPoint() => new(X / 2.0, Y / 2.0, Z / 2.0);
}
