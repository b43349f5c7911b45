using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Whether hand and tool get to a fixing, a line's end or a part.</summary>
/// <remarks>
/// The probe comes in from outside by straight slides and keeps its attitude. Where the hand gets to its place the arm is asked
/// for: two bones behind the hand, and a shoulder where a body gets to. How an arm winds its way in is not modelled.
/// </remarks>
internal sealed class HandReach(Crowd crowd, Person person)
{
    private readonly Shell shell = crowd.Shell;
    private readonly int items = crowd.Items;
    private readonly IReadOnlyList<(Part Part, Obstacle Obstacle)> standing = crowd.Standing;
    private readonly Dictionary<string, Lazy<Probe>> probes = [];
    private readonly Dictionary<PartId, Fixing> handsOn = [];
    private readonly Dictionary<(JointId, Place), FixingReach> fixings = [];
    private readonly Dictionary<PartId, Lazy<bool>> handAlone = [];
    private readonly Arm arm = new(crowd, person);
    private readonly IReadOnlyList<Obstacle> withShell = [new(Obstacle.Fixed, crowd.Shell.Blocks), .. crowd.Obstacles];

    /// <summary>Whether hand and arm get to a fixing, what is gone for each told apart; without a set for the arm it is not asked.</summary>
    private delegate Answer Fixing(ItemSet gone, ItemSet? armGone, ItemSet stays);

    /// <summary>One question for each fixing of a joint; for a joint nobody measured, whether a hand gets to what it holds.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="held">The parts it holds together.</param>
    /// <param name="before">Those, and what they are fixed to or stand on: what was in place when it was done up.</param>
    public IEnumerable<RoomQuestion> Of(Joint joint, IReadOnlyList<Part> held, IReadOnlyList<Part> before)
    {
        if (joint.Points.Count == 0)
        {
            var measured = held.Where(p => !p.Outside && p.Solids.Count > 0).ToList();
            return measured.Count == 0 ? [] : [Touching(measured[0])];
        }
        return joint.Points.Distinct().Select(p => AsAssembled(joint, before, At(PlacesOf(joint, p, held), HandTool.For(joint, person.HandMm))));
    }

    /// <summary>From which sides a fixing may be worked, and where the tool then meets it.</summary>
    public static IReadOnlyList<(Heading Side, Point At)> PlacesOf(Joint joint, Place fixing, IReadOnlyList<Part> held)
    {
        var own = held.SelectMany(p => p.Solids).SelectMany(s => PartBody.Of(s).Outer).ToList();
        IReadOnlyList<Heading> from = joint.Release.From is { } side ? [PartBody.HeadingOf(side)] : Enum.GetValues<Heading>();
        return [.. from.Select(h => (h, Surface(PartBody.PointOf(fixing), h, own)))];
    }

    /// <summary>Whether another person's arm gets behind a hand that gets to every measured fixing of a joint when these are gone.</summary>
    public bool Reaches(Joint joint, IReadOnlyList<Part> held, ItemSet gone, Arm other) => joint.Points.Distinct().All(p =>
    {
        var places = PlacesOf(joint, p, held);
        if (!fixings.TryGetValue((joint.Id, p), out var fixing)) fixings[(joint.Id, p)] = fixing = ReachOf(places, HandTool.For(joint, person.HandMm));
        return places.Any(at => IsOutside(shell, at.At, at.Side)) || fixing.ReachesWith(other, gone);
    });

    /// <summary>Whether another person's hand and arm get to a part when these are gone, the hand taken to be as here.</summary>
    public bool Reaches(Part part, ItemSet gone, Arm other) => HandOnly(part)(gone, null, new(gone.Size)) is WayOut && other.Onto(part).Ask(gone, new(gone.Size)) is WayOut;

    /// <summary>Whether a hand gets to a part, but no arm modelled behind it even with nothing else in the van: then the hand alone decides.</summary>
    public bool IsHandAlone(PartId part) => handAlone.TryGetValue(part, out var alone) && alone.Value;

    /// <summary>Joints with a fixing that no tool modelled gets to even with nothing else in the van.</summary>
    public HashSet<JointId> OnTrial { get; } = [];

