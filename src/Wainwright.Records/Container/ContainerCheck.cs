using System.Text;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>Goes through a container from outside and gathers every fault.</summary>
internal sealed class ContainerCheck(ContainerLimits limits)
{
    private readonly List<Issue> issues = [];
    private readonly List<RawEntry> raw = [];

    public ContainerReading Of(Stream from)
    {
        if (Seekable(from) is not { } file || PackReader.Open(file, limits.ForPack(), issues) is not { } pack) return new(limits, issues);
        var kept = false;
        try
        {
            pack.Check(Container.Holds, issues);
            var job = ReadJob(pack);
            var history = ReadJournal(pack);
            ReadPhotos(pack, history);
            if (job is not null && history is not null) Compare(pack.Manifest, job, history, pack);
            if (job is null || history is null || issues.Any(i => i.Weight == Weight.Error)) return new(limits, issues);
            kept = true;
            return new(limits, issues, pack, job, raw, history);
        }
        finally
        {
            if (!kept) pack.Dispose();
        }
    }

    private Stream? Seekable(Stream from)
    {
        if (from.CanSeek) return from;
        var file = new FileStream(Path.Combine(Path.GetTempPath(), $"wainwright-{Guid.NewGuid():N}.zip"), FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None, 1 << 16, FileOptions.DeleteOnClose);
        var whole = false;
        try
        {
            whole = Copied(from, file);
        }
        finally
        {
            if (!whole) file.Dispose();
            from.Dispose();
        }
        if (!whole) issues.Add(new("(whole file)", $"is larger than the {limits.FileBytes >> 20} MiB that are taken", "send photos apart"));
        return whole ? file : null;
    }

    private bool Copied(Stream from, FileStream to)
    {
        var buffer = new byte[1 << 16];
        int got;
        while ((got = from.Read(buffer)) > 0)
        {
            to.Write(buffer, 0, got);
            if (to.Position > limits.FileBytes) return false;
        }
        return true;
    }

    private Job? ReadJob(PackReader pack)
    {
        if (!pack.Names.Contains(Container.JobName)) issues.Add(Missing(Container.JobName));
        if (pack.Bytes(Container.JobName, issues) is not { } bytes) return null;
        try
        {
            var read = JobFile.Read(bytes);
            issues.AddRange(read.Issues);
            return read.Job;
        }
        catch (InvalidOperationException)
        {
            // half a surrogate pair, legal in JSON and in no text
            issues.Add(new(Container.JobName, "holds half a character", "take another copy"));
            return null;
        }
    }

    private Replay? ReadJournal(PackReader pack)
    {
        if (!pack.Names.Contains(Container.JournalName)) issues.Add(Missing(Container.JournalName));
        Replay? replay = null;
        var whole = false;
        var read = pack.Read(Container.JournalName, bytes => (replay, whole) = Lines(bytes), issues);
        return read && whole && replay is { Entries: > 0 } ? replay : null;
    }

    private (Replay?, bool) Lines(Stream bytes)
    {
        Replay? replay = null;
        using var lines = new StreamReader(bytes, new UTF8Encoding(false, throwOnInvalidBytes: true), detectEncodingFromByteOrderMarks: false, 1 << 16, leaveOpen: true);
        var number = 0;
        try
        {
            while (lines.ReadLine() is { } line)
            {
                number++;
                var entry = JournalLine.Read(line);
                replay ??= new(entry.Job);
                if (replay.Next(entry) is { } fault) throw new FormatException(fault);
                raw.Add(entry);
            }
            if (number == 0) issues.Add(new(Container.JournalName, "is empty", "take another copy"));
            return (replay, true);
        }
        catch (FormatException fault)
        {
            issues.Add(new($"{Container.JournalName} line {number}", fault.Message, "it was changed or damaged: take another copy"));
        }
        catch (DecoderFallbackException)
        {
            issues.Add(new($"{Container.JournalName} after line {number}", "is not UTF-8 text", "it was changed or damaged: take another copy"));
        }
        return (null, false);
    }

    private void ReadPhotos(PackReader pack, Replay? history)
    {
        foreach (var name in pack.Names)
        {
            if (EntryName.PhotoNamed(name) is not var (hash, kind)) continue;
            var head = new byte[PhotoKind.HeadBytes];
            var got = 0;
            if (!pack.Read(name, s => got = s.ReadAtLeast(head, head.Length, throwOnEndOfStream: false), issues)) continue;
            if (PhotoKind.Of(head.AsSpan(0, got)) != kind) issues.Add(new(name, $"is no {kind.MediaType}", "leave it out"));
            if (pack.Listed(name)?.Sha256 != hash.Text) issues.Add(new(name, "is not the photo its name says", "take another copy"));
            if (history is not null && !history.Photos.Contains(hash)) issues.Add(new(name, "is named by no entry of the journal", "leave it out"));
        }
    }

    private void Compare(PackManifest? manifest, Job job, Replay history, PackReader pack)
    {
        if (raw[0].Job != job.Id) issues.Add(new("job.id", $"is “{job.Id}”, the journal is that of “{raw[0].Job}”", "take another copy"));
        if (manifest is not null && (manifest.Job != job.Id || manifest.Last != history.LastHash)) issues.Add(new(PackManifest.Name, "names another job or another last entry", "take another copy"));
        foreach (var where in history.State.Differences(JobState.Of(job), ranks: false).Take(20))
            issues.Add(new(where, "in job.json is not what the journal says", "take another copy; nobody may edit job.json inside a container"));
        var there = pack.Names.Select(EntryName.PhotoNamed).OfType<(PhotoHash Hash, PhotoKind Kind)>().DistinctBy(p => p.Hash).ToDictionary(p => p.Hash, p => p.Kind);
        foreach (var hash in history.Photos.Where(h => !there.ContainsKey(h)))
            issues.Add(new($"photos/{hash}", "is named but not in the container", "take the photo in by itself", Weight.Doubt));
        foreach (var photo in job.Photos.Where(p => there.TryGetValue(p.Hash, out var kind) && kind.MediaType != p.MediaType))
            issues.Add(new($"photos/{photo.Hash}.mediaType", $"says {photo.MediaType}, its bytes are {there[photo.Hash].MediaType}", "mend mediaType", Weight.Doubt));
        issues.AddRange(history.BackInTime.Select(seq => new Issue($"{Container.JournalName} line {seq}", "is dated before the entry before it", "a clock was set back, or wrong", Weight.Doubt)));
    }

    private static Issue Missing(string name) => new(name, "is missing", "take another copy");
}
