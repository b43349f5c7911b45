using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

public class StoreTests
{
    [Fact]
    public void A_new_folder_holds_no_jobs()
    {
        using var shop = new Workshop(withJob: false);
        Assert.Empty(shop.Store.Jobs());
        Assert.Null(shop.Store.Find("TEST-1"));
        Assert.Empty(shop.Store.History("TEST-1"));
        Assert.Null(shop.Store.AsOf("TEST-1", 1));
    }

    [Fact]
    public void A_job_comes_back_letter_by_letter_after_a_restart()
    {
        using var shop = new Workshop();
        shop.Reopen();
        Assert.Equal(Samples.Text(Samples.Small()), Samples.Text(shop.Job));
    }

    [Fact]
    public void The_list_shows_title_last_change_and_counts_the_one_changed_last_first()
    {
        using var shop = new Workshop();
        shop.Clock.Now = shop.Clock.Now.AddHours(1);
        shop.Store.Import(Samples.Small("OTHER") with { Title = "other van" }, "CD");
        shop.Clock.Now = shop.Clock.Now.AddHours(1);
        shop.Done(Samples.Note(shop.Job, "x"));

        var jobs = shop.Store.Jobs();
        Assert.Equal(["TEST-1", "OTHER"], jobs.Select(j => j.Id));
        Assert.Equal(("small van", shop.Clock.Now, "AB", 2), (jobs[0].Title, jobs[0].ChangedAt, jobs[0].ChangedBy, jobs[0].Sequence));
        Assert.Equal((3, 1, 1), (jobs[0].Counts["parts"], jobs[0].Counts["findings"], jobs[0].Counts["readings"]));
        Assert.DoesNotContain("photos", jobs[0].Counts.Keys);
    }

    [Fact]
    public void Ids_with_odd_characters_are_ids_and_never_paths()
    {
        using var shop = new Workshop(withJob: false);
        string[] ids = ["..", "a:b|c?*", "%2e%2e", "'; DROP TABLE job; --", "日本 №1", "CON", "a..b"];
        foreach (var id in ids) Assert.NotNull(shop.Store.Import(Samples.Small(id), "AB").Job);
        shop.Reopen();
        foreach (var id in ids) Assert.Equal(id, shop.Store.Find(id)!.Job.Id);
        Assert.All(Directory.GetFileSystemEntries(shop.Folder), f => Assert.StartsWith("records.db", Path.GetFileName(f), StringComparison.Ordinal));
    }

    [Fact]
    public void The_usual_folder_is_the_users_own() =>
        Assert.Equal("wainwright", Path.GetFileName(Store.DefaultFolder()));

    [Fact]
    public void A_job_can_be_seen_as_it_was_after_any_entry()
    {
        using var shop = new Workshop();
        shop.Done(Samples.Note(shop.Job, "one"));
        shop.Done(Samples.Note(shop.Job, "two"));
        Assert.Equal([null, "one", "two"], Enumerable.Range(1, 3).Select(n => shop.Store.AsOf("TEST-1", n)!.Note));
        Assert.Null(shop.Store.AsOf("TEST-1", 4));
        Assert.Null(shop.Store.AsOf("TEST-1", 0));
    }

    [Fact]
    public void Screens_are_told_which_job_changed_once_it_is_on_disk()
    {
        using var shop = new Workshop();
        var told = new List<(string, int)>();
        shop.Store.Changed += id => told.Add((id, shop.Store.Find(id)!.Sequence));
        shop.Done(Samples.Note(shop.Job, "x"));
        shop.Store.Undo("TEST-1", "AB");
        shop.Store.Append("TEST-1", new("bad", [new Edit("nowhere", null, null)]), "AB");
        shop.Store.Import(Samples.Small("OTHER"), "AB");
        Assert.Equal([("TEST-1", 2), ("TEST-1", 3), ("OTHER", 1)], told);
    }

    [Fact]
    public void More_jobs_than_are_kept_in_memory_are_still_right()
    {
        using var shop = new Workshop(withJob: false);
        for (var i = 0; i < 12; i++) shop.Store.Import(Samples.Small($"J{i}") with { Title = $"van {i}" }, "AB");
        for (var i = 0; i < 12; i++) Assert.NotNull(shop.Store.Append($"J{i}", Samples.Note(shop.Store.Find($"J{i}")!.Job, $"n{i}"), "AB").Entry);
        Assert.All(Enumerable.Range(0, 12), i => Assert.Equal($"n{i}", shop.Store.Find($"J{i}")!.Job.Note));
    }
}
