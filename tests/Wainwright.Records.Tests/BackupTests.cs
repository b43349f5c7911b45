using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

public class BackupTests
{
    [Fact]
    public void Everything_comes_back_from_a_backup()
    {
        using var shop = Worked();
        var made = shop.Store.Backup(FileOf(shop));
        Assert.Equal((2, 1, new FileInfo(FileOf(shop)).Length), (made.Jobs, made.Photos, made.Bytes));
        var back = Store.Restore(FileOf(shop), Target(shop), shop.Clock);
        Assert.Equal((2, 1), (back.Jobs, back.Photos));
        using var restored = Store.Open(Target(shop), shop.Clock);
        Assert.Equal(Samples.Text(shop.Job), Samples.Text(restored.Find("TEST-1")!.Job));
        Assert.True(restored.Verify("TEST-1").Sound);
        Assert.Equal(shop.Store.Find("TEST-1")!.Hash, restored.Find("TEST-1")!.Hash);
        Assert.Equal("one", restored.Undo("TEST-1", "AB").Job!.Note);
        Assert.Equal(["records.db", "photos"], Directory.GetFileSystemEntries(Target(shop)).Select(f => Path.GetFileName(f)!).Where(f => f is "records.db" or "photos").OrderDescending());
    }

    [Fact]
    public void A_backup_is_of_one_moment_while_others_write()
    {
        using var shop = Worked();
        using var other = Store.Open(shop.Folder, shop.Clock);
        Parallel.Invoke(
            () => { for (var i = 0; i < 20; i++) Assert.NotNull(other.Append("TEST-1", Samples.Note(other.Find("TEST-1")!.Job, $"n{i}"), "CD").Entry); },
            () => shop.Store.Backup(FileOf(shop)));
        Store.Restore(FileOf(shop), Target(shop), shop.Clock);
        using var restored = Store.Open(Target(shop), shop.Clock);
        Assert.True(restored.Verify("TEST-1").Sound);
    }

    [Fact]
    public void A_backup_never_overwrites_and_a_restore_neither()
    {
        using var shop = Worked();
        shop.Store.Backup(FileOf(shop));
        Assert.Contains("never overwrites", Assert.Throws<StoreUnwritableException>(() => shop.Store.Backup(FileOf(shop))).Message, StringComparison.Ordinal);
        Assert.Contains("never overwrites", Assert.Throws<StoreUnwritableException>(() => Store.Restore(FileOf(shop), shop.Folder, shop.Clock)).Message, StringComparison.Ordinal);
        Directory.CreateDirectory(Target(shop));
        Assert.Equal(2, Store.Restore(FileOf(shop), Target(shop), shop.Clock).Jobs);
    }

    [Fact]
    public void A_damaged_photo_is_left_out_and_said()
    {
        using var shop = Worked();
        File.AppendAllText(shop.FilesIn("photos").Single(), "x");
        var made = shop.Store.Backup(FileOf(shop));
        Assert.Equal(0, made.Photos);
        Assert.Contains("damaged", Assert.Single(made.Issues).Rule, StringComparison.Ordinal);
        var back = Store.Restore(FileOf(shop), Target(shop), shop.Clock);
        Assert.Equal((2, 0), (back.Jobs, back.Photos));
        Assert.StartsWith("TEST-1: photos/", Assert.Single(back.Issues).Where, StringComparison.Ordinal);
    }

    [Fact]
    public void A_job_that_was_tampered_with_is_restored_as_it_is_and_said()
    {
        using var shop = Worked();
        shop.BehindItsBack("UPDATE state SET json = '\"grand van\"' WHERE id = 'title' AND job = 1");
        shop.Store.Backup(FileOf(shop));
        Assert.Equal("TEST-1: title", Assert.Single(Store.Restore(FileOf(shop), Target(shop), shop.Clock).Issues).Where);
        using var restored = Store.Open(Target(shop), shop.Clock);
        Assert.Equal(2, restored.Jobs().Count);
    }

