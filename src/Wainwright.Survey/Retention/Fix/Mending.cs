using System.Globalization;
using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention.Fix;

/// <summary>The cheapest added fixings with which a part holds all that is asked of it, and latches and lips for what moves and stands on it.</summary>
public static class Mending
{
    // money is counted in whole hundredths by the search
    private const double Hundredth = 0.01;

    /// <summary>What would mend one part.</summary>
    /// <param name="job">The job.</param>
    /// <param name="part">The part; must be in the job.</param>
    /// <param name="cases">What it shall hold; none for the job's own choice.</param>
    /// <exception cref="ArgumentException">The job has no such part.</exception>
    public static Mend Of(Job job, PartId part, params IReadOnlyList<LoadCase> cases) => Of(job, part, cases, CancellationToken.None);

    /// <summary>The same, to be ended early with the best found.</summary>
    /// <param name="job">The job.</param>
    /// <param name="part">The part; must be in the job.</param>
    /// <param name="cases">What it shall hold; none for the job's own choice.</param>
    /// <param name="stop">Ends the search for what is cheapest: the mend then holds and says that it is not proved the cheapest.</param>
    /// <exception cref="ArgumentException">The job has no such part.</exception>
    public static Mend Of(Job job, PartId part, IReadOnlyList<LoadCase> cases, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(job);
        var before = Holding.Of(job, part, cases);
        var chosen = Holding.Chosen(job, cases);
        var mend = new Mend { Part = part, Before = before, Mended = job, IsCheapest = true, Cautions = [JobHolding.Caution] };
        if (before.Verdict != Verdict.Holds) mend = Held(mend, job, before, chosen, stop);
        return mend.Mended is null ? mend : LatchesAndLips.On(mend, chosen);
    }

