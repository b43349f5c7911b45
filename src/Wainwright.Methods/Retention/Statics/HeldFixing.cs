namespace Wainwright.Methods.Retention;

/// <summary>One fixing at its place.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="AtMm">Where it passes from the body into what holds it [mm].</param>
/// <param name="PullAxis">The way the body moves when it pulls the fixing out, tip to head; any length above 0.</param>
/// <param name="Strength">What it can carry.</param>
/// <param name="Body">The body that it holds: index in <see cref="Held.Bodies"/>.</param>
/// <param name="To">The body it is held to; absent: the van.</param>
public sealed record HeldFixing(string Name, Vector3D AtMm, Vector3D PullAxis, FixingStrength Strength, int Body, int? To = null);
