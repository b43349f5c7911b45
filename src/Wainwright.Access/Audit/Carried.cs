using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Walks a load along its way and looks for what it runs into.</summary>
/// <param name="hull">The van.</param>
/// <param name="standing">All that stands beside the load.</param>
/// <param name="shaveMm">Overlap as found that counts as a measuring error [mm].</param>
internal sealed class Carried(Hull hull, IReadOnlyList<StandingSolid> standing, int shaveMm)
{
    // a turned load is planned as a block on whole millimetres: its middle may be half a millimetre off on each side
    private const double TurnedMm = 1;
    private const double StepDegrees = 0.5;
    private const double Rounding = 1e-6;

    /// <summary>Faults of a way, in words.</summary>
    /// <param name="load">The load where its shifts are counted from.</param>
    /// <param name="path">Its way.</param>
    /// <param name="through">The opening it is said to leave by.</param>
    /// <param name="from">The shift at which it stands before it is moved.</param>
    public IEnumerable<string> Faults(IReadOnlyList<WalkedSolid> load, IReadOnlyList<PathPoint> path, string? through, Vec from)
    {
        if (path.Count == 0) yield break;
        if (!BeginsAt(from, path[0])) yield return "its way does not begin where it stands";
        var (low, high) = Bounds(load);
        var middle = 0.5 * (low + high);
        var (attitude, turned) = (WalkedTurn.AsFound, 0);
        var at = from;
        List<string> lastCrossed = [];
        foreach (var point in path)
        {
            var to = Vec.Of(point.ShiftMm);
            if (point.Turned is { } tipped)
            {
                foreach (var (lies, place) in Tipped.Steps(attitude, at, WalkedTurn.Of(tipped), to))
                {
                    var there = Placed(load, lies, middle, place);
                    if (Crossed(there, Vec.Zero) is { Count: > 0 } gaps) lastCrossed = gaps;
                    if (Hit(there, Vec.Zero, load, isTurned: false) is not { } met) continue;
                    yield return met + " while it is tilted";
                    break;
                }
                (attitude, at) = (WalkedTurn.Of(tipped), to);
                continue;
            }
            var here = Placed(load, attitude, middle, at);
            if (Crossed(here, to - at) is { Count: > 0 } doors) lastCrossed = doors;
            // whole millimetres may put a turned load's middle half a millimetre aside at the turn
            if (Hit(here, to - at, load, point.QuarterTurnsAbout.Count > 0) is { } hit) yield return hit;
            at = to;
            foreach (var axis in point.QuarterTurnsAbout.Skip(turned))
            {
                here = Placed(load, attitude, middle, at);
                if (QuarterTurn(here, (int)axis, middle + at, load) is { } caught) yield return caught;
                attitude = attitude.TurnedAbout(WalkedTurn.AxisOf((int)axis), 90);
            }
            turned = point.QuarterTurnsAbout.Count;
        }
        var end = Placed(load, attitude, middle, at);
        var slack = turned > 0 ? TurnedMm : 0;
        var isOutside = hull.IsOutside(end, slack + Rounding);
        if (!isOutside) yield return "its way ends inside the van";
        if (Door(through, lastCrossed, isOutside) is { } wrong) yield return wrong;
    }

    private static bool BeginsAt(Vec from, PathPoint first) =>
        (Vec.Of(first.ShiftMm) - from).LengthSquared < Rounding * Rounding && first.QuarterTurnsAbout.Count == 0
        && (first.Turned is not { } turned || new Vec(turned.X, turned.Y, turned.Z).LengthSquared < Rounding * Rounding);

    /// <summary>What the load meets on a straight slide; the first of it.</summary>
    public string? Hit(IReadOnlyList<WalkedSolid> here, Vec slide, IReadOnlyList<WalkedSolid> asFound, bool isTurned)
    {
        for (var i = 0; i < here.Count; i++)
            foreach (var (part, block) in InTheWay())
            {
                if (Overlap.DepthMm(here[i], slide, block, isTurned ? TurnedMm : 0) == 0) continue;
                var depth = Overlap.DepthMm(here[i], slide, block, (isTurned ? TurnedMm : 0) + LetPassMm(asFound[i], block));
                if (depth > 0) return Told(part, depth);
            }
        return null;
    }

