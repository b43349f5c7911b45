using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>
/// The workshop's records: jobs with their journals in one SQLite file, photos beside it. May be used from several threads, and several
/// programs may have the same folder open. Every method throws a <see cref="StoreException"/> when disk or file do not do their part.
/// </summary>
public sealed partial class Store : IDisposable
{
    /// <summary>Largest photo taken unless said otherwise [bytes].</summary>
    public const long LargestPhoto = 50L << 20;

    internal const string DatabaseFile = "records.db";
    internal const string PhotosFolder = "photos";

    // common practice, no source: longer than any write here takes, shorter than a person's patience
    private const int PatienceMs = 5_000;

    private readonly Lock gate = new();
    private readonly TimeProvider clock;
    private readonly Database database;
    private readonly JournalTable journal;
    private readonly HeldJobs held = new();

    private Store(string folder, TimeProvider clock, Database database)
    {
        (Folder, this.clock, this.database, journal) = (folder, clock, database, new(database));
        Photos = new(Path.Combine(folder, PhotosFolder));
    }

    /// <summary>The folder of the store.</summary>
    public string Folder { get; }

    /// <summary>
    /// A job was changed through this object: its id. Raised after the change is on disk, on the thread that wrote it; a handler must not throw.
    /// What another program writes raises nothing here, but the next <see cref="Find"/> sees it.
    /// </summary>
    public event Action<string>? Changed;

    internal PhotoFolder Photos { get; }

    internal Database Database => database;

    /// <summary>The folder used when nobody names one: <c>wainwright</c> in the user's own data folder.</summary>
    public static string DefaultFolder()
    {
        var own = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        return own.Length > 0 ? Path.Combine(own, "wainwright") : throw new StoreUnwritableException("this user has no data folder");
    }

    /// <summary>Opens the store in a folder; makes both when they are not there.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="clock">Gives entries their time.</param>
    public static Store Open(string folder, TimeProvider clock) => Open(folder, clock, PatienceMs);

    internal static Store Open(string folder, TimeProvider clock, int patienceMs)
    {
        ArgumentException.ThrowIfNullOrEmpty(folder);
        ArgumentNullException.ThrowIfNull(clock);
        return Remedy.Of($"opening the store in {folder}", () =>
        {
            Durable.MakeFolder(folder);
            var store = new Store(folder, clock, Database.Open(Path.Combine(folder, DatabaseFile), patienceMs));
            store.Photos.Sweep(clock.GetUtcNow());
            return store;
        });
    }

    /// <summary>All jobs, the one changed last first.</summary>
    public IReadOnlyList<JobListing> Jobs() => Reading("listing the jobs", journal.Listings);

    /// <summary>The job of that id; <see langword="null"/> when there is none.</summary>
    public StoredJob? Find(string jobId) => Reading($"reading job {jobId}", () => Hold(jobId)?.Shown());

    /// <summary>The job as it was after that entry; <see langword="null"/> when there is no such job or entry.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="seq">Number of the entry.</param>
    public Job? AsOf(string jobId, int seq)
    {
        if (seq < 1) return null;
        var replay = new Replay(jobId);
        foreach (var entry in Entries(jobId, 1, seq))
            if (replay.Next(entry) is { } fault) throw new StoreDamagedException($"reading job {jobId}: entry {entry.Seq} {fault}");
        return replay.Entries == seq ? Remedy.Of($"reading job {jobId}", () => replay.State.ToJob(jobId)) : null;
    }

    /// <summary>Entries of a job's journal, oldest first; empty when there is no such job.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="from">Number of the first entry wanted.</param>
    /// <param name="most">Number of entries wanted.</param>
    public IReadOnlyList<JournalEntry> History(string jobId, int from = 1, int most = int.MaxValue) =>
        Remedy.Of($"reading the journal of job {jobId}", () => Entries(jobId, from, most).Select(e => e.Understood()).ToList());

    /// <summary>Entries word for word.</summary>
    internal IReadOnlyList<RawEntry> Entries(string jobId, int from, int most) =>
        Reading<IReadOnlyList<RawEntry>>($"reading the journal of job {jobId}", () => journal.KeyOf(jobId) is { } key ? [.. journal.Entries(key, from, most)] : []);

    /// <summary>Closes the store.</summary>
    public void Dispose()
    {
        lock (gate) database.Dispose();
    }

    /// <summary>Reads under one state of the database.</summary>
    private T Reading<T>(string doing, Func<T> read) => Remedy.Of(doing, () =>
    {
        lock (gate)
        {
            using var transaction = database.Read();
            return read();
        }
    });

    /// <summary>Writes as the only writer, commits, then tells whoever listens.</summary>
    /// <param name="doing">What is being done.</param>
    /// <param name="jobId">The job.</param>
    /// <param name="write">Writes; gives the answer, and the job to hold when anything is to be committed.</param>
    /// <param name="failed">Takes back what was done outside the database; still as the only writer.</param>
    private T Writing<T>(string doing, string jobId, Func<(T Answer, Held? After)> write, Action? failed = null)
    {
        var (answer, after) = Remedy.Of(doing, () =>
        {
            lock (gate)
            {
                using var transaction = database.Write();
                try
                {
                    var written = write();
                    if (written.After is not { } job) return written;
                    transaction.Commit();
                    held.Keep(jobId, job);
                    return written;
                }
                catch
                {
                    failed?.Invoke();
                    throw;
                }
            }
        });
        if (after is not null) Changed?.Invoke(jobId);
        return answer;
    }

    /// <summary>The job as it is in the database, from memory when that is the same. Whoever calls has the transaction.</summary>
    private Held? Hold(string jobId)
    {
        if (journal.KeyOf(jobId) is not { } key) return null;
        var (seq, hash) = journal.Last(key);
        if (held.Get(jobId, seq, hash) is { } known) return known;
        var state = journal.State(key);
        if (state.At("format")?.Json is { } format && int.Parse(format, System.Globalization.CultureInfo.InvariantCulture) > Job.CurrentFormat)
            throw new StoreNewerException($"job {jobId} is of format {format}, this program knows formats up to {Job.CurrentFormat}");
        return held.Keep(jobId, new(key, seq, hash, state.ToJob(jobId), state, journal.Steps(key)));
    }
}
