using Wainwright.Methods.Retention.Doubt;
using Wainwright.Methods.Retention.Limit;

namespace Wainwright.Methods.Retention;

/// <summary>The chance that a part does not hold what is asked, from the doubt about its fixings, and the look that would settle most.</summary>
public static class HoldingChance
{
    /// <summary>Seeded draws, decided by the limit theorems.</summary>
    public static readonly Basis Basis = new(
        Source: "own rule: seeded draws of all strengths, each decided by limit analysis; rare chances by importance sampling about the likeliest failure (Hasofer, Lind 1974)",
        Assumes: ["the ranges given for the strengths are right", "fixings with the same unknown share their luck as far as stated", "what the load factor assumes"],
        Caution: "A chance is only as good as the ranges that went in; most of those are practice, not tests. It ranks what to look at first. It certifies nothing.",
        How: Provenance.OwnRule);

    private const int FewSeen = 20, Bins = 10;

    /// <param name="Held">Bodies, fixings and contacts; the strengths in it serve only for how pull and shear share.</param>
    /// <param name="Fixings">How sure each fixing is, in the same order.</param>
    /// <param name="Demands">What must be held, one or more.</param>
    /// <param name="Draws">How many draws, 20 or more.</param>
    /// <param name="Seed">The same seed gives the same answer.</param>
    public sealed record Input(Held Held, IReadOnlyList<DoubtfulFixing> Fixings, IReadOnlyList<Throw> Demands, int Draws, int Seed);

    /// <param name="NotHolding">Chance of not holding [-].</param>
    /// <param name="StandardError">How far that may be off by the luck of the draws [-]; one in the number of draws when it was never seen.</param>
    /// <param name="Rare">True when it comes from draws moved to the likeliest failure.</param>
    public readonly record struct Chance(double NotHolding, double StandardError, bool Rare);

    /// <param name="Unknown">What to look at.</param>
    /// <param name="Settles">Share of the doubt (does it hold everything asked?) that knowing it takes away on average [-], 0 to 1.</param>
    public readonly record struct Look(string Unknown, double Settles);

    /// <param name="Ways">For each demand.</param>
    /// <param name="Any">That one demand or more is not held.</param>
    /// <param name="Looks">Most useful first; empty when there is no doubt left.</param>
    /// <param name="Asked">How often it was asked whether a set of strengths holds.</param>
    /// <param name="Solved">How often that took a limit analysis.</param>
    public sealed record Result(IReadOnlyList<Chance> Ways, Chance Any, IReadOnlyList<Look> Looks, int Asked, int Solved);

    /// <param name="doubt">What is asked.</param>
    /// <param name="done">Told the share done, 0 to 1, now and then.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="ArgumentException">Lists of different length, no demand, or what <see cref="LoadFactor.Of(Held, Vector3D)"/> refuses.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Result Of(Input doubt, IProgress<double>? done = null, CancellationToken cancel = default)
    {
        if (doubt.Fixings.Count != doubt.Held.Fixings.Count) throw new ArgumentException("say of each fixing how sure it is", nameof(doubt));
        if (doubt.Demands.Count == 0) throw new ArgumentException("name one demand at least", nameof(doubt));
        Must.BeWithin(doubt.Draws, 20, 10_000_000);
        var rig = new Rig(doubt.Held);
        var solver = new LimitSolver(rig, RegionShape.Smooth);
        // what cannot stand at rest holds nothing, however it is thrown
        Decider atRest = new(rig, solver, new(new(0, 0, -1), 0));
        Decider[] deciders = [.. doubt.Demands.Select(d => new Decider(rig, solver, d))];
        var luck = new Luck(doubt.Fixings);
        var (chance, numbers) = (new Random(doubt.Seed), new double[luck.Numbers]);
        var lost = new int[deciders.Length];
        var fates = new (double[] Shared, bool Lost)[doubt.Draws];
        for (var draw = 0; draw < doubt.Draws; draw++)
        {
            cancel.ThrowIfCancellationRequested();
            if (draw % 32 == 0) done?.Report((double)draw / doubt.Draws);
            Luck.Draw(chance, numbers);
            luck.Take(numbers);
            var stands = atRest.Holds(luck.PullN, luck.ShearN);
            var any = false;
            for (var d = 0; d < deciders.Length; d++)
            {
                if (stands && deciders[d].Holds(luck.PullN, luck.ShearN)) continue;
                lost[d]++;
                any = true;
            }
            fates[draw] = (numbers[..luck.Unknowns.Count], any);
        }
        var ways = deciders.Select((d, i) => Way(d, luck, lost[i], doubt.Draws, chance, cancel)).ToList();
        var all = Plain(fates.Count(f => f.Lost), doubt.Draws);
        // seen too seldom to count: the worst way alone is a floor that the draws cannot give
        if (all.NotHolding * doubt.Draws < FewSeen && ways.MaxBy(w => w.NotHolding) is { Rare: true } worst) all = worst;
        done?.Report(1);
        return new(ways, all, Looks(luck.Unknowns, fates), atRest.Asked + deciders.Sum(d => d.Asked), atRest.Solved + deciders.Sum(d => d.Solved));
    }

    private static Chance Way(Decider decider, Luck luck, int lost, int draws, Random chance, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        return lost < FewSeen && new RareChance(decider, luck).Of(draws, chance) is var (rare, error) ? new(rare, error, true) : Plain(lost, draws);
    }

    private static Chance Plain(int lost, int draws)
    {
        var share = (double)lost / draws;
        return new(share, lost == 0 || lost == draws ? 1.0 / draws : Math.Sqrt(share * (1 - share) / draws), false);
    }

    /// <summary>Spread of the chance between tenths of one unknown's luck, less what so few draws spread by themselves.</summary>
    private static List<Look> Looks(IReadOnlyList<string> unknowns, (double[] Shared, bool Lost)[] fates)
    {
        var all = (double)fates.Count(f => f.Lost) / fates.Length;
        if (all is 0 or 1) return [];
        return [.. unknowns.Select((name, u) =>
        {
            var sorted = fates.OrderBy(f => f.Shared[u]).Select(f => f.Lost).ToList();
            var between = sorted.Chunk((fates.Length + Bins - 1) / Bins).Sum(b => b.Length * Math.Pow((double)b.Count(lost => lost) / b.Length - all, 2)) / fates.Length;
            var noise = all * (1 - all) * (Bins - 1) / fates.Length;
            return new Look(name, Math.Clamp((between - noise) / (all * (1 - all)), 0, 1));
        }).OrderByDescending(l => l.Settles)];
    }
}
