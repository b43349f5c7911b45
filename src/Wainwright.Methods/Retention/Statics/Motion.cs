namespace Wainwright.Methods.Retention;

/// <summary>How a body begins to move: the velocity of a point at r is Velocity + Spin × (r − centre of mass).</summary>
/// <remarks>Scaled so that the throw does work at 1 g·kg·mm/s per g: only ratios mean anything.</remarks>
/// <param name="Velocity">Of the centre of mass [mm/s, scaled].</param>
/// <param name="Spin">Turning, right-handed [rad/s, scaled].</param>
public readonly record struct Motion(Vector3D Velocity, Vector3D Spin);
