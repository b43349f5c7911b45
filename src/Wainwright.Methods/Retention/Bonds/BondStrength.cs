namespace Wainwright.Methods.Retention;

/// <summary>Glue, sealant, foam tape, hook-and-loop: stress times area, as a wide range.</summary>
/// <remarks>
/// Short pull along the joint [MPa]: elastic polyurethane 1.5 to 4, high-modulus 4 to 7, silicone about 0.3, acrylic foam tape 0.4 to
/// 0.7, hook-and-loop 0.05 to 0.15. Under lasting load, age, heat and dirty paint elastic glue keeps a tenth to an eighth; foam tape 1.7 kPa.
/// Wood glue and contact glue: no range here; the wood or the veneer gives first when they are sound.
/// </remarks>
public static class BondStrength
{
    /// <summary>Ranges of the trade.</summary>
    public static readonly Basis Basis = new(
        Source: "ranges of makers' sheets (from memory); silicone 0.3 N/mm² on polyurethane: kraska.biz, table 3.5; hook-and-loop from memory",
        Assumes: ["the bonded area was seen, clean and wetted all over", "at room temperature", "loaded along the joint, evenly: no edge is peeled"],
        Caution: "Peel at one edge lets go at a small part of this. A roof in the sun reaches 70 °C: tape and hook-and-loop creep. Paint is no stronger than its own hold. Never rely on glue nobody has seen; prefer the maker's sheet.",
        How: Provenance.FromMemory);

    /// <summary>What bonds.</summary>
    public enum Bond
    {
        /// <summary>One-part polyurethane, elastic: body and window adhesive.</summary>
        ElasticPolyurethane,

        /// <summary>One-part polyurethane, high modulus.</summary>
        StiffPolyurethane,

        /// <summary>Silicone sealant.</summary>
        Silicone,

        /// <summary>Acrylic foam tape.</summary>
        FoamTape,

        /// <summary>Hook-and-loop tape.</summary>
        HookAndLoop,
    }

    /// <summary>Stress along the joint for a short pull [MPa].</summary>
    /// <param name="bond">What bonds.</param>
    public static Spread ShortShearMPa(Bond bond) => bond switch
    {
        Bond.ElasticPolyurethane => new(1.5, 2.5, 4),
        Bond.StiffPolyurethane => new(4, 5, 7),
        Bond.Silicone => new(0.15, 0.3, 0.6), // half and twice the one value seen: our rule
        Bond.FoamTape => new(0.4, 0.55, 0.7),
        _ => new(0.05, 0.1, 0.15),
    };

    /// <summary>Stress along the joint that it bears for years [MPa]; hook-and-loop loses with every opening and is not counted.</summary>
    /// <param name="bond">What bonds.</param>
    public static Spread LastingShearMPa(Bond bond) => bond switch
    {
        Bond.FoamTape => Spread.Exactly(0.0017),
        Bond.HookAndLoop => Spread.Exactly(0),
        _ => new(ShortShearMPa(bond).Low / 10, ShortShearMPa(bond).Likely / 10, ShortShearMPa(bond).High / 8),
    };

    /// <summary>Pull that peels an edge, for each millimetre of its width [N/mm]; null where no range is known.</summary>
    /// <param name="bond">What bonds.</param>
    public static Spread? PeelNPerMm(Bond bond) => bond == Bond.HookAndLoop ? new Spread(0.05, 0.1, 0.15) : null;

    /// <summary>Short pull along the joint [N].</summary>
    /// <param name="bond">What bonds.</param>
    /// <param name="bondedMm2">Area truly bonded [mm²], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative area.</exception>
    public static Spread ShortShearN(Bond bond, double bondedMm2) => ShortShearMPa(bond) * bondedMm2;
}
