namespace Wainwright.Fitout;

/// <summary>Mishap severity categories of MIL-STD-882E, table I.</summary>
public enum Severity
{
    /// <summary>Category 1: death, permanent total disability.</summary>
    Catastrophic = 1,

    /// <summary>Category 2: permanent partial disability, several in hospital.</summary>
    Critical = 2,

    /// <summary>Category 3: injury with lost working days.</summary>
    Marginal = 3,

    /// <summary>Category 4: injury without a lost day.</summary>
    Negligible = 4,
}

/// <summary>Probability levels of MIL-STD-882E, table II.</summary>
public enum Likelihood
{
    /// <summary>Level A.</summary>
    Frequent,

    /// <summary>Level B.</summary>
    Probable,

    /// <summary>Level C.</summary>
    Occasional,

    /// <summary>Level D.</summary>
    Remote,

    /// <summary>Level E.</summary>
    Improbable,

    /// <summary>Level F: the hazard is gone.</summary>
    Eliminated,
}

/// <summary>When something has to be done, apart from how bad it is.</summary>
public enum Urgency
{
    /// <summary>Stop use now.</summary>
    U0,

    /// <summary>Before next use.</summary>
    U1,

    /// <summary>Within a month.</summary>
    U2,

    /// <summary>At next service.</summary>
    U3,

    /// <summary>Watch.</summary>
    U4,
}

/// <summary>A use of the van that a finding can forbid.</summary>
public enum Use
{
    /// <summary>Driving.</summary>
    Drive,

    /// <summary>Driving with the racks, lockers and tanks loaded.</summary>
    DriveLoaded,

    /// <summary>Sleeping in it.</summary>
    SleepIn,

    /// <summary>The fuel heater.</summary>
    Heater,

    /// <summary>Shower and basin.</summary>
    Shower,

    /// <summary>Gas.</summary>
    Gas,

    /// <summary>Mains, from the post or from an inverter.</summary>
    Mains,

    /// <summary>The DC system.</summary>
    Dc,
}

/// <summary>A fault or a doubt, with evidence, harm, likelihood and remedy.</summary>
public sealed record Finding
{
    /// <summary>Its id.</summary>
    public required FindingId Id { get; init; }

    /// <summary>What is wrong, in one sentence that says where, what and how much.</summary>
    public required string What { get; init; }

    /// <summary>Ids from the fault catalogue, in words: <c>attach-01</c>.</summary>
    public IReadOnlyList<string> Faults { get; init; } = [];

    /// <summary>Parts concerned, the first above all.</summary>
    public IReadOnlyList<PartId> Parts { get; init; } = [];

    /// <summary>Joints concerned.</summary>
    public IReadOnlyList<JointId> Joints { get; init; } = [];

    /// <summary>Lines concerned.</summary>
    public IReadOnlyList<LineId> Lines { get; init; } = [];

    /// <summary>Numbered points concerned.</summary>
    public IReadOnlyList<PointId> Points { get; init; } = [];

    /// <summary>How it is known.</summary>
    public required Known Known { get; init; }

    /// <summary>Evidence in words.</summary>
    public string? Evidence { get; init; }

    /// <summary>Readings that show it.</summary>
    public IReadOnlyList<ReadingId> Readings { get; init; } = [];

    /// <summary>Photos that show it.</summary>
    public IReadOnlyList<PhotoHash> Photos { get; init; } = [];

    /// <summary>Worst harm that is credible; absent when it harms nobody or nobody has judged it.</summary>
    public Severity? Severity { get; init; }

    /// <summary>Mildest harm that is credible; absent for the same as the worst.</summary>
    public Severity? SeverityAtBest { get; init; }

    /// <summary>How likely that harm is at most.</summary>
    public Likelihood? Likelihood { get; init; }

    /// <summary>How likely it is at least; absent for the same.</summary>
    public Likelihood? LikelihoodAtLeast { get; init; }

    /// <summary>When something has to be done; absent when not judged.</summary>
    public Urgency? Urgency { get; init; }

    /// <summary>The uses it speaks of.</summary>
    public IReadOnlyList<Use> AppliesTo { get; init; } = [];

    /// <summary>Remedies proposed, the advised one first; doing nothing may be one.</summary>
    public IReadOnlyList<string> Remedies { get; init; } = [];

    /// <summary>Who may do it, where that is reserved.</summary>
    public string? ReservedFor { get; init; }

    /// <summary>What was decided and by whom (a role), once it is.</summary>
    public string? Decision { get; init; }

    /// <summary>What look or measurement would settle it.</summary>
    public string? WouldTell { get; init; }

    /// <summary>The stage at which it was found.</summary>
    public StageId? Stage { get; init; }
}
