using System.Globalization;
using System.Text.RegularExpressions;
using Wainwright.Fitout;
using Wainwright.Methods.Moisture;

namespace Wainwright.Survey.Damp;

/// <summary>Checks of the job's moisture meters on their block: how far each was off, and on which day.</summary>
/// <remarks>A check is a moisture reading without a point whose words name the block and its mark: <c>check block 18 %</c>.</remarks>
internal sealed partial class MeterChecks
{
    /// <summary>A check speaks for the readings of its meter this long before and after [d]; own rule.</summary>
    private const double SpeaksForDays = 7;

    private readonly IReadOnlyList<(string Meter, DateTimeOffset At, MeterCheck.Result Result)> checks;

    public MeterChecks(Job job) =>
        checks = [.. job.Standing().Select(r => (Reading: r, Mark: Mark(r))).Where(c => c.Mark is not null)
            .Select(c => (Meter(c.Reading), c.Reading.TakenAt, MeterCheck.Of(c.Mark!.Value, Math.Clamp(c.Reading.Value.Value, 0, 100))))];

    /// <summary>Whether a reading is a check of the meter and not of the van.</summary>
    public static bool IsCheck(Reading reading) => Mark(reading) is not null;

    /// <summary>How far its meter was off, by the nearest check; 0 where it counts as right or nobody checked [points].</summary>
    public double OffPoints(Reading reading) => Nearest(reading) is { Result: { IsAlike: false } off } ? off.OffPoints : 0;

    /// <summary>What the checks say of these readings, one line each.</summary>
    public IEnumerable<string> Told(IReadOnlyList<Reading> used)
    {
        foreach (var (meter, at, result) in used.Select(Nearest).OfType<(string Meter, DateTimeOffset At, MeterCheck.Result Result)>().Distinct().Where(c => !c.Result.IsAlike))
            yield return string.Create(CultureInfo.InvariantCulture, $"{meter} read {Math.Abs(result.OffPoints):0.0} points {(result.OffPoints > 0 ? "high" : "low")} on its check block on {at:yyyy-MM-dd}: its readings are doubted by as much; clean pins, new battery, check and read again");
        foreach (var meter in used.Where(r => Nearest(r) is null).GroupBy(Meter))
            yield return $"{meter.Key}: no check on its block is written within {SpeaksForDays:0} days of {meter.Count()} {(meter.Count() == 1 ? "reading" : "readings")}; read the block and write it down as a moisture reading without a point, what: check block 18 %, or whatever is marked on it";
    }

    private (string Meter, DateTimeOffset At, MeterCheck.Result Result)? Nearest(Reading reading)
    {
        var own = checks.Where(c => c.Meter == Meter(reading) && (c.At - reading.TakenAt).Duration().TotalDays <= SpeaksForDays).ToList();
        return own.Count == 0 ? null : own.MinBy(c => (c.At - reading.TakenAt).Duration());
    }

    private static string Meter(Reading reading) => reading.Instrument ?? "a meter that nobody named";

    private static double? Mark(Reading reading) =>
        reading is { Quantity: Quantity.Moisture, Point: null } && Block().Match($"{reading.What} {reading.Conditions} {reading.Note}") is { Success: true } said
            && double.TryParse(said.Groups[1].Value.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture, out var mark) && mark is >= 5 and <= 60 ? mark : null;

    [GeneratedRegex(@"(?:check|test|reference)\s+block\D{0,20}(\d{1,2}(?:[.,]\d{1,2})?)\s*%", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Block();
}
