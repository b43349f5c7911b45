using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

/// <summary>What somebody with the file can do behind the program's back is found, and the first bad entry named.</summary>
public class TamperTests
{
    const string NoGuard = "DROP TRIGGER journal_is_not_changed";
    const string Guard = "CREATE TRIGGER journal_is_not_changed BEFORE UPDATE ON journal BEGIN SELECT RAISE (ABORT, 'the journal is only added to'); END";

    [Theory]
    [InlineData("UPDATE journal SET seq = 9 WHERE seq = 4", 5)]
    [InlineData("UPDATE journal SET at = '2026-03-14T08:30:00.001Z' WHERE seq = 3", 3)]
    [InlineData("UPDATE journal SET at = 'yesterday' WHERE seq = 3", 3)]
    [InlineData("UPDATE journal SET who = 'CD' WHERE seq = 3", 3)]
    [InlineData("UPDATE journal SET what = 'something else' WHERE seq = 3", 3)]
    [InlineData("UPDATE journal SET kind = 'undo', of = 2 WHERE seq = 3", 3)]
    [InlineData("UPDATE journal SET kind = 'gift' WHERE seq = 3", 3)]
    [InlineData("UPDATE journal SET of = 2 WHERE seq = 3", 3)]
    [InlineData("UPDATE journal SET of = 2 WHERE seq = 4", 4)]
    [InlineData("UPDATE journal SET previous = hash WHERE seq = 3", 3)]
    [InlineData("UPDATE journal SET hash = previous WHERE seq = 3", 3)]
    [InlineData("UPDATE journal SET edits = replace(edits, 'two', 'six') WHERE seq = 3", 3)]
    [InlineData("UPDATE journal SET edits = 'no json' WHERE seq = 3", 3)]
    [InlineData("UPDATE journal SET edits = edits || ' ' WHERE seq = 3", 3)]
    public void Every_field_of_the_journal_is_covered(string sql, int firstBad)
    {
        using var shop = Worked();
        shop.BehindItsBack(NoGuard, sql, Guard);
        var found = shop.Store.Verify("TEST-1");
        Assert.False(found.Sound);
        Assert.Equal(firstBad, found.FirstBadEntry);
        Assert.StartsWith("entry ", Assert.Single(found.Issues).Where, StringComparison.Ordinal);
    }

    [Fact]
    public void The_very_first_entry_is_covered_too()
    {
        using var shop = Worked();
        shop.BehindItsBack(NoGuard, "UPDATE journal SET edits = replace(edits, 'small van', 'grand van') WHERE seq = 1", Guard);
        Assert.Equal(1, shop.Store.Verify("TEST-1").FirstBadEntry);
    }

    [Fact]
    public void An_entry_taken_out_is_found_at_the_one_after_it()
    {
        using var shop = Worked();
        shop.BehindItsBack("DROP TRIGGER journal_is_not_shortened", "DELETE FROM journal WHERE seq = 2");
        var found = shop.Store.Verify("TEST-1");
        Assert.Equal(3, found.FirstBadEntry);
        Assert.Contains(found.Issues, i => i.Where.Contains("journal_is_not_shortened", StringComparison.Ordinal));
    }

    [Fact]
    public void The_last_entry_cut_off_is_found_by_the_state_it_left()
    {
        using var shop = Worked();
        shop.BehindItsBack("DROP TRIGGER journal_is_not_shortened", "DELETE FROM journal WHERE seq = 5");
        var found = shop.Store.Verify("TEST-1");
        Assert.Null(found.FirstBadEntry);
        Assert.Contains(found.Issues, i => i is { Where: "parts/P9", Rule: "is not what the journal says" });
    }

    [Theory]
    [InlineData("UPDATE state SET json = replace(json, '12', '13') WHERE section = 'parts' AND id = 'P2'", "parts/P2")]
    [InlineData("UPDATE state SET json = '\"other\"' WHERE section = '' AND id = 'note'", "note")]
    [InlineData("UPDATE state SET id = 'P7' WHERE id = 'P3'", "parts/P7")]
    [InlineData("DELETE FROM state WHERE section = 'findings'", "findings/F1")]
    [InlineData("INSERT INTO state VALUES (1, 'bags', 1, 'B1', '{}')", "bags/B1")]
    [InlineData("UPDATE state SET place = 40 WHERE section = 'parts' AND id = 'P1'", "order of parts")]
    [InlineData("UPDATE state SET section = 'partz' WHERE section = 'parts' AND id = 'P3'", "state")]
    public void A_row_of_state_that_was_changed_is_found_and_can_be_written_anew(string sql, string where)
    {
        using var shop = Worked();
        var before = Samples.Text(shop.Job);
        shop.BehindItsBack(sql);
        var found = shop.Store.Verify("TEST-1");
        Assert.Null(found.FirstBadEntry);
        Assert.Contains(found.Issues, i => i.Where == where);
        Assert.True(shop.Store.Mend("TEST-1").Sound);
        shop.Reopen();
        Assert.Equal(before, Samples.Text(shop.Job));
    }

