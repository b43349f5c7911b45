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

    /// <summary>What was found otherwise than recorded, in order.</summary>
    public IReadOnlyList<FoundSo> Found { get; init; } = [];

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
    public string? Written() => Done.Count == 0 && Found.Count == 0 ? null : JsonSerializer.Serialize(this, JsonSerializerOptions.Web);
}

/// <summary>What a joint or a part turned out to be.</summary>
public enum FoundAs
{
    /// <summary>A joint is undone or not there.</summary>
    Undone,

    /// <summary>A joint's fixings are sheared.</summary>
    Sheared,

    /// <summary>A joint is stuck fast, or a part is glued down as well.</summary>
    Glued,

    /// <summary>A part does not move, or is to stay.</summary>
    Stays,
}

/// <summary>One thing found otherwise than recorded.</summary>
/// <param name="Id">The joint or the part.</param>
/// <param name="As">What it turned out to be.</param>
/// <param name="IsJoint">Whether it is a joint.</param>
/// <param name="Done">Keys of the steps that were done by then.</param>
public sealed record FoundSo(string Id, FoundAs As, bool IsJoint, IReadOnlyList<string> Done)
{
    /// <summary>The same for the planner, against the plan that was followed.</summary>
    public Reality Against(RemovalPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var done = plan.Steps.Where(s => Done.Contains(s.Key)).Select(s => s.Number).ToList();
        return this switch
        {
            { IsJoint: true } => new() { Done = done, Joints = new Dictionary<Fitout.JointId, JointNow> { [new(Id)] = As switch { FoundAs.Undone => JointNow.Undone, FoundAs.Sheared => JointNow.Sheared, _ => JointNow.Glued } } },
            { As: FoundAs.Glued } => new() { Done = done, Glued = [new(Id)] },
            _ => new() { Done = done, DoNotMove = [new(Id)] },
        };
    }
}
