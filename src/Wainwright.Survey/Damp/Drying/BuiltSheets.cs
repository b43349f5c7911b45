using Wainwright.Methods.Moisture.Drying;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>The boards of a van as layered sheets, and where in them each piece of the damp net is.</summary>
/// <param name="Net">The sheets.</param>
/// <param name="ColumnOf">Column of each piece of the damp net.</param>
/// <param name="LayerOf">Layer of that column: 0 for the board itself, above 0 for one that lies behind another.</param>
/// <param name="Behind">Layers behind the board that are no piece of the damp net, by column: to be brought to rest with it.</param>
internal sealed record BuiltSheets(SheetNet Net, IReadOnlyList<int> ColumnOf, IReadOnlyList<int> LayerOf, IReadOnlyList<(int Column, int Layer)> Behind)
{
    /// <summary>Slices of a board; what lies behind it has two for each layer.</summary>
    public const int BoardSlices = 4, BehindSlices = 2;

    /// <summary>Slices of a piece in its column: its first and how many.</summary>
    public (int First, int Count) SlicesOf(int cell) => LayerOf[cell] == 0 ? (0, BoardSlices) : (BoardSlices + (BehindSlices * (LayerOf[cell] - 1)), BehindSlices);

    /// <summary>Most that a piece can hold [% of dry mass].</summary>
    public double MostPercent(int cell)
    {
        var material = Net.BuildUps[Net.Cells[ColumnOf[cell]].BuildUp].Layers[LayerOf[cell]].Material;
        return 100 * material.FullKgPerM3 / material.DryKgPerM3;
    }

    /// <summary>Dry wood of a piece [kg].</summary>
    public double DryKg(int cell, double areaMm2)
    {
        var layer = Net.BuildUps[Net.Cells[ColumnOf[cell]].BuildUp].Layers[LayerOf[cell]];
        return layer.Material.DryKgPerM3 * layer.ThicknessMm / 1000 * areaMm2 * 1e-6;
    }

    /// <summary>A run whose pieces begin with a moisture each; what lies behind them and nobody reads begins at rest with them, up to 98 % (own rule).</summary>
    /// <param name="percent">Moisture of each piece of the damp net [%].</param>
    /// <param name="humidityFraction">Humidity of what is no piece and lies behind none [0–1].</param>
    public DryingRun From(IReadOnlyList<double> percent, double humidityFraction)
    {
        const double Wettest = 0.98;
        var run = new DryingRun(Net, humidityFraction);
        run.Wet(ColumnOf.Select((column, cell) => (column, LayerOf[cell], Math.Clamp(percent[cell], 0, 0.999 * MostPercent(cell)))));
        run.Rest(Behind.Select(b => (b.Column, b.Layer, Math.Min(Wettest, run.HumidityFraction(b.Column, BoardSlices - 1)))).ToList());
        return run;
    }

    /// <summary>Moisture of every piece [%].</summary>
    public double[] Percent(DryingRun run) => [.. ColumnOf.Select((column, cell) => run.MoisturePercent(column, LayerOf[cell]))];

    /// <summary>Humidity at the wetter face of every piece [0–1].</summary>
    public double[] FaceHumidity(DryingRun run) => [.. ColumnOf.Select((column, cell) =>
    {
        var (first, count) = SlicesOf(cell);
        return Math.Max(run.HumidityFraction(column, first), run.HumidityFraction(column, first + count - 1));
    })];
}
