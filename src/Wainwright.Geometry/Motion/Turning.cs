namespace Wainwright.Geometry;

/// <summary>The further poses of a thing that may be turned by quarters, and the rooms its turns need.</summary>
internal static class Turning
{
    public static (Pose[] Poses, QuarterTurn[] Turns) Of(Pose asFound, IReadOnlyList<Obstacle> obstacles, Shell shell, Fit fit)
    {
        var bounds = Box.Around(asFound.Boxes);
        var found = Size.Of(bounds);
        var sizes = found.Turned();
        var poses = new List<Pose> { asFound };
        // bounds that come back to their size may lie turned by then: boxes that fill them in part are known only as found
        var own = asFound.Boxes.Count > 1 ? 1 : 0;
        poses.AddRange(sizes.Skip(1 - own).Select(s => Placed(s.Around(bounds), obstacles, shell, fit)));

        var turns = new List<QuarterTurn>();
        for (var from = 0; from < sizes.Count; from++)
            for (var about = 0; about < 3; about++)
            {
                var to = sizes.IndexOf(sizes[from].TurnedAbout(about));
                if (to <= from) continue;
                turns.Add(new(poses.Count, from + own, to + own, about));
                if (own == 1 && from == 0) turns.Add(new(poses.Count, 0, to + own, about, IsThereOnly: true));
                poses.Add(Placed(sizes[from].Sweep(about).Around(bounds), obstacles, shell, fit));
            }
        return ([.. poses], [.. turns]);
    }

    /// <summary>
    /// The search without those turns that cannot be made even with nothing removable in the way; then they never can.
    /// </summary>
    public static (Exploration Search, Pose[] Poses) Worthwhile((Pose[] Poses, QuarterTurn[] Turns) all, IReadOnlyList<Cells> starts, int items)
    {
        var possible = new Exploration(all.Poses, all.Turns).PosesReached(ItemSet.All(items), starts);
        var turns = all.Turns.Where(t => possible[t.Sweep]).ToList();
        var kept = Enumerable.Range(0, all.Poses.Length).Where(p => p == 0 || turns.Exists(t => t.Sweep == p || t.From == p || t.To == p)).ToList();
        Pose[] poses = [.. kept.Select(p => all.Poses[p])];
        return (new(poses, [.. turns.Select(t => t with { Sweep = kept.IndexOf(t.Sweep), From = kept.IndexOf(t.From), To = kept.IndexOf(t.To) })]), poses);
    }

    /// <summary>The bounds lying as found and in each other way that quarter turns lead to, as a search of its own each.</summary>
    public static IReadOnlyList<Pose> Bounds(Pose asFound, IReadOnlyList<Obstacle> obstacles, Shell shell, Fit fit)
    {
        var bounds = Box.Around(asFound.Boxes);
        return [.. Size.Of(bounds).Turned().Select(s => Placed(s.Around(bounds), obstacles, shell, fit))];
    }

    private static Pose Placed(Box box, IReadOnlyList<Obstacle> obstacles, Shell shell, Fit fit) =>
        new([box], Forbidden.WithoutHidden(obstacles.SelectMany(o => Forbidden.For([box], o, fit, asFound: false))), shell);

    private readonly record struct Size(int XMm, int YMm, int ZMm)
    {
        public static Size Of(Box box) => new(box.Length(0), box.Length(1), box.Length(2));

        public Size TurnedAbout(int axis) => axis switch { 0 => new(XMm, ZMm, YMm), 1 => new(ZMm, YMm, XMm), _ => new(YMm, XMm, ZMm) };

        /// <summary>All sizes that quarter turns lead to, this one first.</summary>
        public List<Size> Turned()
        {
            var all = new List<Size> { this };
            for (var i = 0; i < all.Count; i++)
                for (var axis = 0; axis < 3; axis++)
                    if (!all.Contains(all[i].TurnedAbout(axis))) all.Add(all[i].TurnedAbout(axis));
            return all;
        }

        /// <summary>A block that holds the thing throughout the turn: square, as wide as the diagonal, and a millimetre for rounding.</summary>
        public Size Sweep(int axis)
        {
            static int Diagonal(int a, int b) => (int)Math.Ceiling(Math.Sqrt((double)a * a + (double)b * b)) + 1;
            return axis switch
            {
                0 => new(XMm, Diagonal(YMm, ZMm), Diagonal(YMm, ZMm)),
                1 => new(Diagonal(XMm, ZMm), YMm, Diagonal(XMm, ZMm)),
                _ => new(Diagonal(XMm, YMm), Diagonal(XMm, YMm), ZMm),
            };
        }

        /// <summary>A box of this size about the middle of another.</summary>
        public Box Around(Box other)
        {
            static int From(int low, int high, int length) => (int)Math.Floor((low + high - length) / 2.0);
            var (x, y, z) = (From(other.X0, other.X1, XMm), From(other.Y0, other.Y1, YMm), From(other.Z0, other.Z1, ZMm));
            return new(x, y, z, x + XMm, y + YMm, z + ZMm);
        }
    }
}
