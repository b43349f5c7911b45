using Wainwright.Fitout;

namespace Wainwright.Paper;

/// <summary>Convex outlines on the drawing plane.</summary>
internal static class Outline
{
    private const int Facets = 32;

    /// <summary>Corners of a solid as placed; a cylinder is given enough of them to look round.</summary>
    public static IReadOnlyList<Place> Corners(Solid solid)
    {
        var corners = solid.Corners().ToList();
        if (solid is not CylinderSolid round) return corners;

        // the enclosing box's corners come x outermost, z innermost: three edges from the first span it
        var (o, x, y, z) = (corners[0], corners[4] - corners[0], corners[2] - corners[0], corners[1] - corners[0]);
        return [.. Enumerable.Range(0, Facets).SelectMany(i =>
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * i / Facets);
            var (a, b) = ((1 + cos) / 2, (1 + sin) / 2);
            return (Place[])[End(0, a, b), End(1, a, b)];
        })];

        Place End(double end, double a, double b) => round.Along switch
        {
            Axis.X => Mix(end, a, b),
            Axis.Y => Mix(a, end, b),
            _ => Mix(a, b, end),
        };

        Place Mix(double fx, double fy, double fz) => o + Times(x, fx) + Times(y, fy) + Times(z, fz);
    }

    /// <summary>Convex hull, counter-clockwise, by Andrew's monotone chain (Information Processing Letters 9, 1979).</summary>
    public static IReadOnlyList<Flat> Hull(IEnumerable<Flat> points)
    {
        var sorted = points.Distinct().OrderBy(p => p.U).ThenBy(p => p.V).ToList();
        if (sorted.Count < 3) return sorted;
        var hull = new List<Flat>();
        Chain(sorted);
        hull.RemoveAt(hull.Count - 1);
        sorted.Reverse();
        Chain(sorted, hull.Count);
        hull.RemoveAt(hull.Count - 1);
        return hull;

        void Chain(List<Flat> along, int from = 0)
        {
            foreach (var p in along)
            {
                while (hull.Count >= from + 2 && Turn(hull[^2], hull[^1], p) <= 0) hull.RemoveAt(hull.Count - 1);
                hull.Add(p);
            }
        }
    }

    /// <summary>
    /// What the plane of the cut leaves of a convex solid: the cut face, and the silhouette of what lies beyond.
    /// The section of a convex hull is the hull of the places where its corners' joining lines cross the plane.
    /// </summary>
    public static (IReadOnlyList<Flat> Face, IReadOnlyList<Flat> Beyond) Cut(IReadOnlyList<Place> corners, Projection on)
    {
        var at = corners.Select(c => (On: on.Of(c), Past: on.Depth(c) - on.CutDepth)).ToList();
        var beyond = at.Where(c => c.Past >= 0).ToList();
        var before = at.Where(c => c.Past < 0).ToList();
        if (beyond.Count == 0) return ([], []);
        var face = Hull(from a in before
                        from b in beyond
                        let t = a.Past / (a.Past - b.Past)
                        select new Flat(a.On.U + (b.On.U - a.On.U) * t, a.On.V + (b.On.V - a.On.V) * t));
        return (face, Hull(beyond.Select(c => c.On).Concat(face)));
    }

    /// <summary>45° lines across a convex outline, <paramref name="gap"/> apart, leaning right or left.</summary>
    public static IEnumerable<(Flat A, Flat B)> Hatch(IReadOnlyList<Flat> outline, double gap, bool leansRight)
    {
        if (outline.Count < 3) yield break;
        var lean = leansRight ? 1 : -1;
        double Key(Flat p) => p.V - lean * p.U;
        var step = gap * Math.Sqrt(2);
        for (var k = Math.Ceiling(outline.Min(Key) / step) * step; k < outline.Max(Key); k += step)
        {
            var hits = new List<Flat>();
            for (var i = 0; i < outline.Count; i++)
            {
                var (a, b) = (outline[i], outline[(i + 1) % outline.Count]);
                var (ka, kb) = (Key(a) - k, Key(b) - k);
                if (ka < 0 == kb < 0) continue;
                var t = ka / (ka - kb);
                hits.Add(new(a.U + (b.U - a.U) * t, a.V + (b.V - a.V) * t));
            }
            if (hits.Count == 2) yield return (hits[0], hits[1]);
        }
    }

    private static double Turn(Flat a, Flat b, Flat c) => (b.U - a.U) * (c.V - a.V) - (b.V - a.V) * (c.U - a.U);

    private static Place Times(Place p, double f) => new(p.XMm * f, p.YMm * f, p.ZMm * f);
}
