using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>Where the fixings of a joint are, and how many sound ones stand at each place.</summary>
internal static class FixingPlaces
{
    /// <summary>Whether it matters which of a row's fixings are bad.</summary>
    public static bool AreDoubtful(HeldChain chain) => chain.Joints.Any(j => Bad(j.Joint) is > 0 and var bad && bad < j.Joint.Count);

    /// <summary>Places, each with how many sound fixings it stands for.</summary>
    public static IReadOnlyList<(Place At, double Share)> Of(Joint joint, Part part, StrengthEnd end, bool badFromFront)
    {
        var count = joint.Count;
        var bad = Bad(joint);
        if (joint.Points.Count == 0)
            return part.Bounds() is var (low, high) ? [(new((low.XMm + high.XMm) / 2, (low.YMm + high.YMm) / 2, (low.ZMm + high.ZMm) / 2), Math.Max(0, count - bad))] : [];
        var each = (double)count / joint.Points.Count;
        if (bad == 0) return [.. joint.Points.Select(p => (p, each))];
        if (end != StrengthEnd.Low || joint.Points.Count < count) return [.. joint.Points.Select(p => (p, each * (count - bad) / count))];
        var along = Longest(joint.Points);
        var ordered = badFromFront ? joint.Points.OrderBy(along).ToList() : [.. joint.Points.OrderByDescending(along)];
        return [.. ordered.Select((p, i) => (p, i < bad ? 0 : each))];
    }

    /// <summary>A strap goes round what it holds: it works at the part's sides, not at the eye where it ends.</summary>
    public static IReadOnlyList<Vector3D> AroundPart(Place at, Vector3D way, Part part, IReadOnlyList<Place> all)
    {
        if (part.Bounds() is not var (low, high)) return [PullWay.Of(at)];
        var (a, b) = (PullWay.Of(low), PullWay.Of(high));
        var (middle, size) = (0.5 * (a + b), b - a);
        var along = Math.Abs(way.X) > 0.5 ? 0 : Math.Abs(way.Y) > 0.5 ? 1 : 2;
        var line = all.Count > 1 ? PullWay.Of(all[^1]) - PullWay.Of(all[0]) : default;
        List<Vector3D> places = [PullWay.Of(at)];
        for (var axis = 0; axis < 3; axis++)
        {
            // across the shank, and not along the row of straps
            if (axis == along || Math.Abs(Component(line, axis)) > 0.5 * line.Length) continue;
            places = [.. places.SelectMany(p => new[] { Set(p, axis, Component(middle, axis) - 0.4 * Component(size, axis)), Set(p, axis, Component(middle, axis) + 0.4 * Component(size, axis)) })];
        }
        return places;
    }

    private static int Bad(Joint joint) => joint.State is FixingState.Missing or FixingState.Sheared ? Math.Min(joint.Count, joint.StateCount ?? joint.Count) : 0;

    private static Func<Place, double> Longest(IReadOnlyList<Place> points)
    {
        double Of(Func<Place, double> axis) => points.Max(axis) - points.Min(axis);
        double x = Of(p => p.XMm), y = Of(p => p.YMm), z = Of(p => p.ZMm);
        return x >= y && x >= z ? p => p.XMm : y >= z ? p => p.YMm : p => p.ZMm;
    }

    private static double Component(Vector3D v, int axis) => axis switch { 0 => v.X, 1 => v.Y, _ => v.Z };

    private static Vector3D Set(Vector3D v, int axis, double to) => axis switch { 0 => v with { X = to }, 1 => v with { Y = to }, _ => v with { Z = to } };
}
