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
    public LongWork<IReadOnlyList<NextReading>> Next(int count) => Ask($"next {count}", (map, _, _) => NextReadings.Of(map, count, NextReadings.Decides(map)));

    /// <summary>What to keep, dry and cut out.</summary>
    /// <param name="longWet">It has stood wet for months.</param>
    public LongWork<CutPlan> Cuts(bool longWet) => Ask($"cuts {longWet}", (map, _, _) => CutPlanning.Of(map, CutStakes.Usual with { LongWet = longWet }));

    /// <summary>How it dries under every kind of care.</summary>
    /// <param name="days">How far to look [d].</param>
    public LongWork<IReadOnlyList<DryingForecast>> Drying(double days) => Ask<IReadOnlyList<DryingForecast>>($"drying {days}", (map, progress, stop) =>
    {
        var cares = Enum.GetValues<DryingCare>();
        return [.. cares.Select((care, i) => Forecasting.Of(map, care, days, Forecasting.UsualTargetPercent, new Part(progress, i, cares.Length), stop))];
    });

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

    /// <summary>One of several pieces of work in a row, as a part of the whole.</summary>
    private sealed class Part(IProgress<double> whole, int before, int all) : IProgress<double>
    {
        public void Report(double value) => whole.Report((before + value) / all);
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
