using Wainwright.Access;
using Wainwright.Records;

namespace Wainwright.Web;

/// <summary>Rounds of everything in a van that asks for service. One at a time for each job; whoever looks meanwhile sees the same one.</summary>
public sealed class Rounds
{
    private readonly Lock turn = new();
    private readonly Dictionary<string, Round> rounds = [];

    /// <summary>The round of a job as stored: running, done, or begun now.</summary>
    public Round Of(StoredJob stored)
    {
        ArgumentNullException.ThrowIfNull(stored);
        lock (turn)
        {
            if (rounds.TryGetValue(stored.Job.Id, out var round) && round.Sequence == stored.Sequence && !round.WasStopped) return round;
            // a round of the van as it was helps nobody any more
            round?.Stop();
            return rounds[stored.Job.Id] = new(stored, new());
        }
    }
}

/// <summary>One round.</summary>
public sealed class Round
{
    private readonly CancellationTokenSource stop;

    internal Round(StoredJob stored, CancellationTokenSource stop)
    {
        this.stop = stop;
        Sequence = stored.Sequence;
        var told = new AccessOptions { Stop = stop.Token };
        Upkeep = Task.Run(() => UpkeepRound.Of(stored.Job, told, new Heard(this)));
    }

    /// <summary>Entry of the journal it is made after.</summary>
    public int Sequence { get; }

    /// <summary>What it comes to.</summary>
    public Task<Upkeep> Upkeep { get; }

    /// <summary>How far it has come.</summary>
    public AccessProgress Progress { get; private set; }

    /// <summary>Whether somebody ended it early.</summary>
    public bool WasStopped => stop.IsCancellationRequested;

    /// <summary>It has come further; on the thread that searches.</summary>
    public event Action? Advanced;

    /// <summary>Ends it with what is answered so far.</summary>
    public void Stop() => stop.Cancel();

    private sealed class Heard(Round round) : IProgress<AccessProgress>
    {
        public void Report(AccessProgress value)
        {
            round.Progress = value;
            round.Advanced?.Invoke();
        }
    }
}
