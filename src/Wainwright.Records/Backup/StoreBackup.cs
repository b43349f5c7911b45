using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>Writes a store into one file: the database as of one moment, then the photos, which are only ever added.</summary>
internal sealed class StoreBackup(string folder, PhotoFolder photos, TimeProvider clock)
{
    public const string Holds = "store";

    public BackupTally Write(string file)
    {
        if (Path.Exists(file)) throw new StoreUnwritableException($"{file} is there already; a backup never overwrites");
        var part = $"{file}.{Guid.NewGuid():N}.part";
        var copy = part + ".db";
        try
        {
            Copy(copy);
            var tally = Pack(part, copy);
            Durable.Name(part, file);
            return tally with { Bytes = new FileInfo(file).Length };
        }
        finally
        {
            File.Delete(part);
            File.Delete(copy);
        }
    }

    /// <summary>A copy of the database as it is now, by a connection of its own: nobody has to wait.</summary>
    private void Copy(string to)
    {
        using var database = Database.OpenToRead(Path.Combine(folder, Store.DatabaseFile));
        database.Execute("VACUUM INTO $1", to);
    }

    private BackupTally Pack(string part, string copy)
    {
        var issues = new List<Issue>();
        var kept = 0;
        using var to = new FileStream(part, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        int jobs;
        using (var pack = new PackWriter(to, clock.GetUtcNow()))
        {
            using (var database = Database.OpenToRead(copy))
            {
                if (database.Faults() is [var fault, ..]) throw new StoreDamagedException($"the database is damaged, so no backup of it is made: {fault}");
                jobs = new JournalTable(database).JobIds().Count;
            }
            pack.Add(Store.DatabaseFile, pack: true, s => CopyFile(copy, s));
            foreach (var hash in photos.All())
            {
                if (photos.Fault(hash) is { } fault) issues.Add(new($"photos/{hash}", $"{fault}; it is not in the backup", "take the same photo in again, or fetch it from an older backup"));
                else
                {
                    pack.Add(EntryName.Photo(hash, photos.KindOf(hash)!), pack: false, s => CopyFile(photos.FileOf(hash)!, s));
                    kept++;
                }
            }
            pack.Finish(Holds, null, null);
        }
        to.Flush(flushToDisk: true);
        return new(jobs, kept, 0, issues);
    }

    private static void CopyFile(string file, Stream to)
    {
        using var from = File.OpenRead(file);
        from.CopyTo(to);
    }
}
