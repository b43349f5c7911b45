using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Survey;

/// <summary>Two parts that, as recorded, surely stand in each other: a tape was misread or a part is described too simply.</summary>
/// <param name="First">One part.</param>
/// <param name="Second">The other.</param>
/// <param name="DepthMm">How far one would have to move to be clear [mm], at least.</param>
public sealed record Overlap(PartId First, PartId Second, int DepthMm);

/// <summary>Doubts about recorded places: two things cannot be in one place.</summary>
public static class Overlaps
{
    /// <summary>Overlap up to which nobody asks [mm]; common practice, no source: sheets are bowed, tapes are read to a millimetre or two.</summary>
    public const int AllowedMm = 2;

    /// <summary>Pairs of parts that overlap by more than allowed, deepest first. A line's own part may pass through its holes.</summary>
    /// <param name="job">The job.</param>
    /// <param name="allowedMm">Overlap up to which nobody asks [mm].</param>
    public static IReadOnlyList<Overlap> Of(Job job, int allowedMm = AllowedMm)
    {
        ArgumentNullException.ThrowIfNull(job);
        var through = job.Lines.Where(l => l.Part is not null).SelectMany(l => l.Through, (l, hole) => (l.Part!.Value, hole)).ToHashSet();
        var solid = job.Parts.Where(p => p.Solids.Count > 0).Select(p => (p.Id, Body: PartBody.Of(p.Solids))).ToList();
        List<Overlap> found = [];
        for (var i = 0; i < solid.Count; i++)
            for (var k = i + 1; k < solid.Count; k++)
            {
                var (a, b) = (solid[i], solid[k]);
                if (!a.Body.Bounds.Overlaps(b.Body.Bounds) || through.Contains((a.Id, b.Id)) || through.Contains((b.Id, a.Id))) continue;
                var depth = a.Body.Inner.SelectMany(_ => b.Body.Inner, Depth).DefaultIfEmpty(0).Max();
                if (depth > allowedMm) found.Add(new(a.Id, b.Id, depth));
            }
        return [.. found.OrderByDescending(o => o.DepthMm).ThenBy(o => o.First.Text, StringComparer.Ordinal).ThenBy(o => o.Second.Text, StringComparer.Ordinal)];
    }

    private static int Depth(Box a, Box b)
    {
        var both = a.Common(b);
        return both.IsEmpty ? 0 : Math.Min(both.Length(0), Math.Min(both.Length(1), both.Length(2)));
    }
}
