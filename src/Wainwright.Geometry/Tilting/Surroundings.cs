namespace Wainwright.Geometry;

/// <summary>A rigid load among things that stand: how far it can follow a motion without touching any of them.</summary>
/// <remarks>
/// Conservative advancement. Where a plane parts a piece of the load from a body, the two stay parted at least as long as the
/// piece's motion towards that plane is less than the gap: the shift counts by its share square to the plane, the turn by its
/// share that is not within the plane, times how far the piece reaches from the load's middle. So a slide along a wall and a
/// tilt between two walls are not slowed by them, and nothing is left unlooked-at between two stops. Close to a body every
/// corner is looked at by itself: how fast it nears the plane at first, and how much faster the turn can make it.
/// </remarks>
internal sealed class Surroundings
{
    private const int MostStops = 120;
    private const double LeastShare = 1e-5;

    private readonly Convex[] pieces;
    private readonly double[] reach;
    private readonly Point middle;
    private readonly Body[] standing;
    private readonly double needMm;
    private readonly Placed[] placed;
    private readonly (Point Low, Point High)[] bounds;
    private readonly Point[][] corners;
    private readonly bool[] hasCorners;
    private Point now;

    private readonly record struct Body(int Item, Placed Shape, Point Low, Point High);

    /// <param name="load">Its pieces as found.</param>
    /// <param name="middle">The point it is turned about, as found.</param>
    /// <param name="standing">What stands, each with its item.</param>
    /// <param name="needMm">How far it must stay away from all of it; above 0.</param>
    public Surroundings(IReadOnlyList<Convex> load, Point middle, IEnumerable<(int Item, Convex Shape)> standing, double needMm)
    {
        (pieces, this.middle, this.needMm) = ([.. load], middle, needMm);
        reach = [.. load.Select(p => (p.MiddleMm - middle).LengthMm + p.RadiusMm)];
        this.standing = [.. standing.Select(s =>
        {
            var (low, high) = s.Shape.Standing.Bounds();
            return new Body(s.Item, s.Shape.Standing, low, high);
        })];
        placed = new Placed[pieces.Length];
        bounds = new (Point, Point)[pieces.Length];
        corners = [.. load.Select(p => new Point[p.Corners.Count])];
        hasCorners = new bool[pieces.Length];
    }

    /// <summary>No point of the load is farther from its middle [mm].</summary>
    public double ReachMm => reach.Max();

    /// <summary>Whether it stays away from everything as far as it must.</summary>
    public bool IsClear(Posture at)
    {
        Place(at);
        var still = new Swing(at, default, new(0, 0, 1), 0);
        for (var p = 0; p < placed.Length; p++)
            foreach (var body in standing)
                if (FreeShare(p, body, still, 1) <= 0) return false;
        return true;
    }

    /// <summary>The share of a motion that is surely clear, from its beginning; 1 for all of it. The beginning must be clear.</summary>
    public double Follow(Swing motion)
    {
        var done = 0.0;
        for (var stop = 0; stop < MostStops && done < 1; stop++)
        {
            Place(motion.At(done));
            var free = 1 - done;
            for (var p = 0; p < placed.Length; p++)
                foreach (var body in standing)
                {
                    free = FreeShare(p, body, motion, free);
                    if (free <= LeastShare) return done;
                }
            // the last thousandth is left, so that rounding never eats up the distance wanted
            done = free >= 1 - done ? 1 : done + free * 0.999;
        }
        return done;
    }

    /// <summary>Distance from the nearest thing [mm], as far as it is below a limit.</summary>
    public double ClearMm(Posture at, double limitMm)
    {
        Place(at);
        var least = limitMm;
        for (var p = 0; p < placed.Length; p++)
            foreach (var body in standing)
                if (Apart(bounds[p], body) < least) least = Math.Min(least, Separation.Of(placed[p], body.Shape, least).GapMm);
        return least;
    }

