using Wainwright.Fitout;
using Wainwright.Methods.Retention;

namespace Wainwright.Survey.Retention;

/// <summary>The chance that a part does not hold a load case, from seeded draws of all its doubtful strengths.</summary>
public static class HoldingOdds
{
    /// <param name="Case">The load case.</param>
    /// <param name="Ways">The directions that it asks about, in words, with what is asked [g].</param>
    /// <param name="Result">Chances and the looks that settle most.</param>
    public sealed record Odds(LoadCase Case, IReadOnlyList<(string Words, double G)> Ways, HoldingChance.Result Result);

    /// <summary>One part against each load case; likely masses. Nothing for a part that no fixing holds: there is no luck in it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="part">The part; must be in the job.</param>
    /// <param name="draws">How many draws, 20 or more.</param>
    /// <param name="seed">The same seed gives the same answer.</param>
    /// <param name="cases">What to judge against; none for the job's own choice.</param>
    /// <param name="stop">Ends it.</param>
    /// <exception cref="ArgumentException">The job has no such part.</exception>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static IReadOnlyList<Odds> Of(Job job, PartId part, int draws, int seed, IReadOnlyList<LoadCase> cases, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(job);
        var found = job.Parts.FirstOrDefault(p => p.Id == part) ?? throw new ArgumentException($"there is no part “{part}”", nameof(part));
        var who = new WhoHolds(job);
        var worth = new JointWorths(job);
        var chain = who.Chain(found);
        if (chain.Missing.Count > 0) return [];
        var held = Assembled.Of(chain, worth, who, job.Vehicle.LoadSpace, StrengthEnd.Likely, false);
        if (held.Fixings.Count == 0) return [];
        var doubtful = held.Fixings.Select(f => Doubtful(f, worth)).ToList();
        return [.. Holding.Chosen(job, cases).Select(c => (Case: c, Asked: AskedG.Of(c))).Select(c => new Odds(c.Case, [.. c.Asked.Select(a => (HeldDirections.Words(a.Way), a.G))],
            HoldingChance.Of(new(held, doubtful, [.. c.Asked.Select(a => new Throw(a.Way, a.G))], draws, seed), cancel: stop)))];
    }

    private static DoubtfulFixing Doubtful(HeldFixing fixing, JointWorths worth)
    {
        var id = JointId.Of(fixing.Name);
        var one = worth[id];
        // so many of them as the likely strength at this place says
        double Times(Spread of, double at) => of.Likely > 0 ? at / of.Likely : 0;
        var look = one.Looks.Count > 0 ? $"{one.Looks[0].What} ({id})" : $"a pull on {id} by hand gauge";
        return new(one.PullN * Times(one.PullN, fixing.Strength.PullN), one.ShearN * Times(one.ShearN, fixing.Strength.ShearN), look);
    }
}
