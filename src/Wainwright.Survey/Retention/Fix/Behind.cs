using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Survey.Retention.Fix;

/// <summary>What a drill meets beyond the place where a fixing goes in.</summary>
internal static class Behind
{
    private const double DepthMm = 80, AsideMm = 25;

    /// <summary>A sentence for each place, worst first; there is always one.</summary>
    public static IEnumerable<string> Of(Job job, Part part, IEnumerable<(Place At, FixingKind Kind)> fixings)
    {
        var all = fixings.ToList();
        foreach (var (at, kind) in all)
        {
            if (kind.Like.Axis is not { } axis) continue;
            var step = axis.Step();
            var far = at + new Place(DepthMm * step.XMm, DepthMm * step.YMm, DepthMm * step.ZMm);
            var (low, high) = (Least(at, far) - new Place(AsideMm, AsideMm, AsideMm), Most(at, far) + new Place(AsideMm, AsideMm, AsideMm));
            foreach (var other in job.Parts.Where(p => p.Id != part.Id && Endangered(p) && p.Solids.Any(s => Meets(s.Bounds(), low, high))))
                yield return string.Create(CultureInfo.InvariantCulture, $"within {DepthMm:0} mm behind {at}: {other.Id} {other.Name}: move it or stop the drill short");
            foreach (var line in job.Lines.Where(l => Along(l).Any(p => Within(p, low, high))))
                yield return string.Create(CultureInfo.InvariantCulture, $"within {DepthMm:0} mm behind {at}: {line.Id} {line.Name}: find it before a hole is drilled");
        }
        if (all.Exists(f => f.Kind.Like.Type == FixingType.RivetNut)) yield return "behind ribs, rails and bows lies the outer skin: a depth stop of 15 mm on the drill, and bare metal painted";
        if (all.Exists(f => f.Kind == FixingKind.ThroughFloor || f.Kind == FixingKind.StrapOver)) yield return "under the floor: fuel tank, brake pipes, looms, exhaust. Look from below before each hole, drill with a stop";
    }

    /// <summary>Points along a line's route, closer together than a drill is wide of them.</summary>
    private static IEnumerable<Place> Along(Line line)
    {
        for (var i = 0; i + 1 < line.Route.Count; i++)
        {
            var (a, b) = (line.Route[i], line.Route[i + 1]);
            var steps = Math.Max(1, (int)Math.Ceiling(a.DistanceMm(b) / AsideMm));
            for (var k = 0; k <= steps; k++)
            {
                var t = (double)k / steps;
                yield return new(a.XMm + t * (b.XMm - a.XMm), a.YMm + t * (b.YMm - a.YMm), a.ZMm + t * (b.ZMm - a.ZMm));
            }
        }
    }

    private static bool Endangered(Part part) => part.Outside || part.Devices.Any(d => d is Tank or Battery or WaterHeater or GasStore) || part.System is PartSystem.Dc or PartSystem.Mains or PartSystem.Gas or PartSystem.Heating or PartSystem.Water or PartSystem.Waste;

    private static bool Meets((Place Low, Place High) box, Place low, Place high) =>
        box.Low.XMm < high.XMm && low.XMm < box.High.XMm && box.Low.YMm < high.YMm && low.YMm < box.High.YMm && box.Low.ZMm < high.ZMm && low.ZMm < box.High.ZMm;

    private static bool Within(Place p, Place low, Place high) => p.XMm >= low.XMm && p.XMm <= high.XMm && p.YMm >= low.YMm && p.YMm <= high.YMm && p.ZMm >= low.ZMm && p.ZMm <= high.ZMm;

    private static Place Least(Place a, Place b) => new(Math.Min(a.XMm, b.XMm), Math.Min(a.YMm, b.YMm), Math.Min(a.ZMm, b.ZMm));

    private static Place Most(Place a, Place b) => new(Math.Max(a.XMm, b.XMm), Math.Max(a.YMm, b.YMm), Math.Max(a.ZMm, b.ZMm));
}
