using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Whether the arm behind a hand can be: forearm, upper arm, and a shoulder where a body gets to from outside.</summary>
/// <remarks>
/// Each is a cube as thick as the limb that goes through free room, no further from the hand than that part of the arm is long:
/// up to the elbow the forearm will do, beyond it the thicker upper arm, and where that ends there must be room for head and shoulder,
/// open to the outside. Exact for cubes; an arm is taken to bend like a rope.
/// </remarks>
internal sealed class Arm
{
    // extended over plain functional reach of the small woman: 73.5 and 67.7 cm (NUREG-0700 rev. 3, table 11.4)
    private const double ShoulderForwardMm = 58;
    private const int HandThickMm = 45; // flat hand with the thumb beside it; common practice, no source
    private const int TileMm = 600; // a long thing is touched in one place at a time

    private readonly Crowd crowd;
    private readonly Person person;
    private readonly Chain behind;
    private readonly Lazy<Chain> onto;

    public Arm(Crowd crowd, Person person)
    {
        (this.crowd, this.person) = (crowd, person);
        IReadOnlyList<Box> limbs = [Cube(person.ForearmMm), Cube(person.UpperArmMm), Cube(person.BodyMm)];
        behind = new(limbs, crowd.Obstacles, crowd.Shell);
        onto = new(() => new([Cube(HandThickMm), .. limbs], crowd.Obstacles, crowd.Shell));
    }

    /// <summary>The arm behind a hand that lies in its place, closed round a tool or flat with the finger tips at the fixing.</summary>
    /// <param name="hand">The hand's box.</param>
    /// <param name="side">The side of the fixing that the hand is on.</param>
    /// <param name="isFlat">Whether it is flat.</param>
    public Recalled Behind(Box hand, Heading side, bool isFlat)
    {
        var axis = side.Axis();
        var middle = Middle(hand);
        var tip = side.Sign() > 0 ? hand.Low(axis) : hand.High(axis);
        var core = isFlat ? Point(With(middle, axis, tip)) : Point(middle);
        var elbowMm = isFlat ? person.ElbowToFingertipMm : person.ElbowToGripMm;
        // it touches the hand on any side but the one towards the work
        var start = hand.Grown((int)Math.Ceiling(person.ForearmMm / 2));
        start = side.Sign() > 0 ? WithLow(start, axis, tip) : WithHigh(start, axis, tip);
        IReadOnlyList<Tether> tethers = [ToElbow(core, elbowMm), ToShoulder(core, elbowMm)];
        return new(new(crowd.Items), (gone, stays) => behind.Reach(gone, stays, [start], tethers));
    }

    /// <summary>Hand and arm on to any side of a part.</summary>
    public Recalled Onto(Part part)
    {
        var places = Tiles(PartBody.Of(part.Solids).Outer).ToList();
        return new(crowd.ItemsOf(part), (gone, stays) =>
        {
            var wall = new ItemSet(gone.Size);
            foreach (var (core, starts) in places)
            {
                var handMm = person.HandLongMm + person.ForearmMm / 2;
                var answer = onto.Value.Reach(gone, stays, starts, [new(core, handMm), ToElbow(core, person.ElbowToFingertipMm), ToShoulder(core, person.ElbowToFingertipMm)]);
                if (answer is not Stuck stuck) return answer;
                wall.AddAll(stuck.Wall);
            }
            return new Stuck(wall);
        });
    }

    // the upper arm's middle stands off the elbow by half its thickness
    private Tether ToElbow(Box core, double elbowMm) => new(core, elbowMm + person.UpperArmMm / 2);

    private Tether ToShoulder(Box core, double elbowMm) => new(core, elbowMm + person.UpperArmLongMm + ShoulderForwardMm);

    /// <summary>A thing in pieces no longer than a hand's surroundings, and where a flat hand lies against each.</summary>
    private static IEnumerable<(Box Core, IReadOnlyList<Box> Starts)> Tiles(IReadOnlyList<Box> boxes)
    {
        var bounds = Box.Around(boxes);
        int Count(int axis) => Math.Max(1, (bounds.Length(axis) + TileMm - 1) / TileMm);
        for (var x = 0; x < Count(0); x++)
            for (var y = 0; y < Count(1); y++)
                for (var z = 0; z < Count(2); z++)
                {
                    var tile = new Box(
                        At(0, x, Count(0)), At(1, y, Count(1)), At(2, z, Count(2)), At(0, x + 1, Count(0)), At(1, y + 1, Count(1)), At(2, z + 1, Count(2)));
                    var within = boxes.Select(tile.Common).Where(b => !b.IsEmpty).ToList();
                    if (within.Count > 0) yield return (Box.Around(within), [.. within.SelectMany(Against)]);
                }

        int At(int axis, int i, int count) => bounds.Low(axis) + (int)((long)bounds.Length(axis) * i / count);
    }

    /// <summary>The middles of a flat hand that touches a box on one of its sides.</summary>
    private static IEnumerable<Box> Against(Box box)
    {
        var off = box.Grown((HandThickMm + 1) / 2);
        for (var axis = 0; axis < 3; axis++)
        {
            yield return WithHigh(off, axis, off.Low(axis));
            yield return WithLow(off, axis, off.High(axis));
        }
    }

    private static Box Cube(double mm)
    {
        var (low, whole) = (-(int)Math.Ceiling(mm) / 2, (int)Math.Ceiling(mm));
        return new(low, low, low, low + whole, low + whole, low + whole);
    }

    private static (int X, int Y, int Z) Middle(Box box) => ((box.X0 + box.X1) / 2, (box.Y0 + box.Y1) / 2, (box.Z0 + box.Z1) / 2);

    private static Box Point((int X, int Y, int Z) at) => new(at.X, at.Y, at.Z, at.X, at.Y, at.Z);

    private static (int X, int Y, int Z) With((int X, int Y, int Z) at, int axis, int value) => axis switch { 0 => (value, at.Y, at.Z), 1 => (at.X, value, at.Z), _ => (at.X, at.Y, value) };

    private static Box WithLow(Box box, int axis, int value) => axis switch { 0 => box with { X0 = value }, 1 => box with { Y0 = value }, _ => box with { Z0 = value } };

    private static Box WithHigh(Box box, int axis, int value) => axis switch { 0 => box with { X1 = value }, 1 => box with { Y1 = value }, _ => box with { Z1 = value } };
}