    /// <summary>Joints with a fixing that hand and tool get to, but no arm of the person chosen, even with nothing else in the van.</summary>
    public HashSet<JointId> ArmOnTrial { get; } = [];

    /// <summary>
    /// A fixing was once done up with the parts it holds, and what those rest on, in place. Where no arm or no tool modelled
    /// gets to it past those alone, arms and tools are too few, not the room too small: then those parts are passed through,
    /// by the arm first, and the plan asks for a trial.
    /// </summary>
    private RoomQuestion AsAssembled(Joint joint, IReadOnlyList<Part> before, Fixing question)
    {
        var itsOwn = ItemSet.Of(items, standing.Where(s => before.Contains(s.Part)).Select(s => s.Obstacle.Item));
        var settled = new Lazy<RoomQuestion>(() => Settled(joint, itsOwn, question));
        // where it is reached all the same nothing needs to be settled
        return (gone, stays) => !settled.IsValueCreated && question(gone, gone, stays) is WayOut way ? way : settled.Value(gone, stays);
    }

    private RoomQuestion Settled(Joint joint, ItemSet itsOwn, Fixing question)
    {
        var (all, none) = (ItemSet.All(items), new ItemSet(items));
        var others = all.Without(itsOwn);
        ItemSet Passing(ItemSet gone)
        {
            var passed = gone.Copy();
            passed.AddAll(itsOwn);
            return passed;
        }
        if (question(others, others, none) is WayOut) return (gone, stays) => question(gone, gone, stays);
        if (question(others, null, none) is WayOut)
        {
            ArmOnTrial.Add(joint.Id);
            if (question(others, all, none) is WayOut) return (gone, stays) => question(gone, Passing(gone), stays);
            return (gone, stays) => question(gone, null, stays);
        }
        OnTrial.Add(joint.Id);
        if (question(all, null, none) is not WayOut) return (_, _) => new WayOut([], new(items), null);
        return (gone, stays) =>
        {
            var answer = question(Passing(gone), null, stays);
            return answer is WayOut way ? way with { Through = way.Through.Without(itsOwn) } : answer;
        };
    }

    /// <summary>Where an arm can be there at all it is asked for; where none modelled ever can, the hand alone decides.</summary>
    private RoomQuestion WhereAnArmCanBe(Fixing question, Part? part = null)
    {
        var (all, none) = (ItemSet.All(items), new ItemSet(items));
        var never = new Lazy<bool>(() => question(all, all, none) is not WayOut && question(all, null, none) is WayOut);
        if (part is not null) handAlone[part.Id] = never;
        return (gone, stays) =>
        {
            var answer = question(gone, gone, stays);
            return answer is Stuck && never.Value ? question(gone, null, stays) : answer;
        };
    }

    /// <summary>Whether a hand gets to where a line ends, or to the part it ends at.</summary>
    public IEnumerable<RoomQuestion> Of(Line line, LineEnd end, bool isFrom, Part? at)
    {
        if (at is { Outside: false, Solids.Count: > 0 }) return [Touching(at)];
        if (at is not null || line.Route.Count == 0 || end.Part is not null) return [];
        var place = PartBody.PointOf(isFrom ? line.Route[0] : line.Route[^1]);
        return [WhereAnArmCanBe(At([.. Enum.GetValues<Heading>().Select(h => (h, place))], HandTool.Hand(person.HandMm)))];
    }

    /// <summary>Whether a flat hand gets to lie against a part, whichever way it is held.</summary>
    public RoomQuestion Touching(Part part)
    {
        var hand = HandOnly(part);
        var arms = new Lazy<Recalled>(() => arm.Onto(part));
        return WhereAnArmCanBe((gone, armGone, stays) =>
        {
            var lies = hand(gone, null, stays);
            if (lies is not WayOut there || armGone is null) return lies;
            var behind = arms.Value.Ask(armGone, stays);
            if (behind is not WayOut clear) return behind;
            var through = there.Through.Copy();
            through.AddAll(clear.Through);
            return there with { Through = through };
        }, part);
    }

