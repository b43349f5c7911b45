namespace Wainwright.Methods.Retention;

/// <summary>What one fixing can carry. It resists being pulled out and sheared; it never pushes (a contact does that).</summary>
/// <param name="PullN">Capacity along the pull axis [N], 0 or more. 0: loose, missing, stripped.</param>
/// <param name="ShearN">Capacity across the axis, the same in every direction [N], 0 or more.</param>
/// <param name="Sharing">How pull and shear share the strength.</param>
/// <param name="PullStiffnessNPerMm">Stiffness along the axis [N/mm], 0 or more; used for first yield only.</param>
/// <param name="ShearStiffnessNPerMm">Stiffness across it [N/mm], 0 or more; used for first yield only.</param>
public sealed record FixingStrength(double PullN, double ShearN, Sharing Sharing, double PullStiffnessNPerMm, double ShearStiffnessNPerMm)
{
    /// <summary>Share of the strength that a force uses [-]: 1 at the limit, infinite where nothing can be carried.</summary>
    /// <param name="pullN">Pull [N]. Below 0 (a push) counts as 0.</param>
    /// <param name="shearN">Shear [N], 0 or more.</param>
    public double ShareOf(double pullN, double shearN)
    {
        var (pull, shear) = (Used(Math.Max(0, pullN), PullN), Used(shearN, ShearN));
        return Sharing switch
        {
            Sharing.Straight => pull + shear,
            Sharing.Round => double.IsInfinity(pull + shear) ? double.PositiveInfinity : Math.Sqrt(pull * pull + shear * shear),
            _ => Math.Max(pull, shear),
        };
    }

    private static double Used(double force, double capacity) => force <= 0 ? 0 : capacity > 0 ? force / capacity : double.PositiveInfinity;
}
