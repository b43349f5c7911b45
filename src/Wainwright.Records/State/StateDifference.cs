using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>The edits that turn one state into another, order of the lists included.</summary>
internal static class StateDifference
{
    public static IReadOnlyList<JournalEdit> Between(JobState from, JobState to)
    {
        var edits = new List<JournalEdit>();
        var walking = from.Copy();
        foreach (var field in from.Rows().Concat(to.Rows()).Where(r => r.Section.Length == 0).Select(r => r.Id).Distinct().Order(StringComparer.Ordinal).ToList()) Put(field);
        foreach (var section in Section.Lists)
        {
            var old = from.Ids(section.Name);
            var wanted = to.Ids(section.Name);
            var stay = Keeps(old, wanted) ? wanted.ToHashSet() : [];
            foreach (var id in old.Where(id => !stay.Contains(id))) Make($"{section.Name}/{id}", null);
            foreach (var id in wanted) Put($"{section.Name}/{id}");
        }
        return edits;

        void Put(string where) => Make(where, to.At(where)?.Json);

        void Make(string where, string? json)
        {
            var now = walking.At(where)?.Json;
            if (now == json) return;
            var edit = new JournalEdit(where, walking.PlaceFor(where), Parsed(now), Parsed(json));
            if (walking.Make(edit) is { } fault) throw new InvalidOperationException(fault);
            edits.Add(edit);
        }
    }

    /// <summary>Whether putting and taking out gives the wanted order: those that stay keep theirs, and what is new comes after them.</summary>
    private static bool Keeps(IReadOnlyList<string> old, IReadOnlyList<string> wanted)
    {
        var stays = old.Intersect(wanted).ToList();
        return wanted.Take(stays.Count).SequenceEqual(stays);
    }

    internal static JsonElement? Parsed(string? json) => json is null ? null : JsonElement.Parse(json);
}
