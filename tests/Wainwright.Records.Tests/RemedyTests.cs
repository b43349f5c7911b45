using Microsoft.Data.Sqlite;
using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

/// <summary>When disk or file do not do their part: one exception for each remedy, and nothing half done.</summary>
public class RemedyTests
{
    [Fact]
    public void On_a_full_disk_the_edit_is_refused_whole_and_everything_acknowledged_stays()
    {
        using var shop = new Workshop();
        Full(shop);
        var acknowledged = 1;
        var full = Assert.Throws<StoreFullException>(() =>
        {
            for (var i = 0; i < 1000; i++) acknowledged = shop.Done(Samples.PutPart(shop.Job, Samples.Part($"X{i}") with { Note = new string('x', 9000) })).Seq;
        });
        Assert.Contains("disk is full", full.Message, StringComparison.Ordinal);
        Assert.Contains("make room", full.Mend, StringComparison.Ordinal);
        Assert.Equal(acknowledged, shop.Store.Find("TEST-1")!.Sequence);
        shop.Reopen();
        Assert.Equal(acknowledged, shop.Store.Find("TEST-1")!.Sequence);
        Assert.True(shop.Store.Verify("TEST-1").Sound);
        Assert.Equal(acknowledged + 1, shop.Done(Samples.Note(shop.Job, "room again")).Seq);
    }

