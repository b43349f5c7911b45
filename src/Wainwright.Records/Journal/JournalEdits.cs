using System.Globalization;
using System.Text;
using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>The edits of an entry as text and back.</summary>
internal static class JournalEdits
{
    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = 60, AllowDuplicateProperties = false };

    public static string Text(IEnumerable<JournalEdit> edits)
    {
        var text = new StringBuilder("[");
        foreach (var edit in edits)
        {
            if (text.Length > 1) text.Append(',');
            text.Append("{\"where\":").Append(JournalLine.Quoted(edit.Where));
            if (edit.Place is { } place) text.Append(CultureInfo.InvariantCulture, $",\"place\":{place}");
            if (edit.Before is { } before) text.Append(",\"before\":").Append(before.GetRawText());
            if (edit.After is { } after) text.Append(",\"after\":").Append(after.GetRawText());
            text.Append('}');
        }
        return text.Append(']').ToString();
    }

    /// <exception cref="FormatException">The text is not as <see cref="Text"/> writes it.</exception>
    public static IReadOnlyList<JournalEdit> Read(string text)
    {
        try
        {
            using var document = JsonDocument.Parse(text, Strict);
            if (document.RootElement.ValueKind != JsonValueKind.Array) throw new FormatException("has no list of edits");
            // cloned once as a whole: the elements then share one copy
            List<JournalEdit> edits = [.. document.RootElement.Clone().EnumerateArray().Select(Read)];
            if (Text(edits) != text) throw new FormatException("has edits that are not written as this program writes them");
            return edits;
        }
        catch (JsonException error)
        {
            throw new FormatException("has edits that are not JSON", error);
        }
        catch (InvalidOperationException error)
        {
            throw new FormatException("holds half a character", error);
        }
    }

    private static JournalEdit Read(JsonElement edit)
    {
        if (edit.ValueKind != JsonValueKind.Object || !edit.TryGetProperty("where", out var where) || where.ValueKind != JsonValueKind.String)
            throw new FormatException("has an edit without a place");
        long? place = !edit.TryGetProperty("place", out var rank) ? null : rank.ValueKind == JsonValueKind.Number && rank.TryGetInt64(out var n) ? n : throw new FormatException("has an edit whose rank is no whole number");
        JsonElement? Value(string field) => edit.TryGetProperty(field, out var value) ? value : null;
        return new(where.GetString()!, place, Value("before"), Value("after"));
    }

    /// <summary>Photos that edits name, present or past.</summary>
    public static IEnumerable<PhotoHash> PhotosIn(IEnumerable<JournalEdit> edits) =>
        edits.Where(e => e.Where.StartsWith("photos/", StringComparison.Ordinal)).Select(e => new PhotoHash(e.Where["photos/".Length..]));
}
