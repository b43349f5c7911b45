using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>What a plan is worth.</summary>
public enum Proof
{
    /// <summary>No plan made of these moves is cheaper: proved.</summary>
    ProvedCheapest,

    /// <summary>The best one found before the budget ran out; the lower bound says how much cheaper another could be.</summary>
    BestFound,

    /// <summary>No plan made of these moves exists: proved.</summary>
    ProvedUnreachable,

    /// <summary>None was found, but the measures contradict one another: measure what is named first.</summary>
    CannotTell,
}

/// <summary>How to take parts out, or get a hand to them: what comes out, in which order, by which door, in how long.</summary>
public sealed partial record RemovalPlan
{
    /// <summary>What was asked for.</summary>
    public required IReadOnlyList<PartId> Targets { get; init; }

    /// <summary>What is wanted of them: to see, to reach or to take out.</summary>
    public AccessKind Kind { get; init; } = AccessKind.Remove;

    /// <summary>Whether the parts are only to be reached by hand, or seen, and not taken out.</summary>
    public required bool ReachOnly { get; init; }

    /// <summary>What the plan is worth.</summary>
    public required Proof Proof { get; init; }

    /// <summary>
    /// No plan costs less [min]; 0 when there is none, or when it is not known. Where something else than labour is sought: no
    /// plan that has as little of it costs less.
    /// </summary>
    public required double LowerBoundMinutes { get; init; }

    /// <summary>Labour until the targets are out [min], all people together.</summary>
    public required double OutMinutes { get; init; }

    /// <summary>Labour to bring everything back [min], its own sum.</summary>
    public required double BackMinutes { get; init; }

    /// <summary>Expected labour to put right what is spoiled [min].</summary>
    public required double DamageMinutes { get; init; }

    /// <summary>All of it [min].</summary>
    public double TotalMinutes => OutMinutes + BackMinutes + DamageMinutes;

    /// <summary>What is done, in order, the targets' own steps included; empty when there is no plan.</summary>
    public required IReadOnlyList<RemovalStep> Steps { get; init; }

    /// <summary>What stands in the targets' way with nothing removed, in each direction.</summary>
    public required IReadOnlyList<Blocking> BlockedBy { get; init; }

    /// <summary>Where there is no plan: what holds what, until the structure of the van holds the last.</summary>
    public required IReadOnlyList<HeldFor> HeldForGood { get; init; }

    /// <summary>What the plan costs if round and slanting parts are as small as they can be and nothing needs clearance; absent when not asked or the same.</summary>
    public Bracket? Bracket { get; init; }

    /// <summary>What is taken for granted, for this plan.</summary>
    public required IReadOnlyList<string> Assumes { get; init; }

    /// <summary>What is not known and would make the plan surer: each names the measurement.</summary>
    public required IReadOnlyList<string> ToMeasure { get; init; }

    /// <summary>What to heed, and what this plan does not prove.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>Parts that leave the van, in order; one that leaves in pieces with its last piece.</summary>
    public IEnumerable<PartId> PartsOut => Leaving.In(Proved?.Job.Parts ?? [], Steps);

    /// <summary>How much the plan has of what was sought, and what no plan goes below; absent when there is no plan.</summary>
    public Sought? Sought { get; init; }

    /// <summary>All that is done, what only counts as done too, by its stable name and in order.</summary>
    internal IReadOnlyList<string> Order { get; init; } = [];

    internal PlanQuestion? Question { get; init; }

    internal ProvedBy? Proved { get; init; }

    /// <summary>How much was worked out for it.</summary>
    public required SearchEffort Effort { get; init; }
}

/// <summary>What a search spent.</summary>
/// <param name="Questions">Questions of room worked out.</param>
/// <param name="MasterSolves">Covering problems solved.</param>
/// <param name="Cuts">Proved sentences of the kind “whoever takes this out must also take out one of those”.</param>
public sealed record SearchEffort(int Questions, int MasterSolves, int Cuts);

/// <summary>The answer under the most favourable reading of shapes and clearances.</summary>
/// <param name="LowMinutes">Total then [min]; absent when even then there is no plan.</param>
/// <param name="Differs">Parts that would then stay in: a trial fit or a closer measure of what is round them may save them.</param>
public sealed record Bracket(double? LowMinutes, IReadOnlyList<PartId> Differs);

/// <summary>What stops a part first in one direction, with nothing removed.</summary>
/// <param name="Target">The part that is pushed.</param>
/// <param name="Direction">Where it is pushed.</param>
/// <param name="Part">What it meets; absent for the van itself.</param>
/// <param name="FreeMm">How far it goes before that.</param>
/// <param name="ShortMm">How much it is too large to pass.</param>
/// <param name="Dodge">The side to which it would have to shift to clear it.</param>
public sealed record Blocking(PartId Target, Direction Direction, PartId? Part, int FreeMm, int ShortMm, Direction Dodge);

/// <summary>What stands behind a plan, for its certificate.</summary>
internal sealed record ProvedBy(Fitout.Job Job, AccessOptions Options, Outcome Outcome, IReadOnlyList<string> Keys, IReadOnlyList<int> Given);
