using Microsoft.Data.Sqlite;
using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

/// <summary>A store in a folder of its own that is gone afterwards, with a clock that goes when told.</summary>
internal sealed class Workshop : IDisposable
{
    // memory as a folder: a disk that is slow to flush would make tests of many edits slow, and they do not test the disk
    private const string Memory = "/dev/shm";

    public Workshop(bool withJob = true, bool inMemory = false)
    {
        Root = inMemory && Directory.Exists(Memory)
            ? Directory.CreateDirectory(Path.Combine(Memory, $"wainwright-{Guid.NewGuid():N}")).FullName
            : Directory.CreateTempSubdirectory("wainwright-").FullName;
        Store = Store.Open(Folder, Clock);
        if (withJob) Assert.NotNull(Store.Import(Samples.Small(), "AB").Job);
    }

    public string Root { get; }

    public string Folder => Path.Combine(Root, "store");

    public SetClock Clock { get; } = new();

    public Store Store { get; private set; }

    public Job Job => Store.Find("TEST-1")!.Job;

    /// <summary>Makes a change that must go through.</summary>
    public JournalEntry Done(Change change)
    {
        var done = Store.Append("TEST-1", change, "AB");
        Assert.True(done.Entry is not null, string.Join("; ", done.Issues));
        return done.Entry;
    }

    /// <summary>Takes a photo in and names it in the job.</summary>
    public PhotoHash Photographed(int number)
    {
        var hash = Store.AddPhoto(new MemoryStream(Samples.Jpeg(number))).Hash!.Value;
        Done(new("photo", [Edit.Put(Job, "photos", hash.Text, Samples.Photo(hash))]));
        return hash;
    }

    public void Reopen()
    {
        Store.Dispose();
        Store = Store.Open(Folder, Clock);
    }

    /// <summary>Works on the database behind the store's back, as somebody with the file could.</summary>
    public void BehindItsBack(params string[] sql)
    {
        using var connection = new SqliteConnection($"Data Source={Path.Combine(Folder, "records.db")};Pooling=False");
        connection.Open();
        foreach (var text in sql)
        {
            using var command = connection.CreateCommand();
            command.CommandText = text;
            command.ExecuteNonQuery();
        }
    }

    public string[] FilesIn(string folder) =>
        Directory.Exists(Path.Combine(Folder, folder)) ? Directory.GetFiles(Path.Combine(Folder, folder), "*", SearchOption.AllDirectories) : [];

    public byte[] Packed()
    {
        using var bytes = new MemoryStream();
        Assert.Empty(Container.Write(Store, "TEST-1", bytes));
        return bytes.ToArray();
    }

    public void Dispose()
    {
        Store.Dispose();
        Directory.Delete(Root, recursive: true);
    }
}

/// <summary>A clock that shows what it was set to.</summary>
internal sealed class SetClock : TimeProvider
{
    public DateTimeOffset Now { get; set; } = new(2026, 3, 14, 8, 30, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => Now;
}
