using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>Goes through a journal from its first entry, rebuilding chain, state and steps. Mutable; stops at the first entry that cannot stand.</summary>
internal sealed class Replay(string jobId)
{
    private readonly Dictionary<int, string> edits = [];
    private readonly HashSet<PhotoHash> photos = [];

    public JobState State { get; } = new();

    public Steps Steps { get; private set; } = Steps.None;

    public int Entries { get; private set; }

    public string LastHash { get; private set; } = JournalLine.NoHash;

    public DateTimeOffset LastAt { get; private set; } = DateTimeOffset.MinValue;

    /// <summary>Entries dated before the one before them: a clock was set back, or worse.</summary>
    public List<int> BackInTime { get; } = [];

    /// <summary>Every photo that any entry names.</summary>
    public IReadOnlyCollection<PhotoHash> Photos => photos;

    /// <summary>Adds the next entry; says why it cannot stand, or <see langword="null"/>.</summary>
    public string? Next(RawEntry entry)
    {
        if (entry.Job != jobId) return $"belongs to job “{entry.Job}”";
        if (entry.Seq != Entries + 1) return $"has number {entry.Seq}, {Entries + 1} should follow";
        if (entry.Previous != LastHash) return "does not continue the entry before it";
        if (entry.Recomputed() != entry.Hash) return "is not what was written: its hash does not fit";
        try
        {
            var read = entry.Understood();
            Steps = Steps.Then(read.Kind, read.Seq, read.Of, read.Who, read.What);
            if (read.Of is { } of && JournalEdits.Text(Backwards(of, read.Kind)) != entry.Edits) return $"is not the {entry.Kind} of entry {of}";
            foreach (var edit in read.Edits)
                if (State.Make(edit) is { } fault) return fault;
            if (read.At < LastAt) BackInTime.Add(read.Seq);
            LastAt = read.At;
            photos.UnionWith(JournalEdits.PhotosIn(read.Edits));
        }
        catch (FormatException error)
        {
            return error.Message;
        }
        if (entry.Kind == "change") edits[entry.Seq] = entry.Edits;
        (Entries, LastHash) = (entry.Seq, entry.Hash);
        return null;
    }

    private IEnumerable<JournalEdit> Backwards(int of, EntryKind kind)
    {
        var made = JournalEdits.Read(edits[of]);
        return kind == EntryKind.Undo ? Inverse(made) : made;
    }

    public static IReadOnlyList<JournalEdit> Inverse(IReadOnlyList<JournalEdit> edits) => [.. edits.Reverse().Select(e => e.Inverse())];
}