    [Fact]
    public void An_import_into_a_full_disk_leaves_neither_job_nor_photos()
    {
        using var shop = new Workshop();
        var there = shop.Photographed(1);
        Full(shop);
        var job = Samples.Small("BIG") with { Note = new string('x', 19_000), Parts = [.. Enumerable.Range(0, 200).Select(i => Samples.Part($"X{i}") with { Note = new string('x', 9000) })], Joints = [], Points = [], Readings = [], Findings = [] };
        var second = Samples.Jpeg(2);
        var photos = new[] { 1, 2 }.Select(n => new PhotoSource($"{n}", () => new MemoryStream(Samples.Jpeg(n)))).ToList();
        job = job with { Photos = [Samples.Photo(there), Samples.Photo(new(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(second))))] };
        Assert.Throws<StoreFullException>(() => shop.Store.Import(job, "AB", photos: photos));
        Assert.Single(shop.Store.Jobs());
        // the one that was here before stays, the one that came along is gone
        Assert.Equal($"{there}.jpg", Path.GetFileName(Assert.Single(shop.FilesIn("photos"))));
        Assert.True(shop.Store.Verify("TEST-1").Sound);
    }

    [Fact]
    public void A_damaged_photo_healed_by_an_import_that_then_fails_stays_healed()
    {
        using var shop = new Workshop();
        var there = shop.Photographed(1);
        File.WriteAllText(shop.FilesIn("photos").Single(), "broken");
        Full(shop);
        var job = Samples.Small("BIG") with { Photos = [Samples.Photo(there)], Parts = [.. Enumerable.Range(0, 200).Select(i => Samples.Part($"X{i}") with { Note = new string('x', 9000) })], Joints = [], Points = [], Readings = [], Findings = [] };
        Assert.Throws<StoreFullException>(() => shop.Store.Import(job, "AB", photos: [new("1", () => new MemoryStream(Samples.Jpeg(1)))]));
        Assert.True(shop.Store.Verify("TEST-1").Sound);
    }

    [Fact]
    public void A_full_disk_under_a_container_or_a_photo_is_said_as_such()
    {
        using var shop = new Workshop();
        Assert.Throws<StoreFullException>(() => Container.Write(shop.Store, "TEST-1", new Stuck(28)));
        Assert.Throws<StoreFullException>(() => Container.Write(shop.Store, "TEST-1", new Stuck(unchecked((int)0x80070070))));
        Assert.Throws<StoreDamagedException>(() => Container.Write(shop.Store, "TEST-1", new Stuck(5)));
    }

    [Fact]
    public void Another_program_that_does_not_let_go_is_said_and_nothing_is_lost()
    {
        using var shop = new Workshop();
        using var hasty = Store.Open(shop.Folder, shop.Clock, patienceMs: 20);
        using (var held = new SqliteConnection($"Data Source={Path.Combine(shop.Folder, "records.db")};Pooling=False"))
        {
            held.Open();
            using var transaction = held.BeginTransaction(deferred: false);
            var busy = Assert.Throws<StoreBusyException>(() => hasty.Append("TEST-1", Samples.Note(shop.Job, "x"), "AB"));
            Assert.Contains("another program", busy.Message, StringComparison.Ordinal);
            Assert.Equal(1, hasty.Find("TEST-1")!.Sequence);
        }
        Assert.NotNull(hasty.Append("TEST-1", Samples.Note(shop.Job, "x"), "AB").Entry);
    }

    [Fact]
    public void A_folder_nobody_can_write_in_is_said()
    {
        using var shop = new Workshop(withJob: false);
        var file = Path.Combine(shop.Root, "file");
        File.WriteAllText(file, "in the way");
        var refused = Assert.Throws<StoreUnwritableException>(() => Store.Open(file, shop.Clock));
        Assert.Contains("choose another folder", refused.Mend, StringComparison.Ordinal);
        Assert.Throws<StoreUnwritableException>(() => Store.Open(Path.Combine(file, "below"), shop.Clock));
        // the kernel's own folder refuses root as well; a drive that is not there refuses everybody
        Assert.Throws<StoreUnwritableException>(() => Store.Open(OperatingSystem.IsWindows() ? "?:\\wain" : "/sys/wain", shop.Clock));
    }

    [Fact]
    public void A_database_that_may_not_be_written_is_said_on_writing_and_can_be_read()
    {
        using var shop = new Workshop();
        shop.Store.Database.Execute("PRAGMA query_only = ON"); // the mode SQLite itself falls to on a read-only file, with the same result code
        Assert.Throws<StoreUnwritableException>(() => shop.Store.Append("TEST-1", Samples.Note(shop.Job, "x"), "AB"));
        Assert.Equal("small van", shop.Job.Title);
    }

    [Fact]
    public void A_store_of_a_newer_program_is_left_alone()
    {
        using var shop = new Workshop();
        shop.BehindItsBack("PRAGMA user_version = 99");
        shop.Store.Dispose();
        var before = File.ReadAllBytes(Path.Combine(shop.Folder, "records.db"));
        Assert.Contains("version 99", Assert.Throws<StoreNewerException>(shop.Reopen).Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(Path.Combine(shop.Folder, "records.db")));
    }

    [Fact]
    public void A_job_of_a_newer_format_is_left_alone()
    {
        using var shop = new Workshop();
        shop.BehindItsBack("UPDATE state SET json = '2' WHERE id = 'format'");
        shop.Reopen();
        Assert.Throws<StoreNewerException>(() => shop.Store.Find("TEST-1"));
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void A_file_that_is_no_store_is_left_alone(bool sqlite)
    {
        using var shop = new Workshop(withJob: false);
        var folder = Directory.CreateDirectory(Path.Combine(shop.Root, "other")).FullName;
        var file = Path.Combine(folder, "records.db");
        if (!sqlite) File.WriteAllText(file, new string('x', 5000));
        else
        {
            using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = "CREATE TABLE recipes (name TEXT)";
            command.ExecuteNonQuery();
        }
        var before = File.ReadAllBytes(file);
        Assert.Throws<StoreDamagedException>(() => Store.Open(folder, shop.Clock));
        Assert.Equal(before, File.ReadAllBytes(file));
    }

    [Fact]
    public void Damaged_pages_are_said_and_never_a_wrong_job()
    {
        var random = new Random(7);
        var told = 0;
        for (var i = 0; i < 40; i++)
        {
            using var shop = new Workshop(inMemory: true);
            shop.Done(Samples.Note(shop.Job, "one"));
            var whole = Samples.Text(shop.Job);
            shop.Store.Dispose();
            var file = Path.Combine(shop.Folder, "records.db");
            var bytes = File.ReadAllBytes(file);
            random.NextBytes(bytes.AsSpan(random.Next(1, bytes.Length / 4096) * 4096, 4096));
            File.WriteAllBytes(file, bytes);
            try
            {
                shop.Reopen();
                var job = shop.Store.Find("TEST-1");
                if (job is null || Samples.Text(job.Job) != whole) Assert.False(shop.Store.Verify("TEST-1").Sound);
                else _ = shop.Store.Verify("TEST-1");
            }
            catch (StoreDamagedException damaged)
            {
                Assert.Contains("backup", damaged.Mend, StringComparison.Ordinal);
                told++;
            }
        }
        Assert.True(told > 10, $"only {told} of 40 damaged pages were noticed as such");
    }

    [Fact]
    public void Each_remedy_is_one_type_under_one_root()
    {
        Type[] remedies = [.. typeof(Store).Assembly.GetExportedTypes().Where(t => t.IsSubclassOf(typeof(Exception)) && !t.IsAbstract)];
        Assert.Equal(["StoreBusyException", "StoreDamagedException", "StoreFullException", "StoreNewerException", "StoreUnwritableException"], remedies.Select(t => t.Name).Order());
        Assert.All(remedies, t => Assert.True(t.IsSubclassOf(typeof(StoreException))));
    }

    private static void Full(Workshop shop)
    {
        shop.Reopen();
        var pages = shop.Store.Database.Query("PRAGMA page_count", r => r.GetInt64(0)).Single();
        shop.Store.Database.Execute($"PRAGMA max_page_count = {pages + 30}");
    }

    private sealed class Stuck(int code) : OneWay
    {
        public override bool CanWrite => true;

        public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new IOException("stuck", code);

        public override void Flush()
        {
            // what was never taken cannot be flushed
        }
    }
}
