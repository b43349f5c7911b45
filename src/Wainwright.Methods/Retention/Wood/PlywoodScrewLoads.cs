namespace Wainwright.Methods.Retention;

/// <summary>Screws between plywood and metal, loaded across, as tested: a table to look up, for no equation here reproduces it.</summary>
/// <remarks>
/// Average breaking loads, exterior plywood of group 1 wood, face grain along the load, end distance one inch. They are about eight
/// times a working value: nobody may use eight as a safety factor.
/// </remarks>
public static class PlywoodScrewLoads
{
    /// <summary>Association tests.</summary>
    public static readonly Basis Basis = new(
        Source: "APA technical note E830, tables 1 and 2, as filed in a building permit of Santa Ana CA (publicdocs.santa-ana.org, doc 375230, p. 118)",
        Assumes: ["plywood of group 1 wood (Douglas fir and the like)", "metal 3/16 in steel in table 1, 0.078 in galvanised steel in table 2"],
        Caution: "Averages of tests, not design values; light furniture plywood of poplar or okoume holds less. Cells the source itself only estimated are left out.",
        How: Provenance.Read);

    /// <summary>Which of the two the screw enters first.</summary>
    public enum Joint
    {
        /// <summary>Thick steel under the head, thread in the plywood.</summary>
        MetalOnPlywood,

        /// <summary>Plywood under the head, thread in sheet steel.</summary>
        PlywoodOnSheet,
    }

    /// <param name="Joint">Which joint.</param>
    /// <param name="IsFullThread">Sheet-metal screw, threaded to the head.</param>
    /// <param name="Number">US screw number.</param>
    /// <param name="PlywoodMm">Threaded depth in the plywood, or plywood thickness [mm].</param>
    /// <param name="MeanUltimateN">Average breaking load across [N].</param>
    /// <param name="SheetGoverned">The screw left the sheet; the plywood would have stood more.</param>
    public sealed record Row(Joint Joint, bool IsFullThread, int Number, double PlywoodMm, double MeanUltimateN, bool SheetGoverned = false);

    const double Inch = UsUnits.MmPerIn, Pound = UsUnits.NPerLb;

    /// <summary>All measured rows.</summary>
    public static IReadOnlyList<Row> Rows { get; } =
    [
        new(Joint.MetalOnPlywood, false, 8, Inch / 2, 415 * Pound), new(Joint.MetalOnPlywood, false, 12, Inch / 2, 590 * Pound),
        new(Joint.MetalOnPlywood, true, 8, Inch / 2, 465 * Pound), new(Joint.MetalOnPlywood, true, 12, Inch / 2, 670 * Pound),
        new(Joint.MetalOnPlywood, true, 8, Inch * 5 / 8, 500 * Pound), new(Joint.MetalOnPlywood, true, 12, Inch * 5 / 8, 705 * Pound),
        new(Joint.MetalOnPlywood, true, 8, Inch * 3 / 4, 590 * Pound), new(Joint.MetalOnPlywood, true, 12, Inch * 3 / 4, 715 * Pound),
        new(Joint.PlywoodOnSheet, true, 8, Inch / 4, 360 * Pound), new(Joint.PlywoodOnSheet, true, 10, Inch / 4, 380 * Pound),
        new(Joint.PlywoodOnSheet, true, 12, Inch / 4, 400 * Pound), new(Joint.PlywoodOnSheet, true, 14, Inch / 4, 410 * Pound),
        new(Joint.PlywoodOnSheet, true, 8, Inch / 2, 700 * Pound, true), new(Joint.PlywoodOnSheet, true, 10, Inch / 2, 890 * Pound, true),
        new(Joint.PlywoodOnSheet, true, 12, Inch / 2, 900 * Pound), new(Joint.PlywoodOnSheet, true, 14, Inch / 2, 920 * Pound),
        new(Joint.PlywoodOnSheet, true, 8, Inch * 3 / 4, 700 * Pound, true), new(Joint.PlywoodOnSheet, true, 10, Inch * 3 / 4, 950 * Pound, true),
        new(Joint.PlywoodOnSheet, true, 12, Inch * 3 / 4, 1300 * Pound, true), new(Joint.PlywoodOnSheet, true, 14, Inch * 3 / 4, 1390 * Pound, true),
    ];
}
