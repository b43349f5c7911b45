using System.Text.Json;
using Wainwright.Access;

namespace Wainwright.Web;

/// <summary>How far somebody has come with a plan. Kept in the browser, so that neither a reload nor a flat battery loses it.</summary>
public sealed record FollowLog
{
    /// <summary>Steps that are done, by key.</summary>
    public IReadOnlyList<string> Done { get; init; } = [];

    /// <summary>The bag that each joint's fixings went into.</summary>
    public IReadOnlyDictionary<string, string> Bags { get; init; } = new Dictionary<string, string>();

    /// <summary>The log as kept; a new one when nothing was, or nothing that can be read.</summary>
    public static FollowLog Read(string? kept)
    {
        if (kept is null) return new();
        try
        {
            return JsonSerializer.Deserialize<FollowLog>(kept, JsonSerializerOptions.Web) ?? new();
        }
        catch (JsonException)
        {
            // somebody else wrote there; ticks can be set again
            return new();
        }
    }

    /// <summary>The log to be kept; nothing when there is nothing to keep.</summary>
    public string? Written() => Done.Count == 0 ? null : JsonSerializer.Serialize(this, JsonSerializerOptions.Web);

    /// <summary>What a step is called in the log: the same in every plan of the job.</summary>
    public static string KeyOf(RemovalStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return $"{step.Kind} {step.Part} {step.Joint} {step.Line} {step.Medium} {step.Piece} {(step.Kind == StepKind.Disconnect ? step.Action : "")}".Trim();
    }
}
