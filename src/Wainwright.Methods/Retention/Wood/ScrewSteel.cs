namespace Wainwright.Methods.Retention;

/// <summary>Root diameter and bending strength of wood screws, lag screws and nails as the American tables take them.</summary>
/// <remarks>Between two tabled sizes the root is a straight line; outside them the nearest ratio of root to nominal is kept.</remarks>
public static class ScrewSteel
{
    /// <summary>Sizes and bending yield strengths.</summary>
    public static readonly Basis Basis = new(
        Source: "NDS 2015/2018, appendix L and table I1; together with the yield equations they reproduce tables 12K, 12L and 12M",
        Assumes: ["common steel; stainless and brass screws are softer", "US wood-screw forms; metric chipboard screws: ChipboardRootMm"],
        Caution: "Chipboard and drywall screws are hard and brittle: they snap where these bend.",
        How: Provenance.FromMemory);

    static readonly (double NominalIn, double RootIn)[] WoodScrews =
        [(0.138, 0.113), (0.151, 0.122), (0.164, 0.131), (0.177, 0.142), (0.190, 0.152), (0.216, 0.171), (0.242, 0.196)];

    static readonly (double NominalIn, double RootIn)[] LagScrews = [(0.25, 0.173), (0.3125, 0.227), (0.375, 0.265), (0.4375, 0.328), (0.5, 0.371)];

    /// <summary>Diameter at the root of the thread [mm]; a nail's is its own.</summary>
    /// <param name="fixing">What it is.</param>
    /// <param name="nominalMm">Nominal diameter [mm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not above 0.</exception>
    public static double RootMm(WoodFixing fixing, double nominalMm)
    {
        Must.BePositive(nominalMm);
        if (fixing == WoodFixing.SmoothNail) return nominalMm;
        var sizes = fixing == WoodFixing.LagScrew ? LagScrews : WoodScrews;
        var inches = nominalMm / UsUnits.MmPerIn;
        if (inches <= sizes[0].NominalIn) return nominalMm * sizes[0].RootIn / sizes[0].NominalIn;
        if (inches >= sizes[^1].NominalIn) return nominalMm * sizes[^1].RootIn / sizes[^1].NominalIn;
        var above = Array.FindIndex(sizes, s => s.NominalIn >= inches);
        var ((n0, r0), (n1, r1)) = (sizes[above - 1], sizes[above]);
        return (r0 + ((inches - n0) / (n1 - n0) * (r1 - r0))) * UsUnits.MmPerIn;
    }

    /// <summary>Root of a metric chipboard screw [mm]: 0.63 of nominal; common practice, no source.</summary>
    /// <param name="nominalMm">Nominal diameter [mm], above 0.</param>
    public static double ChipboardRootMm(double nominalMm) => 0.63 * Must.BePositive(nominalMm);

    /// <summary>Usual countersunk head [mm]: twice nominal; common practice, no source. Measure where it decides.</summary>
    /// <param name="nominalMm">Nominal diameter [mm], above 0.</param>
    public static double UsualHeadMm(double nominalMm) => 2 * Must.BePositive(nominalMm);

    /// <summary>Nominal diameter of a US screw number [mm]: 0.060 in + 0.013 in for each number.</summary>
    /// <param name="number">Screw number, 0 to 24.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside 0 to 24.</exception>
    public static double NominalMm(int number) => (0.060 + (0.013 * Must.BeWithin(number, 0, 24))) * UsUnits.MmPerIn;

    /// <summary>Bending yield strength by nominal diameter [MPa].</summary>
    /// <param name="fixing">What it is.</param>
    /// <param name="nominalMm">Nominal diameter [mm], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not above 0.</exception>
    public static double BendingYieldMPa(WoodFixing fixing, double nominalMm)
    {
        // half a mil of grace: a size that went through millimetres must not fall into its neighbour's row
        const double grace = 0.0005;
        var inches = Must.BePositive(nominalMm) / UsUnits.MmPerIn;
        var ksi = fixing == WoodFixing.LagScrew
            ? inches switch { < 0.3125 - grace => 70, < 0.375 - grace => 60, _ => 45 }
            : inches switch { <= 0.142 + grace => 100, <= 0.177 + grace => 90, <= 0.236 + grace => 80, <= 0.273 + grace => 70, <= 0.344 + grace => 60, _ => 45 };
        return ksi * 1000 * UsUnits.MPaPerPsi;
    }
}
