namespace Wainwright.Methods.Moisture.Practice;

/// <summary>What a moisture percentage of wood or panel means, each line with who says so.</summary>
public static class MoistureThresholds
{
    /// <summary>Many sources, a line each.</summary>
    public static readonly Basis Basis = new(
        Source: "Each line names its own",
        Assumes: ["moisture of the wood itself, corrected"],
        Caution: "Lines between sources part by some points; several rots still destroyed wood clearly below fibre saturation.",
        How: Provenance.Quoted);

    /// <param name="FromPercent">From [% of dry mass].</param>
    /// <param name="ToPercent">To [% of dry mass]; positive infinity where open.</param>
    /// <param name="Means">What it means.</param>
    /// <param name="Source">Who says so.</param>
    /// <param name="How">How it is known.</param>
    public sealed record Line(double FromPercent, double ToPercent, string Means, string Source, Provenance How);

    /// <summary>Dry for panels; the same line as 80 % of humidity at 20 °C [%].</summary>
    public const double DryPercent = 16;

    /// <summary>Below it rot does not start [%].</summary>
    public const double DecayPercent = 20;

    /// <summary>About fibre saturation: real rot above it [%].</summary>
    public const double SaturationPercent = 28;

    /// <summary>All lines, by moisture.</summary>
    public static readonly IReadOnlyList<Line> All =
    [
        new(6, 16, "yearly range of indoor wood in most of the USA; too dry for microbes", "Smulski 1996", Provenance.Read),
        new(8, 14, "usual for framing and sheathing", "a consultant's page on moisture testing", Provenance.Read),
        new(0, 12, "good reading for a timber subfloor before laying", "a flooring shop's guide", Provenance.Read),
        new(0, 15, "dry before a wetted raised floor is closed", "a trainer's article after a flood", Provenance.Read),
        new(0, DryPercent, "dry for plywood design stresses; 16 % is 79.9 % of humidity at 20 °C, the mould line", "a formwork handbook quoting the plywood design rules; WoodEquilibrium", Provenance.Quoted),
        new(0, 18, "limit for load-bearing panels in humid class", "EN 13986 with DIN 68800-2, in a yearbook", Provenance.Quoted),
        new(0, DecayPercent, "class 1: rot does not start", "EN 335-1, appendix of a supplier", Provenance.Quoted),
        new(0, 21, "limit for load-bearing panels in exterior class", "EN 13986 with DIN 68800-2, in a yearbook", Provenance.Quoted),
        new(20, 25, "attack much reduced; limited rot possible with some fungi", "a framing guide; a consultant's page", Provenance.Read),
        new(25, double.PositiveInfinity, "attack prevalent, 5 to 40 °C, best 25 to 40", "a framing guide", Provenance.Read),
        new(SaturationPercent, double.PositiveInfinity, "about fibre saturation (25 to 33 % by source): real rot above it", "a consultant's page; a glossary; WoodEquilibrium gives 28.8", Provenance.Read),
        new(29, double.PositiveInfinity, "spores infect; rot grows into drier wood from a wetter part from 20 %", "a quotation, original not named", Provenance.Quoted),
    ];
}
