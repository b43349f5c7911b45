using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>What a joint turned out to be.</summary>
public enum JointNow
{
    /// <summary>It is undone, or was never done up.</summary>
    Undone,

    /// <summary>Its fixings are sheared or stripped: they are drilled.</summary>
    Sheared,

    /// <summary>It is glued or rusted fast: it is cut or prised, and what it holds is spoiled.</summary>
    Glued,
}

/// <summary>How the van turned out to be, against the plan.</summary>
public sealed record Reality
{
    /// <summary>Numbers of the steps that are done.</summary>
    public IReadOnlyList<int> Done { get; init; } = [];

    /// <summary>Joints that are not as recorded.</summary>
    public IReadOnlyDictionary<JointId, JointNow> Joints { get; init; } = new Dictionary<JointId, JointNow>();

    /// <summary>Parts found to be glued as well: prised off, and spoiled.</summary>
    public IReadOnlyList<PartId> Glued { get; init; } = [];

    /// <summary>Parts that do not move, or are not to be moved after all.</summary>
    public IReadOnlyList<PartId> DoNotMove { get; init; } = [];

    /// <summary>Parts found that the record does not have.</summary>
    public IReadOnlyList<Part> Found { get; init; } = [];
}

/// <summary>A plan for what is left.</summary>
/// <param name="Planner">Plans on from here: ask it for audits, other plans and the next change.</param>
/// <param name="Plan">The plan for what is left.</param>
/// <param name="Done">All steps done so far.</param>
/// <param name="Changed">What changed, in words.</param>
/// <param name="MoreMinutes">How much more is left to do than the old plan had left [min]; below nought when less; absent when one of the two is no plan.</param>
public sealed record Replanned(RemovalPlanner Planner, RemovalPlan Plan, IReadOnlyList<RemovalStep> Done, IReadOnlyList<string> Changed, double? MoreMinutes);