    private static Mend Held(Mend mend, Job job, PartHolding before, IReadOnlyList<LoadCase> cases, CancellationToken stop)
    {
        var part = before.Part;
        if (before.LadenKg is null) return mend with { Mended = null, WhyNot = before.Because };
        if (part.FoldsTo is not null)
            return mend with { Mended = null, WhyNot = $"nothing is screwed to {part.Name}: it is soft. Stow it in something that holds, or tie it down with straps or a net to eyes that are judged for it" };
        // what broke some may break the rest of their kind: a mend does not count on them
        var counted = job with { Joints = [.. job.Joints.Where(j => j.Part != part.Id || j.State == FixingState.Sheared && j.StateCount is null || !IsDoubted(job, j))] };
        var who = new WhoHolds(counted);
        var spots = FixingSpots.Of(job, part);
        if (spots.Count == 0) return mend with { Mended = null, WhyNot = $"no rib, bow, rail, tie-down or floor lies within reach of {part.Name}: bring it to one, by a rail or a frame" };
        // what is strapped stands in corners too: a strap over the top does not keep the foot from sliding
        List<FixingSpots.Spot> given = FixingSpots.IsStrapped(part) ? [.. FixingSpots.RoundFoot(part)] : [];
        // straight to the van: what it hangs on now may go first
        var held = Assembled.Of(who.Chain(part, HeldBySome.VanAlone), new(counted), who, job.Vehicle.LoadSpace, StrengthEnd.Low, false);
        held = held with
        {
            Fixings = [.. held.Fixings, .. given.Select((s, i) => Fixing(job, part, s, i))],
            Contacts = [.. held.Contacts, .. given.Select(s => new Contact("what it stands on", PullWay.Of(s.At) with { Z = part.Bounds()!.Value.Low.ZMm }, new(0, 0, 1), 0))],
        };
        var candidates = spots.Select((s, i) => new AddedFixing(Fixing(job, part, s, i), s.Kind.Cents(job))).ToList();
        var throws = cases.SelectMany(AskedG.Of).Select(a => new Throw(a.Way, a.G)).ToList();
        var cheapest = CheapestFixings.Of(held, candidates, throws, stop: stop);
        var packed = cheapest.Cost is null;
        // nothing to push on behind it: with a packing piece at each place there is; the judging afterwards counts only those put in
        if (packed) cheapest = CheapestFixings.Of(held with { Contacts = [.. held.Contacts, .. candidates.Select(c => new Contact("packing piece", c.Fixing.AtMm, c.Fixing.PullAxis, 0))] }, candidates, throws, stop: stop);
        if (cheapest.Cost is null)
        {
            var missed = cheapest.NotHeld.Select(t => t < throws.Count ? string.Create(CultureInfo.InvariantCulture, $"{throws[t].G:0.0#} g {HeldDirections.Words(throws[t].Direction)}") : "resting under its own weight");
            return mend with { Mended = null, WhyNot = $"even all {spots.Count} places together do not hold {string.Join(", ", missed)}: lighten it, or bring it to more structure" };
        }
        List<FixingSpots.Spot> taken = [.. given, .. cheapest.Chosen.Select(c => spots[c])];
        // the search counts on what goes straight to the van; with what it hangs on besides, one fewer may do
        var holds = Put(counted, part, taken, cases).After.Verdict == Verdict.Holds;
        var thinned = false;
        foreach (var spot in cheapest.Chosen.Select(c => spots[c]).OrderByDescending(s => s.Kind.Cents(job)))
        {
            if (!holds || Put(counted, part, [.. taken.Where(t => t != spot)], cases).After.Verdict != Verdict.Holds) continue;
            taken.Remove(spot);
            thinned = true;
        }
        var mended = Put(job, part, taken, cases).Mended;
        // judged without what the cautions say does not count
        var after = Put(counted, part, taken, cases).After;
        return mend with
        {
            Steps = [.. taken.GroupBy(s => s.Kind.Words).Select(g => new MendStep($"{g.Count()} × {g.Key}", g.Count(), [.. g.Select(s => s.At)], g.Sum(s => s.Kind.Minutes), g.Sum(s => s.Kind.Material)))],
            Price = taken.Sum(s => s.Kind.Cents(job)) * Hundredth,
            IsCheapest = cheapest.IsProved && !packed && !thinned,
            Cautions = [.. mend.Cautions, .. job.Joints.Except(counted.Joints).Select(j => $"{j.Id}: some of its kind here are gone, so the mend does not count on the rest"), .. before.Pulled is null ? [] : (string[])["the pull that was made speaks of the old fixings: pull it anew once it is mended"], .. Behind.Of(job, part, taken.Select(s => (s.At, s.Kind))).Distinct(), "new holes rust: paint bare metal, seal what goes through the floor"],
            Mended = mended,
            After = after,
        };
    }

    private static bool IsDoubted(Job job, Joint joint) =>
        joint is { State: FixingState.Sheared or FixingState.Missing, StateCount: { } lost } && lost < joint.Count
        || job.Joints.Any(j => j.Part == joint.Part && j.State == FixingState.Sheared && j.Type == joint.Type && j.Size == joint.Size);

    private static (Job Mended, PartHolding After) Put(Job job, Part part, IReadOnlyList<FixingSpots.Spot> taken, IReadOnlyList<LoadCase> cases)
    {
        var joints = taken.GroupBy(s => (s.Kind.Words, s.Kind.Like)).Select((g, n) => g.Key.Like with { Id = new($"{part.Id}-mend-{n + 1}"), Part = part.Id, Count = g.Count(), Points = [.. g.Select(s => s.At)] });
        var mended = job with { Joints = [.. job.Joints, .. joints] };
        return (mended, Holding.Anew(mended, part.Id, cases));
    }

    private static HeldFixing Fixing(Job job, Part part, FixingSpots.Spot spot, int number)
    {
        var joint = spot.Kind.Like with { Id = new($"spot {number}"), Part = part.Id, Points = [spot.At] };
        var strength = JointWorth.Of(joint, part, null, job.Vehicle).At(StrengthEnd.Low, 1, wayKnown: true);
        return new($"spot {number}", PullWay.Of(spot.At), PullWay.Of(joint, spot.At, part, null) ?? new(0, 0, 1), strength, 0);
    }
}
