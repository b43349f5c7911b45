using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Wainwright.Fitout;

/// <summary>What reading a job file gave: the job, or why not.</summary>
/// <param name="Job">The job; <see langword="null"/> when any issue is an error.</param>
/// <param name="Issues">Everything found, errors and doubts.</param>
/// <param name="Format">Format number the file was written in; 0 when it could not be told.</param>
public sealed record JobReading(Job? Job, IReadOnlyList<Issue> Issues, int Format);

/// <summary>The job file: one JSON document with a format number.</summary>
public static class JobFile
{
    /// <summary>Largest file taken [bytes].</summary>
    public const int LargestBytes = 64 << 20;

    /// <summary>The job as a readable document, UTF-8, ending in a newline.</summary>
    public static byte[] Write(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return [.. JsonSerializer.SerializeToUtf8Bytes(job with { Format = Job.CurrentFormat }, JobFormat.Options), (byte)'\n'];
    }

    /// <summary>
    /// Reads a document from outside. Reports every fault in one pass; never throws for a bad file and never gives half a job.
    /// </summary>
    public static JobReading Read(ReadOnlyMemory<byte> utf8)
    {
        var issues = new List<Issue>();
        if (Document(utf8, issues) is not { } document) return new(null, issues, 0);
        using (document)
        {
            var root = document.RootElement;
            var format = FormatOf(root, issues);
            if (format == 0) return new(null, issues, 0);
            if (format == Job.CurrentFormat) return Checked(root, issues, format);

            var node = JsonObject.Create(root.Clone())!;
            Migration.ToCurrent(node, format);
            using var migrated = JsonDocument.Parse(node.ToJsonString());
            return Checked(migrated.RootElement, issues, format);
        }
    }

    private static JobReading Checked(JsonElement root, List<Issue> issues, int format)
    {
        new JobShape(issues).Walk(root, typeof(Job), "job");
        if (issues.Count > 0) return new(null, issues, format);
        var job = root.Deserialize<Job>(JobFormat.Options)!;
        issues.AddRange(JobRules.Of(job));
        return new(issues.Any(i => i.Weight == Weight.Error) ? null : job, issues, format);
    }

    private static JsonDocument? Document(ReadOnlyMemory<byte> utf8, List<Issue> issues)
    {
        if (utf8.Length > LargestBytes)
        {
            issues.Add(new("(whole file)", $"must be at most {LargestBytes >> 20} MiB, has {utf8.Length >> 20} MiB", "photos belong beside the job file, not in it"));
            return null;
        }
        if (utf8.Span.StartsWith(Encoding.UTF8.Preamble)) utf8 = utf8[Encoding.UTF8.Preamble.Length..];
        if (FirstBadByte(utf8.Span) is { } bad)
        {
            issues.Add(new(string.Create(CultureInfo.InvariantCulture, $"byte {bad}"), "must be UTF-8 text", "save the file as UTF-8; a text editor can convert it"));
            return null;
        }
        try
        {
            if (FirstHalfCharacter(utf8.Span) is { } half)
            {
                issues.Add(new(string.Create(CultureInfo.InvariantCulture, $"byte {half}"), "text must not hold half a character (a lone surrogate escape)", "write the whole character, or take the escape out"));
                return null;
            }
            return JsonDocument.Parse(utf8, new JsonDocumentOptions { MaxDepth = 32 });
        }
        catch (JsonException error)
        {
            var line = (error.LineNumber ?? 0) + 1;
            issues.Add(new(string.Create(CultureInfo.InvariantCulture, $"line {line}, byte {(error.BytePositionInLine ?? 0) + 1}"),
                "must be one whole JSON document", utf8.IsEmpty ? "the file is empty: take another copy" : "the file is cut off or damaged here: take another copy, or mend this line"));
            return null;
        }
    }

    private static int? FirstBadByte(ReadOnlySpan<byte> utf8)
    {
        for (var at = 0; at < utf8.Length;)
        {
            if (Rune.DecodeFromUtf8(utf8[at..], out _, out var used) != System.Buffers.OperationStatus.Done) return at;
            at += used;
        }
        return null;
    }

    /// <summary>Where the first text begins that escapes half a surrogate pair: valid JSON, and no text.</summary>
    private static long? FirstHalfCharacter(ReadOnlySpan<byte> utf8)
    {
        var reader = new Utf8JsonReader(utf8, new JsonReaderOptions { MaxDepth = 32 });
        while (reader.Read())
        {
            if (reader.TokenType is not (JsonTokenType.String or JsonTokenType.PropertyName) || !reader.ValueIsEscaped) continue;
            try
            {
                _ = reader.GetString();
            }
            catch (InvalidOperationException)
            {
                return reader.TokenStartIndex;
            }
        }
        return null;
    }

    private static int FormatOf(JsonElement root, List<Issue> issues)
    {
        if (root.ValueKind != JsonValueKind.Object)
            issues.Add(new("job", "must be an object { … }", "this is not a job file"));
        else if (!root.TryGetProperty("format", out var number) || number.ValueKind != JsonValueKind.Number || !number.TryGetInt32(out var format))
            issues.Add(new("job.format", "is missing or not a whole number", $"write \"format\": {Job.CurrentFormat}"));
        else if (format < 1)
            issues.Add(new("job.format", $"must be 1 to {Job.CurrentFormat}, is {format}", "write the format the file was made in"));
        else if (format > Job.CurrentFormat)
            issues.Add(new("job.format", $"this program knows formats 1 to {Job.CurrentFormat}, the file is format {format}", "open it with a newer program"));
        else return format;
        return 0;
    }
}
