using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>A job as last read or written, ready for the next change. Immutable but for <see cref="State"/>, which nobody changes after it is held.</summary>
internal sealed record Held(long Key, int Seq, string Hash, Job Job, JobState State, Steps Steps)
{
    public StoredJob Shown() => new(Job, Seq, Hash, Steps.Undo, Steps.Redo);
}

/// <summary>The few jobs somebody works on, kept in memory. A cache: whatever it says is compared with the database's last entry before use.</summary>
internal sealed class HeldJobs
{
    private const int Most = 8;
    private readonly Dictionary<string, Held> held = new(StringComparer.Ordinal);

    public Held? Get(string jobId, int seq, string hash) =>
        held.TryGetValue(jobId, out var job) && job.Seq == seq && job.Hash == hash ? job : null;

    public Held Keep(string jobId, Held job)
    {
        if (held.Count >= Most && !held.ContainsKey(jobId)) held.Clear();
        return held[jobId] = job;
    }
}