    [Theory]
    [InlineData("cut", "no zip")]
    [InlineData("flip", "is not what the manifest says")]
    [InlineData("climb", "must not climb out")]
    [InlineData("extra", "does not belong")]
    [InlineData("trigger", "“evil” in it is not")]
    [InlineData("newer", "version 99")]
    [InlineData("junk", "is no store")]
    [InlineData("photo", "is not the photo")]
    [InlineData("container", "does not belong")]
    [InlineData("orphan", "belongs to no job")]
    public void A_backup_that_is_not_sound_restores_nothing(string how, string why)
    {
        using var shop = Worked();
        shop.Store.Backup(FileOf(shop));
        File.WriteAllBytes(FileOf(shop), Bent(how, shop, File.ReadAllBytes(FileOf(shop))));
        var refused = Assert.ThrowsAny<StoreException>(() => Store.Restore(FileOf(shop), Target(shop), shop.Clock));
        Assert.Contains(why, refused.Message, StringComparison.Ordinal);
        Assert.Equal(how == "newer", refused is StoreNewerException);
        Assert.False(Path.Exists(Target(shop)));
        Assert.Equal(["backup.zip", "store"], Directory.GetFileSystemEntries(shop.Root).Select(Path.GetFileName).Order().Where(f => f is not "other.db"));
    }

    [Fact]
    public void A_file_that_is_not_there_cannot_be_restored()
    {
        using var shop = Worked();
        Assert.Throws<StoreUnwritableException>(() => Store.Restore(FileOf(shop), Target(shop), shop.Clock));
        Assert.Throws<StoreUnwritableException>(() => shop.Store.Backup(Path.Combine(shop.Root, "gone", "backup.zip")));
    }

    private static byte[] Bent(string how, Workshop shop, byte[] packed)
    {
        if (how == "cut") return packed[..(packed.Length / 2)];
        if (how == "flip")
        {
            packed[packed.Length / 3] ^= 0x40;
            return packed;
        }
        if (how == "container") return shop.Packed();
        var zip = Zip.Of(packed);
        if (how == "climb") zip.Entries.Add(("../evil", "x"u8.ToArray()));
        if (how == "extra") zip.Entries.Add(("notes.txt", "x"u8.ToArray()));
        if (how == "junk") zip.Set("records.db", new string('x', 9000));
        if (how == "photo") zip.Set(zip.Entries.First(e => e.Name.StartsWith("photos/", StringComparison.Ordinal)).Name, Samples.Jpeg(99));
        if (how == "trigger") zip.Set("records.db", Changed(shop, zip, "CREATE TRIGGER evil AFTER INSERT ON state BEGIN DELETE FROM state; END"));
        if (how == "newer") zip.Set("records.db", Changed(shop, zip, "PRAGMA user_version = 99"));
        if (how == "orphan") zip.Set("records.db", Changed(shop, zip, "PRAGMA foreign_keys = OFF; DELETE FROM job"));
        return zip.Packed();
    }

    private static byte[] Changed(Workshop shop, Zip zip, string sql)
    {
        var file = Path.Combine(shop.Root, "other.db");
        File.WriteAllBytes(file, zip.Entries.First(e => e.Name == "records.db").Bytes);
        using (var connection = new Microsoft.Data.Sqlite.SqliteConnection($"Data Source={file};Pooling=False"))
        {
            connection.Open();
            using var command = connection.CreateCommand();
            command.CommandText = sql;
            command.ExecuteNonQuery();
        }
        return File.ReadAllBytes(file);
    }

    private static string FileOf(Workshop shop) => Path.Combine(shop.Root, "backup.zip");

    private static string Target(Workshop shop) => Path.Combine(shop.Root, "restored");

    private static Workshop Worked()
    {
        var shop = new Workshop();
        shop.Photographed(1);
        shop.Done(Samples.Note(shop.Job, "one"));
        shop.Done(Samples.Note(shop.Job, "two"));
        shop.Store.Import(Samples.Small("OTHER"), "AB");
        return shop;
    }
}
