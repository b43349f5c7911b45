namespace Wainwright.Methods.Retention;

/// <summary>Self-tapping screw in thin sheet steel, American practice: tilting and bearing, pull-out, pull-over.</summary>
/// <remarks>
/// t1 under the head, t2 the far sheet, d the screw. Shear: t2/t1 to 1 the least of 4.2·√(t2³d)·Fu2, 2.7·t1·d·Fu1, 2.7·t2·d·Fu2; from
/// 2.5 without tilting; a straight line between. Pull-out 0.85·tc·d·Fu2, since 2016 times 1.63·(tc in inches)^0.18, here never
/// above 1. Pull-over 1.5·t1·d'w·Fu1, since 2016 0.90. The two editions part by more than a third: name the edition.
/// </remarks>
public static class SheetScrewAisi
{
    /// <summary>Sheet-metal screw connections.</summary>
    public static readonly Basis Basis = new(
        Source: "AISI S100-07/12, section E4, as tabled in evaluation reports; S100-16 with supplements 2 and 3, section J4, as an open library with tests citing AISI D110-16 has it",
        Assumes: ["screws three diameters apart and one and a half from an edge", "sound steel: no rust, no oversize hole", "the screw itself is strong enough: checked by test"],
        Caution: "Nominal values. Tests of drill-point screws in thin sheet fell up to 37 % below the equation, screws with wings below half: the point takes metal away. A stripped hole holds nothing.",
        How: Provenance.Quoted);

    /// <summary>Which text.</summary>
    public enum Edition
    {
        /// <summary>S100 of 2007 and 2012.</summary>
        S100Of2012,

        /// <summary>S100 of 2016 with its supplements.</summary>
        S100Of2016,
    }

    /// <summary>Ways a screw in sheet lets go.</summary>
    public enum Limit
    {
        /// <summary>Across: the screw tilts or the sheet tears.</summary>
        Shear,

        /// <summary>The thread leaves the far sheet.</summary>
        PullOut,

        /// <summary>The head goes through the near sheet.</summary>
        PullOver,
    }

    /// <summary>
    /// Pull-out as tested over the equation of the older text [-], drill-point screws in sheet of 1.2 to 2.7 mm: averages of one maker's sheet (2021)
    /// lie between 0.63 and 1.30, in the thinner sheets about 0.85. Screws with wings hold less still and are not in it.
    /// </summary>
    public static Spread Tested => new(0.6, 0.85, 1.3);

    const double ThinnestScrewMm = 2.03, ThickestScrewMm = 6.35, InPerMm = 1 / UsUnits.MmPerIn;

    /// <summary>Safety factor between nominal and working value [-].</summary>
    /// <param name="edition">Which text.</param>
    /// <param name="limit">Which limit.</param>
    public static double SafetyFactor(Edition edition, Limit limit) =>
        edition == Edition.S100Of2012 ? 3.0 : limit == Limit.PullOver ? 2.90 : 2.80;

    /// <summary>Nominal shear of one screw between two sheets, the same in both texts [N].</summary>
    /// <param name="headSheetMm">Sheet under the head [mm], above 0.</param>
    /// <param name="headTensileMPa">Its tensile strength [MPa], above 0.</param>
    /// <param name="farSheetMm">Far sheet [mm], above 0.</param>
    /// <param name="farTensileMPa">Its tensile strength [MPa], above 0.</param>
    /// <param name="diameterMm">Nominal diameter [mm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is not above 0.</exception>
    public static double ShearN(double headSheetMm, double headTensileMPa, double farSheetMm, double farTensileMPa, double diameterMm)
    {
        var near = BearingN(headSheetMm, headTensileMPa, diameterMm);
        var far = BearingN(farSheetMm, farTensileMPa, diameterMm);
        double bearing = Math.Min(near, far), tilting = Math.Min(bearing, TiltingN(farSheetMm, farTensileMPa, diameterMm));
        var ratio = Math.Clamp(farSheetMm / headSheetMm, 1, 2.5);
        return tilting + ((bearing - tilting) * (ratio - 1) / 1.5);
    }

    /// <summary>Nominal load at which the screw tilts out of the far sheet [N].</summary>
    /// <param name="farSheetMm">Far sheet [mm], above 0.</param>
    /// <param name="tensileMPa">Its tensile strength [MPa], above 0.</param>
    /// <param name="diameterMm">Nominal diameter [mm], above 0.</param>
    public static double TiltingN(double farSheetMm, double tensileMPa, double diameterMm) =>
        4.2 * Math.Sqrt(Math.Pow(Must.BePositive(farSheetMm), 3) * Must.BePositive(diameterMm)) * Must.BePositive(tensileMPa);

    /// <summary>Nominal load at which the screw tears along a sheet [N]. For a board screwed to sheet, the sheet's side of it.</summary>
    /// <param name="sheetMm">Sheet [mm], above 0.</param>
    /// <param name="tensileMPa">Its tensile strength [MPa], above 0.</param>
    /// <param name="diameterMm">Nominal diameter [mm], above 0.</param>
    public static double BearingN(double sheetMm, double tensileMPa, double diameterMm) =>
        2.7 * Must.BePositive(sheetMm) * Must.BePositive(diameterMm) * Must.BePositive(tensileMPa);

    /// <summary>Nominal pull-out of the thread from the far sheet [N].</summary>
    /// <param name="edition">Which text.</param>
    /// <param name="engagedMm">Sheet the thread goes through, or the depth engaged if less [mm], above 0.</param>
    /// <param name="tensileMPa">Its tensile strength [MPa], above 0.</param>
    /// <param name="diameterMm">Nominal diameter [mm], above 0.</param>
    public static double PullOutN(Edition edition, double engagedMm, double tensileMPa, double diameterMm)
    {
        var plain = 0.85 * Must.BePositive(engagedMm) * Must.BePositive(diameterMm) * Must.BePositive(tensileMPa);
        return edition == Edition.S100Of2012 ? plain : plain * Math.Min(1, 1.63 * Math.Pow(engagedMm * InPerMm, 0.18));
    }

    /// <summary>Nominal pull-over of the head through the near sheet [N].</summary>
    /// <param name="edition">Which text.</param>
    /// <param name="headSheetMm">Sheet under the head [mm], above 0.</param>
    /// <param name="tensileMPa">Its tensile strength [MPa], above 0.</param>
    /// <param name="headMm">Diameter of head or washer [mm], above 0; counted to 12.7 mm in the older text, 19.05 in the newer.</param>
    public static double PullOverN(Edition edition, double headSheetMm, double tensileMPa, double headMm)
    {
        var (factor, widestMm) = edition == Edition.S100Of2012 ? (1.5, 12.7) : (0.90, 19.05);
        return factor * Must.BePositive(headSheetMm) * Math.Min(Must.BePositive(headMm), widestMm) * Must.BePositive(tensileMPa);
    }

    /// <summary>Limits of the equations that a screw leaves; empty when it is inside.</summary>
    /// <param name="diameterMm">Nominal diameter [mm].</param>
    public static IReadOnlyList<string> OutsideRange(double diameterMm) =>
        diameterMm is >= ThinnestScrewMm and <= ThickestScrewMm ? [] : ["screw outside 2.03 to 6.35 mm"];
}
