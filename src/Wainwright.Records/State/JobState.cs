using System.Text;
using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>One row of a job: an entry of a list, or a field of the job (then the section is empty and the place 0).</summary>
internal readonly record struct StateRow(string Section, long Place, string Id, string Json)
{
    public string Where => Section.Length == 0 ? Id : $"{Section}/{Id}";
}

/// <summary>
/// A job as rows of text, each entry with its rank. Mutable: what is being written works on a copy. Knows the names of lists and fields,
/// but not what an entry means, so a journal can be replayed that this program could not otherwise read.
/// </summary>
internal sealed class JobState
{
    private static readonly Dictionary<string, Type> FieldTypes = JobFormat.Compact.GetTypeInfo(typeof(Job)).Properties
        .Where(p => p.Name != "id" && Section.Named(p.Name) is null).ToDictionary(p => p.Name, p => p.PropertyType);

    private readonly SortedDictionary<string, string> fields = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Ranked> lists = Section.Lists.ToDictionary(s => s.Name, _ => new Ranked());

    /// <summary>Type of what stands at a place; <see langword="null"/> when there is no such place.</summary>
    public static Type? TypeAt(string where) =>
        where.Split('/', 2) is [var list, _] ? Section.Named(list)?.EntryType : FieldTypes.GetValueOrDefault(where);

    public static JobState Of(Job job)
    {
        var state = new JobState();
        foreach (var field in JsonSerializer.SerializeToElement(job, JobFormat.Compact).EnumerateObject())
            if (FieldTypes.ContainsKey(field.Name)) state.fields[field.Name] = field.Value.GetRawText();
        foreach (var section in Section.Lists)
        {
            long place = 0;
            foreach (var (id, entry) in section.All(job)) state.lists[section.Name].Put(id, ++place, entry.GetRawText());
        }
        return state;
    }

    /// <exception cref="FormatException">The rows contradict each other.</exception>
    public static JobState Of(IEnumerable<StateRow> rows)
    {
        var state = new JobState();
        foreach (var row in rows)
        {
            if (row.Section.Length == 0 ? !FieldTypes.ContainsKey(row.Id) : !state.lists.ContainsKey(row.Section)) throw new FormatException($"“{row.Where}” is not a place in a job");
            if (row.Section.Length == 0) state.fields[row.Id] = row.Json;
            else state.lists[row.Section].Put(row.Id, row.Place, row.Json);
        }
        return state;
    }

    public JobState Copy() => Of(Rows());

    public IEnumerable<StateRow> Rows() =>
        fields.Select(f => new StateRow("", 0, f.Key, f.Value))
            .Concat(Section.Lists.SelectMany(s => lists[s.Name].InOrder().Select(e => new StateRow(s.Name, e.Place, e.Id, e.Json))));

    /// <summary>What stands at a place, if anything, and with which rank.</summary>
    public StateRow? At(string where)
    {
        if (where.Split('/', 2) is [var list, var id])
            return lists.TryGetValue(list, out var ranked) && ranked.Get(id) is { } entry ? new StateRow(list, entry.Place, id, entry.Json) : null;
        return fields.TryGetValue(where, out var json) ? new StateRow("", 0, where, json) : null;
    }

    /// <summary>The rank that an edit of this place gets: that of what stands there, or the one after the last.</summary>
    public long? PlaceFor(string where) =>
        where.Split('/', 2) is not [var list, _] ? null : At(where)?.Place ?? lists[list].LastPlace + 1;

    /// <summary>Makes an edit; says why not when it does not fit what stands there.</summary>
    public string? Make(JournalEdit edit)
    {
        if (TypeAt(edit.Where) is null) return $"“{edit.Where}” is not a place in a job";
        var now = At(edit.Where);
        if (edit.Before?.GetRawText() != now?.Json) return $"“{edit.Where}” was not as the entry says it was";
        if (edit.Where.Split('/', 2) is not [var list, var id])
        {
            if (edit.Place is not null) return $"“{edit.Where}” is no list and has no rank";
            if (edit.After is { } value) fields[edit.Where] = value.GetRawText();
            else fields.Remove(edit.Where);
            return null;
        }
        if (edit.Place is not { } place || (now is { } there ? there.Place != place : lists[list].Holds(place))) return $"the rank of “{edit.Where}” does not fit";
        if (edit.After is { } after) lists[list].Put(id, place, after.GetRawText());
        else lists[list].TakeOut(id);
        return null;
    }

    /// <exception cref="JsonException">The rows are not those of a job.</exception>
    public Job ToJob(string id)
    {
        var text = new StringBuilder("{\"id\":").Append(JournalLine.Quoted(id));
        foreach (var (name, json) in fields) text.Append(",\"").Append(name).Append("\":").Append(json);
        foreach (var section in Section.Lists.Where(s => lists[s.Name].Any))
            text.Append(",\"").Append(section.Name).Append("\":[").AppendJoin(',', lists[section.Name].InOrder().Select(e => e.Json)).Append(']');
        return JsonSerializer.Deserialize<Job>(text.Append('}').ToString(), JobFormat.Compact)!;
    }

    /// <summary>Places where two states differ. Ranks count only by the order they give, unless <paramref name="ranks"/>.</summary>
    public IEnumerable<string> Differences(JobState other, bool ranks)
    {
        var mine = Rows().ToDictionary(r => r.Where);
        var theirs = other.Rows().ToDictionary(r => r.Where);
        foreach (var where in mine.Keys.Union(theirs.Keys))
            if (!mine.TryGetValue(where, out var a) || !theirs.TryGetValue(where, out var b) || a.Json != b.Json || (ranks && a.Place != b.Place)) yield return where;
        foreach (var section in Section.Lists)
            if (!lists[section.Name].InOrder().Select(e => e.Id).SequenceEqual(other.lists[section.Name].InOrder().Select(e => e.Id))) yield return $"order of {section.Name}";
    }

    /// <summary>Ids of a list in order.</summary>
    public IReadOnlyList<string> Ids(string list) => [.. lists[list].InOrder().Select(e => e.Id)];
}
