namespace Wainwright.Geometry;

internal sealed partial record Trail
{
    private static readonly int[][] Orders = [[0, 1, 2], [0, 2, 1], [1, 0, 2], [1, 2, 0], [2, 0, 1], [2, 1, 0]];

    /// <summary>The same way with detours replaced by at most three slides wherever those are free.</summary>
    public Trail Shortened(IReadOnlyList<Pose> poses, ItemSet gone)
    {
        var standing = poses.Select(p => p.Forbidden.Where(f => f.Item == Obstacle.Fixed || !gone.Has(f.Item)).Select(f => f.Where).ToArray()).ToList();
        var stops = new List<Stop> { Stops[0] };
        for (var i = 0; i < Stops.Count - 1;)
        {
            var next = Enumerable.Range(i + 2, Math.Max(0, Stops.Count - i - 2)).Reverse()
                .Where(j => SamePose(i, j))
                .Select(j => (To: j, Corners: Corners(Stops[i].At, Stops[j].At, standing[Stops[i].Pose])))
                .FirstOrDefault(c => c.Corners is not null && c.Corners.Count < c.To - i);
            if (next.Corners is null)
            {
                stops.Add(Stops[++i]);
                continue;
            }
            stops.AddRange(next.Corners.Select(c => new Stop(Stops[i].Pose, c, null)));
            i = next.To;
        }
        return new(stops);
    }

    /// <summary>Where it leaves the shell.</summary>
    public Gap? Leaves(IReadOnlyList<Pose> poses, Shell shell)
    {
        for (var i = Stops.Count - 1; i > 0; i--)
        {
            var bounds = Bounds(poses[Stops[i].Pose], Stops[i - 1].At).Around(Bounds(poses[Stops[i].Pose], Stops[i].At));
            var (crossed, most) = ((Gap?)null, 0L);
            foreach (var gap in shell.Gaps)
                if (gap.In(shell.Slab(gap.Wall)).Common(bounds).VolumeMm3 is var common && common > most) (crossed, most) = (gap, common);
            if (crossed is not null) return crossed;
        }
        return null;
    }

    private static Box Bounds(Pose pose, Cell at) => Box.Around(pose.Boxes).Moved((int)Math.Floor(at.X / 2.0), (int)Math.Floor(at.Y / 2.0), (int)Math.Floor(at.Z / 2.0));

    private bool SamePose(int from, int to)
    {
        for (var i = from + 1; i <= to; i++)
            if (Stops[i].Pose != Stops[from].Pose || Stops[i].By is not null) return false;
        return true;
    }

    /// <summary>Corners after the first of a free way of at most three slides, or nothing.</summary>
    private static List<Cell>? Corners(Cell from, Cell to, Cells[] standing)
    {
        foreach (var order in Orders)
        {
            var (at, corners) = (from, new List<Cell>());
            foreach (var axis in order)
            {
                var next = at.With(axis, to.Along(axis));
                if (next == at) continue;
                var swept = Cells.Between(at, next);
                if (Array.Exists(standing, s => s.Meets(swept))) break;
                corners.Add(at = next);
            }
            if (at == to) return corners;
        }
        return null;
    }
}
