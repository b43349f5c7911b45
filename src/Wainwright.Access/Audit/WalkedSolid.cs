using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>A convex solid by its corners and the directions of its faces and edges.</summary>
/// <remarks>
/// Boxes and prisms are taken as drawn; a cylinder as a bar of 32 sides around it, at most half a percent of its radius too
/// large.
/// </remarks>
internal sealed class WalkedSolid
{
    private const int SidesOfRound = 32;

    private WalkedSolid(Vec[] corners, Vec[] faces, Vec[] edges, int ring)
    {
        (Corners, Faces, Edges, Ring) = (corners, faces, edges, ring);
        Low = new(corners.Min(c => c.X), corners.Min(c => c.Y), corners.Min(c => c.Z));
        High = new(corners.Max(c => c.X), corners.Max(c => c.Y), corners.Max(c => c.Z));
    }

    /// <summary>First one end's corners in order, then the other end's.</summary>
    public Vec[] Corners { get; }

    /// <summary>Directions square to its faces, each once.</summary>
    public Vec[] Faces { get; }

    /// <summary>Directions along its edges, each once.</summary>
    public Vec[] Edges { get; }

    /// <summary>How many corners each end has.</summary>
    public int Ring { get; }

    public Vec Low { get; }

    public Vec High { get; }

    /// <summary>Whether it is a box along the vehicle axes.</summary>
    public bool IsUprightBox => Ring == 4 && Array.TrueForAll(Faces, f => Math.Max(Math.Abs(f.X), Math.Max(Math.Abs(f.Y), Math.Abs(f.Z))) > 1 - 1e-12);

    public static WalkedSolid Box(Vec low, Vec high) =>
        Drawn(2, [(low.X, low.Y), (high.X, low.Y), (high.X, high.Y), (low.X, high.Y)], low.Z, high.Z, WalkedTurn.AsFound);

    public static WalkedSolid Of(Solid solid)
    {
        var attitude = WalkedTurn.AsFound.TurnedAbout(WalkedTurn.AxisOf(0), solid.TiltDeg).TurnedAbout(WalkedTurn.AxisOf(2), solid.YawDeg);
        switch (solid)
        {
            case BoxSolid box:
                var (low, high) = (Vec.Of(box.At), Vec.Of(box.At + box.Size));
                return Drawn(2, [(low.X, low.Y), (high.X, low.Y), (high.X, high.Y), (low.X, high.Y)], low.Z, high.Z, attitude);
            case CylinderSolid round:
                var (axis, start) = ((int)round.Along, Vec.Of(round.At));
                var (u, v) = Others(axis);
                return Drawn(axis, Around((start.Along(u), start.Along(v)), round.DiameterMm / 2), start.Along(axis), start.Along(axis) + round.LengthMm, attitude);
            case PrismSolid prism:
                var along = (int)prism.Along;
                var from = Vec.Of(prism.Outline[0]).Along(along);
                return Drawn(along, [.. prism.Plane()], from, from + prism.LengthMm, attitude);
            default:
                throw new NotSupportedException($"Solids of the kind {solid.GetType().Name} cannot be audited.");
        }
    }

    /// <summary>The same solid turned about a place and shifted.</summary>
    public WalkedSolid Placed(WalkedTurn turned, Vec about, Vec shift) =>
        new([.. Corners.Select(c => about + turned.Of(c - about) + shift)], [.. Faces.Select(turned.Of)], [.. Edges.Select(turned.Of)], Ring);

    /// <summary>Pairs of corners with an edge between them.</summary>
    public IEnumerable<(Vec A, Vec B)> EdgePairs()
    {
        for (var i = 0; i < Ring; i++)
        {
            var next = (i + 1) % Ring;
            yield return (Corners[i], Corners[next]);
            yield return (Corners[Ring + i], Corners[Ring + next]);
            yield return (Corners[i], Corners[Ring + i]);
        }
    }

    private static WalkedSolid Drawn(int axis, (double U, double V)[] outline, double from, double to, WalkedTurn attitude)
    {
        var (u, v) = Others(axis);
        Vec At(double a, double b, double along) => a * WalkedTurn.AxisOf(u) + b * WalkedTurn.AxisOf(v) + along * WalkedTurn.AxisOf(axis);
        var middle = At((outline.Min(p => p.U) + outline.Max(p => p.U)) / 2, (outline.Min(p => p.V) + outline.Max(p => p.V)) / 2, (from + to) / 2);
        var sides = outline.Select((p, i) => (From: p, To: outline[(i + 1) % outline.Length])).ToList();
        return new(
            [.. new[] { from, to }.SelectMany(along => outline.Select(p => middle + attitude.Of(At(p.U, p.V, along) - middle)))],
            Once([.. sides.Select(s => attitude.Of(At(s.To.V - s.From.V, s.From.U - s.To.U, 0))), attitude.Of(WalkedTurn.AxisOf(axis))]),
            Once([.. sides.Select(s => attitude.Of(At(s.To.U - s.From.U, s.To.V - s.From.V, 0))), attitude.Of(WalkedTurn.AxisOf(axis))]),
            outline.Length);
    }

    private static (int U, int V) Others(int axis) => axis switch { 0 => (1, 2), 1 => (0, 2), _ => (0, 1) };

    private static (double U, double V)[] Around((double U, double V) centre, double radius) =>
        [.. Enumerable.Range(0, SidesOfRound).Select(i =>
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * (i + 0.5) / SidesOfRound);
            var corner = radius / Math.Cos(Math.PI / SidesOfRound);
            return (centre.U + corner * cos, centre.V + corner * sin);
        })];

    private static Vec[] Once(IEnumerable<Vec> directions)
    {
        var once = new List<Vec>();
        foreach (var unit in directions.Where(d => d.LengthSquared > 0).Select(d => d.Unit()))
            if (!once.Exists(o => Math.Abs(o.Dot(unit)) > 1 - 1e-12)) once.Add(unit);
        return [.. once];
    }
}
