namespace Wainwright.Geometry;

/// <summary>Two trees of clear motions, one from within and one from outside, grown by chance until they meet.</summary>
/// <remarks>
/// After J. J. Kuffner and S. M. LaValle, RRT-Connect (IEEE ICRA 2000; from memory), with roots all over the regions that exact
/// moves reach, and with most motions being what hands do: a slide along an axis, a tilt about one axis, about the middle or
/// about an edge.
/// </remarks>
internal sealed class TiltTrees
{
    private const int RootsFirst = 16, TriesPerRoot = 12, SampleOfTree = 3, NearestToJoin = 2, ShorteningTries = 120;
    private const double LeastMotionMm = 2, DegreesAtOnce = 5;

    private readonly Surroundings around;
    private readonly TiltRoots roots;
    private readonly Shell shell;
    private readonly Random random;
    private readonly TiltPlane? plane;
    private readonly Point found, halfMm;
    private readonly double reachMm;
    private readonly List<Node> inner = [], outer = [];

    /// <summary>A way from an exactly reached place within to one outside.</summary>
    internal sealed record Joined(ExactRegions.Root Start, IReadOnlyList<Posture> Postures, ExactRegions.Root End);

    private sealed class Node(Posture at, Node? from, ExactRegions.Root? root)
    {
        public Posture At => at;

        public Node? From => from;

        public ExactRegions.Root? Root => root;

        public int TimesChosen { get; set; }
    }

    /// <param name="around">What the load must not touch.</param>
    /// <param name="roots">Where exact moves lead.</param>
    /// <param name="shell">What is to be left.</param>
    /// <param name="random">Chance.</param>
    /// <param name="plane">The plane that all motions keep to; absent for any motion.</param>
    public TiltTrees(Surroundings around, TiltRoots roots, Shell shell, Random random, TiltPlane? plane)
    {
        (this.around, this.roots, this.shell, this.random, this.plane) = (around, roots, shell, random, plane);
        (found, halfMm, reachMm) = (roots.Found, roots.HalfMm, around.ReachMm);
        for (var i = 0; i < RootsFirst; i++) AddRoots();
    }

    /// <summary>Whether there is somewhere to begin and somewhere to end.</summary>
    public bool HasBothEnds => inner.Count > 0 && outer.Count > 0;

    /// <summary>Motions tried so far.</summary>
    public int Tries { get; private set; }

    /// <summary>The first way found in so many further tries, shortened; nothing when they are used up.</summary>
    public Joined? Grow(int tries, CancellationToken stop)
    {
        for (var last = Tries + tries; Tries < last && !stop.IsCancellationRequested;)
        {
            if (Tries % TriesPerRoot == 0) AddRoots();
            var (tree, other) = Tries % 2 == 0 ? (inner, outer) : (outer, inner);
            Tries++;
            if (tree.Count == 0 || Extended(tree, other) is not { } tip) continue;
            if (Join(tip, other) is not { } met) continue;
            var (start, end) = tree == inner ? (tip, met) : (met, tip);
            return Shortened(start, end);
        }
        return null;
    }

    private void AddRoots()
    {
        if (roots.Within(plane, random) is { } start && around.IsClear(start.Posture)) inner.Add(new(start.Posture, null, start));
        if (roots.Outside(plane, random) is { } end && around.IsClear(end.Posture)) outer.Add(new(end.Posture, null, end));
    }

    /// <summary>A new node as far as a proposed motion goes, or nothing when that is next to nothing.</summary>
    private Node? Extended(List<Node> tree, List<Node> other)
    {
        if (random.NextDouble() < 0.6)
        {
            var seldom = Enumerable.Range(0, SampleOfTree).Select(_ => tree[random.Next(tree.Count)]).MinBy(n => n.TimesChosen)!;
            seldom.TimesChosen++;
            return random.NextDouble() < 0.5 ? Moved(tree, seldom, Slid(seldom.At)) : Tilted(tree, seldom);
        }
        var goal = random.NextDouble() < 0.3 && other.Count > 0 ? other[random.Next(other.Count)].At : AtRandom();
        return Moved(tree, Nearest(tree, goal, 1)[0], goal);
    }

    private Node? Moved(List<Node> tree, Node from, Posture to)
    {
        var motion = Swing.Between(from.At, to);
        var share = around.Follow(motion);
        if (motion.FarthestMm(reachMm) * share < LeastMotionMm) return null;
        var node = new Node(share >= 1 ? to : motion.At(share), from, null);
        tree.Add(node);
        return node;
    }

    /// <summary>A slide along one axis of the van, or towards a gap.</summary>
    private Posture Slid(Posture from)
    {
        var lengthMm = 5 * Math.Pow(400, random.NextDouble());
        if (shell.Gaps.Count > 0 && random.NextDouble() < 0.25)
        {
            var gap = plane?.Gap ?? shell.Gaps[random.Next(shell.Gaps.Count)];
            var towards = Kept(Middle(gap.In(shell.Slab(gap.Wall))) - found) - from.ShiftMm;
            var distance = Math.Max(1, towards.LengthMm);
            return new(from.ShiftMm + towards.Times(Math.Min(1, lengthMm / distance)), from.Attitude);
        }
        var by = (random.Next(2) == 0 ? -1 : 1) * lengthMm;
        return new(from.ShiftMm + Axis(plane?.Across(random.Next(2)) ?? random.Next(3)).Times(by), from.Attitude);
    }

