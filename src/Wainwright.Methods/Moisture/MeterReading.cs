namespace Wainwright.Methods.Moisture;

/// <summary>A pin meter's figure made comparable: species, then temperature, then what the meter can know at all.</summary>
/// <remarks>Above <see cref="HighestPercent"/> a reading says <em>at least</em>, below <see cref="LowestPercent"/> <em>at most</em>: a bound, not a number.</remarks>
public static class MeterReading
{
    /// <summary>Below it a pin meter is practically blind [%].</summary>
    public const double LowestPercent = 6;

    /// <summary>Above it, near fibre saturation, a pin meter no longer counts water [%].</summary>
    public const double HighestPercent = 28;

    /// <summary>Spread of pin and capacitance meters against oven drying, on panels [points either way].</summary>
    public const double PanelSpreadPoints = 2;

    /// <summary>Error of a curve fitted to its own species [points].</summary>
    public const double SpeciesCurveSpreadPoints = 1;

    /// <summary>Limits of makers and a comparison with the oven.</summary>
    public static readonly Basis Basis = new(
        Source: "Three makers' handbooks (6 to 28 %; 7 % to fibre saturation); abstract of a comparison of five meters with oven drying: within 2 points; abstract of a study of ten hardwoods: about 1 point",
        Assumes: ["readings above the limit only on wood that dried and was wetted again", "no foil, screw or metal near the pins"],
        Caution: "Salts and preservatives read 1 to 2 points high; plywood of unusual make reads high: prick a second place, known dry. The comparison with the oven does not name plywood.",
        How: Provenance.Read);

    /// <summary>What a figure says about the moisture.</summary>
    public enum Bound
    {
        /// <summary>Near it.</summary>
        About,

        /// <summary>That much or more.</summary>
        AtLeast,

        /// <summary>That much or less.</summary>
        AtMost,
    }

    /// <param name="ReadingPercent">What the meter shows [%], 0 to 100.</param>
    /// <param name="WoodC">Temperature of the wood [°C], −40 to 90; null when nobody took it: then nothing is corrected and a point is added to the spread.</param>
    /// <param name="IsPanel">Plywood, OSB, chipboard, fibreboard: no species curve exists.</param>
    /// <param name="SpeciesPoints">Points to add for the species [points]; 0 where the scale is the wood's own.</param>
    /// <param name="IsAtLeast">The meter itself showed its upper end.</param>
    /// <param name="CorrectsItself">The meter was told the temperature and has corrected already.</param>
    /// <param name="MeterOffPoints">How far the meter was off on its check block [points], −50 to 50: not taken off the figure, added to its spread.</param>
    public sealed record Input(double ReadingPercent, double? WoodC, bool IsPanel, double SpeciesPoints = 0, bool IsAtLeast = false, bool CorrectsItself = false, double MeterOffPoints = 0);

    /// <param name="Percent">Moisture [% of dry mass]; where it is a bound, the limit of the meter.</param>
    /// <param name="Bound">Whether the figure is a value or a limit.</param>
    /// <param name="SpreadPoints">Spread either way [points].</param>
    /// <param name="OutsideRange">What the reading lacks or leaves; empty when nothing.</param>
    public sealed record Result(double Percent, Bound Bound, double SpreadPoints, IReadOnlyList<string> OutsideRange);

    // a wood temperature nobody took: 10 K of doubt by the trade rule
    const double UnknownTemperaturePoints = 1;

    /// <summary>The figure as it may enter a calculation.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static Result Of(Input shown)
    {
        var species = Must.BeWithin(shown.ReadingPercent, 0, 100) + Must.BeFinite(shown.SpeciesPoints);
        List<string> outside = [];
        var percent = Math.Max(0, species);
        if (shown.WoodC is { } woodC)
        {
            if (!shown.CorrectsItself) percent = Math.Max(0, MeterTemperature.TradeRule(Math.Clamp(species, 0, 100), woodC));
            if (woodC <= 0) outside.Add("wood at or below freezing: ice in the pores misleads a pin meter");
        }
        else if (!shown.CorrectsItself) outside.Add("temperature of the wood was not taken");
        var spread = (shown.IsPanel ? PanelSpreadPoints : SpeciesCurveSpreadPoints) + (outside.Contains("temperature of the wood was not taken") ? UnknownTemperaturePoints : 0)
            + Math.Abs(Must.BeWithin(shown.MeterOffPoints, -50, 50));

        // the limit is the meter's: what it showed decides, not what the correction made of it
        if (shown.IsAtLeast) return new(Math.Min(percent, HighestPercent), Bound.AtLeast, spread, outside);
        if (shown.ReadingPercent > HighestPercent) return new(HighestPercent, Bound.AtLeast, spread, outside);
        if (shown.ReadingPercent < LowestPercent) return new(LowestPercent, Bound.AtMost, spread, outside);
        return new(percent, Bound.About, spread, outside);
    }
}
