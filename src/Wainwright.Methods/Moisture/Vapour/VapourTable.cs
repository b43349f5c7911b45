namespace Wainwright.Methods.Moisture.Vapour;

/// <summary>Vapour resistance of what a van is built of: low, high, and how the figure is known.</summary>
/// <remarks>Two makers of one panel part by a factor of three; a test laboratory finds no generic figure for plywood, OSB or chipboard. Carry the spread.</remarks>
public static class VapourTable
{
    /// <summary>Several tables.</summary>
    public static readonly Basis Basis = new(
        Source: "ISO 10456 (from memory); SBi direction 178; open material files of a building program; DIN 4108-4 extract; makers' pages; each row says which",
        Assumes: ["whole sheets: no seams, no screw holes"],
        Caution: "Wetting opens plywood some thirty-five times (μ 700 dry, 20 wet): the wet figure counts while it dries.",
        How: Provenance.FromMemory);

    /// <summary>Factor of a material by thickness.</summary>
    /// <param name="Material">What it is.</param>
    /// <param name="WetFactor">μ, lowest or wet [-].</param>
    /// <param name="DryFactor">μ, highest or dry [-].</param>
    /// <param name="Source">Where it stands.</param>
    /// <param name="How">How it is known.</param>
    public sealed record Factor(string Material, double WetFactor, double DryFactor, string Source, Provenance How);

    /// <summary>Resistance of a whole layer, whatever its thickness.</summary>
    /// <param name="Name">What it is.</param>
    /// <param name="Resistance">Z [m²·s·Pa/kg].</param>
    /// <param name="Source">Where it stands.</param>
    /// <param name="How">How it is known.</param>
    public sealed record Cover(string Name, double Resistance, string Source, Provenance How);

    const string Iso = "ISO 10456, design values", Sbi = "SBi direction 178, table", Energy = "open material file of a building energy program";

    /// <summary>Factors μ.</summary>
    public static readonly IReadOnlyList<Factor> Factors =
    [
        new("plywood 300 kg/m³", 50, 150, Iso, Provenance.FromMemory),
        new("plywood 500 kg/m³", 70, 200, Iso, Provenance.FromMemory),
        new("plywood 700 kg/m³", 90, 220, Iso, Provenance.FromMemory),
        new("plywood 1000 kg/m³", 110, 250, Iso, Provenance.FromMemory),
        new("plywood, wet to dry", 20, 700, Energy, Provenance.Read),
        new("plywood, any", 50, 400, "DIN 4108-4, extract", Provenance.Quoted),
        new("OSB 650 kg/m³", 30, 50, Iso, Provenance.FromMemory),
        new("OSB, two makers", 30, 118, "forum thread quoting two makers", Provenance.Quoted),
        new("chipboard 600 kg/m³", 15, 50, Iso, Provenance.FromMemory),
        new("fibreboard 800 kg/m³", 20, 30, Iso, Provenance.FromMemory),
        new("timber 450–500 kg/m³", 20, 50, Iso, Provenance.FromMemory),
        new("spruce", 130, 130, Energy, Provenance.Read),
        new("softwood", 40, 40, "DIN 4108-4, extract", Provenance.Quoted),
        new("XPS", 150, 300, "an insulation maker's page", Provenance.Read),
        new("EPS", 20, 100, "an insulation maker's page", Provenance.Read),
        new("PUR or PIR foam", 50, 185, "an insulation maker's page", Provenance.Read),
        new("PVC sheet", 50_000, 50_000, Iso, Provenance.FromMemory),
        new("linoleum", 800, 1000, Iso, Provenance.FromMemory),
        new("cork tile", 20, 40, Iso, Provenance.FromMemory),
        new("epoxy or polyester resin", 10_000, 10_000, Iso, Provenance.FromMemory),
        new("metal or glass", double.PositiveInfinity, double.PositiveInfinity, Iso, Provenance.FromMemory),
    ];

    /// <summary>Resistances Z of whole layers.</summary>
    public static readonly IReadOnlyList<Cover> Covers =
    [
        new("vinyl floor", 100e9, Sbi, Provenance.Read),
        new("linoleum", 25e9, Sbi, Provenance.Read),
        new("latex-backed carpet", 1e9, Sbi, Provenance.Read),
        new("PE foil", 250e9, Sbi, Provenance.Read),
        new("roofing felt", 500e9, Sbi, Provenance.Read),
        new("special membrane", 5000e9, Sbi, Provenance.Read),
        new("alkyd paint", 15e9, Sbi, Provenance.Read),
        new("emulsion paint", 2.5e9, Sbi, Provenance.Read),
        new("PU lacquer", 50e9, Sbi, Provenance.Read),
        new("bare face in still air", 3.57e7, "1/(7e-9 h), h 4 W/(m²·K)", Provenance.FromMemory),
    ];
}