    /// <summary>A tilt about one axis of the van or of the load, about its middle or about an edge, in small parts.</summary>
    private Node? Tilted(List<Node> tree, Node from)
    {
        var axis = Axis(plane?.Axis ?? random.Next(3));
        if (plane is null && random.Next(3) == 0) axis = from.At.Attitude.Of(axis);
        var degrees = (random.Next(2) == 0 ? -1 : 1) * 3 * Math.Pow(30, random.NextDouble());
        // an edge of the bounds, in the load's own axes from its middle
        var edge = random.Next(2) == 0 ? default
            : from.At.Attitude.Of(new Point(random.Next(-1, 2) * halfMm.XMm, random.Next(-1, 2) * halfMm.YMm, random.Next(-1, 2) * halfMm.ZMm));
        if (plane is not null) edge = edge - Axis(plane.Axis).Times(edge[plane.Axis]);
        var parts = (int)Math.Ceiling(Math.Abs(degrees) / DegreesAtOnce);
        var pivot = from.At.ShiftMm + edge;
        Node? last = null;
        for (var part = 1; part <= parts; part++)
        {
            var turn = Attitude.About(axis, degrees * part / parts * Math.PI / 180);
            var to = new Posture(pivot - turn.Of(edge), turn.After(from.At.Attitude));
            var next = Moved(tree, last ?? from, to);
            if (next is null) break;
            last = next;
            if (next.At != to) break;
        }
        return last;
    }

    /// <summary>Somewhere in the van or round a gap, quarter turned and tilted about one axis.</summary>
    private Posture AtRandom()
    {
        var attitude = plane?.First ?? roots.AnyQuarterTurned(random);
        attitude = Attitude.About(Axis(plane?.Axis ?? random.Next(3)), (random.NextDouble() - 0.5) * 2 * Math.PI).After(attitude);
        var box = shell.Outside;
        if (shell.Gaps.Count > 0 && random.Next(2) == 0)
        {
            var gap = plane?.Gap ?? shell.Gaps[random.Next(shell.Gaps.Count)];
            box = gap.In(shell.Slab(gap.Wall)).Grown((int)reachMm);
        }
        double Between(int low, int high) => low + random.NextDouble() * (high - low);
        return new(Kept(new Point(Between(box.X0, box.X1), Between(box.Y0, box.Y1), Between(box.Z0, box.Z1)) - found), attitude);
    }

    /// <summary>The shift put into the plane that motions keep to.</summary>
    private Point Kept(Point shift) => plane is null ? shift : shift + Axis(plane.Axis).Times(plane.ShiftMm - shift[plane.Axis]);

    private Node? Join(Node tip, List<Node> other)
    {
        foreach (var near in Nearest(other, tip.At, NearestToJoin))
            if (around.Follow(Swing.Between(tip.At, near.At)) >= 1) return near;
        return null;
    }

    private List<Node> Nearest(List<Node> tree, Posture to, int count)
    {
        var best = new List<(double Far, Node Node)>(count + 1);
        foreach (var node in tree)
        {
            var far = FarMm(node.At, to);
            if (best.Count == count && far >= best[^1].Far) continue;
            var at = best.FindIndex(b => far < b.Far);
            best.Insert(at < 0 ? best.Count : at, (far, node));
            if (best.Count > count) best.RemoveAt(count);
        }
        return [.. best.Select(b => b.Node)];
    }

    private double FarMm(Posture a, Posture b)
    {
        var (p, q) = (a.Attitude, b.Attitude);
        var cos = Math.Min(1, Math.Abs(p.W * q.W + p.X * q.X + p.Y * q.Y + p.Z * q.Z));
        return (a.ShiftMm - b.ShiftMm).LengthMm + reachMm * Math.Acos(cos);
    }

    /// <summary>The chains of both trees as one way, with detours replaced wherever the direct motion is clear.</summary>
    private Joined Shortened(Node start, Node end)
    {
        List<Node> chain = [];
        for (var n = start; n is not null; n = n.From) chain.Add(n);
        chain.Reverse();
        for (var n = end; n is not null; n = n.From) chain.Add(n);
        var way = chain.Select(n => n.At).ToList();
        for (var i = 0; i < ShorteningTries && way.Count > 2; i++)
        {
            var (a, b) = (random.Next(way.Count), random.Next(way.Count));
            var (from, to) = (Math.Min(a, b), Math.Max(a, b));
            if (to - from >= 2 && around.Follow(Swing.Between(way[from], way[to])) >= 1) way.RemoveRange(from + 1, to - from - 1);
        }
        return new(chain[0].Root!, way, chain[^1].Root!);
    }

    private static Point Axis(int axis) => new(axis == 0 ? 1 : 0, axis == 1 ? 1 : 0, axis == 2 ? 1 : 0);

    private static Point Middle(Box box) => new((box.X0 + box.X1) / 2.0, (box.Y0 + box.Y1) / 2.0, (box.Z0 + box.Z1) / 2.0);
}
