using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

public sealed partial class RemovalPlanner
{
    private const int LongestArmShortMm = 400;

    /// <summary>How to get to see parts, for one question.</summary>
    /// <param name="job">The job.</param>
    /// <param name="parts">The parts to see.</param>
    /// <param name="options">What the planner is told beside; absent for the usual.</param>
    public static RemovalPlan See(Job job, IReadOnlyList<PartId> parts, AccessOptions? options = null) => new RemovalPlanner(job, options).See(parts);

    /// <summary>How to get to see parts: a clear line from where a head can be to a spot on each.</summary>
    /// <param name="parts">The parts to see; those that are out already or have no measures are passed over.</param>
    /// <exception cref="ArgumentException">A part is not in the job.</exception>
    public RemovalPlan See(IReadOnlyList<PartId> parts) => Plan(parts, AccessKind.See);

    /// <summary>The three kinds of access to a part, each with what is missing and how to get there.</summary>
    /// <param name="part">The part.</param>
    /// <exception cref="ArgumentException">The part is not in the job.</exception>
    public AccessTo Access(PartId part)
    {
        Require(part);
        return new(part, Answer(part, AccessKind.See), Answer(part, AccessKind.Reach), Answer(part, AccessKind.Remove));
    }

    /// <summary>How the tools fit at each measured fixing of a joint once some parts are out.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="taken">Parts that are out by then, beside those that are out already.</param>
    /// <exception cref="ArgumentException">The joint or a part is not in the job.</exception>
    public IReadOnlyList<ToolFit> ToolFits(JointId joint, IReadOnlyList<PartId>? taken = null) => [.. scene.Room.ToolFits(JointOf(joint), Gone(taken ?? []))];

    /// <summary>Which share of people reach the measured fixings of a joint once some parts are out.</summary>
    /// <param name="joint">The joint.</param>
    /// <param name="taken">Parts that are out by then, beside those that are out already.</param>
    /// <exception cref="ArgumentException">The joint or a part is not in the job, or none of its fixings is measured.</exception>
    public WhoReaches Who(JointId joint, IReadOnlyList<PartId>? taken = null)
    {
        var known = JointOf(joint);
        return known.Points.Count > 0 ? scene.Room.Who(known, Gone(taken ?? [])) : throw new ArgumentException($"No fixing of {joint} is measured.", nameof(joint));
    }

    private Joint JointOf(JointId joint) => scene.Job.Joints.FirstOrDefault(j => j.Id == joint) ?? throw new ArgumentException($"No joint {joint} in this job.", nameof(joint));

    private ItemSet Gone(IReadOnlyList<PartId> parts)
    {
        foreach (var part in parts) Require(part);
        var gone = given.Copy();
        foreach (var (item, index) in scene.Items.Select((item, index) => (item, index)))
            if (item is IsOut isOut && parts.Contains(isOut.Part.Id)) gone.Add(index);
        return gone;
    }

    private void Require(PartId part)
    {
        if (scene.PartOf(part) is null) throw new ArgumentException($"No part {part} in this job.", nameof(part));
    }

    private AccessAnswer Answer(PartId id, AccessKind kind)
    {
        var part = scene.PartOf(id)!;
        if (!scene.IsStanding(id)) return new() { Kind = kind, Now = true, Words = $"{Wording.Name(part)} is out already." };
        if (part.Solids.Count == 0 && kind != AccessKind.Remove) return new() { Kind = kind, Now = false, Words = $"{Wording.Name(part)} is not measured: measure its size and place first." };
        var plan = Plan([id], kind);
        var now = plan.Proof is Proof.ProvedCheapest or Proof.BestFound && plan.PartsOut.All(p => p == id) && plan.Steps.All(s => s.Kind != StepKind.TakePiece || s.Part == id);
        var (shortMm, by, why) = now ? (null, null, "") : kind switch
        {
            AccessKind.See => SightShort(part),
            AccessKind.Reach => ReachShort(part, plan),
            _ => WayShort(plan),
        };
        var who = kind == AccessKind.Reach && plan.Steps.Count > 0 && !part.Outside && !scene.Room.IsHandAlone(part) ? scene.Room.Who(part, Gone([.. plan.PartsOut])) : null;
        return new() { Kind = kind, Now = now, Plan = plan, ShortMm = shortMm, By = by, Who = who, Words = Said(part, kind, plan, now, why, who) };
    }

    /// <summary>The least that would have to go from the one part across a line of sight.</summary>
    private (int? ShortMm, PartId? By, string Why) SightShort(Part part)
    {
        var least = scene.Room.SightOf(part).LeastCut(given, [.. scene.Standing.SelectMany(p => p.Solids.Select(s => (scene.OutItem(p, s), s))).SelectMany(x => PartBody.Of(x.s).Outer.Select(b => (x.Item1, b)))]);
        if (least is not var (item, mm)) return (null, null, "no single thing that stands in the way could be found");
        var by = scene.PartBehind(item);
        return (mm, by?.Id, string.Create(CultureInfo.InvariantCulture, $"{mm} mm of {Wording.Name(by)} are in the line of sight that asks least"));
    }

    private (int? ShortMm, PartId? By, string Why) ReachShort(Part part, RemovalPlan plan)
    {
        if (scene.Room.ArmShortMm(part, given, LongestArmShortMm) is { } mm)
            return (mm, null, string.Create(CultureInfo.InvariantCulture, $"a hand gets there, but the arm is {mm} mm short for {options.Person.Name}"));
        var held = scene.Room.Ask(scene.HandItem(part.Id)!.Value, given, new(scene.Items.Count)) as Held;
        var wall = held?.Wall.Select(scene.PartBehind).OfType<Part>().ToList() ?? [];
        var first = wall.Find(p => plan.PartsOut.Contains(p.Id)) ?? wall.FirstOrDefault();
        return (null, first?.Id, $"hand and arm do not get past {Wording.Name(first)}");
    }

    private static (int? ShortMm, PartId? By, string Why) WayShort(RemovalPlan plan) =>
        plan.BlockedBy.Where(b => b.ShortMm > 0).MinBy(b => b.ShortMm) is { } least
            ? (least.ShortMm, least.Part, string.Create(CultureInfo.InvariantCulture, $"{least.ShortMm} mm too large to pass {least.Part?.ToString() ?? "the van itself"}"))
            : (null, null, "its fixings or what stands on it hold it");

    private static string Said(Part part, AccessKind kind, RemovalPlan plan, bool now, string why, WhoReaches? who)
    {
        var verb = kind switch { AccessKind.See => "is seen", AccessKind.Reach => "is reached", _ => "comes out" };
        var share = who is null ? "" : $"; {who.Words}";
        if (now) return $"{Wording.Name(part)} {verb} with nothing else out{share}.";
        if (plan.Steps.Count == 0) return $"{Wording.Name(part)}: no way was found; {why}.";
        return $"{Wording.Name(part)} {verb} once {string.Join(", ", plan.PartsOut.Where(p => p != part.Id))} {(plan.PartsOut.Count(p => p != part.Id) == 1 ? "is" : "are")} out: {why}{share}.";
    }
}
