using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

public class ImportTests
{
    [Fact]
    public void A_job_that_is_there_is_refused_and_told_what_can_be_done()
    {
        using var shop = new Workshop();
        var refused = shop.Store.Import(Samples.Small() with { Title = "other" }, "CD");
        Assert.Null(refused.Job);
        Assert.Contains("another id", Assert.Single(refused.Issues).Mend, StringComparison.Ordinal);
        Assert.Contains("replace", refused.Issues[0].Mend, StringComparison.Ordinal);
        Assert.Equal("small van", shop.Job.Title);
    }

    [Fact]
    public void A_job_with_errors_is_refused_with_all_of_them()
    {
        using var shop = new Workshop(withJob: false);
        var refused = shop.Store.Import(Samples.Small() with { Currency = "euro", Findings = [], Joints = [Samples.Small().Joints[0] with { Part = new("GONE") }] }, "AB");
        Assert.Null(refused.Job);
        Assert.Equal(2, refused.Issues.Count(i => i.Weight == Weight.Error));
        Assert.Empty(shop.Store.Jobs());
    }

    [Fact]
    public void Replacing_keeps_the_history_and_undo_brings_the_old_job_back()
    {
        using var shop = new Workshop();
        shop.Done(Samples.Note(shop.Job, "mine"));
        var before = Samples.Text(shop.Job);
        var other = Samples.Small() with { Title = "other", Parts = [Samples.Part("P5"), Samples.Part("P3"), Samples.Part("P1")], Joints = [] };
        var taken = shop.Store.Import(other, "CD", replace: true);
        Assert.Equal(3, taken.Sequence);
        Assert.Equal(Samples.Text(other), Samples.Text(shop.Job));
        shop.Reopen();
        Assert.Equal(Samples.Text(other), Samples.Text(shop.Job));
        shop.Store.Undo("TEST-1", "AB");
        Assert.Equal(before, Samples.Text(shop.Job));
        Assert.True(shop.Store.Verify("TEST-1").Sound);
    }

    [Fact]
    public void Replacing_writes_only_what_differs()
    {
        using var shop = new Workshop();
        shop.Store.Import(Samples.Small() with { Title = "other", Parts = [.. Samples.Small().Parts, Samples.Part("P9")] }, "CD", replace: true);
        Assert.Equal(["title", "parts/P9"], shop.Store.History("TEST-1")[^1].Edits.Select(e => e.Where));
        var same = shop.Store.Import(shop.Job, "CD", replace: true);
        Assert.Equal((2, "is here already, as far or further"), (same.Sequence, Assert.Single(same.Issues).Rule));
    }

    [Fact]
    public void Photos_come_in_with_the_job()
    {
        using var shop = new Workshop(withJob: false);
        var hash = Hash(1);
        var taken = shop.Store.Import(Samples.Small() with { Photos = [Samples.Photo(hash)] }, "AB", photos: [Source(1)]);
        Assert.Empty(taken.Issues);
        Assert.True(shop.Store.Verify("TEST-1").Sound);
        Assert.Single(shop.FilesIn("photos"));
    }

    [Fact]
    public void A_photo_that_is_named_and_not_given_is_a_doubt()
    {
        using var shop = new Workshop(withJob: false);
        var taken = shop.Store.Import(Samples.Small() with { Photos = [Samples.Photo(Hash(1))] }, "AB");
        Assert.NotNull(taken.Job);
        Assert.Equal((Weight.Doubt, $"photos/{Hash(1)}"), (Assert.Single(taken.Issues).Weight, taken.Issues[0].Where));
        Assert.False(shop.Store.Verify("TEST-1").Sound);
        shop.Store.AddPhoto(new MemoryStream(Samples.Jpeg(1)));
        Assert.True(shop.Store.Verify("TEST-1").Sound);
    }

    [Fact]
    public void A_photo_that_the_job_does_not_name_is_left_out()
    {
        using var shop = new Workshop(withJob: false);
        var taken = shop.Store.Import(Samples.Small(), "AB", photos: [Source(1)]);
        Assert.NotNull(taken.Job);
        Assert.Contains("left out", Assert.Single(taken.Issues).Rule, StringComparison.Ordinal);
        Assert.Empty(shop.FilesIn("photos"));
    }

    [Fact]
    public void One_photo_that_is_none_refuses_the_whole_and_leaves_nothing()
    {
        using var shop = new Workshop(withJob: false);
        var taken = shop.Store.Import(Samples.Small() with { Photos = [Samples.Photo(Hash(1))] }, "AB",
            photos: [Source(1), new("list.txt", () => new MemoryStream("text"u8.ToArray()))]);
        Assert.Null(taken.Job);
        Assert.Equal("list.txt", Assert.Single(taken.Issues).Where);
        Assert.Empty(shop.FilesIn("photos"));
        Assert.Empty(shop.Store.Jobs());
    }

    [Fact]
    public void A_refused_job_leaves_no_photos()
    {
        using var shop = new Workshop();
        Assert.Null(shop.Store.Import(Samples.Small() with { Photos = [Samples.Photo(Hash(1))] }, "AB", photos: [Source(1)]).Job);
        Assert.Empty(shop.FilesIn("photos"));
    }

    [Fact]
    public void A_photo_of_another_kind_than_the_job_says_is_refused()
    {
        using var shop = new Workshop(withJob: false);
        var taken = shop.Store.Import(Samples.Small() with { Photos = [Samples.Photo(Hash(1), "image/png")] }, "AB", photos: [Source(1)]);
        Assert.Null(taken.Job);
        Assert.Contains("image/png", Assert.Single(taken.Issues).Rule, StringComparison.Ordinal);
    }

    private static PhotoSource Source(int number) => new($"photo {number}", () => new MemoryStream(Samples.Jpeg(number)));

    private static PhotoHash Hash(int number) => new(Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(Samples.Jpeg(number))));
}
