namespace Wainwright.Methods.Retention;

/// <summary>How much of the lateral value is left when a fixing goes less deep than the tables ask.</summary>
/// <remarks>Screws and nails: full from 10 D, p/10D down to 6 D, none below. Lag screws: full from 8 D, p/8D down to 4 D, none below.</remarks>
public static class NdsPenetration
{
    /// <summary>Penetration rule.</summary>
    public static readonly Basis Basis = new(
        Source: "NDS 2005, footnotes of tables 11L to 11R, as used in a published engineers' thread (1.25 of 1.62 in: 0.772); lag screws from memory",
        Assumes: ["penetration into the holding member, tip included where 10 D is reached"],
        Caution: "Below the least depth there is no value: a screw in thin board counts for nothing sideways by this rule.",
        How: Provenance.Quoted);

    /// <summary>Part of the full lateral value [-], 0 to 1.</summary>
    /// <param name="fixing">What it is.</param>
    /// <param name="nominalMm">Nominal diameter [mm], above 0.</param>
    /// <param name="penetrationMm">Depth in the holding member [mm], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double Factor(WoodFixing fixing, double nominalMm, double penetrationMm)
    {
        var (full, least) = fixing == WoodFixing.LagScrew ? (8, 4) : (10, 6);
        var depth = Must.NotBeNegative(penetrationMm) / Must.BePositive(nominalMm);
        return depth < least ? 0 : Math.Min(1, depth / full);
    }
}
