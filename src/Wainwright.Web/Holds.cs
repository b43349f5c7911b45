using Wainwright.Fitout;
using Wainwright.Records;
using Wainwright.Survey.Retention;

namespace Wainwright.Web;

/// <summary>Works out whether what is fitted holds: for each job the last answer asked for; whoever looks meanwhile sees the same one.</summary>
public sealed class Holds
{
    private readonly Lock turn = new();
    private readonly Dictionary<string, HoldRun> runs = [];

    /// <summary>The answer for a job as stored: being worked out, done, or begun now.</summary>
    /// <param name="stored">The job as stored.</param>
    /// <param name="cases">What to judge against; none for the job's own choice.</param>
    public HoldRun Of(StoredJob stored, IReadOnlyList<LoadCase> cases)
    {
        ArgumentNullException.ThrowIfNull(stored);
        ArgumentNullException.ThrowIfNull(cases);
        lock (turn)
        {
            if (runs.TryGetValue(stored.Job.Id, out var run) && run.Sequence == stored.Sequence && run.Cases.SequenceEqual(cases) && run is { WasStopped: false, Found: { IsFaulted: false, IsCanceled: false } }) return run;
            run?.Stop();
            return runs[stored.Job.Id] = new(stored, cases, new());
        }
    }
}

/// <summary>One van being judged, part by part.</summary>
public sealed class HoldRun : Errand
{
    internal HoldRun(StoredJob stored, IReadOnlyList<LoadCase> cases, CancellationTokenSource stop) : base(stop)
    {
        (Sequence, Cases) = (stored.Sequence, cases);
        Found = Task.Run(() => Holding.Of(stored.Job, cases, this, stop.Token));
    }

    /// <summary>Entry of the journal it is made after.</summary>
    public int Sequence { get; }

    /// <summary>What it is judged against; none for the job's own choice.</summary>
    public IReadOnlyList<LoadCase> Cases { get; }

    /// <summary>What it comes to.</summary>
    public Task<JobHolding> Found { get; }
}
