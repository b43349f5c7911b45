using Wainwright.Fitout;
using Wainwright.Records;
using Wainwright.Survey.Damp;
using Wainwright.Survey.Damp.Cutting;
using Wainwright.Survey.Damp.Drying;

namespace Wainwright.Web;

/// <summary>The damp map of one day and the questions put to it. Each is worked at once, in the background, however many look.</summary>
public sealed class DampDesk
{
    private readonly Lock turn = new();
    private readonly Dictionary<string, Errand> asked = [];
    private readonly Job job;

    /// <summary>How far drying is looked at unless asked otherwise [d].</summary>
    public const double UsualDays = 90;

    internal DampDesk(StoredJob stored, DateOnly? on, IReadOnlyList<double> thresholdsPercent) =>
        (job, Sequence, On, ThresholdsPercent) = (stored.Job, stored.Sequence, on, thresholdsPercent);

    /// <summary>Entry of the journal it is made after.</summary>
    public int Sequence { get; }

    /// <summary>Readings up to this day; null for the latest of each point.</summary>
    public DateOnly? On { get; }

    /// <summary>Thresholds asked for [%]; none for the usual.</summary>
    public IReadOnlyList<double> ThresholdsPercent { get; }

    /// <summary>The map; null when no measured part of the van is of wood.</summary>
    public LongWork<DampDay?> Day => Once("day", (_, _) => Task.FromResult(DampMapping.Of(job, On, ThresholdsPercent) is { } map ? DampDay.Of(map) : null));

    /// <summary>The best next places for the meter.</summary>
    /// <param name="count">How many are wanted.</param>
    /// <param name="outAlready">Parts that are out; null for those of the stage of the newest reading.</param>
    public LongWork<IReadOnlyList<NextReading>> Next(int count, IReadOnlyList<PartId>? outAlready = null) =>
        Ask($"next {count} {(outAlready is null ? "as read" : string.Join(' ', outAlready))}", (map, _, _) => NextReadings.Of(map, count, NextReadings.Decides(map), outAlready));

    /// <summary>What to keep, dry and cut out.</summary>
    /// <param name="longWet">It has stood wet for months.</param>
    public LongWork<CutPlan> Cuts(bool longWet) => Ask($"cuts {longWet}", (map, _, _) => CutPlanning.Of(map, CutStakes.Usual with { LongWet = longWet }));

    /// <summary>How it dries under every kind of care.</summary>
    /// <param name="days">How far to look [d].</param>
    /// <param name="overCourse">Start from the readings laid over the course by which the water came, and count the mould that grew meanwhile.</param>
    public LongWork<DryingOutlook> Drying(double days, bool overCourse) => Once($"drying {days} {overCourse}", async (progress, stop) =>
    {
        var map = await Mapped(stop);
        DampHistory? history = null;
        if (overCourse)
        {
            // one that was stopped would stop this too, however often it is asked again
            if (History(Histories.UsualMembers) is { Found.IsCanceled: true } ended) Forget(ended);
            history = await History(Histories.UsualMembers).Found.WaitAsync(stop);
        }
        return DryingOutlook.Of(history?.Combined ?? map, days, Enum.GetValues<DryingCare>(), history, progress, stop);
    });

    /// <summary>How the van got wet.</summary>
    /// <param name="members">Courses computed for each wet patch.</param>
    public LongWork<DampHistory> History(int members) => Ask($"history {members}", (map, progress, stop) => Histories.Of(map, members, progress, stop));

    /// <summary>The drying log; null when no point was read twice or wet.</summary>
    /// <param name="promised">The day on which all was promised dry; null when none was.</param>
    public LongWork<DryingLog?> Log(DateOnly? promised) => Once($"log {promised:yyyy-MM-dd}", (_, _) => Task.FromResult(DryingLogs.Of(job, On, promised)));

    /// <summary>Lets go of an answer that was stopped, so that the next who asks has it worked out anew.</summary>
    /// <param name="work">The work.</param>
    public void Forget(Errand work)
    {
        lock (turn)
            foreach (var name in asked.Where(a => a.Value == work).Select(a => a.Key).ToList()) asked.Remove(name);
    }

    /// <summary>Ends all that is still worked at.</summary>
    public void Stop()
    {
        lock (turn)
            foreach (var errand in asked.Values) errand.Stop();
    }

    private async Task<DampMap> Mapped(CancellationToken stop) => (await Day.Found.WaitAsync(stop))?.Map ?? throw new InvalidOperationException("no board to ask about");

    private LongWork<T> Ask<T>(string name, Func<DampMap, IProgress<double>, CancellationToken, T> work) => Once(name, async (progress, stop) => work(await Mapped(stop), progress, stop));

    /// <summary>What was asked before, stopped or not, unless it broke.</summary>
    private LongWork<T> Once<T>(string name, Func<IProgress<double>, CancellationToken, Task<T>> work)
    {
        lock (turn)
        {
            if (asked.TryGetValue(name, out var errand) && errand is LongWork<T> { Found.IsFaulted: false } same) return same;
            LongWork<T> begun = new(work, new());
            asked[name] = begun;
            return begun;
        }
    }
}
