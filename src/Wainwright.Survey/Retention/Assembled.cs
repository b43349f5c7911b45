using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>A chain with its strengths put into numbers: bodies, fixings, contacts.</summary>
internal static class Assembled
{
    /// <param name="chain">The chain.</param>
    /// <param name="worth">What one fixing of each joint is worth.</param>
    /// <param name="who">Who holds whom, for what touches what.</param>
    /// <param name="room">The shell.</param>
    /// <param name="end">Which end of the doubt.</param>
    /// <param name="badFromFront">Where some fixings of a row are bad and nobody said which: those at the lower coordinate, else those at the upper.</param>
    public static Held Of(HeldChain chain, JointWorths worth, WhoHolds who, LoadSpace room, StrengthEnd end, bool badFromFront)
    {
        var bodies = chain.Bodies.Select(b => new HeldBody(b.Part.Name, end switch { StrengthEnd.Low => b.Kg.High, StrengthEnd.High => Math.Max(0, b.Kg.Low), _ => b.Kg.Likely }, b.CentreMm)).ToList();
        List<(HeldFixing Fixing, double FootMm)> fixings = [];
        foreach (var (joint, body, to) in chain.Joints)
        {
            var part = chain.Bodies[body].Part;
            var other = to is { } t ? chain.Bodies[t].Part : null;
            var one = worth[joint.Id];
            foreach (var (at, share) in FixingPlaces.Of(joint, part, end, badFromFront).Where(p => p.Share > 0))
            {
                var said = PullWay.Of(joint, at, part, other);
                var way = said ?? PullWay.Guessed(at, part, other, room);
                var strength = one.At(end, share, said is not null || joint.Type is FixingType.Strap or FixingType.Pin);
                var places = joint.Type == FixingType.Strap ? FixingPlaces.AroundPart(at, way, part, joint.Points) : [PullWay.Of(at)];
                var each = strength with { PullN = strength.PullN / places.Count, ShearN = strength.ShearN / places.Count };
                foreach (var place in places) fixings.Add((new(joint.Id.Text, place, way, each, body, to), FootMm(joint)));
            }
        }
        var all = fixings.ConvertAll(f => f.Fixing);
        var kept = Reach.Within(all, chain, end);
        // the rest of a sheet hangs on its other fixings
        for (var b = 1; b < bodies.Count; b++)
            if (all.Count(f => f.Body == b) is > 0 and var own) bodies[b] = bodies[b] with { MassKg = bodies[b].MassKg * kept.Count(f => f.Body == b) / own };
        List<Contact> contacts = [];
        foreach (var (fixing, foot) in fixings.Where(f => kept.Contains(f.Fixing)))
        {
            // whatever is screwed down lies against what it is screwed to
            var to = fixing.To is { } t ? chain.Bodies[t].Part.Name : "the van";
            contacts.Add(new(to, fixing.AtMm, fixing.PullAxis, fixing.Body, fixing.To));
            if (!InOneLine(fixings.Where(f => f.Fixing.Body == fixing.Body).Select(f => f.Fixing.AtMm))) continue;
            // fixings in one line: the width of their heads or ears is all that keeps it from turning about them
            var (first, second) = fixing.PullAxis.Across();
            foreach (var aside in (Vector3D[])[foot * first, -foot * first, foot * second, -foot * second]) contacts.Add(new(to, fixing.AtMm + aside, fixing.PullAxis, fixing.Body, fixing.To));
        }
        for (var i = 0; i < chain.Bodies.Count; i++) contacts.AddRange(who.Touching.WithVan(chain.Bodies[i].Part, i));
        foreach (var (a, b) in chain.Rests.Concat(chain.Joints.Where(j => j.To is not null).Select(j => (j.Body, j.To!.Value))).Distinct())
        {
            if (who.Touching.IsBacking(chain.Bodies[b].Part.Id)) continue;
            var between = Touching.Between(chain.Bodies[a].Part, a, chain.Bodies[b].Part, b).ToList();
            contacts.AddRange(between);
            if (chain.Rests.Contains((a, b)) && !between.Exists(c => c.Normal.Z > 0.5)) contacts.AddRange(Touching.Standing(chain.Bodies[a].Part, a, chain.Bodies[b].Part, b));
        }
        return new(bodies, [.. fixings.Select(f => f.Fixing).Where(kept.Contains)], [.. contacts.Distinct()]);
    }

    private static double FootMm(Joint joint) => Math.Max(5, FixingSize.Of(joint).HeadMm(joint).Likely / 2);

    private static bool InOneLine(IEnumerable<Vector3D> points)
    {
        var all = points.Distinct().ToList();
        if (all.Count < 3) return true;
        var far = all.MaxBy(p => (p - all[0]).Length) - all[0];
        return all.TrueForAll(p => (p - all[0]).Cross(far).Length <= 15 * far.Length);
    }
}
