using Wainwright.Methods.Labour;

namespace Wainwright.Access;

/// <summary>
/// What it costs, year after year, to get at everything in a van that asks for service: the number a layout is judged by.
/// </summary>
/// <remarks>Weighted sum after <see cref="MaintenanceTime"/>. Getting there and back only: the service work itself is the same in any layout.</remarks>
public sealed record Upkeep
{
    /// <summary>Every part that asks for service, the dearest in a year first.</summary>
    public required IReadOnlyList<PartAccess> Parts { get; init; }

    /// <summary>Questions answered.</summary>
    public required int Done { get; init; }

    /// <summary>Questions there are.</summary>
    public required int Total { get; init; }

    /// <summary>Whether every question was answered; otherwise the sums lack what was not asked.</summary>
    public bool IsWhole => Done == Total;

    /// <summary>All visits, the dearest in a year first.</summary>
    public IEnumerable<UpkeepVisit> Visits => Parts.SelectMany(p => p.Visits).OrderByDescending(v => v.HighMinutesPerYear ?? v.LowMinutesPerYear ?? 0);

    /// <summary>Visits whose minutes have no upper end: they are in the sums with their lower end only.</summary>
    public IEnumerable<UpkeepVisit> Open => Parts.SelectMany(p => p.Visits).Where(v => v.Minutes.HighMinutes is null);

    /// <summary>Visits in a year that a plan was found for.</summary>
    public double TimesPerYear => Upper.TimesPerYear;

    /// <summary>No less in a year [h].</summary>
    public double LowHoursPerYear => MaintenanceTime.Of(Parts.SelectMany(p => p.Visits).Select(v => new MaintenanceTime.Visit(v.TimesPerYear, v.Minutes.LowMinutes ?? 0))).PerYear / 60;

    /// <summary>In a year by the plans found [h]; what <see cref="Open"/> names comes on top.</summary>
    public double HoursPerYear => Upper.PerYear / 60;

    /// <summary>Mean time of a visit by the plans found [min]; absent when there is none.</summary>
    public double? MeanMinutes => Upper.Mean;

    /// <summary>What is taken for granted.</summary>
    public required IReadOnlyList<string> Assumes { get; init; }

    /// <summary>What is not known and would make it surer.</summary>
    public required IReadOnlyList<string> ToMeasure { get; init; }

    /// <summary>What to heed.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>The van as it was asked, with what was learned; absent for an upkeep that was not asked of a van.</summary>
    internal Inquiry? Van { get; init; }

    private MaintenanceTime.Result Upper =>
        MaintenanceTime.Of(Parts.SelectMany(p => p.Visits).Where(v => v.Minutes.HighMinutes is not null).Select(v => new MaintenanceTime.Visit(v.TimesPerYear, v.Minutes.HighMinutes!.Value)));
}

/// <summary>How far a run of many questions has come.</summary>
/// <param name="Done">Answered.</param>
/// <param name="Total">There are.</param>
/// <param name="Now">What is looked at now, in words.</param>
public readonly record struct AccessProgress(int Done, int Total, string Now);
