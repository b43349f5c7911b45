using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Drying;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>Board and insulation as the sum of wetting and drying takes them, from their words.</summary>
/// <remarks>
/// Factors of vapour resistance are the spread of <see cref="Methods.Moisture.Vapour.VapourTable"/>; densities without another word are common practice, no source.
/// Wicking through a board follows from its water absorption: A² = 5/6 D w² for a diffusivity that rises straight with filling (Parlange's
/// S² = ∫(θs + θ) D dθ, from memory). Along the sheet 2e-9 to 2e-7 m²/s: own rule, no source.
/// </remarks>
internal static class BoardStuff
{
    /// <summary>Panel against solid wood [-]: the middle of <see cref="PanelEquilibrium"/>'s range.</summary>
    public const double PanelFactor = 0.9;

    private static readonly (string Word, double KgPerM3, (double Low, double Likely, double High) Wet, (double Low, double Likely, double High) Dry, string Drinks)[] Woods =
    [
        ("birch ply", 680, (20, 50, 110), (200, 370, 700), "plywood"), ("poplar ply", 450, (20, 50, 110), (150, 330, 700), "plywood"), ("light ply", 430, (20, 50, 110), (150, 330, 700), "plywood"),
        ("faced ply", 550, (20, 50, 110), (200, 370, 700), "plywood"), ("ply", 550, (20, 50, 110), (200, 370, 700), "plywood"),
        ("osb", 620, (15, 30, 60), (30, 60, 118), "OSB"), ("hardboard", 900, (20, 30, 60), (30, 60, 120), "plywood"),
        ("fibreboard", 750, (10, 20, 40), (15, 30, 60), "plywood"), ("mdf", 750, (10, 20, 40), (15, 30, 60), "plywood"),
        ("solid wood", 450, (10, 20, 40), (50, 90, 160), "spruce across the grain"), ("", 650, (8, 15, 30), (25, 50, 100), "plywood"),
    ];

    private static readonly (string Word, double Low, double Likely, double High)[] Insulations =
    [
        ("xps", 100, 180, 300), ("eps", 20, 45, 100), ("closed cell", 2000, 5000, 10_000), ("closed-cell", 2000, 5000, 10_000), ("rubber", 2000, 5000, 10_000),
        ("pur", 50, 100, 185), ("pir", 50, 100, 185), ("polyurethane", 50, 100, 185), ("cork", 10, 25, 40), ("wool", 1, 1.5, 3), ("fleece", 1, 1.5, 3), ("polyester", 1, 1.5, 3),
        ("felt", 2, 5, 15), ("foam", 20, 80, 185),
    ];

    private static readonly string[] Metals = ["steel", "alumin", "metal", "foil", "glass"];

    /// <summary>The wood of a board.</summary>
    /// <param name="material">Its wood in short, as <see cref="BoardMaterial"/> says it.</param>
    /// <param name="airC">Temperature of the curve [°C].</param>
    /// <param name="doubt">How far from likely.</param>
    /// <param name="panelFactor">Panel against solid wood [-].</param>
    public static SheetMaterial Wood(string material, double airC, MaterialDoubt doubt, double panelFactor = PanelFactor)
    {
        var row = Woods.First(w => material.Contains(w.Word, StringComparison.Ordinal));
        var factor = BoardMaterial.IsPanel(material) ? panelFactor : 1;
        double At((double Low, double Likely, double High) f) => MaterialDoubt.At(doubt.Resistance, f.Low, f.Likely, f.High);
        var dry = SheetMaterial.Panel(material, row.KgPerM3, airC, factor, At(row.Dry), At(row.Wet), 0, 0);
        var drinks = LiquidUptake.Coefficients.Single(c => c.Material == row.Drinks);
        var coefficient = MaterialDoubt.At(doubt.Wicking, drinks.Low, Math.Sqrt(drinks.Low * drinks.High), drinks.High);
        var through = 1.2 * Math.Pow(coefficient / (dry.FullKgPerM3 - dry.BoundKgPerM3[^1]), 2);
        return dry with { WickingM2PerS = through, WickingAlongM2PerS = MaterialDoubt.At(doubt.Wicking, 2e-9, 2e-8, 2e-7) };
    }

    /// <summary>Insulation, felt and the like; null when the words say none.</summary>
    public static SheetMaterial? Insulation(string words, MaterialDoubt doubt)
    {
        var said = words.ToLowerInvariant();
        if (Insulations.FirstOrDefault(i => said.Contains(i.Word, StringComparison.Ordinal)) is not { Word: not null } row) return null;
        return SheetMaterial.Inert(row.Word, 30, 1, Math.Max(1, MaterialDoubt.At(doubt.Resistance, row.Low, row.Likely, row.High)));
    }

    /// <summary>Words for what air, wet and heat cannot pass.</summary>
    public static bool IsMetal(string words) => Metals.Any(w => words.Contains(w, StringComparison.OrdinalIgnoreCase)) && !words.Contains("wool", StringComparison.OrdinalIgnoreCase);
}
