namespace Wainwright.Methods.Retention;

/// <summary>What must be held: everything thrown one way, its own weight acting too.</summary>
/// <param name="Direction">The way everything is thrown; any length above 0.</param>
/// <param name="G">How hard [g], 0 or more.</param>
public readonly record struct Throw(Vector3D Direction, double G);
