using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>A tool at a fixing and the hand that holds it, as boxes drawn with the fixing at the origin and the tool along z.</summary>
/// <param name="Boxes">The boxes, the hand last.</param>
/// <param name="IsFlat">Whether the hand lies flat, finger tips at the fixing.</param>
internal sealed record HandTool(IReadOnlyList<Box> Boxes, bool IsFlat = false)
{
    // Thickness of a closed hand round a handle, and how far hand and wrist reach back: common practice, no source.
    private const int GripMm = 80, HandDeepMm = 110;
    // Lengths and thicknesses of tools: common practice, no source.
    private const int ShankHalfMm = 8, BladeHalfMm = 2, ScrewHalfMm = 4, HeadHalfMm = 11, HandleMm = 150;
    private static readonly int[] Extensions = [150, 300];
    private static readonly (int X, int Y)[] Shifts = [(0, 0), (1, 0), (-1, 0), (0, 1), (0, -1), (1, 1), (1, -1), (-1, 1), (-1, -1)];

    // Hand length: 210 mm at the 95th percentile of men (ANSUR II); fingers bent a little round what they hold.
    private const int HandLongMm = 190, HandThickMm = 45;

    /// <summary>The bare hand: closed round what it holds, or flat with the finger tips at it, in line or to one side.</summary>
    /// <param name="handMm">Breadth of the hand.</param>
    public static IReadOnlyList<HandTool> Hand(int handMm) => [.. Straight(0, ShankHalfMm, handMm), .. FlatWithFingerTips(handMm)];

    /// <summary>A flat hand 45 thick and 150 long (common practice, no source), pointing along each axis and turned about it.</summary>
    /// <param name="handMm">Breadth of the hand.</param>
    public static IReadOnlyList<Box> FlatHands(int handMm) =>
        [.. new (int X, int Y, int Z)[] { (150, handMm, 45), (150, 45, handMm), (handMm, 150, 45), (45, 150, handMm), (handMm, 45, 150), (45, handMm, 150) }
            .Select(s => new Box(0, 0, 0, s.X, s.Y, s.Z))];

    /// <summary>
    /// The tools that would do for a joint, shortest first: straight ones, with an extension, and for what is turned also one
    /// whose handle stands off to a side. A screw of known length is drawn out before any of them, and its room goes with them.
    /// </summary>
    /// <param name="joint">The joint.</param>
    /// <param name="handMm">Breadth of the hand.</param>
    public static IReadOnlyList<HandTool> For(Joint joint, int handMm)
    {
        var way = joint.Release.Way;
        if (way == ReleaseWay.ByHand) return Hand(handMm);
        var clear = ClearMm(joint);
        // a blade is thin: it goes along a board's face
        IEnumerable<HandTool> tools = Straight(clear, way is ReleaseWay.Cut or ReleaseWay.Pry ? BladeHalfMm : ShankHalfMm, handMm);
        if (way == ReleaseWay.Unscrew)
        {
            // a ring spanner on a hexagon head, an angle drive on the others
            var angled = joint.Release.ToolMm is not null ? clear : joint.Drive == Drive.HexHead ? 35 : 60;
            tools = [.. tools, .. Angled(angled, handMm), .. Extensions.Where(e => e > clear).SelectMany(e => Straight(e, ShankHalfMm, handMm))];
        }
        return Drawn.LengthMm(joint) is { } screw ? [.. tools.Select(t => t.WithRoomFor(screw))] : [.. tools];
    }

    /// <summary>Length of tool and fixing in front of the hand [mm]: as recorded, or the usual tool's.</summary>
    public static int ClearMm(Joint joint) => joint.Release.ToolMm is { } mm ? (int)Math.Ceiling(mm) : joint.Release.Way switch
    {
        ReleaseWay.ByHand => 0,
        ReleaseWay.Drill => 200,
        ReleaseWay.Cut or ReleaseWay.Pry => 60,
        _ => joint.Drive == Drive.HexHead ? 60 : 80,
    };

    private HandTool WithRoomFor(int screwMm) =>
        Boxes.Count > 1 && Boxes[0].Z1 >= screwMm ? this : this with { Boxes = [new(-ScrewHalfMm, -ScrewHalfMm, 0, ScrewHalfMm, ScrewHalfMm, screwMm), .. Boxes] };

    /// <summary>The same with the tool coming from another side.</summary>
    public IReadOnlyList<Box> From(Heading side) => [.. Boxes.Select(b => Turned(b, side))];

    /// <summary>The hand in line with the tool, or shifted to a side or into a corner so that it clears what the fixing is next to.</summary>
    private static IEnumerable<HandTool> Straight(int shankMm, int halfMm, int handMm)
    {
        var off = handMm / 2 - halfMm;
        foreach (var (dx, dy) in Shifts)
        {
            var hand = new Box(-handMm / 2, -handMm / 2, shankMm, handMm / 2, handMm / 2, shankMm + HandDeepMm).Moved(dx * off, dy * off, 0);
            yield return new(shankMm > 0 ? [new(-halfMm, -halfMm, 0, halfMm, halfMm, shankMm), hand] : [hand]);
        }
    }

    private static IEnumerable<HandTool> FlatWithFingerTips(int handMm)
    {
        foreach (var (halfX, halfY) in new[] { (handMm / 2, HandThickMm / 2), (HandThickMm / 2, handMm / 2) })
            foreach (var (dx, dy) in Shifts)
                yield return new([new Box(-halfX, -halfY, 0, halfX, halfY, HandLongMm).Moved(dx * (halfX - BladeHalfMm), dy * (halfY - BladeHalfMm), 0)], IsFlat: true);
    }

    private static IEnumerable<HandTool> Angled(int clearMm, int handMm)
    {
        const int off = GripMm / 2 - HeadHalfMm;
        var head = new Box(-HeadHalfMm, -HeadHalfMm, 0, HeadHalfMm, HeadHalfMm, clearMm);
        foreach (var shift in new[] { 0, off, -off })
            foreach (var (dx, dy) in Shifts.Skip(1).Take(4))
            {
                // the handle lies over the far end of the head; the hand closes round its last part and needs its own thickness
                var handle = Towards(dx, dy, 0, HandleMm, HeadHalfMm, Math.Max(0, clearMm - 30), clearMm);
                var hand = Towards(dx, dy, HandleMm - handMm, HandleMm + 20, GripMm / 2, Math.Max(0, clearMm - GripMm), Math.Max(clearMm, GripMm));
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
