using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Practice;
using Wainwright.Survey;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Cutting;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Web.Shown;

/// <summary>Damp as it is read on a screen. What is wet and what to do, Survey has said.</summary>
public static class DampWords
{
    /// <summary>What to do with a board: a sign and a word, never one without the other.</summary>
    public static string Of(DampAdvice advice) => advice switch
    {
        DampAdvice.Keep => "✓ keep",
        DampAdvice.Dry => "◐ dry it",
        DampAdvice.CutOrProbe => "✕ probe, expect to cut",
        _ => "? cannot tell",
    };

    /// <summary>An area with its ends: <c>0.42 m² (0.10 to 0.96)</c>, <c>up to 0.04 m²</c> where likely there is none, a dash where there is none to speak of.</summary>
    public static string Area(Span m2) => m2.High < 0.005 ? "–"
        : m2.Likely < 0.005 ? string.Create(CultureInfo.InvariantCulture, $"up to {m2.High:0.00} m²")
        : string.Create(CultureInfo.InvariantCulture, $"{m2.Likely:0.00} m² ({m2.Low:0.00} to {m2.High:0.00})");

    /// <summary>What becomes of a board.</summary>
    public static string Of(BoardFate fate) => fate switch
    {
        BoardFate.Keep => "✓ keep",
        BoardFate.Dry => "◐ dry",
        BoardFate.Replace => "✕ cut out",
        _ => "? cannot tell",
    };

    /// <summary>How the van is left to dry.</summary>
    public static string Of(DryingCare care) => care switch
    {
        DryingCare.AsBuilt => "as it stands",
        DryingCare.FinishLifted => "finish lifted",
        DryingCare.OneSideOpened => "side to the room opened",
        _ => "opened, heated, aired",
    };

    /// <summary>Days until dry, as a range: <c>12 to 40 days</c>; an end that the days looked at do not show is said to be beyond them.</summary>
    /// <param name="days">The days.</param>
    /// <param name="looked">How far was looked [d].</param>
    public static string Days(Span days, double looked) =>
        double.IsInfinity(days.Low) ? $"not within {Figures.Number(looked, 0)} days"
        : double.IsInfinity(days.High) ? $"{Figures.Number(days.Low, 0)} to more than {Figures.Number(looked, 0)} days"
        : days.High < 0.5 ? "dry now"
        : $"{Figures.Number(days.Low, 0)} to {Figures.Number(days.High, 0)} days";

    /// <summary>Water: <c>1.2 l (0.4 to 2.6)</c>.</summary>
    public static string Litres(Span litres) => string.Create(CultureInfo.InvariantCulture, $"{litres.Likely:0.0} l ({litres.Low:0.0} to {litres.High:0.0})");

    /// <summary>A chance, never more sure than it can be: <c>over 99 %</c>.</summary>
    public static string Chance(double share) => share > 0.995 ? "over 99 %" : share < 0.005 ? "under 1 %" : string.Create(CultureInfo.InvariantCulture, $"{100 * share:0} %");

    /// <summary>A stretch of days: <c>19 days (4 to 442)</c>.</summary>
    public static string Since(Span days) => string.Create(CultureInfo.InvariantCulture, $"{days.Likely:0} days ({days.Low:0} to {days.High:0})");

    /// <summary>How a point keeps to what was foretold.</summary>
    public static string Of(DryingPace pace) => pace switch
    {
        DryingPace.Dry => "✓ dry",
        DryingPace.OnTime => "◐ on time",
        DryingPace.Late => "✕ late",
        _ => "? cannot tell",
    };

    /// <summary>Whether a board may be covered.</summary>
    public static string Of(CoverUpGate.Verdict verdict) => verdict switch
    {
        CoverUpGate.Verdict.Open => "✓ may be covered",
        CoverUpGate.Verdict.Shut => "✕ not to be covered",
        _ => "? cannot tell whether it may be covered",
    };

    /// <summary>A share of moisture: <c>16 %</c>.</summary>
    public static string Percent(double percent) => $"{Figures.Number(percent)} %";

    /// <summary>A reading as the map takes it: <c>≥ 28</c> where the meter was at its end.</summary>
    public static string Read(MeterReading.Result made)
    {
        ArgumentNullException.ThrowIfNull(made);
        return made.Bound switch
        {
            MeterReading.Bound.AtLeast => $"≥ {Figures.Number(made.Percent)}",
            MeterReading.Bound.AtMost => $"≤ {Figures.Number(made.Percent)}",
            _ => Figures.Number(made.Percent),
        };
    }

    /// <summary>How many thresholds a moisture is over: the band it is drawn in.</summary>
    /// <param name="thresholds">Thresholds, lowest first [%].</param>
    /// <param name="percent">The moisture [%].</param>
    public static int Band(IReadOnlyList<double> thresholds, double percent) => thresholds.Count(t => percent > t);

    /// <summary>A band in words: <c>up to 16 %</c>, <c>over 16 to 20 %</c>, <c>over 28 %</c>.</summary>
    public static string BandWords(IReadOnlyList<double> thresholds, int band)
    {
        ArgumentNullException.ThrowIfNull(thresholds);
        return band == 0 ? $"up to {Percent(thresholds[0])}" : band == thresholds.Count ? $"over {Percent(thresholds[^1])}" : $"over {Figures.Number(thresholds[band - 1])} to {Percent(thresholds[band])}";
    }

    /// <summary>A place along, across, up.</summary>
    public static string At(Measures measures, Place place) => $"{measures.Bare(place.XMm)}, {measures.Bare(place.YMm)}, {measures.Bare(place.ZMm)} {measures.LengthUnit()}";
}
