using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>What an entry of the journal is.</summary>
public enum EntryKind
{
    /// <summary>The job as it was taken in. Always the first entry and no other.</summary>
    Begin,

    /// <summary>Something was put, changed or taken out.</summary>
    Change,

    /// <summary>A change was taken back.</summary>
    Undo,

    /// <summary>A change that had been taken back was made again.</summary>
    Redo,
}

/// <summary>One edit as the journal keeps it.</summary>
/// <param name="Where">List and id, <c>parts/A52</c>, or a field of the job, <c>vehicle</c>.</param>
/// <param name="Place">Rank of the entry within its list: entries stand in rising order; absent for a field of the job.</param>
/// <param name="Before">What stood there; absent when nothing did.</param>
/// <param name="After">What stands there since; absent when it was taken out.</param>
public sealed record JournalEdit(string Where, long? Place, JsonElement? Before, JsonElement? After)
{
    /// <summary>The same edit backwards.</summary>
    public JournalEdit Inverse() => this with { Before = After, After = Before };

    /// <summary>The edit without its place.</summary>
    public Edit AsEdit() => new(Where, Before, After);
}

/// <summary>One entry of a job's journal. Entries are added, never changed.</summary>
/// <param name="Job">Id of the job.</param>
/// <param name="Seq">Number in the journal, 1 for the first.</param>
/// <param name="At">When, by the clock of the machine that wrote it.</param>
/// <param name="Who">Who, as they called themselves: a role or initials.</param>
/// <param name="What">What was done, in their words.</param>
/// <param name="Kind">What kind of entry it is.</param>
/// <param name="Of">For an undo or redo the number of the change it takes back or makes again.</param>
/// <param name="Edits">The edits in order.</param>
/// <param name="Previous">Hash of the entry before; 64 zeros for the first.</param>
/// <param name="Hash">SHA-256 of this entry's canonical text, which holds <paramref name="Previous"/>; 64 lower-case hexadecimal digits.</param>
public sealed record JournalEntry(
    string Job, int Seq, DateTimeOffset At, string Who, string What, EntryKind Kind, int? Of, IReadOnlyList<JournalEdit> Edits, string Previous, string Hash);
