namespace Wainwright.Methods.Retention;

/// <summary>How stiff a fixing is until it gives: for sharing loads elastically, and for first yield.</summary>
/// <remarks>
/// Across, per fixing: ρ^1.5·d/23 for screws and bored nails, ρ^1.5·d^0.8/30 for nails, ρ^1.5·d^0.8/80 for staples; twice that against steel.
/// Straight out, screws: 25·d·lef, a form of approval documents. In sheet: a usual range, no source.
/// </remarks>
public static class FixingSlip
{
    /// <summary>Slip moduli.</summary>
    public static readonly Basis Basis = new(
        Source: "EN 1995-1-1, table 7.1 and 7.1(3); straight out: form of European technical assessments of screws; in sheet: common practice, no source",
        Assumes: ["working load, not near the end", "mean density, of two members the root of their product"],
        Caution: "Stiffness scatters by half and more: it shares loads, it proves nothing. A pull test tells.",
        How: Provenance.FromMemory);

    /// <summary>Screw or bored nail across, wood to wood [N/mm].</summary>
    /// <param name="meanKgPerM3">Mean density [kg/m³], above 0.</param>
    /// <param name="diameterMm">Diameter [mm], above 0.</param>
    /// <param name="againstSteel">Steel on one side: twice as stiff.</param>
    public static double ScrewAcrossNPerMm(double meanKgPerM3, double diameterMm, bool againstSteel = false) =>
        Math.Pow(Must.BePositive(meanKgPerM3), 1.5) * Must.BePositive(diameterMm) / 23 * (againstSteel ? 2 : 1);

    /// <summary>Nail or brad, not bored, across [N/mm].</summary>
    /// <param name="meanKgPerM3">Mean density [kg/m³], above 0.</param>
    /// <param name="diameterMm">Diameter [mm], above 0.</param>
    public static double NailAcrossNPerMm(double meanKgPerM3, double diameterMm) =>
        Math.Pow(Must.BePositive(meanKgPerM3), 1.5) * Math.Pow(Must.BePositive(diameterMm), 0.8) / 30;

    /// <summary>Staple across [N/mm].</summary>
    /// <param name="meanKgPerM3">Mean density [kg/m³], above 0.</param>
    /// <param name="legMm">Leg [mm], above 0.</param>
    public static double StapleAcrossNPerMm(double meanKgPerM3, double legMm) =>
        Math.Pow(Must.BePositive(meanKgPerM3), 1.5) * Math.Pow(Must.BePositive(legMm), 0.8) / 80;

    /// <summary>Screw straight out of wood [N/mm].</summary>
    /// <param name="diameterMm">Diameter [mm], above 0.</param>
    /// <param name="threadMm">Thread in the wood [mm], above 0.</param>
    public static double ScrewOutNPerMm(double diameterMm, double threadMm) => 25 * Must.BePositive(diameterMm) * Must.BePositive(threadMm);

    /// <summary>Fixing straight out of or across thin sheet [N/mm]; common practice, no source.</summary>
    public static Spread InSheetNPerMm => new(200, 800, 3_000);
}
