using System.IO.Compression;
using System.Text;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>
/// A zip from outside, hostile until shown otherwise: names, kinds, sizes and manifest are checked, and every file is compared with the manifest
/// while it is read. Faults go into <c>issues</c>; only a failing disk throws.
/// </summary>
internal sealed class PackReader : IDisposable
{
    private const long ManifestBytes = 64 << 20;

    private readonly Stream from;
    private readonly ZipArchive zip;
    private readonly PackLimits limits;
    private readonly Budget budget;
    private readonly Dictionary<string, ZipArchiveEntry> entries;
    private Dictionary<string, PackedFile> listed = [];

    private PackReader(Stream from, ZipArchive zip, PackLimits limits)
    {
        (this.from, this.zip, this.limits) = (from, zip, limits);
        budget = new(limits.TotalBytes);
        entries = zip.Entries.GroupBy(e => e.FullName).ToDictionary(g => g.Key, g => g.First());
    }

    /// <summary>The manifest; there is none before <see cref="Check"/> found it.</summary>
    public PackManifest? Manifest { get; private set; }

    /// <summary>Names of the files in the zip.</summary>
    public IEnumerable<string> Names => entries.Keys;

    /// <param name="from">The zip; closed with the reader.</param>
    /// <param name="limits">What is taken at most.</param>
    /// <param name="issues">Gets why it is not opened.</param>
    public static PackReader? Open(Stream from, PackLimits limits, List<Issue> issues)
    {
        if (Sized(from, limits) is { } fault) issues.Add(new("(whole file)", fault, "take another copy; if it stays so, do not open it"));
        else if (Opened(from, issues) is { } zip) return new(from, zip, limits);
        from.Dispose();
        return null;
    }

    private static string? Sized(Stream from, PackLimits limits) =>
        from.Length > limits.FileBytes ? $"is larger than the {limits.FileBytes >> 20} MiB that are taken" : ZipDirectory.Fault(from, limits.Entries);

    private static ZipArchive? Opened(Stream from, List<Issue> issues)
    {
        try
        {
            from.Position = 0;
            var zip = new ZipArchive(from, ZipArchiveMode.Read, leaveOpen: true, Encoding.UTF8);
            _ = zip.Entries; // the directory is read here, not before
            return zip;
        }
        catch (Exception error) when (IsBadZip(error))
        {
            issues.Add(new("(whole file)", $"is no whole zip file ({error.Message})", "take another copy"));
            return null;
        }
    }

    /// <summary>Checks names, kinds, doubles, and the manifest against what is there.</summary>
    public void Check(string holds, List<Issue> issues)
    {
        var seen = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var entry in zip.Entries)
        {
            var name = Shown(entry.FullName);
            if (EntryName.Fault(entry.FullName) is { } bad) issues.Add(new(name, $"a name in the file {bad}", "this may be an attack; do not open it"));
            else if (entry.FullName != PackManifest.Name && limits.BytesOf(entry.FullName) is null) issues.Add(new(name, "does not belong into such a file", "take it out"));
            if (EntryName.KindFault(entry.ExternalAttributes) is { } kind) issues.Add(new(name, kind, "this may be an attack; do not open it"));
            if (entry.IsEncrypted) issues.Add(new(name, "is encrypted", "write it without a password"));
            if (!seen.Add(entry.FullName)) issues.Add(new(name, "stands in the file twice", "this may be an attack; do not open it"));
        }
        if (!entries.ContainsKey(PackManifest.Name)) issues.Add(new(PackManifest.Name, "is missing: the file is cut off or no such file", "take another copy"));
        else if (Bytes(PackManifest.Name, ManifestBytes, issues) is { } manifest) Manifest = PackManifest.Read(manifest, holds, issues);
        if (Manifest is null) return;
        listed = Manifest.Files.DistinctBy(f => f.Name).ToDictionary(f => f.Name);
        issues.AddRange(Unmatched(Manifest));
    }

    /// <summary>What the manifest says of a file.</summary>
    public PackedFile? Listed(string name) => listed.GetValueOrDefault(name);

    private IEnumerable<Issue> Unmatched(PackManifest manifest)
    {
        if (manifest.Files.Count != listed.Count) yield return new(PackManifest.Name, "lists a file twice", "take another copy");
        foreach (var missing in listed.Keys.Where(n => !entries.ContainsKey(n))) yield return new(Shown(missing), "is listed but missing", "take another copy");
        foreach (var extra in entries.Keys.Where(n => n != PackManifest.Name && !listed.ContainsKey(n))) yield return new(Shown(extra), "is not listed in the manifest", "take another copy");
    }

    /// <summary>Reads a file and compares it with the manifest; says whether it is what was packed.</summary>
    public bool Read(string name, Action<Stream> take, List<Issue> issues) => Read(name, limits.BytesOf(name) ?? 0, take, issues);

    /// <summary>A file as a whole; <see langword="null"/> when it is missing or not what was packed.</summary>
    public byte[]? Bytes(string name, List<Issue> issues) => Bytes(name, limits.BytesOf(name) ?? 0, issues);

    /// <summary>Opens a file a second time, within the same limits.</summary>
    public Stream Again(string name) => Guarded(entries[name], limits.BytesOf(name) ?? 0, new Budget(long.MaxValue));

    private byte[]? Bytes(string name, long most, List<Issue> issues)
    {
        using var bytes = new MemoryStream();
        return Read(name, most, s => s.CopyTo(bytes), issues) ? bytes.ToArray() : null;
    }

    private bool Read(string name, long most, Action<Stream> take, List<Issue> issues)
    {
        if (!entries.TryGetValue(name, out var entry)) return false;
        try
        {
            using var bytes = Guarded(entry, most, budget);
            take(bytes);
            bytes.CopyTo(Stream.Null); // to its end, whatever the taker left
            if (name == PackManifest.Name) return true;
            var told = Listed(name);
            if (told is null || (told.Bytes == bytes.Bytes && told.Sha256 == bytes.Hash())) return told is not null;
            issues.Add(new(Shown(name), "is not what the manifest says: it was changed or damaged", "take another copy"));
        }
        catch (PackRefusedException refused)
        {
            issues.Add(new(Shown(name), refused.Message, refused.Mend));
        }
        catch (Exception error) when (IsBadZip(error))
        {
            issues.Add(new(Shown(name), $"cannot be unpacked ({error.Message})", "take another copy"));
        }
        return false;
    }

    private GuardedReading Guarded(ZipArchiveEntry entry, long most, Budget draws) => new(entry.Open(), entry.CompressedLength, most, limits.Ratio, draws);

    /// <summary>What the platform's zip reader throws for a file that is not right, as distinct from a disk that is not.</summary>
    private static bool IsBadZip(Exception error) => error is InvalidDataException or EndOfStreamException;

    private static string Shown(string name) => new([.. name.Take(80).Select(c => char.IsControl(c) || char.IsSurrogate(c) ? '?' : c)]);

    public void Dispose()
    {
        zip.Dispose();
        from.Dispose();
    }
}
