using Wainwright.Methods.Moisture.Drying;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>Into how many slices boards are cut.</summary>
/// <param name="Board">A board.</param>
/// <param name="Behind">Each layer behind it.</param>
internal readonly record struct SlicesOfSheet(int Board, int Behind)
{
    /// <summary>For drying, where the face decides, and for wetting, where next to nothing is known of what came in.</summary>
    public static readonly SlicesOfSheet Fine = new(4, 2), Coarse = new(2, 1);
}

/// <summary>The boards of a van as layered sheets, and where in them each piece of the damp net is.</summary>
/// <param name="Net">The sheets.</param>
/// <param name="ColumnOf">Column of each piece of the damp net that was asked for, in that order.</param>
/// <param name="LayerOf">Layer of that column: 0 for the board itself, above 0 for one that lies behind another.</param>
/// <param name="Behind">Layers behind the board that are no piece of the damp net, by column: to be brought to rest with it.</param>
/// <param name="Cut">Into how many slices a board and each layer behind it are cut.</param>
internal sealed record BuiltSheets(SheetNet Net, IReadOnlyList<int> ColumnOf, IReadOnlyList<int> LayerOf, IReadOnlyList<(int Column, int Layer)> Behind, SlicesOfSheet Cut)
{
    /// <summary>Slices of a piece in its column: its first and how many.</summary>
    public (int First, int Count) SlicesOf(int cell) => LayerOf[cell] == 0 ? (0, Cut.Board) : (Cut.Board + (Cut.Behind * (LayerOf[cell] - 1)), Cut.Behind);

    /// <summary>Most that a piece can hold [% of dry mass].</summary>
    public double MostPercent(int cell)
    {
        var material = Net.BuildUps[Net.Cells[ColumnOf[cell]].BuildUp].Layers[LayerOf[cell]].Material;
        return 100 * material.FullKgPerM3 / material.DryKgPerM3;
    }

    /// <summary>Most that a piece can hold [kg].</summary>
    public double HoldsKg(int cell)
    {
        var column = Net.Cells[ColumnOf[cell]];
        var layer = Net.BuildUps[column.BuildUp].Layers[LayerOf[cell]];
        return layer.Material.FullKgPerM3 * layer.ThicknessMm / 1000 * column.AreaMm2 * 1e-6;
    }

    /// <summary>A run whose pieces begin with a moisture each; what lies behind them and nobody reads begins at rest with them, up to 98 % (own rule).</summary>
    /// <param name="percent">Moisture of each piece of the damp net [%].</param>
    /// <param name="humidityFraction">Humidity of what is no piece and lies behind none [0–1].</param>
    public DryingRun From(IReadOnlyList<double> percent, double humidityFraction)
    {
        const double Wettest = 0.98;
        var run = new DryingRun(Net, humidityFraction);
        run.Wet(ColumnOf.Select((column, cell) => (column, LayerOf[cell], Math.Clamp(percent[cell], 0, 0.999 * MostPercent(cell)))));
        run.Rest(Behind.Select(b => (b.Column, b.Layer, Math.Min(Wettest, run.HumidityFraction(b.Column, Cut.Board - 1)))).ToList());
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
