using System.Globalization;
using Wainwright.Fitout;

namespace Wainwright.Access;

/// <summary>Walks hand and tool from a fixing to outside the van and looks for what they run into.</summary>
internal sealed class HandWalk(Job job, Hull open, IReadOnlyList<StandingSolid> standing)
{
    // a fixing is drawn at the sheet it goes through; the tool meets it at the far side of what it holds
    private const double AtFixingMm = 2;
    // no hand is smaller: flat 44 mm, round a handle 80 mm (as the tools are drawn, on whole millimetres)
    private const double HandThickMm = 44, HandBroadMm = 80;

    public IEnumerable<string> Faults(RemovalStep step, Joint? joint, IReadOnlyList<HandWay> ways, List<string> notShown, ref int walked)
    {
        var wrong = new List<string>();
        var places = joint?.Points.Distinct().ToList() ?? [];
        foreach (var way in ways.Where(w => w.Boxes.Count == 0 || w.Way.Count == 0))
            notShown.Add($"{step.Action}: worked from outside the van, or on trial past the parts it holds; no way of a hand was walked.");
        var held = joint is null ? [] : Held(joint);
        foreach (var way in ways.Where(w => w.Boxes.Count > 0 && w.Way.Count > 0))
        {
            walked++;
            wrong.AddRange(Walk(step, way, step.OnTrial ? held : []));
            if (joint is not null && places.Count > 0 && !places.Exists(p => IsAt(way.Way[0], p, joint))) wrong.Add("the tool is not put to any of its fixings");
        }
        if (joint is not null && places.Count > 0 && ways.Count < places.Count) wrong.Add(string.Create(CultureInfo.InvariantCulture, $"a way of the hand is given for {ways.Count} of {places.Count} fixings"));
        return wrong;
    }

    private IEnumerable<string> Walk(RemovalStep step, HandWay way, HashSet<PartId> passed)
    {
        var shape = way.Boxes.Select(b => WalkedSolid.Box(Vec.Of(b.Low), Vec.Of(b.High))).ToList();
        if (!shape.Exists(IsHand)) yield return "what is brought to it is smaller than a hand";
        var carried = new Carried(open, [.. standing.Where(s => !passed.Contains(s.Part!.Id))], shaveMm: 0);
        var at = Vec.Of(way.Way[0]);
        foreach (var to in way.Way.Select(Vec.Of))
        {
            var here = shape.ConvertAll(s => s.Placed(WalkedTurn.AsFound, Vec.Zero, at));
            if (carried.Hit(here, to - at, here, isTurned: false) is { } hit)
            {
                yield return $"hand and tool do not get there: {hit.Replace("it runs", "they run", StringComparison.Ordinal)}";
                yield break;
            }
            at = to;
        }
        if (!open.IsOutside(shape.ConvertAll(s => s.Placed(WalkedTurn.AsFound, Vec.Zero, at)), 1e-6)) yield return "the way of the hand begins inside the van";
    }

    /// <summary>The parts a joint holds and what they rest on: in place when it was done up, so passed through where it is on trial.</summary>
    private HashSet<PartId> Held(Joint joint)
    {
        var parts = job.Parts.ToDictionary(p => p.Id);
        var held = new HashSet<PartId> { joint.Part };
        if (joint.To is { } to) held.Add(to);
        held.UnionWith(job.Lines.Where(l => l.Part is not null && (l.From.Joint == joint.Id || l.To.Joint == joint.Id)).Select(l => l.Part!.Value));
        foreach (var part in held.ToList())
        {
            held.UnionWith(job.Joints.Where(j => j.Part == part && j.To is not null).Select(j => j.To!.Value));
            if (parts.TryGetValue(part, out var p)) held.UnionWith(p.StandsOn.Concat(p.CarriedOutWith is { } with ? [with] : []));
        }
        return held;
    }

    private static bool IsHand(WalkedSolid box)
    {
        double[] sides = [box.High.X - box.Low.X, box.High.Y - box.Low.Y, box.High.Z - box.Low.Z];
        Array.Sort(sides);
        return sides[0] >= HandThickMm && sides[1] >= HandBroadMm;
    }

    /// <summary>Whether the point of work is at a fixing, or straight out from it through what the joint holds.</summary>
    private bool IsAt(Place at, Place fixing, Joint joint)
    {
        var off = Vec.Of(at) - Vec.Of(fixing);
        var along = Enumerable.Range(0, 3).Where(a => Math.Abs(off.Along(a)) > AtFixingMm).ToList();
        if (along.Count > 1) return false;
        if (along.Count == 0) return true;
        var towards = (Direction)(2 * along[0] + (off.Along(along[0]) > 0 ? 1 : 0));
        if (joint.Release.From is { } from && from != towards) return false;
        // out of what it holds and no farther
        var held = job.Parts.Where(p => p.Id == joint.Part || p.Id == joint.To || job.Lines.Any(l => l.Part == p.Id && (l.From.Joint == joint.Id || l.To.Joint == joint.Id)));
        return held.SelectMany(p => p.Solids).Select(WalkedSolid.Of).Any(s => Enumerable.Range(0, 3).All(a => Vec.Of(at).Along(a) >= s.Low.Along(a) - AtFixingMm && Vec.Of(at).Along(a) <= s.High.Along(a) + AtFixingMm));
    }
}
