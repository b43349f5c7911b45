using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>A change thought of, not yet planned.</summary>
/// <param name="Kind">Of what kind.</param>
/// <param name="What">In words.</param>
/// <param name="Edits">The edits.</param>
/// <param name="Heed">What to look at before it is built.</param>
/// <param name="InsteadOf">What had to be done without it: a plan that uses the change could do this in its place.</param>
internal sealed record Idea(WhatIfKind Kind, string What, IReadOnlyList<Edit> Edits, string Heed, IReadOnlyList<int> InsteadOf)
{
    private const string Holds = "It must hold in a crash and against rattling as well as what it replaces: judge the changed van with the checks.";

    public static Idea? ByHand(Job job, Part part, IReadOnlyList<(Joint Joint, int Item)> joints) => joints.Count == 0 ? null : new(
        WhatIfKind.ByHand,
        $"Hold {Wording.Name(part)} by hand knobs instead of screws ({Count(joints.Sum(j => j.Joint.Count), "fixing")})",
        [.. joints.Select(j => Edit.Put(job, "joints", j.Joint.Id.Text, Loosened(j.Joint, FixingType.HandKnob)))],
        Holds,
        [.. joints.Select(j => j.Item)]);

    public static Idea? Hinged(Job job, Part part, IReadOnlyList<(Joint Joint, int Item)> joints)
    {
        if (joints.Count == 0) return null;
        var first = joints[0].Joint;
        return new(
            WhatIfKind.Hinged,
            $"Hang {Wording.Name(part)} on two lift-off hinges with a catch instead of {Count(joints.Sum(j => j.Joint.Count), "screw")}",
            [
                Edit.Put(job, "joints", first.Id.Text, Loosened(first, FixingType.Runner) with { Count = 2, Points = [.. first.Points.Take(2)] }),
                .. joints.Skip(1).Take(1).Select(j => Edit.Put(job, "joints", j.Joint.Id.Text, Loosened(j.Joint, FixingType.Clip) with { Count = 1, Points = [.. j.Joint.Points.Take(1)] })),
                .. joints.Skip(2).Select(j => Edit.TakeOut(job, "joints", j.Joint.Id.Text)),
            ],
            Holds,
            [.. joints.Select(j => j.Item)]);
    }

    public static Idea OtherSide(Job job, Part part, Joint joint, int item, Direction side) => new(
        WhatIfKind.OtherSide,
        $"Turn {Wording.Fixings(joint)} of {Wording.Name(part)} round, to be undone from {Side(side)}",
        [Edit.Put(job, "joints", joint.Id.Text, joint with { Axis = joint.Axis is null ? null : side.Opposite(), Hidden = false, Release = joint.Release with { From = side } })],
        "Look whether there is something to screw into from that side.",
        [item]);

    public static Idea Plugs(Job job, Part part, IReadOnlyList<(Line Line, bool IsFrom, Joint? Joint, int Item)> ends)
    {
        var edits = new List<Edit>();
        foreach (var (line, isFrom, joint, _) in ends)
        {
            if (joint is not null)
            {
                edits.Add(Edit.Put(job, "joints", joint.Id.Text, Loosened(joint, Coupling(line.Medium))));
                continue;
            }
            var added = new Joint
            {
                Id = new(Free(job.Joints.Select(j => j.Id.Text), $"{line.Id}-plug")),
                Part = part.Id,
                Type = Coupling(line.Medium),
                Count = 1,
                Points = line.Route.Count > 0 ? [isFrom ? line.Route[0] : line.Route[^1]] : [],
                Known = Known.Inferred,
                Release = new() { Way = ReleaseWay.ByHand },
            };
            edits.Add(Edit.Put(job, "joints", added.Id.Text, added));
            edits.Add(Edit.Put(job, "lines", line.Id.Text, isFrom ? line with { From = line.From with { Joint = added.Id } } : line with { To = line.To with { Joint = added.Id } }));
        }
        var names = ends.Count <= 3 ? string.Join(", ", ends.Select(e => e.Line.Name)) : $"the {ends.Count} lines";
        return new(
            WhatIfKind.Plugs,
            $"Put plugs or quick couplings on {names} at {Wording.Name(part)}",
            edits,
            "Rated for the line's current or pressure, coded so that none can be swapped; mains and gas are left to whom they are reserved to.",
            [.. ends.Select(e => e.Item)]);
    }

    private static Joint Loosened(Joint joint, FixingType type) => joint with
    {
        Type = type,
        Drive = Drive.Hand,
        State = FixingState.Sound,
        StateCount = null,
        Release = new() { Way = ReleaseWay.ByHand, From = joint.Release.From },
    };

    private static FixingType Coupling(Medium medium) => medium switch
    {
        Medium.Water or Medium.Waste => FixingType.PushFit,
        Medium.WarmAir => FixingType.Clip,
        _ => FixingType.Plug,
    };

    internal static string Side(Direction side) => side switch
    {
        Direction.Forward => "the front",
        Direction.Rearward => "the rear",
        Direction.Left => "the left",
        Direction.Right => "the right",
        Direction.Up => "above",
        _ => "below",
    };

    internal static string Count(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";

    /// <summary>An id nobody has yet.</summary>
    internal static string Free(IEnumerable<string> taken, string wanted)
    {
        var all = taken.ToHashSet();
        return Enumerable.Range(1, all.Count + 1).Select(n => n == 1 ? wanted : $"{wanted}-{n}").First(id => !all.Contains(id));
    }
}