    private IEnumerable<(Part? Part, WalkedSolid Block)> InTheWay() => hull.Blocks.Select(b => ((Part?)null, b)).Concat(standing.Select(s => (s.Part, s.Shape)));

    /// <summary>An overlap as found, up to a measuring error: as much is let pass all the way.</summary>
    private double LetPassMm(WalkedSolid asFound, WalkedSolid block)
    {
        var found = Overlap.DepthMm(asFound, Vec.Zero, block, 0);
        if (found == 0 || found > shaveMm) return 0;
        return asFound.IsUprightBox && block.IsUprightBox ? found : shaveMm;
    }

    /// <summary>What the load meets on a quarter turn on the spot, either way round.</summary>
    private string? QuarterTurn(IReadOnlyList<WalkedSolid> here, int axis, Vec centre, IReadOnlyList<WalkedSolid> asFound)
    {
        var near = InTheWay().Where(b => Spin.Meets(here, axis, centre, b.Block, TurnedMm)).ToList();
        if (near.Count == 0) return null;
        string? caught = null;
        foreach (var way in (int[])[1, -1])
        {
            caught = null;
            for (var degrees = StepDegrees; degrees <= 90 && caught is null; degrees += StepDegrees)
            {
                var turned = WalkedTurn.AsFound.TurnedAbout(WalkedTurn.AxisOf(axis), way * degrees);
                caught = AtRest([.. here.Select(s => s.Placed(turned, centre, Vec.Zero))], asFound, near);
            }
            if (caught is null) return null;
        }
        return caught;
    }

    private string? AtRest(IReadOnlyList<WalkedSolid> here, IReadOnlyList<WalkedSolid> asFound, IReadOnlyList<(Part? Part, WalkedSolid Block)> near)
    {
        for (var i = 0; i < here.Count; i++)
            foreach (var (part, block) in near)
                if (Overlap.DepthMm(here[i], Vec.Zero, block, TurnedMm + LetPassMm(asFound[i], block)) is > 0 and var depth) return Told(part, depth) + " while it is turned";
        return null;
    }

    /// <summary>The walls are whole but for the openings, so that what passes a wall passes within an outline; here only which one.</summary>
    private static string? Door(string? through, List<string> lastCrossed, bool isOutside) =>
        through is null ? (isOutside || lastCrossed.Count > 0 ? "no opening is named that it leaves by" : null)
        : lastCrossed.Contains(through) ? null
        : $"it is said to leave by {through} and leaves by {(lastCrossed.Count > 0 ? string.Join(" or ", lastCrossed) : "none of the openings")}";

    private List<string> Crossed(IReadOnlyList<WalkedSolid> here, Vec slide) =>
        [.. hull.Openings.Where(o => hull.Outline(o) is var (low, high) && WalkedSolid.Box(low, high) is var hole && here.Any(s => Overlap.DepthMm(s, slide, hole, 0) > 0)).Select(o => o.Name)];

    private static string Told(Part? part, double depthMm) =>
        string.Create(CultureInfo.InvariantCulture, $"it runs {depthMm:0.#} mm into {(part is null ? "the van itself" : $"{part.Id} {part.Name}")}");

    private static IReadOnlyList<WalkedSolid> Placed(IReadOnlyList<WalkedSolid> load, WalkedTurn attitude, Vec middle, Vec shift) => [.. load.Select(s => s.Placed(attitude, middle, shift))];

    private static (Vec Low, Vec High) Bounds(IReadOnlyList<WalkedSolid> load) => (
        new(load.Min(s => s.Low.X), load.Min(s => s.Low.Y), load.Min(s => s.Low.Z)),
        new(load.Max(s => s.High.X), load.Max(s => s.High.Y), load.Max(s => s.High.Z)));
}
