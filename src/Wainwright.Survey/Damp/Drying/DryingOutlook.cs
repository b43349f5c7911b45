using System.Globalization;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>How the boards dry under several kinds of care, and in words what keeps the water in a board and what lets it out.</summary>
/// <param name="Forecasts">Care by care, all over the same days.</param>
/// <param name="Far">As it stands over <see cref="FarDays"/>, where the days asked do not show the end of a wet board; null where they do, or it was not asked how it dries as it stands.</param>
public sealed record DryingOutlook(IReadOnlyList<DryingForecast> Forecasts, DryingForecast? Far)
{
    /// <summary>How far is looked as it stands when the days asked do not show the end [d].</summary>
    public const double FarDays = 1095;

    /// <summary>Works it out.</summary>
    /// <param name="map">The map it starts from.</param>
    /// <param name="days">How far to look [d], above 0 and up to <see cref="Forecasting.MostDays"/>.</param>
    /// <param name="cares">Kinds of care, at least one.</param>
    /// <param name="wetting">How the boards got wet, for the mould index; null when nobody worked it out.</param>
    /// <param name="progress">Told the share that is done [0–1].</param>
    /// <param name="stop">Calls it off.</param>
    /// <exception cref="ArgumentException">No care is asked for.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The days leave their range.</exception>
    /// <exception cref="OperationCanceledException">It was called off.</exception>
    public static DryingOutlook Of(DampMap map, double days, IReadOnlyList<DryingCare> cares, DampHistory? wetting = null, IProgress<double>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(cares);
        if (cares.Count == 0) throw new ArgumentException("no care is asked for", nameof(cares));
        List<DryingForecast> made = [];
        DryingForecast One(DryingCare care, double until) => Forecasting.Of(map, care, until, Forecasting.UsualTargetPercent, wetting, progress is null ? null : new Part(progress, made.Count, cares.Count + 1), stop);
        foreach (var care in cares) made.Add(One(care, days));
        var stands = made.FirstOrDefault(f => f.Care == DryingCare.AsBuilt);
        return new(made, days < FarDays && stands is not null && Wet(map).Any(s => double.IsInfinity(stands.Sheets[s].Days.High)) ? One(DryingCare.AsBuilt, FarDays) : null);
    }

    /// <summary>Boards that are called wet, by their place in the net.</summary>
    /// <param name="map">The map.</param>
    public static IReadOnlyList<int> Wet(DampMap map)
    {
        ArgumentNullException.ThrowIfNull(map);
        return [.. Enumerable.Range(0, map.Sheets.Count).Where(s => map.Sheets[s].Advice is DampAdvice.Dry or DampAdvice.CutOrProbe)];
    }

    /// <summary>What keeps the water in a board and what lets it out, in one sentence: <c>under vinyl 0.66 of 0.66 m²: more than 3 years as it stands; lift the finish: 12 to 40 days</c>.</summary>
    /// <param name="sheet">The board, by its place in the net.</param>
    public string InWords(int sheet)
    {
        var stands = Forecasts.FirstOrDefault(f => f.Care == DryingCare.AsBuilt)?.Sheets[sheet];
        var closed = stands?.Closed is { Length: > 0 } c ? $"{c}: " : "";
        if (stands is not null && double.IsFinite(stands.Days.High)) return $"{closed}dries as it stands in {Within(stands.Days)}";
        var slow = stands is null ? "" : $"{closed}{Long(Far?.Sheets[sheet].Days ?? stands.Days)} as it stands; ";
        var opens = Forecasts.FirstOrDefault(f => f.Care != DryingCare.AsBuilt && double.IsFinite(f.Sheets[sheet].Days.High))
            ?? Forecasts.FirstOrDefault(f => f.Care != DryingCare.AsBuilt && double.IsFinite(f.Sheets[sheet].Days.Likely));
        if (opens is null) return Forecasts.Any(f => f.Care != DryingCare.AsBuilt) ? $"{slow}none of the cares dries it within the days looked at: open the other side too, or cut" : $"{slow}ask for the other cares";
        var days = opens.Sheets[sheet].Days;
        return $"{slow}{Does(opens.Care)}: {Within(days)}{(double.IsFinite(days.High) ? "" : ", and it may not be enough")}";
    }

    private static string Does(DryingCare care) => care switch
    {
        DryingCare.FinishLifted => "lift the finish",
        DryingCare.OneSideOpened => "open the side to the room",
        _ => "open it, heat and air",
    };

    private string Long(Span days)
    {
        var looked = Period(Far?.Days ?? Forecasts[0].Days);
        return double.IsInfinity(days.Low) ? $"more than {looked}" : double.IsInfinity(days.High) ? $"{Period(days.Low)} to more than {looked}" : $"{Period(days.Low)} to {Period(days.High)}";
    }

    private static string Period(double days) => days >= 730 ? string.Create(CultureInfo.InvariantCulture, $"{days / 365:0.#} years") : days >= 90 ? string.Create(CultureInfo.InvariantCulture, $"{days / 30.4:0} months") : string.Create(CultureInfo.InvariantCulture, $"{days:0} days");

    private static string Within(Span days) => days.High < 0.5 ? "no time: it is dry" : string.Create(CultureInfo.InvariantCulture, $"{days.Low:0} to {(double.IsInfinity(days.High) ? $"more than {days.Likely:0}" : $"{days.High:0}")} days");

    /// <summary>One of several pieces of work in a row, as a part of the whole.</summary>
    private sealed class Part(IProgress<double> whole, int before, int all) : IProgress<double>
    {
        public void Report(double value) => whole.Report((before + value) / all);
    }
}
