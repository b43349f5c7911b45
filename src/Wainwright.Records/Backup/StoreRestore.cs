using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>Unpacks a backup into a folder beside the one asked for, checks it there, and only then gives it its name.</summary>
internal static class StoreRestore
{
    // a database packs about tenfold, photos not at all
    private const int MostRatio = 200;

    public static BackupTally Unpack(string file, string folder, TimeProvider clock)
    {
        var target = Path.GetFullPath(folder);
        if (File.Exists(target) || (Directory.Exists(target) && Directory.EnumerateFileSystemEntries(target).Any()))
            throw new StoreUnwritableException($"{folder} is not empty; a restore never overwrites");
        var part = $"{Path.TrimEndingDirectorySeparator(target)}.{Guid.NewGuid():N}.part";
        try
        {
            Durable.MakeFolder(part);
            var tally = Unpacked(file, part);
            tally = tally with { Issues = Unsound(part, clock) };
            if (Directory.Exists(target)) Directory.Delete(target);
            Durable.NameFolder(part, target);
            return tally;
        }
        finally
        {
            if (Directory.Exists(part)) Directory.Delete(part, recursive: true);
        }
    }

    private static BackupTally Unpacked(string file, string part)
    {
        var issues = new List<Issue>();
        using var from = File.OpenRead(file);
        var bytes = from.Length;
        var limits = new PackLimits(2_000_000, long.MaxValue, Math.Max(1L << 30, bytes) * 20, MostRatio,
            name => name == Store.DatabaseFile || EntryName.PhotoNamed(name) is not null ? long.MaxValue : null);
        using var pack = PackReader.Open(from, limits, issues);
        pack?.Check(StoreBackup.Holds, issues);
        if (pack is null || issues.Count > 0) throw Bad(issues);

        var photos = new PhotoFolder(Path.Combine(part, Store.PhotosFolder));
        var kept = 0;
        foreach (var name in pack.Names.Where(n => n != PackManifest.Name))
        {
            if (EntryName.PhotoNamed(name) is not var (hash, _)) pack.Read(name, s => Written(s, Path.Combine(part, Store.DatabaseFile)), issues);
            else if (pack.Read(name, s => Taken(photos, s, name, hash, issues), issues)) kept++;
        }
        if (issues.Count > 0) throw Bad(issues);
        return new(Checked(Path.Combine(part, Store.DatabaseFile)), kept, bytes, issues);
    }

    /// <summary>The database is from outside too: nothing in it may be other than this program makes it.</summary>
    private static int Checked(string file)
    {
        if (!File.Exists(file)) throw Bad([new(Store.DatabaseFile, "is missing", "take another copy")]);
        using var database = Database.OpenToRead(file);
        Schema.Check(database);
        if (Schema.Differences(database) is [var name, ..]) throw Bad([new(Store.DatabaseFile, $"“{name}” in it is not as this program makes it", "take another copy")]);
        if (database.Faults() is [var fault, ..]) throw Bad([new(Store.DatabaseFile, fault, "take another copy")]);
        return new JournalTable(database).JobIds().Count;
    }

    /// <summary>What is wrong with jobs that were so when the backup was made.</summary>
    private static List<Issue> Unsound(string part, TimeProvider clock)
    {
        using var store = Store.Open(part, clock);
        return [.. store.Jobs().SelectMany(j => store.Verify(j.Id).Issues.Select(i => i with { Where = $"{j.Id}: {i.Where}" }))];
    }

    private static void Written(Stream from, string file)
    {
        using var to = new FileStream(file, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        from.CopyTo(to);
        to.Flush(flushToDisk: true);
    }

    private static void Taken(PhotoFolder photos, Stream from, string name, PhotoHash hash, List<Issue> issues)
    {
        if (photos.Stage(from, long.MaxValue, name, out _, issues) is not { } staged) return;
        if (staged.Hash == hash) photos.Settle(staged);
        else issues.Add(new(name, "is not the photo its name says", "take another copy"));
    }

    private static StoreDamagedException Bad(List<Issue> issues) =>
        new(string.Create(CultureInfo.InvariantCulture, $"the backup is not sound: {issues[0]}{(issues.Count > 1 ? $" (and {issues.Count - 1} more)" : "")}"));
}
