using System.Text.Json;
using System.Text.RegularExpressions;

namespace Wainwright.Fitout;

/// <summary>
/// One thing put, changed or taken out. <c>Where</c> is a list and an id, <c>parts/A52</c>, or a field of the job,
/// <c>vehicle</c>, <c>intake</c>, <c>title</c>, <c>note</c>, <c>currency</c>, <c>ratePerHour</c>,
/// <c>judgedAgainst</c>.
/// </summary>
/// <param name="Where">The place.</param>
/// <param name="Before">What stood there; absent when nothing did.</param>
/// <param name="After">What stands there now; absent when it is taken out.</param>
public sealed record Edit(string Where, JsonElement? Before, JsonElement? After)
{
    private static readonly string[] Fields = ["vehicle", "intake", "title", "note", "currency", "ratePerHour", "judgedAgainst"];

    /// <summary>The same edit backwards.</summary>
    public Edit Inverse() => new(Where, After, Before);

    /// <summary>An edit that puts an entry of a list, whether it was there or not.</summary>
    /// <param name="job">The job as it is.</param>
    /// <param name="list">Name of the list, <c>parts</c>.</param>
    /// <param name="id">Id of the entry.</param>
    /// <param name="entry">The entry.</param>
    public static Edit Put<T>(Job job, string list, string id, T entry) =>
        new($"{list}/{id}", Named(list).Get(job, id), JsonSerializer.SerializeToElement(entry, JobFormat.Compact));

    /// <summary>An edit that takes an entry out of a list.</summary>
    public static Edit TakeOut(Job job, string list, string id) => new($"{list}/{id}", Named(list).Get(job, id), null);

    /// <summary>An edit of a field of the job.</summary>
    public static Edit Field<T>(Job job, string field, T value)
    {
        ArgumentNullException.ThrowIfNull(job);
        return new(field, Current(job, field), value is null ? null : JsonSerializer.SerializeToElement(value, JobFormat.Compact));
    }

    /// <summary>What stands at a place now; <see langword="null"/> when nothing does.</summary>
    /// <exception cref="ArgumentException">There is no such place.</exception>
    public static JsonElement? Current(Job job, string where)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(where);
        if (where.Split('/', 2) is [var list, var id]) return Named(list).Get(job, id);
        if (!Fields.Contains(where)) throw new ArgumentException($"“{where}” is not a place in a job", nameof(where));
        return JsonSerializer.SerializeToElement(job, JobFormat.Compact).TryGetProperty(where, out var value) ? value : null;
    }

    /// <summary>The job with this edit made; issues instead when its shape is wrong or what stood there has changed meanwhile.</summary>
    internal Job? Made(Job job, bool undoing, List<Issue> issues)
    {
        var list = Where.Split('/', 2) is [var name, _] ? Section.Named(name) : null;
        if (list is null && !Fields.Contains(Where))
        {
            issues.Add(new(Where, "is not a place in a job", $"name one of {string.Join(", ", Section.Lists.Select(s => s.Name + "/…"))}, {string.Join(", ", Fields)}"));
            return null;
        }
        if (!Same(Current(job, Where), Before))
        {
            issues.Add(new(Where, "has changed since it was read", "look at it again and repeat the edit"));
            return null;
        }
        if (list?.Name == "readings" && Before is not null && !undoing)
        {
            issues.Add(new(Where, "a reading once taken stays as it is", "add a new reading that corrects it"));
            return null;
        }
        if (After is null && Where is ("vehicle" or "title"))
        {
            issues.Add(new(Where, "cannot be taken out of a job", "put another in its place"));
            return null;
        }
        if (After is { } after)
        {
            var before = issues.Count;
            new JobShape(issues).Walk(after, list?.EntryType ?? typeof(Job).GetProperty(char.ToUpperInvariant(Where[0]) + Where[1..])!.PropertyType, Where);
            if (issues.Count > before) return null;
        }
        if (list is null) return WithField(job);
        var id = Where.Split('/', 2)[1];
        var made = list.With(job, id, After);
        if (After is null || list.Get(made, id) is not null) return made;
        issues.Add(new(Where, $"the entry put there has another id than “{id}”", "put it at its own id, or mend the id"));
        return null;
    }

    private Job WithField(Job job)
    {
        T? Value<T>() => After is { } a ? a.Deserialize<T>(JobFormat.Compact) : default;
        return Where switch
        {
            "vehicle" => job with { Vehicle = Value<Vehicle>() ?? job.Vehicle },
            "intake" => job with { Intake = Value<Intake>() },
            "title" => job with { Title = Value<string>() ?? job.Title },
            "note" => job with { Note = Value<string>() },
            "currency" => job with { Currency = Value<string>() },
            "ratePerHour" => job with { RatePerHour = Value<decimal?>() },
            "judgedAgainst" => job with { JudgedAgainst = Value<IReadOnlyList<LoadCase>>() ?? [] },
            _ => throw new InvalidOperationException(Where),
        };
    }

    private static bool Same(JsonElement? a, JsonElement? b) => a is { } x && b is { } y ? JsonElement.DeepEquals(x, y) : a is null && b is null;

    private static Section Named(string list) => Section.Named(list) ?? throw new ArgumentException($"“{list}” is not a list of a job", nameof(list));
}

/// <summary>Edits that belong together: all are made or none.</summary>
/// <param name="What">What was done, in the words of the person who did it.</param>
/// <param name="Edits">The edits in order.</param>
public sealed partial record Change(string What, IReadOnlyList<Edit> Edits)
{
    /// <summary>The change backwards, as undo makes it.</summary>
    public Change Inverse() => new($"undo: {What}", [.. Edits.Reverse().Select(e => e.Inverse())]);

    /// <summary>
    /// The job with every edit made. Errors the change brings in make it fail whole; what was wrong before does not.
    /// </summary>
    /// <param name="job">The job as it is.</param>
    /// <param name="undoing">Whether this takes an earlier change back: only then may a reading go.</param>
    public Changed On(Job job, bool undoing = false)
    {
        ArgumentNullException.ThrowIfNull(job);
        var issues = new List<Issue>();
        var made = job;
        foreach (var edit in Edits)
        {
            if (edit.Made(made, undoing, issues) is not { } next) return new(null, issues);
            made = next;
        }
        var old = JobRules.Of(job).Select(Unplaced).ToHashSet();
        issues.AddRange(JobRules.Of(made).Where(i => !old.Contains(Unplaced(i))));
        return new(issues.Any(i => i.Weight == Weight.Error) ? null : made, issues);
    }

    /// <summary>An issue without list positions: those shift when an entry is taken out, and the issue is still the same.</summary>
    private static (string Where, string Rule, Weight Weight) Unplaced(Issue issue) => (Position().Replace(issue.Where, "[]"), Position().Replace(issue.Rule, "[]"), issue.Weight);

    [GeneratedRegex("\\[[0-9]+\\]")]
    private static partial Regex Position();
}

/// <summary>What a change gave.</summary>
/// <param name="Job">The job after it; <see langword="null"/> when it was refused.</param>
/// <param name="Issues">Errors that made it fail, or new doubts.</param>
public sealed record Changed(Job? Job, IReadOnlyList<Issue> Issues);
