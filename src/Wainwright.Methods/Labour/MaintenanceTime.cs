namespace Wainwright.Methods.Labour;

/// <summary>What keeping a thing in order costs in a year, and how long one visit takes on average.</summary>
/// <remarks>Mean time of a visit: sum of rate × time over sum of rates. A year: sum of rate × time.</remarks>
public static class MaintenanceTime
{
    /// <summary>The weighted mean of the maintainability handbooks.</summary>
    public static readonly Basis Basis = new(
        Source: "MIL-HDBK-472 (1966), mean corrective maintenance time; the same sum for scheduled work",
        Assumes: ["every visit is made on its own", "time is hands-on labour, without waiting for parts, drying or curing"],
        Caution: "Title and structure of the handbook seen, the formula from memory.",
        How: Provenance.FromMemory);

    /// <param name="TimesPerYear">How often it comes up in a year, 0 or more.</param>
    /// <param name="Time">How long it takes each time, 0 or more; any unit, the same for all.</param>
    public readonly record struct Visit(double TimesPerYear, double Time);

    /// <param name="TimesPerYear">All visits of a year.</param>
    /// <param name="PerYear">Time of a year, in the unit of the visits.</param>
    /// <param name="Mean">Mean time of a visit; absent when there are none.</param>
    public sealed record Result(double TimesPerYear, double PerYear, double? Mean);

    /// <exception cref="ArgumentOutOfRangeException">A rate or a time is below 0.</exception>
    public static Result Of(IEnumerable<Visit> visits)
    {
        var (times, sum) = (0.0, 0.0);
        foreach (var visit in visits)
        {
            times += Must.NotBeNegative(visit.TimesPerYear);
            sum += visit.TimesPerYear * Must.NotBeNegative(visit.Time);
        }
        return new(times, sum, times > 0 ? sum / times : null);
    }
}
