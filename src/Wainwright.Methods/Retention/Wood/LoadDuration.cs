namespace Wainwright.Methods.Retention;

/// <summary>Wood carries a short load better than a long one: factor on working values after NDS.</summary>
/// <remarks>For fixings the document stops at 1.6, however short the blow.</remarks>
public static class LoadDuration
{
    /// <summary>Load-duration factors.</summary>
    public static readonly Basis Basis = new(
        Source: "NDS 2015/2018, table 2.3.2 and clause 11.3.2",
        Assumes: ["the strength of the fixing is set by wood: nothing for steel, head or sheet metal"],
        Caution: "Belongs to working values only: a breaking load from short tests already is short.",
        How: Provenance.FromMemory);

    /// <summary>How long the load lasts, all together.</summary>
    public enum Lasting
    {
        /// <summary>Ten years: the reference; stowed goods, a hanging cupboard.</summary>
        TenYears,

        /// <summary>Two months.</summary>
        TwoMonths,

        /// <summary>Seven days.</summary>
        SevenDays,

        /// <summary>Ten minutes.</summary>
        TenMinutes,

        /// <summary>A blow. Not to be used above 1.6 for fixings.</summary>
        Impact,
    }

    /// <summary>Factor on the working value of a fixing in wood [-].</summary>
    /// <param name="lasting">How long.</param>
    public static double Factor(Lasting lasting) => lasting switch
    {
        Lasting.TwoMonths => 1.15,
        Lasting.SevenDays => 1.25,
        Lasting.TenMinutes or Lasting.Impact => 1.6,
        _ => 1,
    };
}
