namespace Wainwright.Methods.Retention;

/// <summary>A one-sided support without friction: the body may push on it, never pull.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="AtMm">Where they touch [mm].</param>
/// <param name="Normal">The way the support pushes the body; any length above 0.</param>
/// <param name="Body">The body that is supported: index in <see cref="Held.Bodies"/>.</param>
/// <param name="To">The body that supports it; absent: the van.</param>
public sealed record Contact(string Name, Vector3D AtMm, Vector3D Normal, int Body, int? To = null);
