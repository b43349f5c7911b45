using Wainwright.Fitout;

namespace Wainwright.Records;

public sealed partial class Store
{
    /// <summary>
    /// Checks a job's records as they lie on disk: the chain recomputed, the journal replayed and compared with the stored state, every photo
    /// any entry names hashed. Proves that nothing was changed behind the program's back by somebody who did not recompute the whole chain;
    /// against one who did, compare <see cref="Verification.LastHash"/> with a copy kept elsewhere.
    /// </summary>
    /// <param name="jobId">The job.</param>
    public Verification Verify(string jobId)
    {
        var issues = new List<Issue>();
        var (replay, firstBad, lastHash) = Reading($"checking job {jobId}", () =>
        {
            var replay = new Replay(jobId);
            if (journal.KeyOf(jobId) is not { } key)
            {
                issues.Add(NoSuchJob(jobId));
                return (replay, (int?)null, "");
            }
            issues.AddRange(Schema.Differences(database).Select(name => new Issue($"records.db {name}", "is not as the program made it", "ask who worked on the file; restore a backup if nobody knows")));
            var (firstBad, lastHash) = Replayed(replay, key, issues);
            if (firstBad is null) issues.AddRange(StateFaults(replay, key));
            return (replay, firstBad, lastHash);
        });
        issues.AddRange(replay.BackInTime.Select(seq => new Issue($"entry {seq}", "is dated before the entry before it", "a clock was set back, or wrong: ask whoever wrote it", Weight.Doubt)));
        // photos are never changed, so they need no transaction; hashing them takes longest
        foreach (var hash in replay.Photos.OrderBy(h => h.Text, StringComparer.Ordinal))
            if (Remedy.Of($"checking photo {hash}", () => Photos.Fault(hash) ?? "") is { Length: > 0 } fault)
                issues.Add(new($"photos/{hash}", fault, "take the same photo in again, or fetch it from a backup"));
        return new(replay.Entries, firstBad, lastHash, replay.Photos.Count, issues);
    }

    /// <summary>
    /// Writes the stored state of a job anew from its journal. For when <see cref="Verify"/> finds the journal whole and the state not; a journal
    /// that is not whole leaves the state as it is.
    /// </summary>
    /// <param name="jobId">The job.</param>
    /// <returns>What <see cref="Verify"/> finds afterwards.</returns>
    public Verification Mend(string jobId)
    {
        Writing($"mending job {jobId}", jobId, () =>
        {
            var replay = new Replay(jobId);
            if (journal.KeyOf(jobId) is not { } key || Replayed(replay, key, []).FirstBad is not null || replay.Entries == 0) return (false, null);
            journal.PutAll(key, replay.State);
            return (true, new Held(key, replay.Entries, replay.LastHash, replay.State.ToJob(jobId), replay.State, replay.Steps));
        });
        return Verify(jobId);
    }

    private (int? FirstBad, string LastHash) Replayed(Replay replay, long key, List<Issue> issues)
    {
        int? firstBad = null;
        var lastHash = "";
        foreach (var entry in journal.Entries(key))
        {
            lastHash = entry.Hash;
            if (firstBad is not null || replay.Next(entry) is not { } fault) continue;
            firstBad = entry.Seq;
            issues.Add(new($"entry {entry.Seq}", fault, "everything from here on is open to doubt; compare with a backup or a container"));
        }
        if (lastHash.Length == 0) issues.Add(new("journal", "is empty", "restore a backup"));
        return (firstBad, lastHash);
    }

    private IEnumerable<Issue> StateFaults(Replay replay, long key)
    {
        JobState stored;
        try
        {
            stored = journal.State(key);
        }
        catch (FormatException error)
        {
            return [new("state", error.Message, "the journal is whole: have the state written anew from it")];
        }
        return replay.State.Differences(stored, ranks: true).Select(where => new Issue(where, "is not what the journal says", "the journal is whole: have the state written anew from it"));
    }
}
