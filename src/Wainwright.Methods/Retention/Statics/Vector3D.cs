namespace Wainwright.Methods.Retention;

/// <summary>A vector in the van's frame: x rearwards, y to the right, z up. The unit stands in the name of what carries it.</summary>
/// <param name="X">Rearwards.</param>
/// <param name="Y">To the right.</param>
/// <param name="Z">Up.</param>
public readonly record struct Vector3D(double X, double Y, double Z)
{
    /// <summary>No length.</summary>
    public static Vector3D Zero => default;

    /// <summary>Length, in the vector's own unit.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>True when no component is infinite or not a number.</summary>
    public bool IsFinite => double.IsFinite(X) && double.IsFinite(Y) && double.IsFinite(Z);

    public static Vector3D operator +(Vector3D a, Vector3D b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vector3D operator -(Vector3D a, Vector3D b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vector3D operator -(Vector3D a) => new(-a.X, -a.Y, -a.Z);

    public static Vector3D operator *(double times, Vector3D a) => new(times * a.X, times * a.Y, times * a.Z);

    public double Dot(Vector3D other) => X * other.X + Y * other.Y + Z * other.Z;

    public Vector3D Cross(Vector3D other) =>
        new(Y * other.Z - Z * other.Y, Z * other.X - X * other.Z, X * other.Y - Y * other.X);

    /// <summary>The same direction with length 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The vector has no direction: length 0, or a component is not finite.</exception>
    public Vector3D Unit() => (1 / Must.BePositive(Length)) * this;

    /// <summary>Two unit vectors square to this one and to each other, always the same two for the same vector.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The vector has no direction.</exception>
    public (Vector3D First, Vector3D Second) Across()
    {
        var unit = Unit();
        // the axis of the frame that is least along the vector: never close to parallel
        var (x, y, z) = (Math.Abs(unit.X), Math.Abs(unit.Y), Math.Abs(unit.Z));
        var other = x <= y && x <= z ? new Vector3D(1, 0, 0) : y <= z ? new Vector3D(0, 1, 0) : new Vector3D(0, 0, 1);
        var first = unit.Cross(other).Unit();
        return (first, unit.Cross(first));
    }
}
