using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Paper;

namespace Wainwright.Web.Entry;

/// <summary>Which bag the fixings of a step go into.</summary>
public static class BagNumbers
{
    /// <summary>The bag of each joint that leaves something to keep: the one recorded, the one it went into, or the next number.</summary>
    /// <param name="job">The job with the bags there are.</param>
    /// <param name="steps">The steps in order.</param>
    /// <param name="filled">Bags that were filled while following the plan.</param>
    public static IReadOnlyDictionary<JointId, string> Of(Job job, IEnumerable<RemovalStep> steps, IReadOnlyDictionary<string, string> filled)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(steps);
        ArgumentNullException.ThrowIfNull(filled);
        var taken = job.Bags.Select(b => b.Id).Concat(filled.Values).ToHashSet();
        var bags = new Dictionary<JointId, string>();
        foreach (var joint in steps.Where(s => s.Kind is StepKind.Undo or StepKind.Disconnect).Select(s => s.Joint).OfType<JointId>().Distinct())
        {
            if (job.Joints.FirstOrDefault(j => j.Id == joint) is not { } held || !Tools.Bagged(held)) continue;
            var bag = job.Bags.FirstOrDefault(b => b.Joint == joint)?.Id ?? filled.GetValueOrDefault(joint.Text) ?? NextId.After(taken, "BAG-");
            taken.Add(bag);
            bags[joint] = bag;
        }
        return bags;
    }
}
