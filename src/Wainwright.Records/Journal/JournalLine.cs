using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>An entry as it lies in the database or in a file, word for word: the text that is hashed, before anybody has understood it.</summary>
internal sealed record RawEntry(string Job, int Seq, string At, string Who, string What, string Kind, int? Of, string Previous, string Edits, string Hash)
{
    /// <summary>The canonical text: one JSON object, fields in this order, no space, characters escaped as the job file escapes them.</summary>
    public string Body => string.Create(CultureInfo.InvariantCulture,
        $"{{\"job\":{JournalLine.Quoted(Job)},\"seq\":{Seq},\"at\":{JournalLine.Quoted(At)},\"who\":{JournalLine.Quoted(Who)},\"what\":{JournalLine.Quoted(What)},\"kind\":{JournalLine.Quoted(Kind)}{(Of is { } of ? $",\"of\":{of}" : "")},\"previous\":{JournalLine.Quoted(Previous)},\"edits\":{Edits}}}");

    /// <summary>SHA-256 of the canonical text in UTF-8.</summary>
    public string Recomputed() => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(Body)));

    /// <summary>The line of <c>journal.jsonl</c>: the canonical text with the hash as a last field.</summary>
    public string Line() => $"{Body[..^1]},\"hash\":\"{Hash}\"}}";

    /// <exception cref="FormatException">The entry is not one this program writes.</exception>
    public JournalEntry Understood() =>
        new(Job, Seq, JournalLine.Time(At), Who, What, JournalLine.KindOf(Kind), Of, JournalEdits.Read(Edits), Previous, Hash);
}

/// <summary>How an entry of the journal is written and hashed.</summary>
internal static class JournalLine
{
    private const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";
    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = 64, AllowDuplicateProperties = false };

    /// <summary>What the first entry has in place of the hash of the one before.</summary>
    public static readonly string NoHash = new('0', 64);

    public static RawEntry Sealed(string job, int seq, DateTimeOffset at, string who, string what, EntryKind kind, int? of, string previous, IEnumerable<JournalEdit> edits)
    {
        var open = new RawEntry(job, seq, at.UtcDateTime.ToString(TimeFormat, CultureInfo.InvariantCulture), who, what, Word(kind), of, previous, JournalEdits.Text(edits), "");
        return open with { Hash = open.Recomputed() };
    }

    /// <summary>Reads a line of <c>journal.jsonl</c>; refuses whatever is not exactly as this program writes it, so that the hash covers every byte.</summary>
    /// <exception cref="FormatException">The line is not canonical; the message says where.</exception>
    public static RawEntry Read(string line)
    {
        var tail = line.Length - "\"}".Length - 64 - ",\"hash\":\"".Length;
        if (tail < 0) throw new FormatException("is cut off");
        try
        {
            using var document = JsonDocument.Parse(line, Strict);
            var root = document.RootElement;
            if (root.ValueKind != JsonValueKind.Object) throw new FormatException("is not an object");
            string Text(string field) => root.TryGetProperty(field, out var v) && v.ValueKind == JsonValueKind.String ? v.GetString()! : throw new FormatException($"has no text “{field}”");
            int? Number(string field) => !root.TryGetProperty(field, out var v) ? null : v.ValueKind == JsonValueKind.Number && v.TryGetInt32(out var n) ? n : throw new FormatException($"has no whole number “{field}”");
            var read = new RawEntry(Text("job"), Number("seq") ?? throw new FormatException("has no number"), Text("at"), Text("who"), Text("what"), Text("kind"),
                Number("of"), Text("previous"), root.TryGetProperty("edits", out var edits) ? edits.GetRawText() : "", Text("hash"));
            _ = read.Understood();
            if (read.Line() != line) throw new FormatException("is not written as this program writes it");
            return read;
        }
        catch (JsonException error)
        {
            throw new FormatException("is not JSON", error);
        }
        catch (InvalidOperationException error)
        {
            // half a surrogate pair: legal JSON, but no text
            throw new FormatException("holds half a character", error);
        }
    }

    public static string Quoted(string text) => JsonSerializer.Serialize(text, JobFormat.Compact);

    public static string Word(EntryKind kind) => kind switch
    {
        EntryKind.Begin => "begin",
        EntryKind.Change => "change",
        EntryKind.Undo => "undo",
        EntryKind.Redo => "redo",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };

    public static EntryKind KindOf(string word) => word switch
    {
        "begin" => EntryKind.Begin,
        "change" => EntryKind.Change,
        "undo" => EntryKind.Undo,
        "redo" => EntryKind.Redo,
        _ => throw new FormatException($"is of a kind this program does not know, “{word}”"),
    };

    public static DateTimeOffset Time(string text) =>
        DateTimeOffset.TryParseExact(text, TimeFormat, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out var at)
            ? at
            : throw new FormatException($"has no time “{text}”");
}
