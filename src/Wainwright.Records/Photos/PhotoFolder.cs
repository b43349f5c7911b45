using System.Security.Cryptography;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>A photo that lies whole on disk but not yet under its name.</summary>
internal sealed record StagedPhoto(PhotoHash Hash, PhotoKind Kind, long Bytes, string File);

/// <summary>Photos as files named by their hash: <c>photos/ab/ab12….jpg</c>. The file system is the only list of them.</summary>
internal sealed class PhotoFolder(string folder)
{
    private readonly string incoming = Path.Combine(folder, "incoming");

    /// <summary>Removes what an interrupted intake left; another program may be writing here, so only what is old.</summary>
    public void Sweep(DateTimeOffset now)
    {
        if (!Directory.Exists(incoming)) return;
        foreach (var file in Directory.EnumerateFiles(incoming))
            if (now - new DateTimeOffset(File.GetLastWriteTimeUtc(file), TimeSpan.Zero) > TimeSpan.FromDays(1)) File.Delete(file);
    }

    public string? FileOf(PhotoHash hash) =>
        hash.IsWellFormed ? PhotoKind.All.Select(k => PathOf(hash, k)).FirstOrDefault(File.Exists) : null;

    public PhotoKind? KindOf(PhotoHash hash) => FileOf(hash) is { } file ? PhotoKind.All.First(k => k.Ending == Path.GetExtension(file)) : null;

    public FileStream? Open(PhotoHash hash) => FileOf(hash) is { } file ? File.OpenRead(file) : null;

    /// <summary>Every photo here, by name.</summary>
    public IEnumerable<PhotoHash> All() => !Directory.Exists(folder) ? [] :
        Directory.EnumerateDirectories(folder).Where(d => Path.GetFileName(d).Length == 2).SelectMany(Directory.EnumerateFiles)
            .Select(f => new PhotoHash(Path.GetFileNameWithoutExtension(f))).Where(h => h.IsWellFormed).OrderBy(h => h.Text, StringComparer.Ordinal);

    /// <summary>Why a stored photo is not what its name says; <see langword="null"/> when it is.</summary>
    public string? Fault(PhotoHash hash)
    {
        using var file = Open(hash);
        if (file is null) return "is named but is not here";
        return Convert.ToHexStringLower(SHA256.HashData(file)) == hash.Text ? null : "is damaged: its bytes are not those it was named for";
    }

    /// <summary>Writes a photo beside the others and flushes it. Leaves no file when it is refused or the source breaks off.</summary>
    public StagedPhoto? Stage(Stream bytes, long largest, string name, out long read, List<Issue> issues)
    {
        // a reader that never waits: the task is complete when it comes back
        var (staged, got) = Stage(bytes, buffer => new(bytes.Read(buffer.Span)), largest, name, issues).AsTask().GetAwaiter().GetResult();
        read = got;
        return staged;
    }

    /// <summary>The same for a source that can only be waited for.</summary>
    public ValueTask<(StagedPhoto? Photo, long Read)> Stage(Stream bytes, long largest, string name, List<Issue> issues, CancellationToken stop) =>
        Stage(bytes, buffer => bytes.ReadAsync(buffer, stop), largest, name, issues);

    private async ValueTask<(StagedPhoto?, long)> Stage(Stream bytes, Func<Memory<byte>, ValueTask<int>> next, long largest, string name, List<Issue> issues)
    {
        if (bytes.CanSeek && bytes.Length - bytes.Position is var ahead && ahead > largest)
        {
            issues.Add(TooLarge(name, largest));
            return (null, 0);
        }
        Durable.MakeFolder(incoming);
        var file = Path.Combine(incoming, $"{Guid.NewGuid():N}.part");
        var intake = new PhotoIntake(largest);
        var whole = false;
        try
        {
            using var to = new FileStream(file, FileMode.CreateNew, FileAccess.Write, FileShare.None, bufferSize: 0);
            var fault = await intake.Copy(next, to).ConfigureAwait(false);
            if (fault == PhotoFault.TooLarge) issues.Add(TooLarge(name, largest));
            if (fault == PhotoFault.NoPhoto) issues.Add(new(name, "must be a photo as JPEG, PNG, WebP or HEIC; its bytes say otherwise", "take it again, or save it in one of these formats"));
            if (fault == PhotoFault.None) to.Flush(flushToDisk: true);
            whole = fault == PhotoFault.None;
        }
        finally
        {
            if (!whole) File.Delete(file);
        }
        return (whole ? new(intake.Hash(), intake.Kind!, intake.Bytes, file) : null, intake.Bytes);
    }

    /// <summary>Gives a staged photo its name; says whether there was none of that name before.</summary>
    public bool Settle(StagedPhoto photo)
    {
        var there = FileOf(photo.Hash);
        if (there is not null && Fault(photo.Hash) is null)
        {
            File.Delete(photo.File);
            return false;
        }
        // what has the name and is not it was damaged: the good one takes its place
        var name = there ?? PathOf(photo.Hash, photo.Kind);
        Durable.MakeFolder(Path.GetDirectoryName(name)!);
        Durable.Name(photo.File, name, overwrite: true);
        return there is null;
    }

    /// <summary>Takes a photo away again that came with something that then failed.</summary>
    public void Withdraw(StagedPhoto photo) => File.Delete(PathOf(photo.Hash, photo.Kind));

    private string PathOf(PhotoHash hash, PhotoKind kind) => Path.Combine(folder, hash.Text[..2], hash.Text + kind.Ending);

    private static Issue TooLarge(string name, long largest) =>
        new(name, string.Create(System.Globalization.CultureInfo.InvariantCulture, $"a photo has at most {largest / 1e6:0.#} MB"), "send a smaller one, or set the camera to a lower resolution");
}