    private Fixing HandOnly(Part part)
    {
        if (handsOn.TryGetValue(part.Id, out var known)) return known;
        var target = PartBody.Of(part.Solids).Outer;
        var round = standing.Select(s => s.Part == part ? s.Obstacle with { Item = Obstacle.Fixed } : s.Obstacle).ToList();
        var hands = new Lazy<Probe[]>(() => [.. HandTool.FlatHands(person.HandMm).Select(hand => new Probe([hand], round, shell))]);
        return handsOn[part.Id] = (gone, _, stays) => Any(hands.Value.Select(h => h.Touch(gone, stays, target)), gone.Size);
    }

    private Fixing At(IReadOnlyList<(Heading Side, Point At)> places, IReadOnlyList<HandTool> tools)
    {
        if (places.Any(p => IsOutside(shell, p.At, p.Side))) return (gone, _, _) => new WayOut([], new(gone.Size), null);
        var reach = new Lazy<FixingReach>(() => ReachOf(places, tools));
        return (gone, armGone, stays) => reach.Value.Ask(gone, armGone, stays);
    }

    private FixingReach ReachOf(IReadOnlyList<(Heading Side, Point At)> places, IReadOnlyList<HandTool> tools) =>
        new(places.SelectMany(p => tools.Select(tool => PlaceOf(tool, p.At, p.Side))), withShell);

    private ToolPlace PlaceOf(HandTool tool, Point at, Heading side)
    {
        var boxes = tool.From(side);
        return new(at, side, tool.IsFlat, boxes, ProbeOf(boxes), new(() => arm.Behind(FixingReach.Placed(boxes[^1], at), side, tool.IsFlat)));
    }

    private Lazy<Probe> ProbeOf(IReadOnlyList<Box> boxes)
    {
        var key = string.Join(' ', boxes);
        if (!probes.TryGetValue(key, out var probe)) probes[key] = probe = new(() => new(boxes, crowd.Obstacles, shell));
        return probe;
    }

    /// <summary>The first way there is; none only when there is none by any, held by all that holds any.</summary>
    private static Answer Any(IEnumerable<Answer> answers, int size)
    {
        var wall = new ItemSet(size);
        foreach (var answer in answers)
        {
            if (answer is WayOut) return answer;
            wall.AddAll(((Stuck)answer).Wall);
        }
        return new Stuck(wall);
    }

    /// <summary>Where the tool meets the fixing: out of whatever the fixing holds, towards the tool.</summary>
    private static Point Surface(Point fixing, Heading towards, IReadOnlyList<Box> own)
    {
        var at = fixing;
        for (var layers = 0; layers < 6; layers++)
        {
            var cover = own.Where(b => Covers(b, at, towards)).ToList();
            if (cover.Count == 0) return at;
            at = Moved(at, towards, towards.Sign() > 0 ? cover.Max(b => b.High(towards.Axis())) : cover.Min(b => b.Low(towards.Axis())));
        }
        return at;
    }

    private static bool Covers(Box box, Point at, Heading towards)
    {
        for (var axis = 0; axis < 3; axis++)
        {
            var c = Along(at, axis);
            if (axis != towards.Axis() ? c < box.Low(axis) || c > box.High(axis)
                : towards.Sign() > 0 ? c < box.Low(axis) - NearMm || c >= box.High(axis) : c > box.High(axis) + NearMm || c <= box.Low(axis))
                return false;
        }
        return true;
    }

    private const int NearMm = 2; // a fixing drawn this close to a sheet is taken to go through it

    /// <summary>At the skin, or beyond it, with the tool on the far side: it is worked from outside the van.</summary>
    internal static bool IsOutside(Shell shell, Point at, Heading towards)
    {
        var axis = towards.Axis();
        var c = Along(at, axis);
        return towards.Sign() > 0 ? c >= shell.Room.High(axis) - NearMm : c <= shell.Room.Low(axis) + NearMm;
    }

    private static double Along(Point at, int axis) => axis switch { 0 => at.XMm, 1 => at.YMm, _ => at.ZMm };

    private static Point Moved(Point at, Heading heading, double to) => heading.Axis() switch
    {
        0 => at with { XMm = to },
        1 => at with { YMm = to },
        _ => at with { ZMm = to },
    };
}
