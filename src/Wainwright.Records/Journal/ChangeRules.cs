using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>What must hold of an edit before it is tried, beyond what the model asks.</summary>
internal static class ChangeRules
{
    public const int LongestWho = 80, LongestWhat = 500;

    public static IEnumerable<Issue> Of(Edit edit, PhotoFolder photos)
    {
        if (edit.After is { } value && !IsText(value))
        {
            yield return new(edit.Where, "holds half a character", "type it again");
            yield break;
        }
        if (edit.After is null && edit.Where is "title" or "vehicle" or "format") yield return new(edit.Where, "must not be taken out", "give another value");
        if (edit.Where.Split('/', 2) is not [var list, var id] || edit.After is not { ValueKind: JsonValueKind.Object } after) yield break;

        var field = list == "photos" ? "hash" : "id";
        if (after.TryGetProperty(field, out var named) && named.ValueKind == JsonValueKind.String && named.GetString() != id)
            yield return new(edit.Where, $"the entry calls itself “{named.GetString()}”", "to give it another id, take it out and put it in anew, in one change");
        else if (list == "photos" && edit.Before is null && PhotoFault(new(id), after, photos) is { } fault) yield return fault;
    }

    public static IEnumerable<Issue> OfWords(string who, string? what)
    {
        if (Fault(who, LongestWho) is { } name) yield return new("who", name, "say who does it: a role or initials");
        if (what is not null && Fault(what, LongestWhat) is { } words) yield return new("what", words, "say in a few words what was done");
    }

    private static string? Fault(string text, int longest) =>
        string.IsNullOrWhiteSpace(text) ? "must be said"
        : text.Length > longest ? $"must be at most {longest} characters, has {text.Length}"
        : text.Any(char.IsControl) ? "must not hold control characters"
        : !IsText(text) ? "holds half a character"
        : null;

    private static Issue? PhotoFault(PhotoHash hash, JsonElement entry, PhotoFolder photos)
    {
        if (!hash.IsWellFormed) return null; // the model says so better
        if (photos.KindOf(hash) is not { } kind) return new($"photos/{hash}", "its bytes are not here", "take the photo in first, then name it");
        return entry.TryGetProperty("mediaType", out var told) && told.ValueKind == JsonValueKind.String && told.GetString() != kind.MediaType
            ? new($"photos/{hash}.mediaType", $"must be {kind.MediaType}, as its bytes are", $"write {kind.MediaType}")
            : null;
    }

    /// <summary>JSON may hold half a surrogate pair, text may not.</summary>
    private static bool IsText(JsonElement value)
    {
        try
        {
            _ = JsonSerializer.Serialize(value, JobFormat.Compact);
            return true;
        }
        catch (Exception error) when (error is JsonException or InvalidOperationException)
        {
            return false;
        }
    }

    private static bool IsText(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsSurrogate(text[i])) continue;
            if (i + 1 == text.Length || !char.IsSurrogatePair(text[i], text[i + 1])) return false;
            i++;
        }
        return true;
    }
}
