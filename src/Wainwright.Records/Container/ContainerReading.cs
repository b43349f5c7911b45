using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>What reading a container gave. Holds the file open until disposed of, for its photos.</summary>
public sealed class ContainerReading : IDisposable
{
    private readonly PackReader? pack;
    private readonly Dictionary<PhotoHash, string> photoNames;

    internal ContainerReading(ContainerLimits limits, IReadOnlyList<Issue> issues)
    {
        (Limits, Issues, Raw, photoNames) = (limits, issues, [], []);
    }

    internal ContainerReading(ContainerLimits limits, IReadOnlyList<Issue> issues, PackReader pack, Job job, IReadOnlyList<RawEntry> raw, Replay history)
    {
        (Limits, Issues, this.pack, Job, Raw, History) = (limits, issues, pack, job, raw, history);
        photoNames = pack.Names.Select(n => (Name: n, Photo: EntryName.PhotoNamed(n))).Where(n => n.Photo is not null).ToDictionary(n => n.Photo!.Value.Hash, n => n.Name);
    }

    /// <summary>The job; absent when any issue is an error.</summary>
    public Job? Job { get; }

    /// <summary>Its journal, oldest entry first; empty when there is no job. Made anew at every call.</summary>
    public IReadOnlyList<JournalEntry> Journal => [.. Raw.Select(e => e.Understood())];

    /// <summary>The photos in it; empty when there is no job.</summary>
    public IReadOnlyCollection<PhotoHash> Photos => photoNames.Keys;

    /// <summary>Everything found, errors and doubts.</summary>
    public IReadOnlyList<Issue> Issues { get; }

    internal ContainerLimits Limits { get; }

    internal IReadOnlyList<RawEntry> Raw { get; }

    internal Replay? History { get; }

    /// <summary>The bytes of a photo in it, to be read before the next is opened.</summary>
    /// <exception cref="KeyNotFoundException">It is not in <see cref="Photos"/>.</exception>
    public Stream OpenPhoto(PhotoHash hash) => pack!.Again(photoNames[hash]);

    /// <summary>Lets go of the file.</summary>
    public void Dispose() => pack?.Dispose();
}
