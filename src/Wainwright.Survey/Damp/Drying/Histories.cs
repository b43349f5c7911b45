using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Moisture;
using Wainwright.Methods.Moisture.Field;

namespace Wainwright.Survey.Damp.Drying;

/// <summary>Works out how a van got wet: courses of leak and condensation computed from before the readings, and weighed by them.</summary>
public static class Histories
{
    /// <summary>Courses for each patch unless asked otherwise.</summary>
    public const int UsualMembers = 200;

    private const int LeastMembers = 20, MostMembers = 5000, DrawFrom = 1;

    // chance of condensation before any reading, beside what findings name: own rule, no source
    private const double CondensationBefore = 0.25;

    // courses of condensation among all: it has no place to look for
    private const double CondensationShare = 0.2;

    private const int Frames = 16;

    // fewer than this tell no range: it is then drawn from softer weights, and it is told
    private const double FewEffective = 6;

    /// <summary>The history of a map.</summary>
    /// <param name="map">The map of the day.</param>
    /// <param name="members">Courses for each wet patch, 20 to 5000.</param>
    /// <param name="progress">Told the share that is done [0–1].</param>
    /// <param name="cancellation">Calls it off.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number leaves its range.</exception>
    /// <exception cref="OperationCanceledException">It was called off.</exception>
    public static DampHistory Of(DampMap map, int members = UsualMembers, IProgress<double>? progress = null, CancellationToken cancellation = default)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(members, LeastMembers);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(members, MostMembers);
        var panelFactor = PatchWeighing.PanelFactor(map);
        var built = new AsBuilt(map.Job, map.Net, map.OutOnTheDay, panelFactor);
        var dry = PatchWeighing.DryPercent(map);
        var patches = DampPatch.Of(map, dry, built);
        var done = 0;
        var guard = new Lock();
        void Told()
        {
            lock (guard) progress?.Report(Math.Min(1, ++done / (double)(members * Math.Max(1, patches.Count))));
        }
        List<PatchHistory> histories = [];
        foreach (var patch in patches)
        {
            var air = PatchWeighing.Room(map, dry, panelFactor);
            histories.Add(Of(map, built, patch, air, dry, members, Told, cancellation));
        }
        return Put(map, dry, histories, members);
    }

    private static PatchHistory Of(DampMap map, AsBuilt built, DampPatch patch, DryingAir air, double dry, int members, Action told, CancellationToken stop)
    {
        List<(WaterStory Story, string Source, IReadOnlyList<int> Cells, double Before)> stories =
        [
            .. patch.Leaks.Select(l => (WaterStory.Leak, l.Source, l.Cells, (1 - CondensationBefore) / patch.Leaks.Count)),
            (WaterStory.Condensation, "damp air on cold skin, even along it", [], CondensationBefore),
        ];
        var cold = patch.Cells.Any(built.BacksSkin);
        if (!cold) stories.RemoveAt(stories.Count - 1);
        var toLeaks = cold ? (int)Math.Round(members * (1 - CondensationShare)) : members;
        var fit = new PatchFit(patch, dry);
        List<PatchStory> made = [];
        for (var s = 0; s < stories.Count; s++)
        {
            var (story, source, cells, before) = stories[s];
            var own = story == WaterStory.Condensation ? members - toLeaks : (toLeaks * (s + 1) / patch.Leaks.Count) - (toLeaks * s / patch.Leaks.Count);
            Place[] places = [.. cells.Select(c => map.Net.Cells[c].Middle)];
            double[] none = [.. patch.Readings.Select(_ => 0.0)];
            double[][] away = [.. places.Select(p => patch.Readings.Select(r => map.Net.Cells[r.Cell].DistanceMm(p)).ToArray())];
            var sampled = new WaterStories(places, fit, draw => WaterCourse.Of(map, built, patch, cells, air, draw, stop), draw => places.Length > 0 ? WaterCourse.Hint(away[draw.Place], draw) : none);
            sampled.Run(Math.Max(4, own), DrawFrom + s, told, stop);
            made.Add(new(story, source, cells, sampled, before));
        }
        return new(map, built, patch, fit, made, dry, FewEffective);
    }

    private static DampHistory Put(DampMap map, double dry, List<PatchHistory> histories, int members)
    {
        if (histories.Count == 0)
            return new(map, [], [], members, 0, [string.Create(CultureInfo.InvariantCulture, $"no reading is {DampPatch.WetPoints:0} points over the dry board of {dry:0.#} %: nothing to explain")]);
        var since = histories.Max(h => h.Stories.Where((s, i) => i == 0 || s.Chance > 0.05).Max(s => s.SinceDays.High));
        double[] days = [.. Enumerable.Range(0, Frames).Select(i => -since * Math.Pow(1 - (i / (double)Frames), 1.5))];
        var frames = days.Select(d => Frame(map, dry, histories, d)).ToList();
        var today = Frame(map, dry, histories, 0);
        var readings = DampReadings.Of(map.Job, map.Net, map.Newest is { } day ? DateOnly.FromDateTime(day.DateTime) : null);
        var combined = DampMapping.Of(map.Job, map.Net, readings, map.ThresholdsPercent, today.LikelyPercent);
        frames.Add(Last(map, readings, today, combined));
        return new(map, [.. histories.SelectMany(h => h.Stories)], frames, members, histories.Min(h => h.Effective), Told(histories))
        {
            Combined = combined,
            AtReadings = [.. histories.SelectMany(h => h.AtReadings)],
        };
    }

    /// <summary>The last frame: the readings laid over the likely course, its ends let out to where they lie over the low and the high course.</summary>
    private static DampFrame Last(DampMap map, DampReadings readings, DampFrame today, DampMap combined)
    {
        DampPosterior low = DampMapping.FieldOf(map.Job, map.Net, readings, today.LowPercent), high = DampMapping.FieldOf(map.Job, map.Net, readings, today.HighPercent);
        double[] At(Func<int, double> percent) => [.. Enumerable.Range(0, map.Net.Cells.Count).Select(percent)];
        // a course at its end and the readings' own spread at a quarter make together one of twenty, were the two as wide as each other
        return new(0,
            At(c => Math.Min(combined.Field.QuantilePercent(c, 0.05), low.QuantilePercent(c, 0.25))),
            At(c => combined.Field.QuantilePercent(c, 0.5)),
            At(c => Math.Max(combined.Field.QuantilePercent(c, 0.95), high.QuantilePercent(c, 0.75))));
    }

    private static DampFrame Frame(DampMap map, double dry, List<PatchHistory> histories, double day)
    {
        double[] low = new double[map.Net.Cells.Count], likely = new double[low.Length], high = new double[low.Length];
        Array.Fill(low, dry);
        Array.Fill(likely, dry);
        Array.Fill(high, dry);
        foreach (var history in histories)
            for (var i = 0; i < history.Patch.Cells.Count; i++)
            {
                var cell = history.Patch.Cells[i];
                var percent = history.Percent(i, day, dry);
                // a piece that two patches reach has the wetter course
                if (percent.Likely >= likely[cell]) (low[cell], likely[cell], high[cell]) = (percent.Low, percent.Likely, percent.High);
            }
        return new(day, low, likely, high);
    }

    private static List<string> Told(List<PatchHistory> histories) =>
    [
        "air, materials, wicking, airing and how wide water spread before boards took it up are drawn anew for each course; what came in is one leak or one condensation for each patch, not both",
        string.Create(CultureInfo.InvariantCulture, $"before any reading: since 7 to 500 days, a leak of 0.1 to 40 l, condensation of 0.05 to 5 l a m², chance of condensation {CondensationBefore}: own rules, no source"),
        .. histories.SelectMany(h => h.Told),
    ];
}
