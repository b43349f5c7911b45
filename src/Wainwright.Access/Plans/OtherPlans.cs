using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>The next best plans that are really different: at least one part of each better plan stays in.</summary>
/// <param name="Best">The best plan.</param>
/// <param name="Others">The next best, best first.</param>
/// <param name="AreAll">Whether there are no more.</param>
/// <param name="AreProved">Whether it is proved that no really different plan was passed over.</param>
public sealed record OtherPlans(RemovalPlan Best, IReadOnlyList<OtherPlan> Others, bool AreAll, bool AreProved)
{
    /// <summary>
    /// How much more of what is sought the second best takes, minutes where it is labour: little says that the choice is open,
    /// much that the plan hangs on what it takes for granted. Absent when there is no other plan.
    /// </summary>
    public double? Fragility => Others.Count > 0 ? Others[0].More : null;
}

/// <summary>Another plan beside the best.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="More">How much more of what is sought it takes: minutes, or parts.</param>
/// <param name="StayIn">Parts that come out in the best plan and stay in here.</param>
/// <param name="ComeOutToo">Parts that stay in in the best plan and come out here.</param>
public sealed record OtherPlan(RemovalPlan Plan, double More, IReadOnlyList<PartId> StayIn, IReadOnlyList<PartId> ComeOutToo);

/// <summary>What it costs to keep a part in.</summary>
/// <param name="Part">The part.</param>
/// <param name="More">How much more of what is sought is needed with it in: minutes, or parts; absent when there is no plan then.</param>
/// <param name="IsProved">Whether that is exact: both plans are proved the best.</param>
/// <param name="Plan">The best plan with the part in; absent when there is none.</param>
public sealed record KeepingPrice(PartId Part, double? More, bool IsProved, RemovalPlan? Plan);