    [Fact]
    public void A_broken_journal_is_not_used_to_write_the_state_anew()
    {
        using var shop = Worked();
        shop.BehindItsBack(NoGuard, "UPDATE journal SET edits = replace(edits, 'two', 'six') WHERE seq = 3");
        Assert.Equal(3, shop.Store.Mend("TEST-1").FirstBadEntry);
        Assert.Equal("two", shop.Job.Note);
    }

    [Theory]
    [InlineData("UPDATE journal SET who = 'CD'")]
    [InlineData("DELETE FROM journal")]
    [InlineData("INSERT INTO journal SELECT job, seq + 5, at, who, what, kind, of, previous, hash, edits FROM journal WHERE seq = 5")]
    [InlineData("INSERT OR REPLACE INTO journal SELECT job, seq, at, 'CD', what, kind, of, previous, hash, edits FROM journal WHERE seq = 5")]
    public void The_database_itself_refuses_to_touch_a_written_entry(string sql)
    {
        using var shop = Worked();
        var refused = Assert.Throws<Microsoft.Data.Sqlite.SqliteException>(() => shop.BehindItsBack(sql));
        Assert.Contains("the journal", refused.Message, StringComparison.Ordinal);
        Assert.True(shop.Store.Verify("TEST-1").Sound);
    }

    [Fact]
    public void A_photo_changed_or_gone_is_found()
    {
        using var shop = new Workshop();
        var (first, second) = (shop.Photographed(1), shop.Photographed(2));
        Assert.Equal(2, shop.Store.Verify("TEST-1").Photos);
        string FileOf(PhotoHash hash) => shop.FilesIn("photos").Single(f => f.Contains(hash.Text, StringComparison.Ordinal));
        File.AppendAllText(FileOf(first), "x");
        File.Delete(FileOf(second));
        var found = shop.Store.Verify("TEST-1");
        Assert.Contains(found.Issues, i => i.Where == $"photos/{first}" && i.Rule.Contains("damaged", StringComparison.Ordinal));
        Assert.Contains(found.Issues, i => i.Where == $"photos/{second}" && i.Rule.Contains("not here", StringComparison.Ordinal));
        Assert.Equal(2, found.Issues.Count);
        Assert.False(found.Sound);
    }

    [Fact]
    public void A_photo_that_was_damaged_is_healed_by_taking_it_in_again()
    {
        using var shop = new Workshop();
        shop.Photographed(1);
        File.WriteAllText(shop.FilesIn("photos").Single(), "broken");
        Assert.NotNull(shop.Store.AddPhoto(new MemoryStream(Samples.Jpeg(1))).Hash);
        Assert.True(shop.Store.Verify("TEST-1").Sound);
    }

    [Fact]
    public void A_clock_set_back_is_a_doubt_and_no_fault()
    {
        using var shop = Worked();
        shop.Clock.Now = shop.Clock.Now.AddDays(-1);
        shop.Done(Samples.Note(shop.Job, "earlier"));
        var found = shop.Store.Verify("TEST-1");
        Assert.True(found.Sound);
        Assert.Equal(("entry 6", Weight.Doubt), (Assert.Single(found.Issues).Where, found.Issues[0].Weight));
    }

    [Fact]
    public void A_job_that_is_not_there_is_not_sound()
    {
        using var shop = new Workshop();
        Assert.False(shop.Store.Verify("GONE").Sound);
    }

    [Fact]
    public void The_last_hash_is_that_of_the_last_entry()
    {
        using var shop = Worked();
        Assert.Equal((5, shop.Store.Find("TEST-1")!.Hash), (shop.Store.Verify("TEST-1").Entries, shop.Store.Verify("TEST-1").LastHash));
    }

    /// <summary>Five entries: taken in, note one, note two, part P8, part P9.</summary>
    private static Workshop Worked()
    {
        var shop = new Workshop();
        shop.Done(Samples.Note(shop.Job, "one"));
        shop.Done(Samples.Note(shop.Job, "two"));
        shop.Done(Samples.PutPart(shop.Job, Samples.Part("P8")));
        shop.Done(Samples.PutPart(shop.Job, Samples.Part("P9")));
        return shop;
    }
}
