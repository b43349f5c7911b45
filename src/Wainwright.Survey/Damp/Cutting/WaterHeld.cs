using Wainwright.Fitout;
using Wainwright.Methods.Moisture;

namespace Wainwright.Survey.Damp.Cutting;

/// <summary>Water over the dry board in pieces of board, from whole likely maps.</summary>
/// <remarks>Σ area · thickness · dry density · (M − dry)/100, map by map; 5, 50 and 95 of 100 maps, the ends also with the density's ends. No piece holds more than its pores do.</remarks>
internal sealed class WaterHeld(DampMap map, IReadOnlyList<double[]> draws)
{
    /// <summary>Litres in shares of pieces of one board [l].</summary>
    /// <param name="sheet">The board.</param>
    /// <param name="shares">Pieces and how much of each counts [0–1].</param>
    public Span Litres(DampSheet sheet, IReadOnlyList<(int Cell, double Share)> shares)
    {
        if (shares.Count == 0) return Span.Exactly(0);
        var density = BoardDensity.KgPerM3(Part(sheet), sheet.Material);
        var most = WaterInWood.MostPercent(Math.Clamp(density.Likely / 1000, 0.1, 1.5));
        var dry = map.Field.DryPercent(sheet.Group);
        // litres for each kilogram per cubic metre of dry density
        var perDensity = draws.Select(d => shares.Sum(s => s.Share * map.Net.Cells[s.Cell].AreaMm2 * 1e-6 * ThicknessMm(s.Cell) * 1e-3 * (Math.Min(d[s.Cell], most) - dry) / 100)).Order().ToList();
        double At(double share) => Math.Max(0, perDensity[(int)Math.Round(share * (perDensity.Count - 1))]);
        return new(At(0.05) * density.Low, At(0.5) * density.Likely, At(0.95) * density.High);
    }

    private double ThicknessMm(int cell) => BoardCells.Sides(map.Net.Cells[cell].High - map.Net.Cells[cell].Low)[map.Net.Cells[cell].Across];

    private Part Part(DampSheet sheet) => map.Job.Parts.First(p => p.Id == sheet.Part);
}
