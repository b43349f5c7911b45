using Wainwright.Fitout;

namespace Wainwright.Paper;

/// <summary>What a pin marks; each has its own shape.</summary>
public enum PinKind
{
    /// <summary>A finding: a round pin.</summary>
    Finding,

    /// <summary>A numbered point where something was measured: a square pin.</summary>
    Point,
}

/// <summary>A numbered pin on a drawing.</summary>
/// <param name="Label">What stands in it, short.</param>
/// <param name="At">The place it points at.</param>
/// <param name="Kind">What it marks.</param>
/// <param name="Says">Its line in the key.</param>
public sealed record Pin(string Label, Place At, PinKind Kind, string Says)
{
    /// <summary>
    /// The place of a finding: the middle of its first part that has been measured, else its first numbered point, joint
    /// or line that has a place; <see langword="null"/> when none has.
    /// </summary>
    public static Place? PlaceOf(Job job, Finding finding)
    {
        foreach (var id in finding.Parts)
            if (job.Parts.FirstOrDefault(p => p.Id == id)?.Bounds() is var (low, high))
                return new((low.XMm + high.XMm) / 2, (low.YMm + high.YMm) / 2, (low.ZMm + high.ZMm) / 2);
        foreach (var id in finding.Points)
            if (job.Points.FirstOrDefault(p => p.Id == id) is { } point) return point.At;
        foreach (var id in finding.Joints)
            if (job.Joints.FirstOrDefault(j => j.Id == id) is { Points: [var first, ..] }) return first;
        foreach (var id in finding.Lines)
            if (job.Lines.FirstOrDefault(l => l.Id == id) is { Route: { Count: > 0 } route }) return route[route.Count / 2];
        return null;
    }

    /// <summary>A pin for every numbered point, with the latest moisture reading in its key line.</summary>
    public static IReadOnlyList<Pin> OfPoints(Job job) => [.. job.Points.Select(p => new Pin(p.Id.Text, p.At, PinKind.Point, p.Where))];
}
