using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention.Fix;

/// <summary>Places where a part could be fixed to the van: where its faces come near ribs, pillars, rails, bows, tie-downs and the floor.</summary>
/// <remarks>Own rule: 40 mm from the part's edges, no further from the shell than a packing piece reaches.</remarks>
internal static class FixingSpots
{
    private const double EdgeMm = 40, PackingMm = 90, HandMm = 100, FloorMm = 80;
    private const int Most = 60;

    /// <summary>A place with what would be put in there.</summary>
    internal sealed record Spot(Place At, FixingKind Kind);

    /// <summary>What cannot be screwed through is strapped: tanks, batteries, appliances, what only stands.</summary>
    public static bool IsStrapped(Part part) => part.Devices.Any(d => d is Tank or Battery or WaterHeater) || part.System is PartSystem.Appliance or PartSystem.Loose || part.LooseGoods;

    /// <summary>The four corners of its foot.</summary>
    public static IReadOnlyList<Spot> RoundFoot(Part part) => part.Bounds() is not var (low, high) ? [] :
        [.. new[] { (low.XMm, low.YMm), (low.XMm, high.YMm), (high.XMm, low.YMm), (high.XMm, high.YMm) }.Select(c => new Spot(new(c.Item1, c.Item2, low.ZMm + 20), FixingKind.FootCorner))];

    public static IReadOnlyList<Spot> Of(Job job, Part part)
    {
        if (part.Bounds() is not var (low, high)) return [];
        var room = job.Vehicle.LoadSpace;
        List<Spot> spots = [];
        var strapped = IsStrapped(part);
        var onFloor = low.ZMm <= FloorMm;
        if (strapped && onFloor)
            foreach (var share in (double[])[0.2, 0.4, 0.6, 0.8]) spots.Add(new(new(low.XMm + share * (high.XMm - low.XMm), (low.YMm + high.YMm) / 2, high.ZMm), FixingKind.StrapOver));
        if (!strapped || !onFloor)
        {
            if (low.YMm <= PackingMm) OnWall(Direction.Left, low.YMm);
            if (high.YMm >= room.WidthMm.Value - PackingMm) OnWall(Direction.Right, high.YMm);
            if (high.ZMm >= room.HeightMm.Value - PackingMm) OnRoof();
        }
        if (!strapped && onFloor) OnFloor();
        // one of two that stand in one place is enough
        return [.. spots.DistinctBy(s => (Math.Round(s.At.XMm / 20), Math.Round(s.At.YMm / 20), Math.Round(s.At.ZMm / 20), s.Kind.Like.Type)).Take(Most)];

        void OnWall(Direction side, double face)
        {
            foreach (var frame in job.Vehicle.Frames.Where(f => f.Side == side || f.Side is null && f.Kind is FrameKind.Rib or FrameKind.Pillar))
            {
                if (frame.Kind is FrameKind.Rib or FrameKind.Pillar && Inside(frame.XMm, low.XMm, high.XMm))
                    foreach (var z in Along(low.ZMm, high.ZMm)) spots.Add(new(new(frame.XMm, face, z), FixingKind.InFrame(frame, side)));
                if (frame.Kind == FrameKind.Rail && frame.ZMm is { } height && Inside(height, low.ZMm, high.ZMm))
                    foreach (var x in Along(Math.Max(low.XMm, frame.XMm), Math.Min(high.XMm, frame.ToXMm ?? high.XMm))) spots.Add(new(new(x, face, height), FixingKind.InFrame(frame, side)));
            }
        }
        void OnRoof()
        {
            foreach (var bow in job.Vehicle.Frames.Where(f => f.Kind == FrameKind.Bow && Inside(f.XMm, low.XMm, high.XMm, 15)))
                foreach (var (from, to) in part.Solids.Select(s => s.Bounds()).Where(b => Inside(bow.XMm, b.Low.XMm, b.High.XMm, 0) && b.High.YMm - b.Low.YMm >= EdgeMm))
                    foreach (var y in Along(from.YMm, to.YMm)) spots.Add(new(new(bow.XMm, y, low.ZMm), FixingKind.InFrame(bow, Direction.Up)));
        }
        void OnFloor()
        {
            var tested = job.Vehicle.PlatedMassKg is { } mass ? PublishedCases.LashingPointN(mass.Value) : null;
            foreach (var at in job.Vehicle.TieDowns.Where(t => Inside(t.XMm, low.XMm, high.XMm, -HandMm) && Inside(t.YMm, low.YMm, high.YMm, -HandMm)))
                if (tested is { } n) spots.Add(new(new(Math.Clamp(at.XMm, low.XMm, high.XMm), Math.Clamp(at.YMm, low.YMm, high.YMm), low.ZMm + 5), FixingKind.AtTieDown(n)));
            foreach (var x in Along(low.XMm, high.XMm))
                foreach (var y in new[] { low.YMm + EdgeMm, high.YMm - EdgeMm }) spots.Add(new(new(x, y, low.ZMm + 5), FixingKind.ThroughFloor));
        }
    }

    private static bool Inside(double at, double low, double high, double edge = EdgeMm) => at >= low + edge && at <= high - edge;

    /// <summary>Near both ends and, on what is long, between.</summary>
    private static double[] Along(double low, double high) => high - low < 3 * EdgeMm ? [(low + high) / 2]
        : high - low < 500 ? [low + EdgeMm, high - EdgeMm]
        : high - low < 1_200 ? [low + EdgeMm, (low + high) / 2, high - EdgeMm]
        : [low + EdgeMm, low + 0.3 * (high - low), (low + high) / 2, high - 0.3 * (high - low), high - EdgeMm];
}
