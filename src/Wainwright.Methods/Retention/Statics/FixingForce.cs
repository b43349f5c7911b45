namespace Wainwright.Methods.Retention;

/// <summary>What a fixing carries in the state that holds.</summary>
/// <param name="PullN">Pull on the fixing along its axis [N], 0 or more.</param>
/// <param name="ShearN">Shear that the body puts on the fixing [N], square to the axis.</param>
/// <param name="Share">Share of its strength in use [-], 0 to 1.</param>
public readonly record struct FixingForce(double PullN, Vector3D ShearN, double Share);
