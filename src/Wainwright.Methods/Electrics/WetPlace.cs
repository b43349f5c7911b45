namespace Wainwright.Methods.Electrics;

/// <summary>How near to water a mains outlet calls for residual-current protection.</summary>
/// <remarks>
/// 6 ft (1.8 m) from a sink, lavatory, tub or shower: the US rule for dwellings (seen as a municipal code quotes it) and for
/// manufactured homes (quoted); that NEC 551.41(C) says the same for recreational vehicles comes from memory and from teaching
/// pages. Codes for caravans elsewhere protect every outlet, whatever the distance.
/// </remarks>
public static class WetPlace
{
    /// <summary>The 6 ft rule.</summary>
    public static readonly Basis Basis = new(
        Source: "NEC 551.41(C) for recreational vehicles (from memory); sister article NEC 550.13(B): 6 ft (1.8 m), as quoted",
        Assumes: ["straight distance between the outlet and the nearest edge of the wet fitting", "an ordinary outlet on 120 or 230 V"],
        Caution: "Many codes want residual-current protection on every outlet of a vehicle. Distance is no protection from a leak above. Mains work belongs to a qualified electrician.",
        How: Provenance.Quoted);

    /// <summary>Distance within which protection is called for [mm].</summary>
    public const double WithinMm = 1_800;
}
