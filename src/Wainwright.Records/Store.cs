using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>
/// The workshop's records: jobs with their journals in one SQLite file, photos beside it. May be used from several threads, and several
/// programs may have the same folder open. Every method throws a <see cref="StoreException"/> when disk or file do not do their part.
/// </summary>
public sealed class Store : IDisposable
{
    /// <summary>Largest photo taken unless said otherwise [bytes].</summary>
    public const long LargestPhoto = 50L << 20;

    private Store(string folder) => Folder = folder;

    /// <summary>The folder of the store.</summary>
    public string Folder { get; }

    /// <summary>
    /// A job was changed through this object: its id. Raised after the change is on disk, on the thread that wrote it; a handler must not throw.
    /// What another program writes raises nothing here, but the next <see cref="Find"/> sees it.
    /// </summary>
    public event Action<string>? Changed;

    /// <summary>The folder used when nobody names one: <c>wainwright</c> in the user's own data folder.</summary>
    public static string DefaultFolder() => throw new NotImplementedException();

    /// <summary>Opens the store in a folder; makes both when they are not there.</summary>
    public static Store Open(string folder, TimeProvider clock) => throw new NotImplementedException();

    /// <summary>All jobs, the one changed last first.</summary>
    public IReadOnlyList<JobListing> Jobs() => throw new NotImplementedException();

    /// <summary>The job of that id; <see langword="null"/> when there is none.</summary>
    public StoredJob? Find(string jobId) => throw new NotImplementedException();

    /// <summary>The job as it was after that entry; <see langword="null"/> when there is no such job or entry.</summary>
    public Job? AsOf(string jobId, int seq) => throw new NotImplementedException();

    /// <summary>
    /// Takes a job in. One that is there already is refused, unless <paramref name="replace"/>: then what differs is written as one change,
    /// the history stays and undo brings the old state back. The job, its photos and its first entry are stored together or not at all.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <param name="who">Who does it: a role or initials.</param>
    /// <param name="replace">Whether it may take the place of a job with the same id.</param>
    /// <param name="photos">Photos the job names. Those not given and not in the store give a doubt each.</param>
    public Imported Import(Job job, string who, bool replace = false, IEnumerable<PhotoSource>? photos = null) => throw new NotImplementedException();

    /// <summary>
    /// Takes a container in, journal and photos with it. When the job is there and one journal continues the other, the longer one stands;
    /// when they part, it is refused, unless <paramref name="replace"/> (its state is taken over as one change) or <paramref name="asId"/>.
    /// </summary>
    /// <param name="container">A container read without errors.</param>
    /// <param name="who">Who does it.</param>
    /// <param name="asId">Another id to store it under; its journal then begins anew and says where the job came from.</param>
    /// <param name="replace">Whether its state may take the place of that of a job with the same id.</param>
    public Imported Import(ContainerReading container, string who, string? asId = null, bool replace = false) => throw new NotImplementedException();

    /// <summary>Makes a change, all of it or nothing. When it returns an entry, that is on disk.</summary>
    public Appended Append(string jobId, Change change, string who) => throw new NotImplementedException();

    /// <summary>Takes the last change back by an entry of its own. Works across restarts.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="who">Who does it.</param>
    /// <param name="seq">The change that the person saw would go (<see cref="StoredJob.Undo"/>); refused when it is another one by now.</param>
    public Appended Undo(string jobId, string who, int? seq = null) => throw new NotImplementedException();

    /// <summary>Makes the change that was taken back last again. A new change after an undo leaves nothing to redo.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="who">Who does it.</param>
    /// <param name="seq">The change that the person saw would come back (<see cref="StoredJob.Redo"/>); refused when it is another one by now.</param>
    public Appended Redo(string jobId, string who, int? seq = null) => throw new NotImplementedException();

    /// <summary>Entries of a job's journal, oldest first; empty when there is no such job.</summary>
    /// <param name="jobId">The job.</param>
    /// <param name="from">Number of the first entry wanted.</param>
    /// <param name="most">Number of entries wanted.</param>
    public IReadOnlyList<JournalEntry> History(string jobId, int from = 1, int most = int.MaxValue) => throw new NotImplementedException();

    /// <summary>
    /// Checks a job's records as they lie on disk: the chain recomputed, the journal replayed and compared with the stored state, every photo hashed.
    /// </summary>
    public Verification Verify(string jobId) => throw new NotImplementedException();

    /// <summary>
    /// Takes a photo in. Its kind is told from its bytes: JPEG, PNG, WebP or HEIC, nothing else. A photo that is there already is stored once.
    /// </summary>
    /// <param name="bytes">The photo, read to its end or until it is refused; never held in memory as a whole.</param>
    /// <param name="largest">Largest size taken [bytes].</param>
    public PhotoTaken AddPhoto(Stream bytes, long largest = LargestPhoto) => throw new NotImplementedException();

    /// <summary>The bytes of a photo; <see langword="null"/> when it is not here. The caller closes the stream.</summary>
    public Stream? OpenPhoto(PhotoHash hash) => throw new NotImplementedException();

    /// <summary>Media type of a stored photo, <c>image/jpeg</c>; <see langword="null"/> when it is not here.</summary>
    public string? MediaTypeOf(PhotoHash hash) => throw new NotImplementedException();

    /// <summary>Writes everything into one new file. Others may go on working meanwhile.</summary>
    /// <param name="file">The file; must not exist.</param>
    public BackupTally Backup(string file) => throw new NotImplementedException();

    /// <summary>Unpacks a backup and checks all of it before the folder appears under its name.</summary>
    /// <param name="file">A file made by <see cref="Backup"/>.</param>
    /// <param name="folder">The folder; must not exist, or be empty.</param>
    /// <exception cref="StoreDamagedException">The file is not a whole, sound backup.</exception>
    public static BackupTally Restore(string file, string folder) => throw new NotImplementedException();

    /// <summary>Closes the store.</summary>
    public void Dispose() => Changed?.Invoke("");
}
