namespace Wainwright.Fitout;

/// <summary>One vehicle in the workshop for one reason, from intake to handover.</summary>
public sealed record Job
{
    /// <summary>The format this program writes.</summary>
    public const int CurrentFormat = 1;

    /// <summary>Format number of the file.</summary>
    [Limits(1, 1_000)]
    public required int Format { get; init; }

    /// <summary>Job reference, free-form and stable.</summary>
    public required string Id { get; init; }

    /// <summary>What people call it.</summary>
    public required string Title { get; init; }

    /// <summary>Money of the job, ISO 4217.</summary>
    public string? Currency { get; init; }

    /// <summary>Workshop rate [money per hour].</summary>
    [Limits(0, 10_000)]
    public decimal? RatePerHour { get; init; }

    /// <summary>
    /// What everything fitted shall be judged against; none for <see cref="LoadCase.DrivingLightVan"/> and
    /// <see cref="LoadCase.NineThreeCab"/>.
    /// </summary>
    public IReadOnlyList<LoadCase> JudgedAgainst { get; init; } = [];

    /// <summary>How the van came in.</summary>
    public Intake? Intake { get; init; }

    /// <summary>The base vehicle.</summary>
    public required Vehicle Vehicle { get; init; }

    /// <summary>Everything fitted.</summary>
    public IReadOnlyList<Part> Parts { get; init; } = [];

    /// <summary>How parts are held and connected.</summary>
    public IReadOnlyList<Joint> Joints { get; init; } = [];

    /// <summary>Pipes, hoses, cables, ducts, flues.</summary>
    public IReadOnlyList<Line> Lines { get; init; } = [];

    /// <summary>Numbered points.</summary>
    public IReadOnlyList<ReadingPoint> Points { get; init; } = [];

    /// <summary>Readings, oldest first.</summary>
    public IReadOnlyList<Reading> Readings { get; init; } = [];

    /// <summary>Faults and doubts.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>Photos.</summary>
    public IReadOnlyList<Photo> Photos { get; init; } = [];

    /// <summary>Dated states.</summary>
    public IReadOnlyList<Stage> Stages { get; init; } = [];

    /// <summary>Making safe, in the order done.</summary>
    public IReadOnlyList<IsolationStep> Isolation { get; init; } = [];

    /// <summary>Weighings.</summary>
    public IReadOnlyList<Weighing> Weighings { get; init; } = [];

    /// <summary>What the owners approved or declined.</summary>
    public IReadOnlyList<Approval> Approvals { get; init; } = [];

    /// <summary>Estimate.</summary>
    public IReadOnlyList<EstimateLine> Estimate { get; init; } = [];

    /// <summary>Bags and tags.</summary>
    public IReadOnlyList<Bag> Bags { get; init; } = [];

    /// <summary>Custody of failed parts.</summary>
    public IReadOnlyList<Custody> Custody { get; init; } = [];

    /// <summary>Test sheets.</summary>
    public IReadOnlyList<TestSheet> Tests { get; init; } = [];

    /// <summary>Certificates.</summary>
    public IReadOnlyList<Certificate> Certificates { get; init; } = [];

    /// <summary>Anything else.</summary>
    public string? Note { get; init; }
}
