using Wainwright.Fitout;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Cutting;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Paper;

/// <summary>What is known of water in the boards of a van, gathered for the page that tells the owners.</summary>
/// <param name="Wettest">The map of the day on which most was read wet.</param>
/// <param name="Cut">What to cut as that day stood.</param>
/// <param name="Newest">The map of all readings; the same where that is the wettest day.</param>
/// <param name="Log">The drying since; absent where nothing was read twice or wet.</param>
public sealed record WaterFound(DampMap Wettest, CutPlan Cut, DampMap Newest, DryingLog? Log)
{
    /// <summary>How it dries from the wettest day on under different care; none unless worked out.</summary>
    public IReadOnlyList<DryingForecast> Forecasts { get; init; } = [];

    /// <summary>Asks Survey; null where no wooden board is measured or no moisture was read on one, or nothing was ever read wet.</summary>
    /// <param name="job">The job.</param>
    /// <param name="forecastDays">So many days ahead it is worked out how the boards dry, left as they stand and opened [d]; null to leave that out, for it takes long.</param>
    /// <param name="stop">Calls it off.</param>
    public static WaterFound? Of(Job job, double? forecastDays = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(job);
        var corrected = job.Readings.Where(r => r.Corrects is not null).Select(r => r.Corrects!.Value).ToHashSet();
        var wet = job.Readings.Where(r => r.Quantity == Quantity.Moisture && r.Point is not null && !corrected.Contains(r.Id) && r.Value.Value > DampMap.UsualThresholds[0])
            .GroupBy(r => DateOnly.FromDateTime(r.TakenAt.DateTime)).OrderByDescending(g => g.Count()).ThenBy(g => g.Key).Select(g => (DateOnly?)g.Key).FirstOrDefault();
        if (wet is not { } day || DampMapping.Of(job, day) is not { Readings.Count: > 0 } wettest || DampMapping.Of(job) is not { } newest) return null;
        return new(wettest, CutPlanning.Of(wettest), newest, DryingLogs.Of(job))
        {
            Forecasts = forecastDays is { } days ? [.. ((DryingCare[])[DryingCare.AsBuilt, DryingCare.OneSideOpened, DryingCare.HeatedAndAired]).Select(care => Forecasting.Of(wettest, care, days, cancellation: stop))] : [],
        };
    }

    /// <summary>Boards read wet on the wettest day, the wettest first.</summary>
    internal IReadOnlyList<(DampSheetMap Board, BoardCut Cut)> WetBoards() =>
        [.. Wettest.Sheets.Zip(Cut.Boards).Where(b => b.First.Advice is DampAdvice.Dry or DampAdvice.CutOrProbe).OrderByDescending(b => b.First.WettestPercent)];

    /// <summary>Boards of which too little is read, on the newest day.</summary>
    internal IReadOnlyList<DampSheetMap> NotTold() => [.. Newest.Sheets.Where(s => s.Advice == DampAdvice.CannotTell)];
}
