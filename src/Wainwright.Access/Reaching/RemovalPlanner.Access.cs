using Wainwright.Fitout;

namespace Wainwright.Access;

public sealed partial class RemovalPlanner
{
    /// <summary>How to get to see parts, for one question.</summary>
    /// <param name="job">The job.</param>
    /// <param name="parts">The parts to see.</param>
    /// <param name="options">What the planner is told beside; absent for the usual.</param>
    public static RemovalPlan See(Job job, IReadOnlyList<PartId> parts, AccessOptions? options = null) => new RemovalPlanner(job, options).See(parts);

    /// <summary>How to get to see parts: a clear line from where a head can be to a spot on each.</summary>
    /// <param name="parts">The parts to see; those that are out already or have no measures are passed over.</param>
    /// <exception cref="ArgumentException">A part is not in the job.</exception>
    public RemovalPlan See(IReadOnlyList<PartId> parts) => Plan(parts, AccessKind.See);
}
