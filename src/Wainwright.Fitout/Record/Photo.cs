namespace Wainwright.Fitout;

/// <summary>A photo, named by what is in it. The bytes lie outside the job file.</summary>
public sealed record Photo
{
    /// <summary>SHA-256 of its bytes.</summary>
    public required PhotoHash Hash { get; init; }

    /// <summary>What it shows.</summary>
    public required string Shows { get; init; }

    /// <summary>Media type, for example <c>image/jpeg</c>.</summary>
    public required string MediaType { get; init; }

    /// <summary>When it was taken; absent when the file does not say.</summary>
    public DateTimeOffset? TakenAt { get; init; }

    /// <summary>By whom: a role or initials.</summary>
    public string? TakenBy { get; init; }

    /// <summary>The stage it belongs to.</summary>
    public StageId? Stage { get; init; }

    /// <summary>Parts in it.</summary>
    public IReadOnlyList<PartId> Parts { get; init; } = [];

    /// <summary>A drawing that stands in for a photo.</summary>
    public bool Drawn { get; init; }
}

/// <summary>What a stage is a state of.</summary>
public enum StageKind
{
    /// <summary>As it came in.</summary>
    AsFound,

    /// <summary>A step of the strip-down.</summary>
    StripDown,

    /// <summary>A step of the rebuild.</summary>
    Rebuild,

    /// <summary>As handed over.</summary>
    HandedOver,
}

/// <summary>A dated state of the van.</summary>
public sealed record Stage
{
    /// <summary>Its id.</summary>
    public required StageId Id { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>What it is a state of.</summary>
    public required StageKind Kind { get; init; }

    /// <summary>The day.</summary>
    public required DateOnly On { get; init; }

    /// <summary>Parts that are out at this stage.</summary>
    public IReadOnlyList<PartId> PartsOut { get; init; } = [];

    /// <summary>Anything else.</summary>
    public string? Note { get; init; }
}
