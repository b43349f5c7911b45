using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>One job in one file, to send or to keep: a zip of <c>job.json</c>, <c>journal.jsonl</c>, <c>photos/</c> and <c>manifest.json</c>.</summary>
public static class Container
{
    /// <summary>Ending of the file's name.</summary>
    public const string Extension = ".zip";

    /// <summary>Writes a job with its journal and every photo that any entry of the journal names.</summary>
    /// <returns>A doubt for each photo whose bytes are not in the store.</returns>
    /// <exception cref="ArgumentException">There is no such job.</exception>
    public static IReadOnlyList<Issue> Write(Store store, string jobId, Stream to) => throw new NotImplementedException();

    /// <summary>
    /// Reads a container from outside and checks all of it: names, sizes, manifest, job, chain, photos. Never throws for a bad file.
    /// Nothing is stored by this: hand the reading to <see cref="Store.Import(ContainerReading, string, string?, bool)"/>, then dispose of it.
    /// </summary>
    /// <param name="from">The file; one that cannot be sought in is copied to a temporary file first.</param>
    /// <param name="limits">What is taken at most; the usual limits when absent.</param>
    public static ContainerReading Read(Stream from, ContainerLimits? limits = null) => throw new NotImplementedException();
}

/// <summary>What is taken from outside at most.</summary>
public sealed record ContainerLimits
{
    /// <summary>Entries in the zip.</summary>
    public int Entries { get; init; } = 20_000;

    /// <summary>Size of the file itself [bytes].</summary>
    public long FileBytes { get; init; } = 8L << 30;

    /// <summary>Size of the journal, unpacked [bytes].</summary>
    public long JournalBytes { get; init; } = 512L << 20;

    /// <summary>Size of one photo [bytes].</summary>
    public long PhotoBytes { get; init; } = Store.LargestPhoto;

    /// <summary>Size of everything, unpacked [bytes].</summary>
    public long TotalBytes { get; init; } = 8L << 30;

    /// <summary>Unpacked size over packed size of one entry. DEFLATE cannot pass 1 032 (zlib technical notes).</summary>
    public int Ratio { get; init; } = 500;
}

/// <summary>What reading a container gave.</summary>
public sealed class ContainerReading : IDisposable
{
    internal ContainerReading(Job? job, IReadOnlyList<JournalEntry> journal, IReadOnlyList<PhotoHash> photos, IReadOnlyList<Issue> issues) =>
        (Job, Journal, Photos, Issues) = (job, journal, photos, issues);

    /// <summary>The job; absent when any issue is an error.</summary>
    public Job? Job { get; }

    /// <summary>Its journal, oldest entry first; empty when there is no job.</summary>
    public IReadOnlyList<JournalEntry> Journal { get; }

    /// <summary>The photos in it; empty when there is no job.</summary>
    public IReadOnlyList<PhotoHash> Photos { get; }

    /// <summary>Everything found.</summary>
    public IReadOnlyList<Issue> Issues { get; }

    /// <summary>Lets go of the file.</summary>
    public void Dispose()
    {
    }
}
