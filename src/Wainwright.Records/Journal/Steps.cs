using System.Collections.Immutable;

namespace Wainwright.Records;

/// <summary>What can be undone and redone after some entries of a journal. Follows from the entries alone, so it survives a restart.</summary>
internal sealed record Steps(ImmutableStack<Step> Done, ImmutableStack<Step> Undone)
{
    public static readonly Steps None = new([], []);

    public Step? Undo => Done.IsEmpty ? null : Done.Peek();

    public Step? Redo => Undone.IsEmpty ? null : Undone.Peek();

    /// <summary>The steps after one more entry.</summary>
    /// <exception cref="FormatException">An undo or redo that does not fit what went before.</exception>
    public Steps Then(EntryKind kind, int seq, int? of, string who, string what) => kind switch
    {
        EntryKind.Begin when seq == 1 && of is null => this,
        EntryKind.Change when seq > 1 && of is null => new(Done.Push(new(seq, who, what)), []),
        EntryKind.Undo when Undo is { } step && step.Seq == of => new(Done.Pop(), Undone.Push(step)),
        EntryKind.Redo when Redo is { } step && step.Seq == of => new(Done.Push(step), Undone.Pop()),
        _ => throw new FormatException($"cannot come here: {JournalLine.Word(kind)}{(of is { } n ? $" of {n}" : "")}"),
    };
}
