using Wainwright.Fitout;
using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Practice;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>One visit to a point, its reading corrected as the map corrects it.</summary>
internal sealed record PointVisit(Reading Reading, MeterReading.Result Made)
{
    public bool AtLeast => Made.Bound == MeterReading.Bound.AtLeast;
}

/// <summary>All visits to the points of a job, one a day, with the dry reference beside them.</summary>
internal sealed class PointVisits
{
    private readonly Job job;

    private readonly Dictionary<PartId, string?> boards;

    private readonly Dictionary<PointId, List<PointVisit>> byPoint;

    /// <param name="job">The job.</param>
    /// <param name="on">Readings taken later are left out; null for all.</param>
    public PointVisits(Job job, DateOnly? on)
    {
        this.job = job;
        var checks = new MeterChecks(job);
        boards = job.Parts.ToDictionary(p => p.Id, p => BoardMaterial.Of(p, job.Points));
        var moist = job.Standing().Where(r => r.Quantity == Quantity.Moisture && r.Point is not null && (on is not { } day || Day(r) <= day)).ToLookup(r => r.Point!.Value);
        byPoint = job.Points.ToDictionary(p => p.Id, p => moist[p.Id]
            // of one day the last counts
            .GroupBy(Day).Select(g => g.MaxBy(r => r.TakenAt)!).OrderBy(r => r.TakenAt)
            .Select(r => new PointVisit(r, DampReadings.Made(r, IsPanel(p), checks.OffPoints(r)))).ToList());
    }

    public IReadOnlyList<PointVisit> Of(PointId point) => byPoint[point];

    /// <summary>Visits to the dry reference of a point; its own where it is a reference itself, none where nobody named one.</summary>
    public IReadOnlyList<PointVisit> Reference(ReadingPoint point) =>
        point.DryReference is { } named && byPoint.TryGetValue(named, out var visits) ? visits
            : job.Points.Any(p => p.DryReference == point.Id) ? byPoint[point.Id] : [];

    /// <summary>Target of a point: the rule's, or so many points over its dry reference as last read [%].</summary>
    public double TargetPercent(ReadingPoint point, CoverUpGate.Rule rule) =>
        Reference(point) is [.., var last] ? Math.Min(rule.TargetPercent, last.Made.Percent + rule.ReferencePoints) : rule.TargetPercent;

    /// <summary>Whether a point may be covered.</summary>
    public CoverUpGate.Result Gate(ReadingPoint point, CoverUpGate.Rule rule)
    {
        var visits = Of(point.Id);
        var start = visits.Count > 0 ? visits[0].Reading.TakenAt : default;
        return CoverUpGate.Of([.. visits.Select(v => new CoverUpGate.Visit((v.Reading.TakenAt - start).TotalHours, v.Made.Percent, v.Made.Bound, HeatOff(v.Reading), v.Reading.AirC is not null || DampReadings.IsCorrected(v.Reading), CoreReached(point, v.Reading)))],
            Reference(point) is [.., var last] ? last.Made.Percent : null, rule);
    }

    /// <summary>What the notes of a reading say of the heat; null when they say nothing.</summary>
    internal static bool? HeatOff(Reading reading)
    {
        var said = $"{reading.Conditions} {reading.What} {reading.Note}".ToLowerInvariant();
        bool Says(params IEnumerable<string> words) => words.Any(w => said.Contains(w, StringComparison.Ordinal));
        return Says("heat not off", "heater not off", "heating not off", "heat on", "heater on", "heating on") ? false
            : Says("heat off", "heater off", "heating off", "no heat", "unheated") ? true : Says("heated") ? false : null;
    }

    /// <summary>What the notes say of the core; null when they say nothing.</summary>
    internal static bool? CoreReached(ReadingPoint point, Reading reading)
    {
        var said = $"{point.Mode} {reading.Conditions} {reading.What} {reading.Note} {reading.Instrument}".ToLowerInvariant();
        bool Says(params IEnumerable<string> words) => words.Any(w => said.Contains(w, StringComparison.Ordinal));
        return Says("surface only", "not to the core", "no long pins", "without long pins") ? false : Says("long pins", "to the core") ? true : null;
    }

    private static DateOnly Day(Reading reading) => DateOnly.FromDateTime(reading.TakenAt.DateTime);

    /// <summary>Whether a point is on board and not on solid wood: by the part it is on, else by its own words.</summary>
    public bool IsPanel(ReadingPoint point) =>
        BoardMaterial.IsPanel((point.Part is { } part ? boards.GetValueOrDefault(part) : null) ?? point.Material?.ToLowerInvariant() ?? "");
}
