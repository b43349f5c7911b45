using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

public class UndoTests
{
    [Fact]
    public void Undo_and_redo_are_entries_of_their_own_and_survive_a_restart()
    {
        using var shop = new Workshop();
        shop.Done(Samples.Note(shop.Job, "one"));
        shop.Done(Samples.Note(shop.Job, "two"));
        shop.Reopen();
        Assert.Equal((EntryKind.Undo, 3), (shop.Store.Undo("TEST-1", "CD").Entry!.Kind, shop.Store.History("TEST-1")[^1].Of));
        Assert.Equal("one", shop.Job.Note);
        shop.Reopen();
        var job = shop.Store.Find("TEST-1")!;
        Assert.Equal((2, 3), (job.Undo!.Seq, job.Redo!.Seq));
        Assert.Equal("note two", job.Redo.What);
        Assert.Equal("two", shop.Store.Redo("TEST-1", "CD").Job!.Note);
        Assert.Equal([EntryKind.Begin, EntryKind.Change, EntryKind.Change, EntryKind.Undo, EntryKind.Redo], shop.Store.History("TEST-1").Select(e => e.Kind));
        Assert.True(shop.Store.Verify("TEST-1").Sound);
    }

    [Fact]
    public void A_new_change_after_an_undo_leaves_nothing_to_redo()
    {
        using var shop = new Workshop();
        shop.Done(Samples.Note(shop.Job, "one"));
        shop.Store.Undo("TEST-1", "AB");
        shop.Done(Samples.Note(shop.Job, "other"));
        Assert.False(shop.Store.Find("TEST-1")!.CanRedo);
        Assert.Contains("nothing to redo", Assert.Single(shop.Store.Redo("TEST-1", "AB").Issues).Rule, StringComparison.Ordinal);
    }

    [Fact]
    public void Taking_the_job_in_is_not_undone()
    {
        using var shop = new Workshop();
        Assert.False(shop.Store.Find("TEST-1")!.CanUndo);
        Assert.Null(shop.Store.Undo("TEST-1", "AB").Entry);
    }

    [Fact]
    public void An_entry_taken_out_of_the_middle_comes_back_in_the_middle()
    {
        using var shop = new Workshop();
        var before = Samples.Text(shop.Job);
        shop.Done(new("out", [Edit.TakeOut(shop.Job, "parts", "P2")]));
        shop.Done(Samples.PutPart(shop.Job, Samples.Part("P9")));
        shop.Store.Undo("TEST-1", "AB");
        shop.Reopen();
        shop.Store.Undo("TEST-1", "AB");
        Assert.Equal(before, Samples.Text(shop.Job));
        shop.Reopen();
        Assert.Equal(before, Samples.Text(shop.Job));
    }

    [Fact]
    public void A_reading_is_not_changed_but_taking_it_may_be_undone()
    {
        using var shop = new Workshop();
        shop.Done(new("reading", [Edit.Put(shop.Job, "readings", "R2", Samples.Reading("R2", 21))]));
        Assert.Contains("stays as it is", Assert.Single(shop.Store.Append("TEST-1", Samples.TakeOut(shop.Job, "readings", "R2"), "AB").Issues).Rule, StringComparison.Ordinal);
        Assert.NotNull(shop.Store.Undo("TEST-1", "AB").Entry);
        Assert.Equal(["R1"], shop.Job.Readings.Select(r => r.Id.Text));
        Assert.NotNull(shop.Store.Redo("TEST-1", "AB").Entry);
        Assert.Equal(["R1", "R2"], shop.Job.Readings.Select(r => r.Id.Text));
    }

    [Fact]
    public void Undo_of_what_a_person_saw_is_refused_when_another_has_written_since()
    {
        using var shop = new Workshop();
        var seen = shop.Done(Samples.Note(shop.Job, "mine")).Seq;
        shop.Done(Samples.PutPart(shop.Job, Samples.Part("P9")));
        Assert.Contains("has changed since it was read", Assert.Single(shop.Store.Undo("TEST-1", "AB", seen).Issues).Rule, StringComparison.Ordinal);
        Assert.NotNull(shop.Store.Undo("TEST-1", "AB", seen + 1).Entry);
    }

    [Fact]
    public void The_same_place_edited_twice_in_one_change_comes_back()
    {
        using var shop = new Workshop();
        var before = Samples.Text(shop.Job);
        var part = JsonSerializer.SerializeToElement(Samples.Part("P3"), JobFormat.Compact);
        shop.Done(new("out and in", [Edit.TakeOut(shop.Job, "parts", "P3"), new Edit("parts/P3", null, part), new Edit("parts/P4", null, JsonSerializer.SerializeToElement(Samples.Part("P4"), JobFormat.Compact))]));
        Assert.Equal(["P1", "P2", "P3", "P4"], shop.Job.Parts.Select(p => p.Id.Text));
        shop.Store.Undo("TEST-1", "AB");
        Assert.Equal(before, Samples.Text(shop.Job));
    }
}
