using Wainwright.Fitout;

namespace Wainwright.Web.Entry;

/// <summary>A planned change of the van taken into the record: joints that are new or other than before, and the parts that changed with them.</summary>
internal static class Adopted
{
    /// <summary>The edits; none when the planned job is as the record is.</summary>
    /// <param name="job">The job as recorded now.</param>
    /// <param name="planned">The job as planned, made of <paramref name="before"/>.</param>
    /// <param name="before">The job that the plan was made from: what has changed since is left as it is now.</param>
    public static IReadOnlyList<Edit> Of(Job job, Job planned, Job before)
    {
        var (parts, joints) = (before.Parts.ToDictionary(p => p.Id), before.Joints.ToDictionary(j => j.Id));
        return
        [
            .. planned.Parts.Where(p => !parts.TryGetValue(p.Id, out var was) || !ReferenceEquals(was, p)).Select(p => Edit.Put(job, "parts", p.Id.Text, p)),
            .. planned.Joints.Where(j => !joints.TryGetValue(j.Id, out var was) || !ReferenceEquals(was, j)).Select(j => Edit.Put(job, "joints", j.Id.Text, j)),
        ];
    }
}
