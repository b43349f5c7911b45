using Wainwright.Methods.Moisture.Vapour;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>What a covering on a board stops of its vapour, from its words.</summary>
/// <remarks>Middles from <see cref="VapourTable"/>; ends a factor of two or three either way: common practice, no source. A decor or grip film is taken as an alkyd paint: own rule.</remarks>
internal static class CoverStuff
{
    private static readonly (string Word, double Low, double Likely, double High)[] Whole =
    [
        ("vinyl", 40e9, 100e9, 500e9), ("pvc", 40e9, 100e9, 500e9), ("rubber", 40e9, 100e9, 500e9), ("linoleum", 8e9, 25e9, 75e9), ("carpet", 0.3e9, 1e9, 3e9), ("felt", 2e7, 5e7, 1.5e8),
        ("lacquer", 17e9, 50e9, 150e9), ("membrane", 100e9, 250e9, 600e9), ("polythene", 100e9, 250e9, 600e9),
    ];

    private static readonly string[] Films = ["grip face", "faced", "laminate", "melamine", "decor", "film", "painted", "varnish", "coated"];

    private static readonly string[] Plastics = ["abs", "grp", "resin", "acrylic", "plastic", "polyester sheet", "glass fibre", "glassfibre"];

    /// <summary>Resistance of a film that a board's own words tell of [m²·s·Pa/kg]; 0 when they tell of none.</summary>
    public static double Film(string words, double mark) =>
        Films.Any(f => words.Contains(f, StringComparison.OrdinalIgnoreCase)) && !words.Contains("felt", StringComparison.OrdinalIgnoreCase) ? MaterialDoubt.At(mark, 5e9, 15e9, 50e9) : 0;

    /// <summary>Resistance of a covering [m²·s·Pa/kg]; infinite for metal, null when nobody said what it is.</summary>
    /// <param name="words">What it is made of, or its name.</param>
    /// <param name="thicknessMm">How thick it lies [mm].</param>
    /// <param name="airC">Temperature [°C].</param>
    /// <param name="doubt">How far from likely.</param>
    public static double? Resistance(string words, double thicknessMm, double airC, MaterialDoubt doubt)
    {
        var said = words.ToLowerInvariant();
        if (Whole.FirstOrDefault(c => said.Contains(c.Word, StringComparison.Ordinal)) is { Word: not null } whole) return MaterialDoubt.At(doubt.Resistance, whole.Low, whole.Likely, whole.High);
        if (Plastics.Any(p => said.Contains(p, StringComparison.Ordinal))) return OfFactor(MaterialDoubt.At(doubt.Resistance, 5_000, 10_000, 20_000), thicknessMm, airC);
        if (BoardMaterial.Named(said) is { } wood)
        {
            var board = BoardStuff.Wood(wood, airC, doubt);
            return OfFactor(Math.Sqrt(board.DryFactor * board.WetFactor), thicknessMm, airC) + Film(said, doubt.Resistance);
        }
        if (BoardStuff.Insulation(said, doubt) is { } soft) return OfFactor(soft.DryFactor, thicknessMm, airC);
        return BoardStuff.IsMetal(said) ? double.PositiveInfinity : null;
    }

    private static double OfFactor(double factor, double thicknessMm, double airC) => VapourResistance.OfAirLayer(VapourResistance.AirLayerM(factor, thicknessMm), airC);
}
