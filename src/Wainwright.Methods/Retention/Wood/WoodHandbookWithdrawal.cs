namespace Wainwright.Methods.Retention;

/// <summary>Mean breaking load of a screw or nail pulled out of the side grain of wood.</summary>
/// <remarks>
/// In N and mm: nails 54.12·G^2.5·D·L, wood screws 108.25·G²·D·L, lag screws 125.4·G^1.5·D^0.75·L; screws threaded to the head
/// about a tenth more than wood screws. A mean, so half of all tests lie below it. Not to be mixed with the working values of
/// <see cref="NdsWithdrawal"/>. What a *holds* may count on is the lower twentieth: <see cref="LowerTwentieth"/>.
/// </remarks>
public static class WoodHandbookWithdrawal
{
    /// <summary>Mean ultimate withdrawal.</summary>
    public static readonly Basis Basis = new(
        Source: "Wood Handbook, FPL-GTR-190, chapter 8 (from memory); constants 54.12 and the older 6900·G^2.5·D of FPL Technical Note 236 (1958) as quoted",
        Assumes: ["a mean of short tests in the laboratory", "side grain, driven straight, dry throughout", "thread or shank length without the tapered tip"],
        Caution: "A mean breaking load, not a working value: half of all tests fail below it. No allowance for age, damp, splits or over-driving.",
        How: Provenance.FromMemory);

    /// <summary>
    /// Part of the equation that plywood reaches, from its face [-]: tests found the equation too high for plywood (Ahn 2021, woodj.org 49-1-93,
    /// abstract); by how much is common practice, no source. Its edge holds less still: <see cref="FixingCondition.State.BoardEdge"/>.
    /// </summary>
    public static Spread InPlywood => new(0.6, 0.8, 1);

    const double FullThread = 1.1, EndGrainLag = 0.75;

    /// <param name="Fixing">What it is.</param>
    /// <param name="SpecificGravity">Oven-dry specific gravity [-], above 0.</param>
    /// <param name="DiameterMm">Nominal diameter [mm], above 0.</param>
    /// <param name="PenetrationMm">Thread or shank in the holding wood [mm], 0 or more.</param>
    /// <param name="IsInEndGrain">Driven along the grain: lag screws three quarters, others not covered.</param>
    public sealed record Input(WoodFixing Fixing, double SpecificGravity, double DiameterMm, double PenetrationMm, bool IsInEndGrain = false);

    /// <param name="MeanUltimateN">Mean breaking load [N].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double MeanUltimateN, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or not above 0 where it must be.</exception>
    public static Result Of(Input pulled)
    {
        double g = Must.BePositive(pulled.SpecificGravity), d = Must.BePositive(pulled.DiameterMm);
        var nPerMm = pulled.Fixing switch
        {
            WoodFixing.LagScrew => 125.4 * Math.Pow(g, 1.5) * Math.Pow(d, 0.75),
            WoodFixing.SmoothNail => 54.12 * Math.Pow(g, 2.5) * d,
            WoodFixing.SheetMetalScrew => FullThread * 108.25 * g * g * d,
            _ => 108.25 * g * g * d,
        };
        List<string> outside = [];
        if (g is < 0.31 or > 0.73) outside.Add("specific gravity outside 0.31 to 0.73");
        var grain = !pulled.IsInEndGrain ? 1 : pulled.Fixing == WoodFixing.LagScrew ? EndGrainLag : 0;
        if (grain == 0) outside.Add("screws and nails are not covered in end grain");
        return new(nPerMm * Must.NotBeNegative(pulled.PenetrationMm) * grain, outside);
    }
}
