using System.Text;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>One job in one file, to send or to keep: a zip of <c>job.json</c>, <c>journal.jsonl</c>, <c>photos/</c> and <c>manifest.json</c>.</summary>
public static class Container
{
    /// <summary>Ending of the file's name.</summary>
    public const string Extension = ".zip";

    internal const string JobName = "job.json", JournalName = "journal.jsonl", Holds = "job";

    private const int EntriesAtATime = 200;

    /// <summary>Writes a job with its journal and every photo that any entry of the journal names.</summary>
    /// <param name="store">The store.</param>
    /// <param name="jobId">The job.</param>
    /// <param name="to">Where to; need not be able to seek, is not closed.</param>
    /// <returns>A doubt for each photo that is missing or damaged and so is not in it.</returns>
    /// <exception cref="ArgumentException">There is no such job.</exception>
    public static IReadOnlyList<Issue> Write(Store store, string jobId, Stream to)
    {
        ArgumentNullException.ThrowIfNull(store);
        ArgumentNullException.ThrowIfNull(to);
        var job = store.Find(jobId) ?? throw new ArgumentException($"there is no job “{jobId}”", nameof(jobId));
        return Remedy.Of($"writing job {jobId} into a file", () =>
        {
            var issues = new List<Issue>();
            using var pack = new PackWriter(to, store.History(jobId, job.Sequence).Single().At);
            pack.Add(JobName, pack: true, s => s.Write(JobFile.Write(job.Job)));
            var photos = new HashSet<PhotoHash>();
            pack.Add(JournalName, pack: true, s => Journal(store, job, s, photos));
            if (pack.Bytes > new ContainerLimits().JournalBytes) issues.Add(new(JournalName, "is longer than is usually read back", "read it with larger limits", Weight.Doubt));
            foreach (var hash in photos.OrderBy(h => h.Text, StringComparer.Ordinal)) Photo(store, hash, pack, issues);
            pack.Finish(Holds, jobId, job.Hash);
            return issues;
        });
    }

    private static void Journal(Store store, StoredJob job, Stream to, HashSet<PhotoHash> photos)
    {
        // entries are never changed, so they may be fetched in pieces while others write: up to the one that job.json shows
        for (var from = 1; from <= job.Sequence; from += EntriesAtATime)
            foreach (var entry in store.Entries(job.Job.Id, from, Math.Min(EntriesAtATime, job.Sequence - from + 1)))
            {
                to.Write(Encoding.UTF8.GetBytes(entry.Line() + "\n"));
                photos.UnionWith(JournalEdits.PhotosIn(entry.Understood().Edits));
            }
    }

    private static void Photo(Store store, PhotoHash hash, PackWriter pack, List<Issue> issues)
    {
        if (store.Photos.Fault(hash) is { } fault) issues.Add(new($"photos/{hash}", $"{fault}; it is left out", "take the same photo in again", Weight.Doubt));
        else pack.Add(EntryName.Photo(hash, store.Photos.KindOf(hash)!), pack: false, s =>
        {
            using var bytes = store.Photos.Open(hash);
            bytes!.CopyTo(s);
        });
    }

    /// <summary>
    /// Reads a container from outside and checks all of it: names, sizes, manifest, job, chain, photos. Never throws for a bad file.
    /// Nothing is stored by this: hand the reading to <see cref="Store.Import(ContainerReading, string, string?, bool)"/>, then dispose of it.
    /// </summary>
    /// <param name="from">The file, closed with the reading; one that cannot seek is copied to a temporary file first.</param>
    /// <param name="limits">What is taken at most; the usual limits when absent.</param>
    public static ContainerReading Read(Stream from, ContainerLimits? limits = null)
    {
        ArgumentNullException.ThrowIfNull(from);
        var most = limits ?? new();
        return Remedy.Of("reading a container", () => new ContainerCheck(most).Of(from));
    }
}
