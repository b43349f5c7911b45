using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Thinks of changes from the plans themselves: what was taken out for whom, and which joints, lines and boards cost it.</summary>
internal sealed class Ideas(Job job, Inquiry van, IReadOnlyList<UpkeepVisit> visits)
{
    private const int MostCutBackMm = 60; // more than a strip is another part; common practice, no source
    private const double ToolAndHandMm = 150; // common practice, no source
    private const double HeavyMm2 = 10; // leads of this section and more are bolted, not plugged; common practice, no source

    public IReadOnlyList<Idea> All()
    {
        var plans = visits.Where(v => v.Minutes.Outcome is Solved).Select(v => (Visit: v, ((Solved)v.Minutes.Outcome!).Order)).ToList();
        var done = plans.SelectMany(p => p.Order).Distinct().Order().Select(i => (Item: i, What: van.Scene.Items[i])).ToList();
        var undone = done.Where(d => d.What is Undo).Select(d => (((Undo)d.What).Joint, d.Item)).ToList();
        return [.. Fixings(undone), .. OtherSides(undone), .. Lines(done), .. plans.SelectMany(p => Boards(p.Visit, p.Order)), .. Stuck()];
    }

    private IEnumerable<Idea> Fixings(List<(Joint Joint, int Item)> undone)
    {
        foreach (var group in undone.Where(u => IsScrewed(u.Joint) && !IsLineEnd(u.Joint)).GroupBy(u => u.Joint.Part))
        {
            if (van.Scene.PartOf(group.Key) is not { ReservedFor: null } part) continue;
            List<(Joint, int)> joints = [.. group];
            if (Idea.ByHand(job, part, joints) is { } knobs) yield return knobs;
            if (IsPanel(part) && Idea.Hinged(job, part, joints) is { } hinges) yield return hinges;
        }
    }

    /// <summary>Joints between parts that cost more to get at than to undo, from every other side that is not at the skin.</summary>
    private IEnumerable<Idea> OtherSides(List<(Joint Joint, int Item)> undone)
    {
        foreach (var (joint, item) in undone)
        {
            if (joint is not { Points.Count: > 0, To: not null, Release: { From: { } now, Licence: null } } || van.Scene.PartOf(joint.Part) is not { } part) continue;
            if (van.Ask([item]) is not Solved alone || alone.Cost <= van.Needed(item)) continue;
            foreach (var side in Enum.GetValues<Direction>())
                if (side != now && joint.Points.All(p => ToTheSkinMm(p, side) > ToolAndHandMm)) yield return Idea.OtherSide(job, part, joint, item, side);
        }
    }

    private IEnumerable<Idea> Lines(List<(int Item, Item What)> done)
    {
        var ends = new List<(Part At, Line Line, bool IsFrom, Joint? Joint, int Item)>();
        foreach (var (item, what) in done)
            switch (what)
            {
                case Undo { Joint: var joint } when !joint.Release.Destructive && joint.Release.Licence is null && joint.Type is FixingType.Terminal or FixingType.HoseClip or FixingType.Union:
                    if (job.Lines.FirstOrDefault(l => l.From.Joint == joint.Id || l.To.Joint == joint.Id) is { } line && CanPlug(line) && van.Scene.PartOf(joint.Part) is { } at)
                        ends.Add((at, line, line.From.Joint == joint.Id, joint, item));
                    break;
                case Disconnect end when CanPlug(end.Line) && Wording.PartOf(van.Scene, end) is { } part:
                    ends.Add((part, end.Line, end.IsFrom, null, item));
                    break;
            }
        return ends.GroupBy(e => e.At.Id).Select(g => Idea.Plugs(job, g.First().At, [.. g.Select(e => (e.Line, e.IsFrom, e.Joint, e.Item))]));
    }

    /// <summary>Boards in front of what is to be seen or touched, and parts that a load just does not pass.</summary>
    private IEnumerable<Idea> Boards(UpkeepVisit visit, IReadOnlyList<int> order)
    {
        var wanted = van.Scene.PartOf(visit.Part)!;
        if (visit.Minutes.HighMinutes is null or 0 || visit.Need.Access == ServiceAccess.Remove)
            return Staying.Leaving(van.Scene, order).Where(p => p != visit.Part).SelectMany(p => CutBacks(wanted, only: van.Scene.PartOf(p)!));
        // boards only: wet, gas-tight and outer skins are left whole
        return job.Parts.Where(p => p is { System: PartSystem.Furniture or PartSystem.Lining, Outside: false } && p != wanted)
            .SelectMany(p => BoardIdea.Hatches(job, p, wanted, van.Scene.OutItem(p.Id)));
    }

    private IEnumerable<Idea> Stuck() => visits.Where(v => v is { Need.Access: ServiceAccess.Remove, Minutes.Outcome: Unreachable }).SelectMany(v => CutBacks(van.Scene.PartOf(v.Part)!, only: null));

    private IEnumerable<Idea> CutBacks(Part passing, Part? only)
    {
        foreach (var hindrance in van.Scene.Room.Hindrances(passing))
        {
            if (van.Scene.PartBehind(hindrance.Item) is not { } part || (only is not null && part != only) || hindrance.ShortMm is <= 0 or > MostCutBackMm) continue;
            // where the load would have to shift to is where the other is to give way
            if (BoardIdea.CutBack(job, part, PartBody.DirectionOf(hindrance.Dodge), hindrance.ShortMm, passing, van.Scene.OutItem(part.Id)) is { } cut) yield return cut;
        }
    }

    private double ToTheSkinMm(Place at, Direction side)
    {
        var space = job.Vehicle.LoadSpace;
        return side switch
        {
            Direction.Forward => at.XMm,
            Direction.Rearward => space.LengthMm.Value - at.XMm,
            Direction.Left => at.YMm,
            Direction.Right => space.WidthMm.Value - at.YMm,
            Direction.Down => at.ZMm,
            _ => space.HeightMm.Value - at.ZMm,
        };
    }

    private static bool IsScrewed(Joint joint) => joint.Release is { Way: ReleaseWay.Unscrew or ReleaseWay.Drill, Licence: null, Destructive: false }
        && joint.Type is FixingType.WoodScrew or FixingType.CupWasherScrew or FixingType.SelfDrillingScrew or FixingType.Bolt or FixingType.RivetNut;

    private bool IsLineEnd(Joint joint) => job.Lines.Any(l => l.From.Joint == joint.Id || l.To.Joint == joint.Id);

    private static bool CanPlug(Line line) => line.Medium is Medium.Dc or Medium.Signal or Medium.Water or Medium.Waste or Medium.WarmAir && !(line.ConductorMm2?.Value >= HeavyMm2);

    /// <summary>One thin sheet: what could hang on hinges.</summary>
    private static bool IsPanel(Part part) => part.Solids is [BoxSolid { Size: var size }] && new[] { size.XMm, size.YMm, size.ZMm }.Min() <= 45;
}
