namespace Wainwright.Methods.Moisture.Practice;

/// <summary>How much must evaporate, which decides how long it takes.</summary>
public static class WaterLossClass
{
    /// <summary>Restoration trade.</summary>
    public static readonly Basis Basis = new(
        Source: "IICRC S500, classes as three trade pages give them",
        Assumes: ["what is wet has been found"],
        Caution: "A van floor of plywood under vinyl over foam is class 4 in effect, whatever its area.",
        How: Provenance.Quoted);

    /// <summary>Wicking height from which walls count as wet through [mm]: 24 in.</summary>
    public const double WickingMm = 609.6;

    /// <param name="WetAreaFraction">Share of the room's floor that is wet [0–1].</param>
    /// <param name="WickingUpMm">How high walls drank [mm].</param>
    /// <param name="FromAbove">Walls, ceiling and floor wetted from overhead.</param>
    /// <param name="HeldInDense">Water held in or between dense or covered layers: plywood under vinyl, sandwich, hardwood.</param>
    public sealed record Input(double WetAreaFraction, double WickingUpMm, bool FromAbove, bool HeldInDense);

    /// <summary>Class 1 to 4.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static int Of(Input loss)
    {
        Must.BeWithin(loss.WetAreaFraction, 0, 1);
        Must.NotBeNegative(loss.WickingUpMm);
        if (loss.HeldInDense) return 4;
        if (loss.FromAbove || loss.WickingUpMm > WickingMm) return 3;
        return loss.WetAreaFraction >= 1 ? 2 : 1;
    }
}
