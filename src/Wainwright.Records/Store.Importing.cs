using Wainwright.Fitout;

namespace Wainwright.Records;

public sealed partial class Store
{
    /// <summary>
    /// Takes a job in. One that is there already is refused, unless <paramref name="replace"/>: then what differs is written as one change,
    /// the history stays and undo brings the old state back. The job, its photos and its first entry are stored together or not at all.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <param name="who">Who does it: a role or initials.</param>
    /// <param name="replace">Whether it may take the place of a job with the same id.</param>
    /// <param name="photos">Photos; those the job does not name are left out. Those it names that are neither given nor in the store give a doubt each.</param>
    public Imported Import(Job job, string who, bool replace = false, IEnumerable<PhotoSource>? photos = null)
    {
        ArgumentNullException.ThrowIfNull(job);
        return TakeIn(job, who, "taken in", replace, (photos ?? []).Select(p => new OfferedPhoto(p.Name, p.Open)), LargestPhoto);
    }

    /// <summary>
    /// Takes a container in, journal and photos with it. When the job is there and one journal continues the other, the longer one stands;
    /// when they part, it is refused, unless <paramref name="replace"/> (its state is taken over as one change) or <paramref name="asId"/>.
    /// </summary>
    /// <param name="container">A container as read; one with errors is refused with them.</param>
    /// <param name="who">Who does it.</param>
    /// <param name="asId">Another id to store it under; its journal then begins anew and says where the job came from.</param>
    /// <param name="replace">Whether its state may take the place of that of a job with the same id.</param>
    public Imported Import(ContainerReading container, string who, string? asId = null, bool replace = false)
    {
        ArgumentNullException.ThrowIfNull(container);
        if (container.Job is not { } job || container.History is not { } history) return new(null, 0, container.Issues);
        var photos = container.Photos.Select(h => new OfferedPhoto($"photos/{h}", () => container.OpenPhoto(h), h));
        if (asId is not null && asId != job.Id)
            return TakeIn(job with { Id = asId }, who, $"taken in as a copy of job {job.Id}, entry {history.Entries}, {history.LastHash}", replace, photos, container.Limits.PhotoBytes);

        return WithPhotos(job.Id, who, photos, history.Photos.ToDictionary(h => h, _ => (string?)null), container.Limits.PhotoBytes,
            settle => Merged(job, container, history, who, replace, settle));
    }

    private (Imported, Held?) Merged(Job job, ContainerReading container, Replay history, string who, bool replace, Action settle)
    {
        var key = journal.KeyOf(job.Id);
        var have = key is { } known ? journal.Last(known).Seq : 0;
        var common = Math.Min(have, history.Entries);
        if (common > 0 && journal.HashAt(key!.Value, common) != container.Raw[common - 1].Hash)
        {
            if (!replace) return (new(null, 0, [Parted(job.Id)]), null);
            settle();
            return Replaced(Hold(job.Id)!, JobState.Of(job), $"taken over from a container, entry {history.Entries}, {history.LastHash}", who, container.Issues);
        }
        settle();
        if (have >= history.Entries) return (new(Hold(job.Id)!.Job, have, [HereAlready, .. container.Issues]), null);
        var target = key ?? journal.Add(job.Id);
        foreach (var entry in container.Raw.Skip(have)) journal.Append(target, entry);
        journal.PutAll(target, history.State);
        return (new(job, history.Entries, container.Issues), new(target, history.Entries, history.LastHash, job, history.State, history.Steps));
    }

    private Imported TakeIn(Job job, string who, string what, bool replace, IEnumerable<OfferedPhoto> photos, long largest)
    {
        // through the file and back: what is stored is what can be read again
        var read = JobFile.Read(JobFile.Write(job));
        if (read.Job is not { } sound) return new(null, 0, read.Issues);
        var named = sound.Photos.ToDictionary(p => p.Hash, p => (string?)p.MediaType);
        var taken = WithPhotos(sound.Id, who, photos, named, largest, settle =>
        {
            var there = Hold(sound.Id);
            if (there is not null && !replace) return (new(null, 0, [Taken(sound.Id)]), null);
            settle();
            return there is not null ? Replaced(there, JobState.Of(sound), what, who, read.Issues) : Begun(sound, what, who, read.Issues);
        });
        return taken.Job is null ? taken : taken with { Issues = [.. taken.Issues, .. named.Keys.Where(h => Photos.FileOf(h) is null).Select(NotHere)] };
    }

    private (Imported, Held?) Begun(Job job, string what, string who, IReadOnlyList<Issue> doubts)
    {
        var state = JobState.Of(job);
        var entry = JournalLine.Sealed(job.Id, 1, clock.GetUtcNow(), who, what, EntryKind.Begin, null, JournalLine.NoHash, StateDifference.Between(new JobState(), state));
        var key = journal.Add(job.Id);
        journal.Append(key, entry);
        journal.PutAll(key, state);
        return (new(job, 1, doubts), new(key, 1, entry.Hash, job, state, Steps.None));
    }

    private (Imported, Held?) Replaced(Held there, JobState wanted, string what, string who, IReadOnlyList<Issue> doubts)
    {
        var edits = StateDifference.Between(there.State, wanted);
        if (edits.Count == 0) return (new(there.Job, there.Seq, [HereAlready, .. doubts]), null);
        var (entry, after) = Append(there, Draft.Whole(there, edits, what), who);
        return (new(after.Job, entry.Seq, doubts), after);
    }

    private Imported WithPhotos(string jobId, string who, IEnumerable<OfferedPhoto> offered, IReadOnlyDictionary<PhotoHash, string?> named, long largest, Func<Action, (Imported, Held?)> write)
    {
        ArgumentNullException.ThrowIfNull(who);
        var issues = ChangeRules.OfWords(who, null).ToList();
        using var delivery = new Delivery(Photos);
        if (!Remedy.Of("taking photos in", () => delivery.Stage(offered, named, largest, issues))) return new(null, 0, issues);
        var taken = Writing($"taking job {jobId} in", jobId, () => write(delivery.Settle), delivery.Withdraw);
        return taken with { Issues = [.. taken.Issues, .. issues] };
    }

    private static readonly Issue HereAlready = new("job", "is here already, as far or further", "there is nothing to do", Weight.Doubt);

    private static Issue Taken(string id) => new("job.id", $"there is a job “{id}” already", "give this one another id, or ask to replace it: the history stays and undo brings the old state back");

    private static Issue Parted(string id) => new("journal.jsonl", $"job “{id}” is here with a journal that parted from this one", "take it in under another id, or ask to replace: its state is then taken over as one change");

    private static Issue NotHere(PhotoHash hash) => new($"photos/{hash}", "is named but its bytes are not here", "take the photo in", Weight.Doubt);
}
