using Wainwright.Fitout;
using Wainwright.Methods;
using Wainwright.Methods.Moisture.Field;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Survey.Damp;

/// <summary>What to do with a board, as the readings stand.</summary>
public enum DampAdvice
{
    /// <summary>Likely dry all over.</summary>
    Keep,

    /// <summary>Wet, likely nowhere past fibre saturation: open and dry it, read again.</summary>
    Dry,

    /// <summary>Likely past fibre saturation in places: probe it there, expect to cut.</summary>
    CutOrProbe,

    /// <summary>Too little read to say.</summary>
    CannotTell,
}

/// <summary>Area of a board over a threshold.</summary>
/// <param name="ThresholdPercent">The threshold [%].</param>
/// <param name="AreaM2">Area of one face over it [m²]: 5, 50 and 95 of 100 likely maps.</param>
public sealed record AreaOver(double ThresholdPercent, Span AreaM2);

/// <summary>What the map says of one board.</summary>
/// <param name="Sheet">The board.</param>
/// <param name="Readings">Number of readings on it.</param>
/// <param name="Over">Area over each threshold, lowest first.</param>
/// <param name="WettestPercent">Middle of what its wettest piece may hold [%].</param>
/// <param name="WettestAt">Middle of that piece [mm].</param>
/// <param name="UnreadShare">Share of its area that no reading reaches [0–1].</param>
/// <param name="Advice">What to do.</param>
/// <param name="Because">Why, in words with ranges; what is missing where it cannot be told.</param>
public sealed record DampSheetMap(DampSheet Sheet, int Readings, IReadOnlyList<AreaOver> Over, double WettestPercent, Place WettestAt, double UnreadShare, DampAdvice Advice, string Because);

/// <summary>Moisture of the wooden surfaces of a van on one day, from its readings: what is likely, how surely, and what is not known.</summary>
public sealed class DampMap
{
    /// <summary>Thresholds unless others are asked: mould from the air, decay, fibre saturation [%].</summary>
    public static readonly IReadOnlyList<double> UsualThresholds = [16, 20, 28];

    /// <summary>What no map takes away.</summary>
    public const string Caution = "A map of what is likely between readings, not a measurement: open and read before promising a price. Wet board can carry mould: mask, gloves, no brushing dry, air away from living space; people with weak lungs stay out. Water near wires: isolate and prove dead before opening, mains by licensed people.";

    internal DampMap(Job job, DampNet net, IReadOnlyList<DampReading> readings, IReadOnlyList<string> told, DampPosterior field, string dryFrom, IReadOnlyList<double> thresholds, IReadOnlyList<DampSheetMap> sheets) =>
        (Job, Net, Readings, Told, Field, DryFrom, ThresholdsPercent, Sheets) = (job, net, readings, told, field, dryFrom, thresholds, sheets);

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>The surfaces.</summary>
    public DampNet Net { get; }

    /// <summary>The readings it rests on.</summary>
    public IReadOnlyList<DampReading> Readings { get; }

    /// <summary>What was left out or doubted, one line each.</summary>
    public IReadOnlyList<string> Told { get; }

    /// <summary>The fitted field: mean, spread and chance of each cell.</summary>
    public DampPosterior Field { get; }

    /// <summary>What the dry board was first taken from.</summary>
    public string DryFrom { get; }

    /// <summary>Nobody has read the air, so the dry board is a habit of the trade, not this van's.</summary>
    public bool IsWithoutAir => DryFrom == DryBoard.WithoutAir;

    /// <summary>Whether no reading tells anything of a piece: its spread is near that of a piece that none reaches.</summary>
    /// <param name="cell">The piece.</param>
    public bool IsUnread(int cell) => SheetVerdict.IsUnread(Field, cell);

    /// <summary>The thresholds [%], lowest first.</summary>
    public IReadOnlyList<double> ThresholdsPercent { get; }

    /// <summary>Board by board, in the order of the job.</summary>
    public IReadOnlyList<DampSheetMap> Sheets { get; }

    /// <summary>Day of the newest reading in it; null without any.</summary>
    public DateTimeOffset? Newest => Readings.Count == 0 ? null : Readings.Max(r => r.Reading.TakenAt);

    /// <summary>Parts that were out at the stage of the newest reading.</summary>
    public IReadOnlyList<PartId> OutOnTheDay => Readings.MaxBy(r => r.Reading.TakenAt)?.Reading.Stage is { } stage ? Job.Stages.FirstOrDefault(s => s.Id == stage)?.PartsOut ?? [] : [];

    /// <summary>Dry board of each material as the readings leave it [%].</summary>
    public IReadOnlyList<(string Material, double Percent)> DryBoards => [.. Net.Materials.Select((m, g) => (m, Field.DryPercent(g)))];

    /// <summary>Middle of what a piece may hold [%].</summary>
    /// <param name="cell">The piece, by its place in the net.</param>
    public double LikelyPercent(int cell) => Field.QuantilePercent(cell, 0.5);

    /// <summary>Chance that a piece is over a moisture [0–1].</summary>
    /// <param name="cell">The piece, by its place in the net.</param>
    /// <param name="percent">The moisture [%].</param>
    public double ChanceOver(int cell, double percent) => Field.ProbabilityOver(cell, percent);

    // between these chances of being over the lowest threshold nobody can say wet or dry; own rule
    private const double LikelyDry = 0.2, LikelyWet = 0.8;

    /// <summary>Whether a piece is as well wet as dry, whatever its middle says: the chance that it is over the lowest threshold is neither small nor large (20 to 80 of 100, own rule).</summary>
    /// <param name="cell">The piece, by its place in the net.</param>
    /// <param name="day">Another day's moisture to ask of: there it is in doubt where the range of courses (5 to 95 of 100) spans the threshold; null for the day of the map.</param>
    public bool IsAsWellWetAsDry(int cell, DampFrame? day = null)
    {
        var wet = ThresholdsPercent[0];
        return day is null ? ChanceOver(cell, wet) is > LikelyDry and < LikelyWet : day.LowPercent[cell] <= wet && day.HighPercent[cell] > wet;
    }

    /// <summary>The field's source, assumptions and caution.</summary>
    public static Basis Basis => FieldPriors.Basis;
}
