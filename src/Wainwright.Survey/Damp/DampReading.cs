using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Survey.Damp;

/// <summary>A reading made comparable and brought to its piece of board.</summary>
/// <param name="Point">The numbered point.</param>
/// <param name="Reading">The reading.</param>
/// <param name="Cell">The piece.</param>
/// <param name="OffMm">How far the point lies from the board as drawn [mm].</param>
/// <param name="Made">The figure as it enters the map.</param>
/// <param name="IsReference">Another point names it as its dry reference.</param>
public sealed record DampReading(PointId Point, Reading Reading, int Cell, double OffMm, MeterReading.Result Made, bool IsReference)
{
    // what a spot may differ from the mean of its piece; own rule
    private const double SpotPoints = 0.5;

    /// <summary>Standard deviation against the moisture of its piece [points]: the meter's spread taken as two of them, and the spot.</summary>
    public double SigmaPoints => Math.Sqrt(((Made.SpreadPoints / 2) * (Made.SpreadPoints / 2)) + (SpotPoints * SpotPoints));

    /// <summary>Its figure as a drawing has it [%]: <c>17.4</c>; <c>≥28</c> where the meter was at its end.</summary>
    public string Shown => string.Create(CultureInfo.InvariantCulture, $"{(Made.Bound == MeterReading.Bound.AtLeast ? "≥" : Made.Bound == MeterReading.Bound.AtMost ? "≤" : "")}{Made.Percent:0.#}");

    /// <summary>Whether it shows more than a moisture.</summary>
    /// <param name="percent">The moisture [%].</param>
    public bool IsOver(double percent) => Made.Percent > percent;

    internal FieldObservation Seen => new(Cell, Made.Percent, SigmaPoints, Made.Bound);
}

/// <summary>The readings that a map of one day rests on, and those left out.</summary>
internal sealed class DampReadings
{
    /// <summary>A point further from its board than this is not brought to it [mm].</summary>
    private const double TooFarMm = 150;

    /// <summary>A reading older than the newest by more than this is told [days].</summary>
    private const double OldDays = 2;

    private DampReadings(IReadOnlyList<DampReading> used, IReadOnlyList<string> told) => (Used, Told) = (used, told);

    public IReadOnlyList<DampReading> Used { get; }

    /// <summary>What was left out or doubted, one line each.</summary>
    public IReadOnlyList<string> Told { get; }

    /// <summary>The same with one line more to tell.</summary>
    public DampReadings And(string told) => new(Used, [.. Told, told]);

    /// <summary>The latest standing moisture reading of each point up to the end of a day.</summary>
    public static DampReadings Of(Job job, DampNet net, DateOnly? on)
    {
        var references = job.Points.Select(p => p.DryReference).OfType<PointId>().ToHashSet();
        var checks = new MeterChecks(job);
        List<DampReading> used = [];
        List<string> told = [];
        var moist = job.Standing().Where(r => r.Quantity == Quantity.Moisture && (on is not { } day || DateOnly.FromDateTime(r.TakenAt.DateTime) <= day)).ToList();
        foreach (var point in job.Points)
        {
            if (moist.Where(r => r.Point == point.Id).MaxBy(r => r.TakenAt) is not { } reading) continue;
            if (net.Nearest(point.At, point.Part) is not { } at)
            {
                told.Add($"{point.Id} left out: {(point.Part is { } p ? $"{p} is no wooden board with measures" : "there is no board")}");
                continue;
            }
            if (at.OffMm > TooFarMm)
            {
                told.Add(string.Create(CultureInfo.InvariantCulture, $"{point.Id} left out: {at.OffMm:0} mm from the board it is said to be on; check its place"));
                continue;
            }
            var panel = BoardMaterial.IsPanel(net.Sheets[net.Cells[at.Cell].Sheet].Material);
            used.Add(new(point.Id, reading, at.Cell, at.OffMm, Made(reading, panel, checks.OffPoints(reading)), references.Contains(point.Id)));
        }
        foreach (var reading in moist.Where(r => r.Point is null && !MeterChecks.IsCheck(r))) told.Add($"{reading.Id} left out: it names no numbered point");
        told.AddRange(job.Parts.Where(p => !p.Outside && p.Solids.Count > 0 && p.System is PartSystem.Floor or PartSystem.Lining && p.Made.Count == 0 && BoardMaterial.Of(p, job.Points) is null)
            .Select(p => $"{p.Id} {p.Name} is not on the map: nobody wrote what it is made of"));
        if (used.Count > 0)
        {
            told.AddRange(checks.Told([.. used.Select(u => u.Reading)]));
            var newest = used.Max(u => u.Reading.TakenAt);
            told.AddRange(used.Where(u => (newest - u.Reading.TakenAt).TotalDays > OldDays)
                .Select(u => string.Create(CultureInfo.InvariantCulture, $"{u.Point} was last read on {u.Reading.TakenAt:yyyy-MM-dd}: read it again")));
        }
        return new(used, told);
    }

    /// <summary>A reading as it may enter a calculation.</summary>
    public static MeterReading.Result Made(Reading reading, bool panel, double meterOffPoints) =>
        MeterReading.Of(new(Math.Clamp(reading.Value.Value, 0, 100), reading.AirC, panel, IsAtLeast: reading.AtLeast, CorrectsItself: IsCorrected(reading), MeterOffPoints: meterOffPoints));

    /// <summary>Whether its notes say that the meter was told the temperature.</summary>
    public static bool IsCorrected(Reading reading)
    {
        var said = $"{reading.Instrument} {reading.Conditions} {reading.Note}";
        bool Says(string word) => said.Contains(word, StringComparison.OrdinalIgnoreCase);
        return Says("corrected") && !Says("uncorrected") && !Says("not corrected");
    }
}
