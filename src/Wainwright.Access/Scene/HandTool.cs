using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>A tool at a fixing and the hand that holds it, as boxes drawn with the fixing at the origin and the tool along z.</summary>
/// <param name="Boxes">The boxes, the hand last.</param>
/// <param name="IsFlat">Whether the hand lies flat, finger tips at the fixing.</param>
internal sealed record HandTool(IReadOnlyList<Box> Boxes, bool IsFlat = false)
{
    // Hand breadth at the knuckles: 96 mm at the 95th percentile of men (ANSUR II, US Army 2012, public data), rounded up.
    private const int HandMm = 100;
    // Thickness of a closed hand round a handle, and how far hand and wrist reach back: common practice, no source.
    private const int GripMm = 80, HandDeepMm = 110;
    // Lengths and thicknesses of tools: common practice, no source.
    private const int ShankHalfMm = 8, BladeHalfMm = 2, HeadHalfMm = 11, HandleMm = 150;
    private static readonly int[] Extensions = [150, 300];
    private static readonly (int X, int Y)[] Shifts = [(0, 0), (1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (1, -1), (-1, 1), (-1, -1)];

    // Hand length: 210 mm at the 95th percentile of men (ANSUR II); fingers bent a little round what they hold.
    private const int HandLongMm = 190, HandThickMm = 45;

    /// <summary>The bare hand: closed round what it holds, or flat with the finger tips at it, in line or to one side.</summary>
    public static IReadOnlyList<HandTool> Hand { get; } = [.. Straight(0, ShankHalfMm), .. FlatWithFingerTips()];

    /// <summary>A flat hand 100 × 45 × 150 (breadth as above, the rest common practice, no source), pointing along each axis and turned about it.</summary>
    public static IReadOnlyList<Box> FlatHands { get; } =
        [.. new (int X, int Y, int Z)[] { (150, 100, 45), (150, 45, 100), (100, 150, 45), (45, 150, 100), (100, 45, 150), (45, 100, 150) }
            .Select(s => new Box(0, 0, 0, s.X, s.Y, s.Z))];

    /// <summary>
    /// The tools that would do for a joint, shortest first: straight ones, with an extension, and for what is turned also one
    /// whose handle stands off to a side.
    /// </summary>
    public static IReadOnlyList<HandTool> For(Joint joint)
    {
        var way = joint.Release.Way;
        if (way == ReleaseWay.ByHand) return Hand;
        var usual = way switch
        {
            ReleaseWay.Drill => 200,
            ReleaseWay.Cut or ReleaseWay.Pry => 60,
            _ => joint.Drive == Drive.HexHead ? 60 : 80,
        };
        var clear = joint.Release.ToolMm is { } mm ? (int)Math.Ceiling(mm) : usual;
        // a blade is thin: it goes along a board's face
        IEnumerable<HandTool> tools = Straight(clear, way is ReleaseWay.Cut or ReleaseWay.Pry ? BladeHalfMm : ShankHalfMm);
        if (way == ReleaseWay.Unscrew)
        {
            // a ring spanner on a hexagon head, an angle drive on the others
            var angled = joint.Release.ToolMm is not null ? clear : joint.Drive == Drive.HexHead ? 35 : 60;
            tools = [.. tools, .. Angled(angled), .. Extensions.Where(e => e > clear).SelectMany(e => Straight(e, ShankHalfMm))];
        }
        return [.. tools];
    }

    /// <summary>The same with the tool coming from another side.</summary>
    public IReadOnlyList<Box> From(Heading side) => [.. Boxes.Select(b => Turned(b, side))];

    /// <summary>The hand in line with the tool, or shifted to a side or into a corner so that it clears what the fixing is next to.</summary>
    private static IEnumerable<HandTool> Straight(int shankMm, int halfMm)
    {
        var off = HandMm / 2 - halfMm;
        foreach (var (dx, dy) in Shifts)
        {
            var hand = new Box(-HandMm / 2, -HandMm / 2, shankMm, HandMm / 2, HandMm / 2, shankMm + HandDeepMm).Moved(dx * off, dy * off, 0);
            yield return new(shankMm > 0 ? [new(-halfMm, -halfMm, 0, halfMm, halfMm, shankMm), hand] : [hand]);
        }
    }

    private static IEnumerable<HandTool> FlatWithFingerTips()
    {
        foreach (var (halfX, halfY) in new[] { (HandMm / 2, HandThickMm / 2), (HandThickMm / 2, HandMm / 2) })
            foreach (var (dx, dy) in Shifts)
                yield return new([new Box(-halfX, -halfY, 0, halfX, halfY, HandLongMm).Moved(dx * (halfX - BladeHalfMm), dy * (halfY - BladeHalfMm), 0)], IsFlat: true);
    }

    private static IEnumerable<HandTool> Angled(int clearMm)
    {
        const int off = GripMm / 2 - HeadHalfMm;
        var head = new Box(-HeadHalfMm, -HeadHalfMm, 0, HeadHalfMm, HeadHalfMm, clearMm);
        foreach (var shift in new[] { 0, off, -off })
            foreach (var (dx, dy) in Shifts.Skip(1).Take(4))
            {
                // the handle lies over the far end of the head; the hand closes round its last part and needs its own thickness
                var handle = Towards(dx, dy, 0, HandleMm, HeadHalfMm, Math.Max(0, clearMm - 30), clearMm);
                var hand = Towards(dx, dy, HandleMm - HandMm, HandleMm + 20, GripMm / 2, Math.Max(0, clearMm - GripMm), Math.Max(clearMm, GripMm));
                yield return new([head, handle, hand.Moved(dy * shift, dx * shift, 0)]);
            }
    }

    private static Box Towards(int dx, int dy, int from, int to, int half, int z0, int z1) => (dx, dy) switch
    {
        (1, _) => new(from, -half, z0, to, half, z1),
        (-1, _) => new(-to, -half, z0, -from, half, z1),
        (_, 1) => new(-half, from, z0, half, to, z1),
        _ => new(-half, -to, z0, half, -from, z1),
    };

    private static Box Turned(Box b, Heading from) => from switch
    {
        Heading.PlusZ => b,
        Heading.MinusZ => new(b.X0, b.Y0, -b.Z1, b.X1, b.Y1, -b.Z0),
        Heading.PlusX => new(b.Z0, b.X0, b.Y0, b.Z1, b.X1, b.Y1),
        Heading.MinusX => new(-b.Z1, b.X0, b.Y0, -b.Z0, b.X1, b.Y1),
        Heading.PlusY => new(b.X0, b.Z0, b.Y0, b.X1, b.Z1, b.Y1),
        _ => new(b.X0, -b.Z1, b.Y0, b.X1, -b.Z0, b.Y1),
    };
}
