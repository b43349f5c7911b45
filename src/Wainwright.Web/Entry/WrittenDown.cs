using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Paper;

namespace Wainwright.Web.Entry;

/// <summary>What was done while following a plan, as one change of the record: a stage with what is out, and the bags.</summary>
public static class WrittenDown
{
    /// <summary>The edits; none when nothing of it is new to the record.</summary>
    /// <param name="job">The job.</param>
    /// <param name="done">Steps that are done.</param>
    /// <param name="outAlready">Parts that were out before, beside those of the last stage.</param>
    /// <param name="bags">The bag of each joint.</param>
    /// <param name="on">The day.</param>
    public static IReadOnlyList<Edit> Of(Job job, IReadOnlyCollection<RemovalStep> done, IEnumerable<PartId> outAlready, IReadOnlyDictionary<JointId, string> bags, DateOnly on)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(done);
        ArgumentNullException.ThrowIfNull(outAlready);
        ArgumentNullException.ThrowIfNull(bags);
        var before = WayQuestion.OutByStage(job);
        var now = outAlready.Concat(Leaving.In(job.Parts, done)).Except(before).ToList();
        return [.. Bags(job, done, bags), .. now.Count == 0 ? [] : (Edit[])[Stage(job, before, now, on)]];
    }

    /// <summary>What leaves in a step.</summary>
    public static IEnumerable<PartId> Load(RemovalStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.Part is { } part ? step.With.Prepend(part) : step.With;
    }

    private static IEnumerable<Edit> Bags(Job job, IEnumerable<RemovalStep> done, IReadOnlyDictionary<JointId, string> bags)
    {
        foreach (var id in done.Select(s => s.Joint).OfType<JointId>().Distinct())
            if (bags.TryGetValue(id, out var number) && job.Bags.All(b => b.Id != number) && job.Joints.FirstOrDefault(j => j.Id == id) is { } joint)
                yield return Edit.Put(job, "bags", number, new Bag { Id = number, Part = joint.Part, Joint = id, Holds = Tools.Fixings(joint) });
    }

    private static Edit Stage(Job job, IReadOnlyList<PartId> before, IReadOnlyList<PartId> now, DateOnly on)
    {
        var name = job.Parts.FirstOrDefault(p => p.Id == now[^1])?.Name ?? now[^1].Text;
        var stage = new Stage { Id = new(NextId.After(job.Stages.Select(s => s.Id.Text), "ST")), Name = $"{name} out", Kind = StageKind.StripDown, On = on, PartsOut = [.. before, .. now] };
        return Edit.Put(job, "stages", stage.Id.Text, stage);
    }
}
