namespace Wainwright.Geometry;

/// <summary>A way as corner points, each straight along one axis from the one before, or turned on the spot.</summary>
internal sealed partial record Trail(IReadOnlyList<Trail.Stop> Stops)
{
    internal readonly record struct Stop(int Pose, Cell At, QuarterTurn? By);

    public static Trail To(Exploration.Reached end)
    {
        var chain = new List<Exploration.Reached>();
        for (var r = end; r is not null; r = r.From) chain.Add(r);
        chain.Reverse();

        var stops = new List<Stop> { new(chain[0].Pose, chain[0].At, null) };
        foreach (var next in chain.Skip(1))
        {
            var at = stops[^1].At;
            // first across within the old block, then over the face: each corner lies in one of the two blocks
            var last = next.AcrossAxis ?? 2;
            foreach (var axis in Enumerable.Range(0, 3).Where(a => a != last).Append(last))
            {
                var to = at.With(axis, next.At.Along(axis));
                if (to != at) stops.Add(new(stops[^1].Pose, to, null));
                at = to;
            }
            if (next.Pose != stops[^1].Pose || next.By is not null) stops.Add(new(next.Pose, at, next.By));
        }
        return new(stops);
    }

    /// <summary>What is passed through of the things that are gone.</summary>
    public ItemSet Through(IReadOnlyList<Pose> poses, ItemSet gone)
    {
        var through = new ItemSet(gone.Size);
        var swept = new Cells[Stops.Count];
        for (var i = 0; i < swept.Length; i++)
            swept[i] = i > 0 && Stops[i - 1].Pose == Stops[i].Pose ? Cells.Between(Stops[i - 1].At, Stops[i].At) : Cells.Between(Stops[i].At, Stops[i].At);
        for (var pose = 0; pose < poses.Count; pose++)
        {
            if (!Stops.Any(s => s.Pose == pose)) continue;
            foreach (var f in poses[pose].Forbidden)
                if (f.Item != Obstacle.Fixed && gone.Has(f.Item) && !through.Has(f.Item) && Meets(f.Where, pose, swept)) through.Add(f.Item);
        }
        return through;
    }

    private bool Meets(in Cells where, int pose, Cells[] swept)
    {
        for (var i = 0; i < swept.Length; i++)
            if (Stops[i].Pose == pose && where.Meets(swept[i])) return true;
        return false;
    }

    public IReadOnlyList<Waypoint> Waypoints(IReadOnlyList<Pose> poses)
    {
        var points = new List<Waypoint>();
        IReadOnlyList<int> turned = [];
        var pose = Stops[0].Pose;
        foreach (var stop in Stops)
        {
            if (stop.By is { } turn) (turned, pose) = ([.. turned, turn.About], stop.Pose);
            // turned, whole millimetres may put the middle half a millimetre aside
            var point = new Waypoint(poses[pose].MiddleMm - poses[Stops[0].Pose].MiddleMm + stop.At.ToPoint(), turned);
            if (points.Count >= 2 && IsBetween(points[^2], points[^1], point)) points[^1] = point;
            else if (points.Count == 0 || points[^1].ShiftMm != point.ShiftMm || !points[^1].TurnedAbout.SequenceEqual(turned)) points.Add(point);
        }
        return points;
    }

    private static bool IsBetween(Waypoint a, Waypoint b, Waypoint c)
    {
        if (!a.TurnedAbout.SequenceEqual(b.TurnedAbout) || !b.TurnedAbout.SequenceEqual(c.TurnedAbout)) return false;
        var (ab, bc) = (b.ShiftMm - a.ShiftMm, c.ShiftMm - b.ShiftMm);
        var moved = Enumerable.Range(0, 3).Where(axis => ab[axis] != 0 || bc[axis] != 0).ToList();
        return moved.Count <= 1 && (moved.Count == 0 || ab[moved[0]] * bc[moved[0]] >= 0);
    }
}
