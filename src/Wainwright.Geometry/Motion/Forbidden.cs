namespace Wainwright.Geometry;

/// <summary>Displacements of a moving box that would put it into an obstacle's box.</summary>
internal readonly record struct Forbidden(int Item, Cells Where)
{
    /// <summary>How far the moving box has to go from where it was found until the two only touch; of use when they overlap there.</summary>
    public int LeastWayOutMm => Math.Min(
        Math.Min(Math.Min(1 - Where.X0, Where.X1 + 1), Math.Min(1 - Where.Y0, Where.Y1 + 1)), Math.Min(1 - Where.Z0, Where.Z1 + 1)) / 2;

    /// <summary>All displacements at which any of the moving boxes would overlap any box of the obstacle.</summary>
    /// <param name="moving">The moving boxes where they stand.</param>
    /// <param name="obstacle">What is in the way.</param>
    /// <param name="fit">How closely they may pass.</param>
    /// <param name="asFound">Whether displacement nought is how the two were found: then their gap limits the clearance and a small overlap is shaved.</param>
    public static IEnumerable<Forbidden> For(IReadOnlyList<Box> moving, Obstacle obstacle, Fit fit, bool asFound)
    {
        foreach (var standing in obstacle.Boxes)
            foreach (var box in moving)
            {
                var where = Pair(box, standing, fit, asFound);
                if (!where.IsEmpty) yield return new(obstacle.Item, where);
            }
    }

    /// <summary>Leaves out what lies within another one of the same item or within something fixed.</summary>
    public static Forbidden[] WithoutHidden(IEnumerable<Forbidden> all)
    {
        // largest first: only a larger one hides another, and the order is of use later
        var sorted = all.Distinct().OrderByDescending(f => f.Where.Volume).ThenBy(f => f.Item);
        var kept = new List<Forbidden>();
        var keptOf = new Dictionary<int, List<Cells>> { [Obstacle.Fixed] = [] };
        foreach (var f in sorted)
        {
            if (!keptOf.TryGetValue(f.Item, out var own)) keptOf[f.Item] = own = [];
            if (IsHidden(f.Where, own) || (f.Item != Obstacle.Fixed && IsHidden(f.Where, keptOf[Obstacle.Fixed]))) continue;
            own.Add(f.Where);
            kept.Add(f);
        }
        return [.. kept];
    }

    private static bool IsHidden(Cells where, List<Cells> larger)
    {
        foreach (var other in larger)
            if (other.Holds(where)) return true;
        return false;
    }

    private static Cells Pair(Box moving, Box standing, Fit fit, bool asFound)
    {
        Span<int> low = stackalloc int[3], high = stackalloc int[3];
        var (leastOverlap, leastAxis) = (int.MaxValue, -1);
        for (var axis = 0; axis < 3; axis++)
        {
            low[axis] = standing.Low(axis) - moving.High(axis);
            high[axis] = standing.High(axis) - moving.Low(axis);
            var gap = Math.Max(low[axis], -high[axis]);
            var clearance = asFound && gap >= 0 ? Math.Min(fit.ClearanceMm, gap) : fit.ClearanceMm;
            low[axis] -= clearance;
            high[axis] += clearance;
            if (-gap < leastOverlap) (leastOverlap, leastAxis) = (-gap, axis);
        }
        if (asFound && leastOverlap > 0 && leastOverlap <= fit.ShaveMm)
        {
            // the obstacle lies on the side on which it reaches less far across
            if (-low[leastAxis] <= high[leastAxis]) low[leastAxis] = 0;
            else high[leastAxis] = 0;
        }
        return new(2 * low[0] + 1, 2 * low[1] + 1, 2 * low[2] + 1, 2 * high[0] - 1, 2 * high[1] - 1, 2 * high[2] - 1);
    }
}
