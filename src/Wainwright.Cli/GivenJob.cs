using Wainwright.Fitout;
using Wainwright.Records;

namespace Wainwright.Cli;

/// <summary>The job that a command line names: a job file, a container, or the id of a job in the store.</summary>
internal sealed class GivenJob : IDisposable
{
    private readonly IDisposable? behind;
    private readonly Func<PhotoHash, Stream?> photo;

    private GivenJob(Job job, string? seal, Func<PhotoHash, Stream?> photo, IDisposable? behind) =>
        (Job, Seal, this.photo, this.behind) = (job, seal, photo, behind);

    /// <summary>The job.</summary>
    public Job Job { get; }

    /// <summary>Hash of the last entry of its journal; <see langword="null"/> for a job file, which has none.</summary>
    public string? Seal { get; }

    /// <summary>The bytes of a photo; <see langword="null"/> when they are not at hand.</summary>
    public Stream? Photo(PhotoHash hash) => photo(hash);

    /// <summary>Whether a name is meant as a file rather than as an id: it is there, or it is written like a path.</summary>
    public static bool IsFile(string name) => File.Exists(name) || Directory.Exists(name) || name.IndexOfAny(['/', '\\']) >= 0
        || name.EndsWith(".json", StringComparison.OrdinalIgnoreCase) || name.EndsWith(Container.Extension, StringComparison.OrdinalIgnoreCase);

    /// <summary>Reads the job.</summary>
    /// <exception cref="BadInputException">There is none, or it cannot be used.</exception>
    public static GivenJob Open(string name, string? store, Terminal at) =>
        !IsFile(name) ? FromStore(name, store, at) : GivenFile.IsContainer(name) ? FromContainer(name, at) : FromFile(name);

    public void Dispose() => behind?.Dispose();

    private static GivenJob FromFile(string path)
    {
        var reading = GivenFile.ReadJob(path);
        var job = Usable(path, reading.Job, reading.Issues);
        var photos = new Lazy<IReadOnlyDictionary<PhotoHash, string>>(() => PhotoFolder.Of(null, path, job));
        return new(job, null, hash => photos.Value.TryGetValue(hash, out var file) ? File.OpenRead(file) : null, null);
    }

    private static GivenJob FromContainer(string path, Terminal at)
    {
        using var file = GivenFile.Open(path);
        using var reading = Container.Read(file);
        var job = Usable(path, reading.Job, reading.Issues);
        var store = StoreFolder.ForNow(at);
        store.Store.Import(reading, "command line");
        return new(job, reading.Journal[^1].Hash, store.Store.OpenPhoto, store);
    }

    private static GivenJob FromStore(string id, string? folder, Terminal at)
    {
        var store = StoreFolder.OpenThere(folder, at);
        if (store.Find(id) is { } stored) return new(stored.Job, stored.Hash, store.OpenPhoto, store);
        var known = store.Jobs();
        store.Dispose();
        throw new BadInputException(known.Count == 0
            ? $"the store has no job yet; put one in with wain import"
            : $"there is no job “{id}” in the store; it has {string.Join(", ", known.Take(12).Select(j => j.Id))}{(known.Count > 12 ? ", …" : "")}");
    }

    private static Job Usable(string path, Job? job, IReadOnlyList<Issue> issues) =>
        job ?? throw new BadInputException($"{path} cannot be used", [.. issues.Where(i => i.Weight == Weight.Error)]);
}
