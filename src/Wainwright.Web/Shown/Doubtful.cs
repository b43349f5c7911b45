using Wainwright.Fitout;

namespace Wainwright.Web.Shown;

/// <summary>What nobody has seen or measured yet, counted for a glance.</summary>
public static class Doubtful
{
    /// <summary>What is doubtful about a part; <see langword="null"/> when nothing is.</summary>
    public static string? About(Part part) => part switch
    {
        { Solids.Count: 0 } => "not measured",
        { Known: Known.NotInspected or Known.Told or Known.Inferred } => Words.Of(part.Known),
        _ => null,
    };

    /// <summary>The counts of a job that are not nought, in words.</summary>
    public static IReadOnlyList<string> Of(Job job)
    {
        var joints = job.Joints.Count(j => j.State == FixingState.NotSeen);
        var hidden = job.Joints.Count(j => j.Hidden);
        return
        [
            .. Say(job.Parts.Count(p => p.Solids.Count == 0), "part nobody has measured", "parts nobody has measured"),
            .. Say(job.Parts.Count(p => p.Known is Known.NotInspected), "part not inspected", "parts not inspected"),
            .. Say(job.Parts.Count(p => p.Known is Known.Told or Known.Inferred), "part only told of or inferred", "parts only told of or inferred"),
            .. Say(job.Parts.Count(p => p.EmptyKg is null), "part without a mass", "parts without a mass"),
            .. Say(joints, "joint not seen", "joints not seen"),
            .. Say(hidden, "joint hidden", "joints hidden"),
        ];
    }

    private static IEnumerable<string> Say(int n, string one, string many) => n == 0 ? [] : [Words.Count(n, one, many)];
}
