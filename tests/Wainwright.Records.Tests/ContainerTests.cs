using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

public class ContainerTests
{
    [Fact]
    public void A_job_goes_to_another_store_with_journal_and_photos_and_goes_on_there()
    {
        using var shop = new Workshop();
        var hash = shop.Photographed(1);
        shop.Done(Samples.Note(shop.Job, "one"));
        using var other = new Workshop(withJob: false);
        using (var read = Container.Read(new MemoryStream(shop.Packed())))
        {
            Assert.Empty(read.Issues);
            Assert.Equal((3, hash), (read.Journal.Count, Assert.Single(read.Photos)));
            Assert.Equal(3, other.Store.Import(read, "CD").Sequence);
        }
        Assert.Equal(Samples.Text(shop.Job), Samples.Text(other.Job));
        Assert.True(other.Store.Verify("TEST-1").Sound);
        Assert.Null(other.Store.Undo("TEST-1", "CD").Job!.Note);
        Assert.Equal(shop.Store.Find("TEST-1")!.Hash, other.Store.History("TEST-1")[^1].Previous);
    }

    [Fact]
    public void A_journal_that_goes_on_elsewhere_and_comes_back_is_taken_up()
    {
        using var shop = new Workshop();
        using var other = new Workshop(withJob: false);
        Hand(shop, other);
        var hash = other.Photographed(1);
        other.Done(Samples.Note(other.Job, "done elsewhere"));
        Assert.Equal((3, true), (Hand(other, shop).Sequence, shop.Store.Verify("TEST-1").Sound));
        Assert.Equal(("done elsewhere", hash), (shop.Job.Note, shop.Job.Photos[0].Hash));
        shop.Store.Undo("TEST-1", "AB");
        Assert.Null(shop.Job.Note);
    }

    [Fact]
    public void A_container_of_an_earlier_day_changes_nothing()
    {
        using var shop = new Workshop();
        var early = shop.Packed();
        shop.Done(Samples.Note(shop.Job, "one"));
        using var read = Container.Read(new MemoryStream(early));
        var taken = shop.Store.Import(read, "CD");
        Assert.Equal((2, Weight.Doubt), (taken.Sequence, Assert.Single(taken.Issues).Weight));
        Assert.Equal("one", shop.Job.Note);
    }

    [Fact]
    public void Journals_that_parted_are_refused_or_taken_over_as_one_change_or_kept_apart()
    {
        using var shop = new Workshop();
        using var other = new Workshop(withJob: false);
        Hand(shop, other);
        shop.Done(Samples.Note(shop.Job, "mine"));
        other.Done(Samples.Note(other.Job, "yours"));
        var hash = other.Photographed(1);
        var packed = other.Packed();

        using (var read = Container.Read(new MemoryStream(packed)))
        {
            var refused = shop.Store.Import(read, "CD");
            Assert.Contains("parted", Assert.Single(refused.Issues).Rule, StringComparison.Ordinal);
            Assert.Empty(shop.FilesIn("photos"));
            Assert.Equal("mine", shop.Job.Note);

            var apart = shop.Store.Import(read, "CD", asId: "TEST-2");
            Assert.Equal("yours", apart.Job!.Note);
            Assert.Contains($"copy of job TEST-1, entry 3, {other.Store.Find("TEST-1")!.Hash}", Assert.Single(shop.Store.History("TEST-2")).What, StringComparison.Ordinal);
            Assert.True(shop.Store.Verify("TEST-2").Sound);

            Assert.Equal("yours", shop.Store.Import(read, "CD", replace: true).Job!.Note);
        }
        Assert.Equal(hash, shop.Job.Photos[0].Hash);
        Assert.Equal("mine", shop.Store.Undo("TEST-1", "AB").Job!.Note);
        Assert.True(shop.Store.Verify("TEST-1").Sound);
    }

    [Fact]
    public void It_can_be_written_and_read_where_nobody_can_seek()
    {
        using var shop = new Workshop();
        shop.Photographed(1);
        using var bytes = new MemoryStream();
        Container.Write(shop.Store, "TEST-1", new Pipe(bytes));
        using var read = Container.Read(new Pipe(new MemoryStream(bytes.ToArray())));
        Assert.Empty(read.Issues);
        Assert.Equal(Samples.Text(shop.Job), Samples.Text(read.Job!));
    }

    [Fact]
    public void A_photo_that_is_missing_or_damaged_is_left_out_and_said_on_both_sides()
    {
        using var shop = new Workshop();
        shop.Photographed(1);
        shop.Photographed(2);
        File.AppendAllText(shop.FilesIn("photos")[0], "x");
        File.Delete(shop.FilesIn("photos")[1]);
        using var bytes = new MemoryStream();
        Assert.Equal(2, Container.Write(shop.Store, "TEST-1", bytes).Count(i => i.Weight == Weight.Doubt));
        using var read = Container.Read(new MemoryStream(bytes.ToArray()));
        Assert.NotNull(read.Job);
        Assert.Equal(2, read.Issues.Count(i => i.Weight == Weight.Doubt));
        Assert.Empty(read.Photos);
    }

    [Fact]
    public void A_photo_that_was_taken_out_of_the_job_travels_with_its_journal()
    {
        using var shop = new Workshop();
        var hash = shop.Photographed(1);
        shop.Done(Samples.TakeOut(shop.Job, "photos", hash.Text));
        using var other = new Workshop(withJob: false);
        Assert.Empty(Hand(shop, other).Issues);
        Assert.Equal(hash, other.Store.Undo("TEST-1", "CD").Job!.Photos[0].Hash);
        Assert.True(other.Store.Verify("TEST-1").Sound);
    }

    [Fact]
    public void The_same_job_gives_the_same_bytes()
    {
        using var shop = new Workshop();
        shop.Photographed(1);
        var first = shop.Packed();
        shop.Clock.Now = shop.Clock.Now.AddDays(1);
        shop.Reopen();
        Assert.Equal(first, shop.Packed());
    }

    [Fact]
    public void A_job_that_is_not_there_cannot_be_written()
    {
        using var shop = new Workshop();
        Assert.Throws<ArgumentException>(() => Container.Write(shop.Store, "GONE", new MemoryStream()));
    }

    private static Imported Hand(Workshop from, Workshop to)
    {
        using var read = Container.Read(new MemoryStream(from.Packed()));
        return to.Store.Import(read, "CD");
    }

    private sealed class Pipe(Stream inner) : OneWay
    {
        public override bool CanWrite => true;

        public override int Read(byte[] buffer, int offset, int count) => inner.Read(buffer, offset, count);

        public override void Write(byte[] buffer, int offset, int count) => inner.Write(buffer, offset, count);

        public override void Flush() => inner.Flush();
    }
}
