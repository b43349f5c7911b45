using Wainwright.Access;
using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>Will it hold: from the record of a van to a factor in g for each part and direction, with its doubt.</summary>
public static class Holding
{
    /// <summary>Every fitted part, those that fall shortest first.</summary>
    /// <param name="job">The job.</param>
    /// <param name="cases">What to judge against; none for the job's own choice.</param>
    public static JobHolding Of(Job job, params IReadOnlyList<LoadCase> cases) => Of(job, cases, null);

    /// <summary>The same, telling how far it has come.</summary>
    /// <param name="job">The job.</param>
    /// <param name="cases">What to judge against; none for the job's own choice.</param>
    /// <param name="progress">Told after each part.</param>
    /// <param name="stop">Ends it: half a van is no answer.</param>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static JobHolding Of(Job job, IReadOnlyList<LoadCase> cases, IProgress<AccessProgress>? progress, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(job);
        var chosen = Chosen(job, cases);
        var who = new WhoHolds(job);
        var worth = new JointWorths(job);
        var pulled = Pulls(job);
        var found = new List<PartHolding>();
        foreach (var part in job.Parts)
        {
            stop.ThrowIfCancellationRequested();
            found.Add(Of(job, part, chosen, who, worth, pulled, ThrowDirections.All));
            progress?.Report(new(found.Count, job.Parts.Count, part.Name));
        }
        return new(job, chosen, [.. found.OrderBy(Hazard)]);
    }

    /// <summary>One part.</summary>
    /// <param name="job">The job.</param>
    /// <param name="part">The part; must be in the job.</param>
    /// <param name="cases">What to judge against; none for the job's own choice.</param>
    /// <exception cref="ArgumentException">The job has no such part.</exception>
    public static PartHolding Of(Job job, PartId part, params IReadOnlyList<LoadCase> cases)
    {
        ArgumentNullException.ThrowIfNull(job);
        var found = job.Parts.FirstOrDefault(p => p.Id == part) ?? throw new ArgumentException($"there is no part “{part}”", nameof(part));
        return Of(job, found, Chosen(job, cases), new(job), new(job), Pulls(job), ThrowDirections.All);
    }

    /// <summary>One part as it is fixed now, whatever an earlier pull said of how it was fixed then.</summary>
    internal static PartHolding Anew(Job job, PartId part, IReadOnlyList<LoadCase> cases) =>
        Of(job, job.Parts.First(p => p.Id == part), Chosen(job, cases), new(job), new(job), Array.Empty<PulledPart>().ToLookup(p => p.Part.Id), ThrowDirections.All);

    /// <summary>What the job is judged against.</summary>
    /// <param name="job">The job.</param>
    /// <param name="asked">What was asked for; none for the job's own choice.</param>
    public static IReadOnlyList<LoadCase> Chosen(Job job, IReadOnlyList<LoadCase> asked)
    {
        ArgumentNullException.ThrowIfNull(job);
        return asked.Count > 0 ? asked : job.JudgedAgainst.Count > 0 ? job.JudgedAgainst : [LoadCase.DrivingLightVan, LoadCase.NineThreeCab];
    }

    /// <summary>The same in the directions that the cases ask about alone: what a check needs.</summary>
    internal static PartHolding Quick(Job job, Part part, IReadOnlyList<LoadCase> cases, WhoHolds who, JointWorths worth, ILookup<PartId, PulledPart> pulled) =>
        Of(job, part, cases, who, worth, pulled, [.. cases.SelectMany(c => AskedG.Of(c).Select(a => a.Way)).Distinct()]);

    private static PartHolding Of(Job job, Part part, IReadOnlyList<LoadCase> cases, WhoHolds who, JointWorths worth, ILookup<PartId, PulledPart> pulled, IReadOnlyList<Vector3D> ways)
    {
        var chain = who.Chain(part);
        var held = How(part, chain);
        var begun = new PartHolding
        {
            Part = part,
            HeldBy = held,
            Verdict = Verdict.CannotTell,
            Because = "",
            Through = [.. chain.Bodies.Skip(1).Select(b => b.Part.Id)],
            Pulled = pulled[part.Id].FirstOrDefault() ?? chain.Bodies.Skip(1).SelectMany(b => pulled[b.Part.Id]).FirstOrDefault(p => p.KeepsAtG is not null),
            Riders = [.. who.RidersOn(part.Id).Select(r => r.Id).Distinct()],
            Assumed = [.. chain.Assumed.Concat(chain.Joints.SelectMany(j => worth[j.Joint.Id].Assumed)).Distinct()],
        };
        if (chain.Missing.Count > 0) return begun with { Because = $"not known: {string.Join("; ", chain.Missing)}", NextLook = chain.Missing[0] };
        begun = begun with { LadenKg = chain.Bodies[0].Kg, OwnKg = Laden.Of(part)?.Kg.Likely };
        if (held == HeldBy.NotRecorded) return begun with { Because = "no fixing is recorded, and nothing says that it stands loose", NextLook = $"how {part.Name} is held: every fixing, its size, place and state" };
        var (directions, assumed) = held is HeldBy.Nothing or HeldBy.NothingLeft ? StandsLoose.Of(job, chain, who, worth, ways) : (Solved.Of(job, chain, who, worth, ways), []);
        if (begun.Pulled is { KeepsAtG: null, ReachedG: { } reached, Toward: { } toward } own && own.Part.Id == part.Id)
            // it was held in that pull and sprang back: so much it stands, whatever was assumed
            directions = [.. directions.Select(d => d.FactorG is { } g && (d.Way - PullWay.Of(toward)).Length < 1e-6 ? d with { FactorG = new(Math.Max(g.Low, Math.Min(reached.Low, g.High)), Math.Max(g.Likely, Math.Min(reached.Likely, g.High)), g.High) } : d)];
        return Worded.Of(begun with { Directions = directions, Assumed = [.. begun.Assumed.Concat(assumed).Distinct()] }, job, cases, worth);
    }

    private static HeldBy How(Part part, HeldChain chain)
    {
        var own = chain.Joints.Where(j => j.Body == 0).Select(j => j.Joint).ToList();
        if (own.Count == 0) return part.LooseGoods || part.StandsOn.Count > 0 ? HeldBy.Nothing : HeldBy.NotRecorded;
        return own.TrueForAll(j => j.State is FixingState.Missing or FixingState.Sheared && (j.StateCount ?? j.Count) >= j.Count) ? HeldBy.NothingLeft : HeldBy.Fixings;
    }

    private static ILookup<PartId, PulledPart> Pulls(Job job) => PulledPart.Of(job).ToLookup(p => p.Part.Id);

    /// <summary>
    /// Order of hazard: falls short before cannot tell before holds; within these by the mass that may come loose: its own, three
    /// times what hangs overhead, by the chance that it is short, every day's driving counted ten times. Own rule.
    /// </summary>
    private static (int, double) Hazard(PartHolding part)
    {
        var chance = part.Cases.Sum(c => (AskedG.IsDriving(c.Case) ? 10 : 1) * Short(c));
        return (part.Verdict switch { Verdict.FallsShort => 0, Verdict.CannotTell => 1, _ => 2 }, -(part.Part.Overhead ? 3 : 1) * (part.OwnKg ?? 1) * (part.Cases.Count == 0 ? 1 : chance));
    }

    /// <summary>Chance that it is short of what is asked, the factor spread as a triangle over its doubt [0–1].</summary>
    private static double Short(CaseAnswer answer)
    {
        if (answer.FactorG is not { } g) return 0.5;
        var (low, likely, high, asked) = (g.Low, Math.Min(g.Likely, 1e6), Math.Min(g.High, 1e6), answer.DemandG);
        if (asked <= low) return 0;
        if (asked > high) return 1;
        return asked <= likely ? (asked - low) * (asked - low) / ((high - low) * (likely - low)) : 1 - (high - asked) * (high - asked) / ((high - low) * (high - likely));
    }
}
