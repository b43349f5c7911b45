namespace Wainwright.Methods.Retention;

/// <summary>A rigid body: a part with its contents and with whatever hangs on it.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="MassKg">Mass [kg], 0 or more.</param>
/// <param name="CentreMm">Centre of mass [mm].</param>
public sealed record HeldBody(string Name, double MassKg, Vector3D CentreMm);
