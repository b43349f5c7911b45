using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>A job in the list of jobs.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">What people call it.</param>
/// <param name="ChangedAt">When the last entry was written.</param>
/// <param name="ChangedBy">By whom.</param>
/// <param name="Sequence">Number of the last entry.</param>
/// <param name="Counts">Entries per list that has any, by the list's name in the job file.</param>
public sealed record JobListing(string Id, string Title, DateTimeOffset ChangedAt, string ChangedBy, int Sequence, IReadOnlyDictionary<string, int> Counts);

/// <summary>A change that undo or redo would touch.</summary>
/// <param name="Seq">Number of the change.</param>
/// <param name="Who">Who made it.</param>
/// <param name="What">What it did.</param>
public sealed record Step(int Seq, string Who, string What);

/// <summary>A job as stored.</summary>
/// <param name="Job">The job.</param>
/// <param name="Sequence">Number of the last entry in its journal.</param>
/// <param name="Hash">Hash of that entry: written down elsewhere, it fixes everything up to here.</param>
/// <param name="Undo">What undo would take back; absent when there is nothing.</param>
/// <param name="Redo">What redo would make again; absent when there is nothing.</param>
public sealed record StoredJob(Job Job, int Sequence, string Hash, Step? Undo, Step? Redo)
{
    /// <summary>Whether there is anything to undo.</summary>
    public bool CanUndo => Undo is not null;

    /// <summary>Whether there is anything to redo.</summary>
    public bool CanRedo => Redo is not null;
}

/// <summary>What appending gave. With an entry it is stored and survives; without one nothing was changed.</summary>
/// <param name="Job">The job after it; absent when it was refused.</param>
/// <param name="Entry">The entry written; absent when it was refused.</param>
/// <param name="Issues">Errors that made it refused, or doubts.</param>
public sealed record Appended(Job? Job, JournalEntry? Entry, IReadOnlyList<Issue> Issues);

/// <summary>What taking a job in gave. With a job it is stored; without one nothing was changed.</summary>
/// <param name="Job">The job as stored; absent when it was refused.</param>
/// <param name="Sequence">Number of the last entry of its journal; 0 when it was refused.</param>
/// <param name="Issues">Errors that made it refused, or doubts.</param>
public sealed record Imported(Job? Job, int Sequence, IReadOnlyList<Issue> Issues);

/// <summary>What taking a photo in gave. With a hash it is stored.</summary>
/// <param name="Hash">Its name; absent when it was refused.</param>
/// <param name="MediaType">What the bytes are; absent when they are none of the kinds taken.</param>
/// <param name="Bytes">Its size [bytes]; when refused, as far as it was read.</param>
/// <param name="Issues">Why it was refused.</param>
public sealed record PhotoTaken(PhotoHash? Hash, string? MediaType, long Bytes, IReadOnlyList<Issue> Issues);

/// <summary>A photo to take in together with a job.</summary>
/// <param name="Name">What to call it when it is refused, a file name for example.</param>
/// <param name="Open">Opens its bytes.</param>
public sealed record PhotoSource(string Name, Func<Stream> Open);

/// <summary>What checking a job's records gave.</summary>
/// <param name="Entries">Entries in the journal.</param>
/// <param name="FirstBadEntry">Number of the first entry that cannot stand; absent when all do.</param>
/// <param name="LastHash">Hash of the last entry as written.</param>
/// <param name="Photos">Photos named by the job.</param>
/// <param name="Issues">Everything found.</param>
public sealed record Verification(int Entries, int? FirstBadEntry, string LastHash, int Photos, IReadOnlyList<Issue> Issues)
{
    /// <summary>Whether nothing was found that weighs as an error.</summary>
    public bool Sound => Issues.All(i => i.Weight != Weight.Error);
}

/// <summary>What a backup or a restore moved.</summary>
/// <param name="Jobs">Number of jobs.</param>
/// <param name="Photos">Number of photos.</param>
/// <param name="Bytes">Size of the backup file [bytes].</param>
/// <param name="Issues">On backup the photos that could not be taken along; on restore what is wrong with the records of each job, its id first.</param>
public sealed record BackupTally(int Jobs, int Photos, long Bytes, IReadOnlyList<Issue> Issues);
