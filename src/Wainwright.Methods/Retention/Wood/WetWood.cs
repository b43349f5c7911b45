namespace Wainwright.Methods.Retention;

/// <summary>What is left of a fixing's working value in wood that is wet, or was wet when the fixing was driven.</summary>
/// <remarks>
/// Withdrawal: nails 0.25 when driven in one state and loaded in the other; screws 0.7 while wet. Lateral: 0.7 while wet, and 0.7
/// (under 1/4 in) or 0.4 when driven wet and dried since. Wet means above 19 % of moisture.
/// </remarks>
public static class WetWood
{
    /// <summary>Wet service factors.</summary>
    public static readonly Basis Basis = new(
        Source: "NDS 2015/2018, table 11.3.3; smooth nails losing three quarters: Wood Handbook, chapter 8",
        Assumes: ["the wood is wet but sound", "plywood glue stands water"],
        Caution: "Rot, swollen chipboard and rust are not in these factors: a screw that can be pulled by hand holds nothing.",
        How: Provenance.FromMemory);

    /// <summary>Moisture content from which wood counts as wet [%].</summary>
    public const double WetFromPercent = 19;

    /// <summary>Factor on a working value straight out [-].</summary>
    /// <param name="fixing">What it is.</param>
    /// <param name="drivenWet">The wood was wet when it was driven.</param>
    /// <param name="loadedWet">The wood is wet now.</param>
    public static double Withdrawal(WoodFixing fixing, bool drivenWet, bool loadedWet) =>
        fixing == WoodFixing.SmoothNail ? (drivenWet == loadedWet ? 1 : 0.25) : loadedWet ? 0.7 : 1;

    /// <summary>Factor on a working value across [-].</summary>
    /// <param name="nominalMm">Nominal diameter [mm], above 0.</param>
    /// <param name="drivenWet">The wood was wet when it was driven.</param>
    /// <param name="loadedWet">The wood is wet now.</param>
    public static double Lateral(double nominalMm, bool drivenWet, bool loadedWet)
    {
        const double quarterInchMm = 6.35;
        if (loadedWet) return 0.7;
        return !drivenWet ? 1 : Must.BePositive(nominalMm) < quarterInchMm ? 0.7 : 0.4;
    }
}
