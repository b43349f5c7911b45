using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>The three kinds of access to one part, in the van as it stands.</summary>
/// <param name="Part">The part.</param>
/// <param name="See">To look at it.</param>
/// <param name="Reach">To get a hand to it.</param>
/// <param name="Remove">To take it out.</param>
public sealed record AccessTo(PartId Part, AccessAnswer See, AccessAnswer Reach, AccessAnswer Remove);

/// <summary>Whether a part is seen, reached or taken out with nothing else out, and if not, what is missing and how to get there.</summary>
public sealed record AccessAnswer
{
    /// <summary>What is wanted.</summary>
    public required AccessKind Kind { get; init; }

    /// <summary>Whether no other part has to come out for it.</summary>
    public required bool Now { get; init; }

    /// <summary>How to get there; absent where there is nothing to do.</summary>
    public RemovalPlan? Plan { get; init; }

    /// <summary>
    /// What is missing for it with nothing else out, where it comes down to one thing [mm]: how much of <see cref="By"/> is in the
    /// line of sight, how much longer the arm would have to be, how much the part is too large to pass. Absent where it does not.
    /// </summary>
    public int? ShortMm { get; init; }

    /// <summary>What stands in the way first; absent when nothing does or it is the van itself.</summary>
    public PartId? By { get; init; }

    /// <summary>Which share of people reach it once what the plan says is out; absent where that was not worked out.</summary>
    public WhoReaches? Who { get; init; }

    /// <summary>All of it in words.</summary>
    public required string Words { get; init; }
}
