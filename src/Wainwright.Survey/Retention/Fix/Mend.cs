using Wainwright.Fitout;

namespace Wainwright.Survey.Retention.Fix;

/// <summary>One thing to do.</summary>
/// <param name="What">What, where and how many, in words.</param>
/// <param name="Count">How many alike.</param>
/// <param name="At">Where [mm]; none for what has no one place.</param>
/// <param name="Minutes">Time for all of them [min]; common practice, no source.</param>
/// <param name="Material">Material for all of them [money of the job]; common practice, no source.</param>
public sealed record MendStep(string What, int Count, IReadOnlyList<Place> At, double Minutes, double Material);

/// <summary>What would make a part hold, and what it then holds.</summary>
public sealed record Mend
{
    /// <summary>The part.</summary>
    public required PartId Part { get; init; }

    /// <summary>How it is held as found.</summary>
    public required PartHolding Before { get; init; }

    /// <summary>What to do; empty when nothing needs doing or nothing was found that would do.</summary>
    public IReadOnlyList<MendStep> Steps { get; init; } = [];

    /// <summary>Price of all that [money of the job], work at the job's rate.</summary>
    public double Price { get; init; }

    /// <summary>Whether no set of the fixings considered costs less and holds, so far as its limit analysis reaches.</summary>
    public bool IsCheapest { get; init; }

    /// <summary>Why nothing was found that would do; absent when something was.</summary>
    public string? WhyNot { get; init; }

    /// <summary>What a drill may meet, and what the answer does not prove.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The job with all of it done; absent when nothing was found.</summary>
    public Job? Mended { get; init; }

    /// <summary>How the part is held then, judged anew; absent when nothing was found.</summary>
    public PartHolding? After { get; init; }

    /// <summary>Checks of its drawers, doors and shelves that fell short or could not be told, judged anew.</summary>
    public IReadOnlyList<Check> ChecksAfter { get; init; } = [];

    /// <summary>
    /// The same written down as planned: nobody has put the added fixings in or seen them, so nothing counts on them until somebody
    /// has. Absent when nothing was found.
    /// </summary>
    /// <param name="before">The job that the mend was worked out from.</param>
    public Job? PlannedIn(Job before)
    {
        ArgumentNullException.ThrowIfNull(before);
        var there = before.Joints.Select(j => j.Id).ToHashSet();
        return Mended is { } done ? done with { Joints = [.. done.Joints.Select(j => there.Contains(j.Id) ? j : j with { Known = Known.Inferred, State = FixingState.NotSeen })] } : null;
    }
}
