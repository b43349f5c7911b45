using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>The load space in stretches along its length, each with room for one job of work at a time.</summary>
/// <param name="job">The job.</param>
/// <param name="standingMm">Length that one working person takes up [mm].</param>
internal sealed class Zones(Job job, double standingMm)
{
    private readonly double lengthMm = job.Vehicle.LoadSpace.LengthMm.Value;

    private int Count => Math.Max(1, (int)Math.Floor(lengthMm / standingMm));

    /// <summary>The stretches a step takes up: where its fixing or part is; for a load, all it is carried along to the door.</summary>
    public IReadOnlyList<int> Of(Scene scene, Item item, RemovalStep step)
    {
        if (item is MakeSafe || step.OutMinutes == 0) return [];
        if (Wording.PartOf(scene, item) is not { } part || part.Outside) return [];
        var at = item is Undo { Joint.Points: { Count: > 0 } points } ? points.Average(p => p.XMm) : Middle(part);
        if (at is not { } x) return [];
        var way = step.Path.Select(p => x + p.ShiftMm.XMm).Append(x).Select(v => Math.Clamp(v, 0, lengthMm)).ToList();
        var (first, last) = (At(way.Min()), At(way.Max()));
        return [.. Enumerable.Range(first, last - first + 1)];
    }

    /// <summary>In words, measured as a tape would.</summary>
    public string Words(IReadOnlyList<int> zones) => zones.Count == 0 ? "outside"
        : FormattableString.Invariant($"{zones[0] * lengthMm / Count / 1000:0.0} to {(zones[^1] + 1) * lengthMm / Count / 1000:0.0} m");

    private int At(double xMm) => Math.Clamp((int)(xMm / lengthMm * Count), 0, Count - 1);

    private static double? Middle(Part part) => part.Bounds() is var (low, high) ? (low.XMm + high.XMm) / 2 : null;
}
