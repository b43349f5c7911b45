using Wainwright.Fitout;

namespace Wainwright.Records;

public sealed partial class Store
{
    /// <summary>Makes a change, all of it or nothing. When it returns an entry, that is on disk.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="change">The change; what it says stood there before must still stand there.</param>
    /// <param name="who">Who does it: a role or initials.</param>
    public Appended Append(string jobId, Change change, string who)
    {
        ArgumentNullException.ThrowIfNull(change);
        return Write(jobId, who, change.What ?? "", job => Draft.From(job, change, Photos));
    }

    /// <summary>Takes the last change back by an entry of its own. Works across restarts.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="who">Who does it.</param>
    /// <param name="seq">The change that the person saw would go (<see cref="StoredJob.Undo"/>); refused when it is another one by now.</param>
    public Appended Undo(string jobId, string who, int? seq = null) => Again(jobId, who, seq, EntryKind.Undo, s => s.Undo);

    /// <summary>Makes the change that was taken back last again. A new change after an undo leaves nothing to redo.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="who">Who does it.</param>
    /// <param name="seq">The change that the person saw would come back (<see cref="StoredJob.Redo"/>); refused when it is another one by now.</param>
    public Appended Redo(string jobId, string who, int? seq = null) => Again(jobId, who, seq, EntryKind.Redo, s => s.Redo);

    private Appended Again(string jobId, string who, int? seq, EntryKind kind, Func<Steps, Step?> next)
    {
        var word = JournalLine.Word(kind);
        return Write(jobId, who, null, job =>
        {
            if (next(job.Steps) is not { } step) return Refusal(job, new(word, $"there is nothing to {word}", "nothing to do", Weight.Error));
            if (seq is { } seen && seen != step.Seq)
                return Refusal(job, new(word, "the job has changed since it was read", $"look at it again; what would go now is “{step.What}” by {step.Who}"));
            return Draft.Again(job, kind, step, JournalEdits.Read(journal.Entries(job.Key, step.Seq, 1).Single().Edits));
        });
    }

    private static Draft Refusal(Held job, Issue issue) => new(EntryKind.Change, null, "", [], job.State, null, [issue]);

    private Appended Write(string jobId, string who, string? what, Func<Held, Draft> draw)
    {
        ArgumentNullException.ThrowIfNull(jobId);
        ArgumentNullException.ThrowIfNull(who);
        var words = ChangeRules.OfWords(who, what).ToList();
        if (words.Count > 0) return new(null, null, words);
        return Writing($"writing to job {jobId}", jobId, () =>
        {
            if (Hold(jobId) is not { } job) return (new Appended(null, null, [NoSuchJob(jobId)]), null);
            var draft = draw(job);
            if (draft.Job is null) return (new Appended(null, null, draft.Issues), null);
            var (entry, after) = Append(job, draft, who);
            return (new Appended(after.Job, entry.Understood(), draft.Issues), after);
        });
    }

    /// <summary>Adds the entry and brings the rows of state along. Whoever calls has the transaction.</summary>
    private (RawEntry Entry, Held After) Append(Held job, Draft draft, string who)
    {
        var entry = JournalLine.Sealed(job.Job.Id, job.Seq + 1, clock.GetUtcNow(), who, draft.What, draft.Kind, draft.Of, job.Hash, draft.Edits);
        journal.Append(job.Key, entry);
        journal.Put(job.Key, draft.State, draft.Edits.Select(e => e.Where));
        var steps = job.Steps.Then(draft.Kind, entry.Seq, draft.Of, who, draft.What);
        return (entry, new(job.Key, entry.Seq, entry.Hash, draft.Job!, draft.State, steps));
    }

    private static Issue NoSuchJob(string jobId) => new("job", $"there is no job “{jobId}”", "look at the list of jobs, or take it in");
}
