namespace Wainwright.Methods.Electrics;

/// <summary>Largest overcurrent device for a conductor, and how near to the source it must sit.</summary>
/// <remarks>At most 150 % of the conductor's table ampacity below 50 V; within 178 mm of the source, 1 016 mm in a sheath or enclosure.</remarks>
public static class FuseRule
{
    /// <summary>33 CFR 183.455 with ABYC E-11's third distance.</summary>
    public static readonly Basis Basis = new(
        Source: "33 CFR 183.455; third distance ABYC E-11 as surveyors quote it",
        Assumes: ["below 50 V", "length along the wire, not straight", "ampacity from 33 CFR 183.425 table 5"],
        Caution: "150 % is the upper bound of a boat rule, not a target: good work puts the fuse at or below the ampacity. Starter-motor cables are another matter.",
        How: Provenance.Quoted);

    /// <summary>Rating over ampacity allowed at most [-].</summary>
    public const double MostOfAmpacity = 1.5;

    /// <summary>Bare run from source to fuse [mm].</summary>
    public const double BareMm = 178;

    /// <summary>Run in a sheath or enclosure the whole way [mm].</summary>
    public const double SheathedMm = 1_016;

    /// <summary>ABYC only: from a battery post, sheathed the whole way [mm].</summary>
    public const double SheathedFromBatteryMm = 1_829;

    /// <summary>Largest rating [A] for an ampacity.</summary>
    /// <param name="ampacityAmp">Table ampacity [A], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The ampacity is not above 0.</exception>
    public static double LargestAmp(double ampacityAmp) => MostOfAmpacity * Must.BePositive(ampacityAmp);

    /// <summary>Longest unfused run allowed [mm].</summary>
    /// <param name="sheathed">In a sheath or enclosure the whole way.</param>
    /// <param name="fromBatteryPost">Starts at a battery post.</param>
    /// <param name="boatCouncilRule">True for ABYC E-11, false for 33 CFR 183.455.</param>
    public static double LongestUnfusedMm(bool sheathed, bool fromBatteryPost, bool boatCouncilRule) =>
        !sheathed ? BareMm : fromBatteryPost && boatCouncilRule ? SheathedFromBatteryMm : SheathedMm;
}