    private void Place(Posture at)
    {
        var turn = at.Attitude.ToRotation();
        now = middle + at.ShiftMm;
        Array.Clear(hasCorners);
        for (var p = 0; p < pieces.Length; p++)
        {
            placed[p] = new(pieces[p], now + turn.Of(pieces[p].MiddleMm - middle), turn.After(pieces[p].Own));
            bounds[p] = placed[p].Bounds();
        }
    }

    /// <summary>How much of a motion one piece can surely follow past one body, as far as it is less than what is free anyway.</summary>
    private double FreeShare(int piece, in Body body, in Swing motion, double free)
    {
        if (ByBounds(bounds[piece], body, motion, reach[piece]) >= free) return free;
        var apart = Separation.Of(placed[piece], body.Shape, double.PositiveInfinity);
        var share = Share(apart.GapMm, apart.Direction, motion, reach[piece]);
        if (share > 0 && share < free && motion.Radians > 0) share = Math.Max(share, ByCorners(piece, apart, motion));
        return Math.Min(free, share);
    }

    private double ByCorners(int piece, in Separation.Found apart, in Swing motion)
    {
        var own = corners[piece];
        if (!hasCorners[piece])
        {
            hasCorners[piece] = true;
            for (var c = 0; c < own.Length; c++) own[c] = placed[piece].MiddleMm - now + placed[piece].Turned.Of(pieces[piece].Corners[c]);
        }
        var lowest = (placed[piece].Farthest(apart.Direction.Times(-1)) - now).Dot(apart.Direction);
        var within = apart.Direction.Cross(motion.UnitAxis).LengthMm;
        var least = double.PositiveInfinity;
        foreach (var corner in own)
        {
            var gap = apart.GapMm + corner.Dot(apart.Direction) - lowest - needMm;
            if (gap <= 0) return 0; // a corner of the box round a cylinder
            var turning = motion.UnitAxis.Cross(corner);
            var towards = -(motion.ShiftMm + turning.Times(motion.Radians)).Dot(apart.Direction);
            var faster = motion.Radians * motion.Radians * turning.LengthMm * within / 2;
            least = Math.Min(least, FirstAt(gap, towards, faster));
        }
        return least;
    }

    /// <summary>When towards · s + faster · s² comes to the gap.</summary>
    private static double FirstAt(double gap, double towards, double faster)
    {
        if (faster <= 1e-12) return towards <= 0 ? double.PositiveInfinity : gap / towards;
        var root = Math.Sqrt(towards * towards + 4 * faster * gap);
        // either form is the same number; this one does not lose its digits
        return towards > 0 ? 2 * gap / (towards + root) : (root - towards) / (2 * faster);
    }

    private double Share(double gapMm, Point direction, in Swing motion, double reachMm)
    {
        if (gapMm <= needMm) return 0;
        var towards = Math.Max(0, -motion.ShiftMm.Dot(direction));
        if (motion.Radians > 0) towards += motion.Radians * reachMm * direction.Cross(motion.UnitAxis).LengthMm;
        return towards <= 0 ? double.PositiveInfinity : (gapMm - needMm) / towards;
    }

    /// <summary>The same, by the planes along the axes between the two bounds: quick, and often enough.</summary>
    private double ByBounds(in (Point Low, Point High) load, in Body body, in Swing motion, double reachMm)
    {
        var most = 0.0;
        for (var axis = 0; axis < 3; axis++)
        {
            var (above, below) = (load.Low[axis] - body.High[axis], body.Low[axis] - load.High[axis]);
            if (above <= needMm && below <= needMm) continue;
            var sign = above > below ? 1 : -1;
            var direction = new Point(axis == 0 ? sign : 0, axis == 1 ? sign : 0, axis == 2 ? sign : 0);
            most = Math.Max(most, Share(Math.Max(above, below), direction, motion, reachMm));
        }
        return most;
    }

    private static double Apart(in (Point Low, Point High) load, in Body body)
    {
        var square = 0.0;
        for (var axis = 0; axis < 3; axis++)
        {
            var gap = Math.Max(0, Math.Max(load.Low[axis] - body.High[axis], body.Low[axis] - load.High[axis]));
            square += gap * gap;
        }
        return Math.Sqrt(square);
    }
}
