using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>An entry about to be written: what it says, and the job after it. Without a job it is refused.</summary>
internal sealed record Draft(EntryKind Kind, int? Of, string What, IReadOnlyList<JournalEdit> Edits, JobState State, Job? Job, IReadOnlyList<Issue> Issues)
{
    /// <summary>A change as somebody asks for it.</summary>
    /// <param name="held">The job as it is.</param>
    /// <param name="change">The change.</param>
    /// <param name="photos">Where photos lie: one that is named anew must be there.</param>
    public static Draft From(Held held, Change change, PhotoFolder photos)
    {
        var tidy = change with { Edits = [.. change.Edits.Select(Tidy)] };
        var issues = tidy.Edits.SelectMany(e => ChangeRules.Of(e, photos)).ToList();
        if (tidy.Edits.Count == 0) issues.Add(new("change", "changes nothing", "say what is to be changed"));
        if (issues.Count > 0) return Refused(held, issues);

        var made = tidy.On(held.Job);
        if (made.Job is not { } job) return Refused(held, made.Issues);
        var state = held.State.Copy();
        var edits = new List<JournalEdit>();
        foreach (var edit in tidy.Edits)
        {
            var written = new JournalEdit(edit.Where, state.PlaceFor(edit.Where), StateDifference.Parsed(state.At(edit.Where)?.Json), Canonical(edit));
            if (state.Make(written) is { } fault) throw new InvalidOperationException(fault);
            edits.Add(written);
        }
        if (TooLarge(job, state) is { } large) return Refused(held, [large]);
        return new(EntryKind.Change, null, change.What, edits, state, job, made.Issues);
    }

    /// <summary>An undo or redo of a change: its edits once more, each in its old rank.</summary>
    public static Draft Again(Held held, EntryKind kind, Step step, IReadOnlyList<JournalEdit> made)
    {
        var edits = kind == EntryKind.Undo ? Replay.Inverse(made) : made;
        var state = held.State.Copy();
        foreach (var edit in edits)
            if (state.Make(edit) is { } fault) throw new FormatException(fault);
        // a newer program may ask more of a job than the one that made the change
        var job = state.ToJob(held.Job.Id);
        var old = JobRules.Of(held.Job).ToHashSet();
        var issues = JobFile.Read(JobFile.Write(job)).Issues.Where(i => !old.Contains(i)).ToList();
        return new(kind, step.Seq, $"{JournalLine.Word(kind)}: {step.What}", edits, state, issues.Any(i => i.Weight == Weight.Error) ? null : job, issues);
    }

    /// <summary>A change that brings a job, checked elsewhere, to another state as a whole.</summary>
    public static Draft Whole(Held held, IReadOnlyList<JournalEdit> edits, string what)
    {
        var state = held.State.Copy();
        foreach (var edit in edits)
            if (state.Make(edit) is { } fault) throw new InvalidOperationException(fault);
        return new(EntryKind.Change, null, what, edits, state, state.ToJob(held.Job.Id), []);
    }

    private static Draft Refused(Held held, IReadOnlyList<Issue> issues) => new(EntryKind.Change, null, "", [], held.State, null, issues);

    /// <summary>What a browser sends for “nothing there” is null.</summary>
    private static Edit Tidy(Edit edit)
    {
        static JsonElement? Absent(JsonElement? value) => value is { ValueKind: JsonValueKind.Null or JsonValueKind.Undefined } ? null : value;
        return edit with { Before = Absent(edit.Before), After = Absent(edit.After) };
    }

    /// <summary>The value as this program writes it, so that text can be compared with text ever after.</summary>
    private static JsonElement? Canonical(Edit edit)
    {
        if (edit.After is not { } after) return null;
        var type = JobState.TypeAt(edit.Where)!;
        return JsonSerializer.SerializeToElement(after.Deserialize(type, JobFormat.Compact), type, JobFormat.Compact);
    }

    /// <summary>A job that could not be read back from its own file is not let in.</summary>
    private static Issue? TooLarge(Job job, JobState state)
    {
        // laid out for reading, text grows no more than tenfold: a small job need not be written to be measured
        if (state.Rows().Sum(r => (long)r.Json.Length) < JobFile.LargestBytes / 40) return null;
        var bytes = JobFile.Write(job).Length;
        return bytes <= JobFile.LargestBytes ? null : new("job", $"would be {bytes >> 20} MiB as a file, at most {JobFile.LargestBytes >> 20} are read", "split the job");
    }
}
