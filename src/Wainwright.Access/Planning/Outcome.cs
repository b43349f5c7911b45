using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>What a search for the cheapest plan came to.</summary>
public abstract record Outcome
{
    /// <summary>Answers that had to be worked out.</summary>
    public required int Questions { get; init; }

    /// <summary>Covering problems solved.</summary>
    public required int MasterSolves { get; init; }
}

/// <summary>A plan.</summary>
public sealed record Solved : Outcome
{
    /// <summary>What is done, in an order that works.</summary>
    public required IReadOnlyList<int> Order { get; init; }

    /// <summary>Its price.</summary>
    public required long Cost { get; init; }

    /// <summary>No plan is cheaper than this.</summary>
    public required long LowerBound { get; init; }

    /// <summary>Whether it is proved that none is cheaper.</summary>
    public bool IsProved => LowerBound >= Cost;

    /// <summary>The sentences that prove the bound.</summary>
    public required Certificate Proof { get; init; }
}

/// <summary>The targets cannot be done, whatever else is: proved.</summary>
public sealed record Unreachable : Outcome
{
    /// <summary>For each item that stays undone and on which a target waits, what holds it; what of that is allowed stays undone too.</summary>
    public required IReadOnlyDictionary<int, ItemSet> Walls { get; init; }
}
