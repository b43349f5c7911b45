using Wainwright.Fitout;
using Wainwright.Records;
using Wainwright.Survey.Damp;

namespace Wainwright.Web;

/// <summary>The damp map of one day and the questions put to it. Each is worked at once, in the background, however many look.</summary>
public sealed class DampDesk
{
    private readonly Lock turn = new();
    private readonly Dictionary<string, Errand> asked = [];
    private readonly Job job;

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
    public LongWork<IReadOnlyList<NextReading>> Next(int count) => Ask($"next {count}", (map, _, _) => NextReadings.Of(map, count, NextReadings.Decides(map)));

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

    private LongWork<T> Ask<T>(string name, Func<DampMap, IProgress<double>, CancellationToken, T> work) =>
        Once(name, async (progress, stop) => work((await Day.Found.WaitAsync(stop))?.Map ?? throw new InvalidOperationException("no board to ask about"), progress, stop));

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
