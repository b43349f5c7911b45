using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>A part that nothing holds: it slides, tips or lifts, unless something is in its way.</summary>
internal static class StandsLoose
{
    // wood, rubber and plastic on ply or vinyl, dry to dusty; common practice, no source
    private static readonly Span UsualFriction = new(0.2, 0.4, 0.6);

    public static (IReadOnlyList<Thrown> Directions, IReadOnlyList<string> Assumed) Of(Job job, HeldChain chain, WhoHolds who, JointWorths worth, IReadOnlyList<Vector3D> ways)
    {
        var part = chain.Bodies[0].Part;
        var friction = part.Friction is { } f ? Span.Of(f.Value, f.PlusMinus ?? 0.1) : UsualFriction;
        var blocked = LoadFactor.Of(Assembled.Of(chain, worth, who, job.Vehicle.LoadSpace, StrengthEnd.Likely, false), ways, firstYield: false);
        var (low, high) = part.Bounds() ?? default;
        var all = blocked.Select(b =>
        {
            if (!b.CarriesItself || double.IsPositiveInfinity(b.LowG)) return new Thrown(b.Direction, HeldDirections.Words(b.Direction), b.LowG < 0 ? null : Span.Exactly(b.LowG), null, null, null, b.Mechanism.Count > 0 ? b.Mechanism[0] : null);
            var tips = Tips(b.Direction, chain.Bodies[0].CentreMm, low, high);
            // frictionless supports stand in its way or do not; beside them friction carries what it carries
            double At(double mu) => Math.Max(Math.Max(0, b.LowG), Math.Min(Slides(b.Direction, mu), tips));
            return new Thrown(b.Direction, HeldDirections.Words(b.Direction), friction.Rising(At), At(friction.Likely), null, null, b.Mechanism.Count > 0 ? b.Mechanism[0] : null);
        }).ToList();
        return (all, part.Friction is null ? ["friction under it 0.2 to 0.6 (common practice, no source)"] : []);
    }

    /// <summary>Where it begins to slide [g]: thrown a, it presses with 1 − a·up of its weight.</summary>
    private static double Slides(Vector3D way, double mu)
    {
        var across = Math.Sqrt(way.X * way.X + way.Y * way.Y);
        var asked = across + mu * way.Z;
        return asked > 1e-9 ? mu / asked : double.PositiveInfinity;
    }

    /// <summary>Where it begins to tip over the edge of its foot, taken as its bounds [g].</summary>
    private static double Tips(Vector3D way, Vector3D centre, Place low, Place high)
    {
        var tall = centre.Z - low.ZMm;
        var least = double.PositiveInfinity;
        foreach (var (along, toEdge) in new[] { (way.X, way.X > 0 ? high.XMm - centre.X : centre.X - low.XMm), (way.Y, way.Y > 0 ? high.YMm - centre.Y : centre.Y - low.YMm) })
        {
            if (Math.Abs(along) < 1e-9) continue;
            var asked = Math.Abs(along) * tall + way.Z * toEdge;
            if (asked > 1e-9) least = Math.Min(least, Math.Max(0, toEdge) / asked);
        }
        return least;
    }
}
