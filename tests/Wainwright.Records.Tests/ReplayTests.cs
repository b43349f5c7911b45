using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Records.Tests;

/// <summary>Journals whose hashes are right, each by itself, and that still cannot stand.</summary>
public class ReplayTests
{
    static readonly JsonElement One = JsonElement.Parse("\"one\""), Two = JsonElement.Parse("\"two\"");

    [Fact]
    public void An_entry_rewritten_with_a_new_hash_is_found_at_the_one_after_it()
    {
        var begin = Entry(1, EntryKind.Begin, null, JournalLine.NoHash, new JournalEdit("note", null, null, One));
        var second = Entry(2, EntryKind.Change, null, begin.Hash, new JournalEdit("title", null, null, One));
        var third = Entry(3, EntryKind.Change, null, second.Hash, new JournalEdit("currency", null, null, One));
        var rewritten = Entry(2, EntryKind.Change, null, begin.Hash, new JournalEdit("title", null, null, Two));
        Assert.Null(Fault(begin, second, third));
        Assert.Equal("does not continue the entry before it", Fault(begin, rewritten, third));
    }

    [Fact]
    public void An_undo_that_does_something_else_is_found()
    {
        var begin = Entry(1, EntryKind.Begin, null, JournalLine.NoHash);
        var change = Entry(2, EntryKind.Change, null, begin.Hash, new JournalEdit("note", null, null, One));
        Assert.Null(Fault(begin, change, Entry(3, EntryKind.Undo, 2, change.Hash, new JournalEdit("note", null, One, null))));
        Assert.Equal("is not the undo of entry 2", Fault(begin, change, Entry(3, EntryKind.Undo, 2, change.Hash, new JournalEdit("note", null, One, Two))));
        Assert.Equal("is not the undo of entry 2", Fault(begin, change, Entry(3, EntryKind.Undo, 2, change.Hash)));
    }

    [Fact]
    public void A_redo_that_does_something_else_is_found()
    {
        var begin = Entry(1, EntryKind.Begin, null, JournalLine.NoHash);
        var change = Entry(2, EntryKind.Change, null, begin.Hash, new JournalEdit("note", null, null, One));
        var undo = Entry(3, EntryKind.Undo, 2, change.Hash, new JournalEdit("note", null, One, null));
        Assert.Null(Fault(begin, change, undo, Entry(4, EntryKind.Redo, 2, undo.Hash, new JournalEdit("note", null, null, One))));
        Assert.Equal("is not the redo of entry 2", Fault(begin, change, undo, Entry(4, EntryKind.Redo, 2, undo.Hash, new JournalEdit("note", null, null, Two))));
    }

    [Theory]
    [InlineData(EntryKind.Begin, null)]
    [InlineData(EntryKind.Undo, null)]
    [InlineData(EntryKind.Undo, 1)]
    [InlineData(EntryKind.Undo, 7)]
    [InlineData(EntryKind.Redo, 2)]
    [InlineData(EntryKind.Change, 2)]
    public void What_cannot_come_after_a_change_is_found(EntryKind kind, int? of)
    {
        var begin = Entry(1, EntryKind.Begin, null, JournalLine.NoHash);
        var change = Entry(2, EntryKind.Change, null, begin.Hash, new JournalEdit("note", null, null, One));
        Assert.StartsWith("cannot come here", Fault(begin, change, Entry(3, kind, of, change.Hash)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_journal_that_does_not_begin_is_found() =>
        Assert.StartsWith("cannot come here", Fault(Entry(1, EntryKind.Change, null, JournalLine.NoHash, new JournalEdit("note", null, null, One))), StringComparison.Ordinal);

    [Fact]
    public void An_entry_of_another_job_is_found()
    {
        var stray = JournalLine.Sealed("J-2", 1, DateTimeOffset.UnixEpoch, "AB", "x", EntryKind.Begin, null, JournalLine.NoHash, []);
        Assert.Equal("belongs to job “J-2”", Fault(stray));
    }

    [Fact]
    public void A_field_has_no_rank_and_an_entry_of_a_list_must_have_one()
    {
        Assert.Contains("has no rank", Fault(Entry(1, EntryKind.Begin, null, JournalLine.NoHash, new JournalEdit("note", 1, null, One))), StringComparison.Ordinal);
        Assert.Contains("rank", Fault(Entry(1, EntryKind.Begin, null, JournalLine.NoHash, new JournalEdit("parts/P1", null, null, One))), StringComparison.Ordinal);
    }

    private static RawEntry Entry(int seq, EntryKind kind, int? of, string previous, params JournalEdit[] edits) =>
        JournalLine.Sealed("J-1", seq, DateTimeOffset.UnixEpoch, "AB", "x", kind, of, previous, edits);

    /// <summary>The fault of the last entry; those before it must stand.</summary>
    private static string? Fault(params RawEntry[] entries)
    {
        var replay = new Replay("J-1");
        foreach (var entry in entries[..^1]) Assert.Null(replay.Next(entry));
        return replay.Next(entries[^1]);
    }
}
