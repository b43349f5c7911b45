namespace Wainwright.Methods.Retention;

/// <summary>Screw in sheet steel pulled and pushed across at once: how much of its strength is used.</summary>
/// <remarks>Q/Pns + 0.71·T/Pnov against 1.10, Q/Pns + T/Pnot against 1.15, V/Pss + T/Pts against 1.3, each over its safety factor. In the
/// first the shear strength is the bearing of the sheet under the head, 2.7·t1·d·Fu1.</remarks>
public static class SheetScrewCombined
{
    /// <summary>Interaction lines of the older text.</summary>
    public static readonly Basis Basis = new(
        Source: "AISI S100-12, sections E4.5.1 (as webcivil.com prints it) to E4.5.3 (from memory)",
        Assumes: ["nominal values of the same screw and text"],
        Caution: "The lines for pull-out and for the screw itself are from memory: check them before they decide.",
        How: Provenance.FromMemory);

    /// <summary>One line of interaction.</summary>
    /// <param name="PullWeight">Weight of the pull's share [-].</param>
    /// <param name="Sum">Sum at which the line is reached [-].</param>
    /// <param name="SafetyFactor">Safety factor for working loads [-].</param>
    public readonly record struct Line(double PullWeight, double Sum, double SafetyFactor);

    /// <summary>Shear with pull-over.</summary>
    public static readonly Line PullOver = new(0.71, 1.10, 2.35);

    /// <summary>Shear with pull-out.</summary>
    public static readonly Line PullOut = new(1, 1.15, 2.55);

    /// <summary>Shear with tension in the screw itself.</summary>
    public static readonly Line Screw = new(1, 1.3, 3.0);

    /// <summary>Part of the nominal interaction that is used [-]; 1 is the limit, 1/SafetyFactor the working limit.</summary>
    /// <param name="line">Which interaction.</param>
    /// <param name="shearN">Load across [N], 0 or more.</param>
    /// <param name="nominalShearN">Nominal shear [N], above 0.</param>
    /// <param name="pullN">Load along [N], 0 or more.</param>
    /// <param name="nominalPullN">Nominal pull of that line [N], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double Used(Line line, double shearN, double nominalShearN, double pullN, double nominalPullN)
    {
        var shear = Must.NotBeNegative(shearN) / Must.BePositive(nominalShearN);
        var pull = Must.NotBeNegative(pullN) / Must.BePositive(nominalPullN);
        // the line cuts the corners off the square of the single limits, it never lifts them
        return Math.Max((shear + (line.PullWeight * pull)) / line.Sum, Math.Max(shear, pull));
    }
}
