using System.Globalization;

namespace Wainwright.Geometry;

/// <summary>A box along the axes with whole millimetres for corners; lower corner first. Touching boxes do not overlap.</summary>
/// <param name="X0">Smallest x [mm].</param>
/// <param name="Y0">Smallest y [mm].</param>
/// <param name="Z0">Smallest z [mm].</param>
/// <param name="X1">Greatest x [mm].</param>
/// <param name="Y1">Greatest y [mm].</param>
/// <param name="Z1">Greatest z [mm].</param>
public readonly record struct Box(int X0, int Y0, int Z0, int X1, int Y1, int Z1)
{
    /// <summary>Smallest coordinate along an axis, 0 for x, 1 for y, 2 for z [mm].</summary>
    public int Low(int axis) => axis switch { 0 => X0, 1 => Y0, _ => Z0 };

    /// <summary>Greatest coordinate along an axis, 0 for x, 1 for y, 2 for z [mm].</summary>
    public int High(int axis) => axis switch { 0 => X1, 1 => Y1, _ => Z1 };

    /// <summary>Length along an axis, 0 for x, 1 for y, 2 for z [mm].</summary>
    public int Length(int axis) => High(axis) - Low(axis);

    /// <summary>Whether there is nothing inside.</summary>
    public bool IsEmpty => X1 <= X0 || Y1 <= Y0 || Z1 <= Z0;

    /// <summary>Volume [mm³]; 0 when empty.</summary>
    public long VolumeMm3 => IsEmpty ? 0 : (long)(X1 - X0) * (Y1 - Y0) * (Z1 - Z0);

    /// <summary>The same box elsewhere.</summary>
    public Box Moved(int dxMm, int dyMm, int dzMm) => new(X0 + dxMm, Y0 + dyMm, Z0 + dzMm, X1 + dxMm, Y1 + dyMm, Z1 + dzMm);

    /// <summary>The same box in a finer measure.</summary>
    internal Box Times(int by) => new(X0 * by, Y0 * by, Z0 * by, X1 * by, Y1 * by, Z1 * by);

    /// <summary>Larger by so much on every side; smaller when negative.</summary>
    public Box Grown(int byMm) => new(X0 - byMm, Y0 - byMm, Z0 - byMm, X1 + byMm, Y1 + byMm, Z1 + byMm);

    /// <summary>Whether the insides share a point.</summary>
    public bool Overlaps(Box other) =>
        X0 < other.X1 && other.X0 < X1 && Y0 < other.Y1 && other.Y0 < Y1 && Z0 < other.Z1 && other.Z0 < Z1;

    /// <summary>Whether the other box lies within this one.</summary>
    public bool Holds(Box other) =>
        X0 <= other.X0 && other.X1 <= X1 && Y0 <= other.Y0 && other.Y1 <= Y1 && Z0 <= other.Z0 && other.Z1 <= Z1;

    /// <summary>What two boxes have in common; may be empty.</summary>
    public Box Common(Box other) => new(
        Math.Max(X0, other.X0), Math.Max(Y0, other.Y0), Math.Max(Z0, other.Z0),
        Math.Min(X1, other.X1), Math.Min(Y1, other.Y1), Math.Min(Z1, other.Z1));

    /// <summary>The smallest box around both.</summary>
    public Box Around(Box other) => new(
        Math.Min(X0, other.X0), Math.Min(Y0, other.Y0), Math.Min(Z0, other.Z0),
        Math.Max(X1, other.X1), Math.Max(Y1, other.Y1), Math.Max(Z1, other.Z1));

    /// <summary>The smallest box around all.</summary>
    /// <exception cref="InvalidOperationException">There is none.</exception>
    public static Box Around(IEnumerable<Box> boxes) => boxes.Aggregate((a, b) => a.Around(b));

    /// <summary>What remains of this box when another is cut out of it, as boxes that do not overlap.</summary>
    public IEnumerable<Box> Without(Box hole)
    {
        var cut = Common(hole);
        if (cut.IsEmpty)
        {
            yield return this;
            yield break;
        }
        if (X0 < cut.X0) yield return this with { X1 = cut.X0 };
        if (cut.X1 < X1) yield return this with { X0 = cut.X1 };
        if (Y0 < cut.Y0) yield return cut with { Y0 = Y0, Y1 = cut.Y0, Z0 = Z0, Z1 = Z1 };
        if (cut.Y1 < Y1) yield return cut with { Y0 = cut.Y1, Y1 = Y1, Z0 = Z0, Z1 = Z1 };
        if (Z0 < cut.Z0) yield return cut with { Z0 = Z0, Z1 = cut.Z0 };
        if (cut.Z1 < Z1) yield return cut with { Z0 = cut.Z1, Z1 = Z1 };
    }

    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"({X0},{Y0},{Z0})-({X1},{Y1},{Z1})");
}
