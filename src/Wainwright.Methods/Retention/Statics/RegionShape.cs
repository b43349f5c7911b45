namespace Wainwright.Methods.Retention;

/// <summary>The strength region as it is, or a polyhedron inside or around it, so that a general linear solver can be asked the same.</summary>
/// <param name="Corners">Corners of the shear polygon, 4 or more; 0 for the smooth region. A round region has a quarter as many steps, at least 2, from pull to shear.</param>
/// <param name="Around">True when the polyhedron encloses the region, false when it lies inside.</param>
public readonly record struct RegionShape(int Corners, bool Around)
{
    /// <summary>The region itself: shear circular, the sharing rule as stated.</summary>
    public static RegionShape Smooth => default;

    /// <summary>A polyhedron inside the region: answers never too high.</summary>
    public static RegionShape Inside(int corners) => new(corners, false);

    /// <summary>A polyhedron around the region: answers never too low.</summary>
    public static RegionShape Outside(int corners) => new(corners, true);
}
