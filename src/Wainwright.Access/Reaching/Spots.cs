using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Places on the outside of a thing at which an eye or a hand may aim.</summary>
internal static class Spots
{
    private const int SpotEveryMm = 150, MostSpots = 4, MostBoxes = 10, EdgeShare = 8;

    /// <summary>
    /// Spots all over a thing's outside: a grid on each side of its bounds, laid on to what is met there, and the middles of the
    /// faces of its largest boxes, for what is a frame.
    /// </summary>
    public static IEnumerable<(Point At, Heading Face)> AllOver(IReadOnlyList<Box> boxes) =>
        Sides(Box.Around(boxes)).SelectMany(face => OnBounds(boxes, face))
            .Concat(boxes.OrderByDescending(b => b.VolumeMm3).Take(MostBoxes).SelectMany(OnBox)).Distinct();

    /// <summary>The sides of a box that count as its faces: who sees the edge of a board has not seen the board.</summary>
    private static IEnumerable<Heading> Sides(Box box)
    {
        long Area(int axis) => (long)box.Length((axis + 1) % 3) * box.Length((axis + 2) % 3);
        var largest = Enumerable.Range(0, 3).Max(Area);
        return Enum.GetValues<Heading>().Where(face => Area(face.Axis()) * EdgeShare >= largest);
    }

    private static IEnumerable<(Point At, Heading Face)> OnBox(Box box)
    {
        foreach (var face in Sides(box))
        {
            double[] at = [(box.X0 + box.X1) / 2.0, (box.Y0 + box.Y1) / 2.0, (box.Z0 + box.Z1) / 2.0];
            at[face.Axis()] = face.Sign() > 0 ? box.High(face.Axis()) : box.Low(face.Axis());
            yield return (new(at[0], at[1], at[2]), face);
        }
    }

    private static IEnumerable<(Point At, Heading Face)> OnBounds(IReadOnlyList<Box> boxes, Heading face)
    {
        var bounds = Box.Around(boxes);
        var (axis, sign) = (face.Axis(), face.Sign());
        var (u, v) = ((axis + 1) % 3, (axis + 2) % 3);
        foreach (var atU in Middles(bounds, u))
            foreach (var atV in Middles(bounds, v))
            {
                var hit = boxes.Where(b => b.Low(u) <= atU && atU <= b.High(u) && b.Low(v) <= atV && atV <= b.High(v))
                    .Select(b => sign > 0 ? b.High(axis) : b.Low(axis)).OrderByDescending(c => sign * c).Cast<int?>().FirstOrDefault();
                if (hit is not { } c) continue;
                double[] at = new double[3];
                (at[axis], at[u], at[v]) = (c, atU, atV);
                yield return (new(at[0], at[1], at[2]), face);
            }
    }

    private static IEnumerable<double> Middles(Box bounds, int axis)
    {
        var count = Math.Clamp((bounds.Length(axis) + SpotEveryMm - 1) / SpotEveryMm, 1, MostSpots);
        return Enumerable.Range(0, count).Select(i => bounds.Low(axis) + bounds.Length(axis) * (i + 0.5) / count);
    }
}
