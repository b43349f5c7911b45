using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Records;

namespace Wainwright.Web;

/// <summary>Goes round a van.</summary>
public delegate Upkeep GoRound(Job job, AccessOptions options, IProgress<AccessProgress> progress);

/// <summary>Rounds of everything in a van that asks for service. One at a time for each job; whoever looks meanwhile sees the same one.</summary>
/// <param name="go">How a van is gone round; absent for the usual.</param>
public sealed class Rounds(GoRound? go = null)
{
    private readonly Lock turn = new();
    private readonly Dictionary<string, Round> rounds = [];

    /// <summary>The round of a job as stored: running, done, or begun now.</summary>
    public Round Of(StoredJob stored)
    {
        ArgumentNullException.ThrowIfNull(stored);
        lock (turn)
        {
            if (rounds.TryGetValue(stored.Job.Id, out var round) && round.Sequence == stored.Sequence && round is { WasStopped: false, Upkeep.IsFaulted: false }) return round;
            // a round of the van as it was helps nobody any more, but for its sum
            round?.Stop();
            return rounds[stored.Job.Id] = new(stored, go ?? UpkeepRound.Of, new(), round);
        }
    }
}

/// <summary>Something long that is worked at in the background and tells how far it has come.</summary>
/// <param name="stop">Ends it early.</param>
public abstract class Errand(CancellationTokenSource stop) : IProgress<AccessProgress>
{
    /// <summary>How far it has come.</summary>
    public AccessProgress Progress { get; private set; }

    /// <summary>Whether somebody ended it early.</summary>
    public bool WasStopped => stop.IsCancellationRequested;

    /// <summary>It has come further; on the thread that works.</summary>
    public event Action? Advanced;

    /// <summary>Ends it with what is known so far.</summary>
    public void Stop() => stop.Cancel();

    /// <inheritdoc/>
    public void Report(AccessProgress value)
    {
        Progress = value;
        Advanced?.Invoke();
    }
}

/// <summary>One round.</summary>
public sealed class Round : Errand
{
    private readonly Job job;

    internal Round(StoredJob stored, GoRound go, CancellationTokenSource stop, Round? before) : base(stop)
    {
        (job, Sequence) = (stored.Job, stored.Sequence);
        if (before is { Upkeep: { IsCompletedSuccessfully: true, Result: { IsWhole: true } was } }) Before = (was.HoursPerYear, before.Sequence);
        Upkeep = Task.Run(() => go(stored.Job, new AccessOptions { Stop = stop.Token }, this));
    }

    /// <summary>Entry of the journal it is made after.</summary>
    public int Sequence { get; }

    /// <summary>What it comes to.</summary>
    public Task<Upkeep> Upkeep { get; }

    /// <summary>Hours a year by the last whole round before, and its entry; absent when there was none.</summary>
    public (double HoursPerYear, int Sequence)? Before { get; }

    /// <summary>The ranking of changes that somebody asked for.</summary>
    public Ranking? Ranking { get; private set; }

    /// <summary>What that ranking came to; absent until it is done.</summary>
    public WhatIfs? Ranked => Ranking is { WhatIfs: { IsCompletedSuccessfully: true, Result: var ranked } } ? ranked : null;

    /// <summary>Ranks changes by what they save, once.</summary>
    public async Task<Ranking> Rank()
    {
        var upkeep = await Upkeep;
        return Ranking is { WasStopped: false, WhatIfs.IsFaulted: false } ? Ranking : Ranking = new(job, upkeep, new());
    }
}

/// <summary>One ranking of changes.</summary>
public sealed class Ranking : Errand
{
    internal Ranking(Job job, Upkeep upkeep, CancellationTokenSource stop) : base(stop) =>
        WhatIfs = Task.Run(() => WhatIfRanking.Of(job, upkeep, new AccessOptions { Stop = stop.Token }, progress: this));

    /// <summary>What it comes to.</summary>
    public Task<WhatIfs> WhatIfs { get; }
}
