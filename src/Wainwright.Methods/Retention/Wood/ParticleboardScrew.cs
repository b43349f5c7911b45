namespace Wainwright.Methods.Retention;

/// <summary>Mean breaking load of a screw pulled out of particleboard, face or edge.</summary>
/// <remarks>Pounds and inches: edge 2055·√D·(L − D/3)^1.25·G², face 2655·√D·(L − D/3)^1.25·G².</remarks>
public static class ParticleboardScrew
{
    /// <summary>Particleboard screw holding.</summary>
    public static readonly Basis Basis = new(
        Source: "Wood Handbook, FPL-GTR-190, chapter 8, particleboard equations",
        Assumes: ["sheet-metal screws in bored holes", "dry board that never was wet", "a mean of tests"],
        Caution: "Swollen particleboard holds nothing. Repeated taking out and putting back strips it.",
        How: Provenance.FromMemory);

    /// <summary>Mean breaking load [N].</summary>
    /// <param name="specificGravity">Board density over 1000 [-], above 0.</param>
    /// <param name="diameterMm">Nominal diameter [mm], above 0.</param>
    /// <param name="penetrationMm">Depth in the board [mm], above a third of the diameter.</param>
    /// <param name="isInEdge">Into the edge, between the faces.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double MeanUltimateN(double specificGravity, double diameterMm, double penetrationMm, bool isInEdge)
    {
        double d = Must.BePositive(diameterMm) / UsUnits.MmPerIn, length = Must.BePositive(penetrationMm) / UsUnits.MmPerIn;
        var engaged = Must.BePositive(length - (d / 3), nameof(penetrationMm));
        return (isInEdge ? 2055 : 2655) * Math.Sqrt(d) * Math.Pow(engaged, 1.25) * Math.Pow(Must.BePositive(specificGravity), 2) * UsUnits.NPerLb;
    }
}
