using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

/// <summary>Two programs have the same folder open.</summary>
public class TwoStoresTests
{
    [Fact]
    public void Each_sees_what_the_other_wrote()
    {
        using var shop = new Workshop();
        using var other = Store.Open(shop.Folder, shop.Clock);
        Assert.Equal(1, other.Find("TEST-1")!.Sequence);
        shop.Done(Samples.Note(shop.Job, "mine"));
        Assert.Equal("mine", other.Find("TEST-1")!.Job.Note);
        Assert.Equal(3, other.Undo("TEST-1", "CD").Entry!.Seq);
        Assert.Null(shop.Job.Note);
        Assert.Equal("mine", shop.Store.Redo("TEST-1", "AB").Job!.Note);
        other.Import(Samples.Small("OTHER"), "CD");
        Assert.Equal(2, shop.Store.Jobs().Count);
    }

    [Fact]
    public void A_change_from_a_state_the_other_has_changed_is_told_so()
    {
        using var shop = new Workshop();
        using var other = Store.Open(shop.Folder, shop.Clock);
        var stale = Samples.Note(other.Find("TEST-1")!.Job, "yours");
        shop.Done(Samples.Note(shop.Job, "mine"));
        Assert.Contains("has changed since it was read", Assert.Single(other.Append("TEST-1", stale, "CD").Issues).Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_lost_when_both_write_at_once()
    {
        using var shop = new Workshop(inMemory: true);
        using var other = Store.Open(shop.Folder, shop.Clock);
        void Write(Store store, string name) => Assert.All(Enumerable.Range(0, 40), i =>
            Assert.NotNull(store.Append("TEST-1", Samples.PutPart(store.Find("TEST-1")!.Job, Samples.Part($"{name}{i}")), name).Entry));
        // two threads in one program, one in another
        Parallel.Invoke(() => Write(shop.Store, "A"), () => Write(shop.Store, "B"), () => Write(other, "C"));
        Assert.Equal(121, shop.Store.Find("TEST-1")!.Sequence);
        Assert.Equal(123, shop.Job.Parts.Count);
        Assert.Equal(Samples.Text(shop.Job), Samples.Text(other.Find("TEST-1")!.Job));
        Assert.True(other.Verify("TEST-1").Sound);
    }

    [Fact]
    public void A_new_folder_opened_by_both_at_once_is_made_once()
    {
        for (var i = 0; i < 10; i++)
        {
            var root = Directory.CreateTempSubdirectory("wainwright-").FullName;
            var stores = new Store[3];
            Parallel.For(0, stores.Length, n => stores[n] = Store.Open(Path.Combine(root, "store"), new SetClock()));
            Assert.NotNull(stores[0].Import(Samples.Small(), "AB").Job);
            Assert.All(stores, s => Assert.Single(s.Jobs()));
            Assert.All(stores, s => s.Dispose());
            Directory.Delete(root, recursive: true);
        }
    }

    [Fact]
    public void The_same_photo_taken_in_by_both_is_stored_once()
    {
        using var shop = new Workshop();
        using var other = Store.Open(shop.Folder, shop.Clock);
        Parallel.For(0, 8, n => Assert.NotNull((n % 2 == 0 ? shop.Store : other).AddPhoto(new MemoryStream(Samples.Jpeg(1, 200_000))).Hash));
        Assert.Single(shop.FilesIn("photos"));
    }
}
