using Wainwright.Geometry;

namespace Wainwright.Bench.Vans;

/// <summary>A van as people fit it out: sheets and panels, cabinets along both walls, lockers above, things in them, an aisle.</summary>
sealed partial class FittedVan
{
    private const int FloorMm = 12, LiningMm = 5, CeilingMm = 10, BoardMm = 15, LowMm = 860, LockerFromMm = 1450, LockerToMm = 1950, LockerDeepMm = 300;

    private readonly Random random;
    private readonly int lengthMm;
    private readonly (int From, int To) sideDoor;
    private readonly List<BoxPart> parts = [];
    private readonly List<BoxJoint> joints = [];
    private readonly List<int> floor = [], wanted = [];

    public FittedVan(Random random, int count)
    {
        this.random = random;
        lengthMm = Math.Clamp((1600 + 12 * count) / 100 * 100, 1800, 4000);
        sideDoor = (lengthMm * 11 / 20 / 50 * 50, lengthMm * 17 / 20 / 50 * 50);
        var strips = Math.Max(1, count / 25);
        Sheets(strips);
        var places = Places(Math.Max(2, (count - parts.Count) / 8));
        // five parts make a cabinet with its locker; what is left of the number lies in them, two a cabinet or thereabouts
        var spare = count - parts.Count - 5 * places.Count;
        for (var i = 0; i < places.Count; i++)
        {
            var here = spare * (i + 1) / places.Count - spare * i / places.Count;
            Cabinet(places[i], (here + 1) / 2);
            Locker(places[i], here / 2);
        }
    }

    /// <summary>Two of the fitted things, or of the lining behind them, are wanted out.</summary>
    public BoxVan Named(string name)
    {
        var two = Packing.Two(wanted.Count, random);
        return new(name, lengthMm, sideDoor, parts, joints, [wanted[two[0]], wanted[two[1]]]);
    }

    private int Add(Sort sort, int minutes, IReadOnlyList<int> on, params IReadOnlyList<Box> boxes)
    {
        parts.Add(new(sort, boxes, minutes, on));
        return parts.Count - 1;
    }

    private void Held(int part, int? to, Heading from, params IEnumerable<(double X, double Y, double Z)> points)
    {
        IReadOnlyList<Point> at = [.. points.Select(p => new Point(Math.Round(p.X), Math.Round(p.Y), Math.Round(p.Z)))];
        joints.Add(new(part, to, at, from, 1 + at.Count));
    }

    private void Sheets(int strips)
    {
        for (var i = 0; i < strips; i++)
        {
            var (x0, x1) = (lengthMm * i / strips, lengthMm * (i + 1) / strips);
            var (third, two) = (x0 + (x1 - x0) / 3, x0 + (x1 - x0) * 2 / 3);
            foreach (var (y0, y1) in new[] { (0, 1000), (1000, 2000) })
            {
                floor.Add(Add(Sort.FloorSheet, 4 + random.Next(4), [], new Box(x0, y0, 0, x1, y1, FloorMm)));
                Held(floor[^1], null, Heading.PlusZ, (third, y0 + 150, FloorMm), (two, y1 - 150, FloorMm));
            }
            var ceiling = Add(Sort.Ceiling, 5 + random.Next(4), [], new Box(x0, 300, 2000 - CeilingMm, x1, 1700, 2000));
            Held(ceiling, null, Heading.MinusZ, (third, 500, 2000 - CeilingMm), (two, 1500, 2000 - CeilingMm));
            Lining(x0, x1, 0, LiningMm, Heading.PlusY, LiningMm);
            if (x0 >= sideDoor.To || x1 <= sideDoor.From) Lining(x0, x1, 2000 - LiningMm, 2000, Heading.MinusY, 2000 - LiningMm);
        }
    }

    private void Lining(int x0, int x1, int y0, int y1, Heading inwards, int faceY)
    {
        var lining = Add(Sort.Lining, 4 + random.Next(4), [], new Box(x0, y0, 60, x1, y1, 1760));
        Held(lining, null, inwards, (x0 + (x1 - x0) / 3.0, faceY, 300), (x0 + (x1 - x0) * 2 / 3.0, faceY, 1200));
        wanted.Add(lining);
    }

    /// <summary>Where cabinets stand: along the left wall from end to end, along the right one beside the door.</summary>
    private List<Place> Places(int count)
    {
        (bool IsLeft, int From, int To)[] runs = [(true, 0, lengthMm), (false, 0, sideDoor.From), (false, sideDoor.To, lengthMm)];
        var pitch = runs.Sum(r => r.To - r.From) / (double)count;
        var places = new List<Place>();
        foreach (var (isLeft, from, to) in runs)
        {
            // each run takes its share; the last one what is left
            var here = isLeft || to < lengthMm ? (int)Math.Round((to - from) / pitch) : count - places.Count;
            for (var i = 0; i < here; i++)
                places.Add(new(isLeft, from + (to - from) * i / here, from + (to - from) * (i + 1) / here, 450 + 50 * random.Next(4)));
        }
        return places;
    }

    /// <param name="IsLeft">Against the left wall.</param>
    /// <param name="FromMm">Its front end.</param>
    /// <param name="ToMm">Its rear end.</param>
    /// <param name="DeepMm">How far it stands into the room.</param>
    private sealed record Place(bool IsLeft, int FromMm, int ToMm, int DeepMm)
    {
        public Heading Inwards => IsLeft ? Heading.PlusY : Heading.MinusY;

        /// <summary>A box by its distances from the lining.</summary>
        public Box Box(int x0, int near, int z0, int x1, int far, int z1) => IsLeft
            ? new(x0, LiningMm + near, z0, x1, LiningMm + far, z1)
            : new(x0, BoxVan.AcrossMm - LiningMm - far, z0, x1, BoxVan.AcrossMm - LiningMm - near, z1);

        public (double X, double Y, double Z) At(double x, int out_, double z) => (x, IsLeft ? LiningMm + out_ : BoxVan.AcrossMm - LiningMm - out_, z);
    }
}
