using System.Text.Json;
using System.Text.Json.Serialization;
using Wainwright.Fitout;

namespace Wainwright.Records;

/// <summary>One file in a pack.</summary>
internal sealed record PackedFile(string Name, long Bytes, string Sha256);

/// <summary>The list of everything in a pack, written last: a pack that was cut off has none.</summary>
/// <param name="Holds">What the pack is, <c>job</c> or <c>store</c>.</param>
/// <param name="Format">Format number of the pack.</param>
/// <param name="Files">The files.</param>
/// <param name="Job">Id of the job, for a job.</param>
/// <param name="Last">Hash of the last entry of its journal, for a job.</param>
internal sealed record PackManifest(string Holds, int Format, IReadOnlyList<PackedFile> Files, string? Job = null, string? Last = null)
{
    public const string Name = "manifest.json";
    public const int CurrentFormat = 1;

    private static readonly JsonSerializerOptions Options = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase, WriteIndented = true, NewLine = "\n", DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow, AllowDuplicateProperties = false, RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true, MaxDepth = 8, Encoder = JobFormat.Compact.Encoder,
    };

    public byte[] Write() => [.. JsonSerializer.SerializeToUtf8Bytes(this, Options), (byte)'\n'];

    public static PackManifest? Read(byte[] utf8, string holds, List<Issue> issues)
    {
        try
        {
            // the format number first: a newer manifest may hold what this program cannot read
            using (var document = JsonDocument.Parse(utf8, new JsonDocumentOptions { MaxDepth = 8 }))
                if (document.RootElement is { ValueKind: JsonValueKind.Object } root && root.TryGetProperty("format", out var number) && number.TryGetInt32(out var format) && format > CurrentFormat)
                {
                    issues.Add(new(Name, $"is of format {format}, this program knows {CurrentFormat}", "open it with a newer program"));
                    return null;
                }
            var manifest = JsonSerializer.Deserialize<PackManifest>(utf8, Options);
            if (manifest is { Format: CurrentFormat } && manifest.Holds == holds && manifest.Files.All(f => f is { Bytes: >= 0 })) return manifest;
            issues.Add(new(Name, manifest is { Holds: "job" or "store" } && manifest.Holds != holds ? $"lists a {manifest.Holds}, a {holds} is wanted here" : "is not a manifest of this program", "choose the right file"));
        }
        catch (Exception error) when (error is JsonException or InvalidOperationException)
        {
            issues.Add(new(Name, "cannot be read", "take another copy"));
        }
        return null;
    }
}
