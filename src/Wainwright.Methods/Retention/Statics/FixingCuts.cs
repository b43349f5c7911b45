using Wainwright.Methods.Retention.Limit;

namespace Wainwright.Methods.Retention;

/// <summary>What added fixings must resist together: for a set that does not do, a rule that every set that does obeys.</summary>
/// <remarks>
/// A mechanism u lets go as long as the fixings there are resist less than the load works: Σ h_i(u) over the chosen must make
/// up the shortfall. That is linear in which fixings are chosen, so it cuts off every set that this mechanism defeats. A set that fails is first
/// filled up with others as long as it still fails: the fuller the set, the more the rule says.
/// </remarks>
public sealed class FixingCuts
{
    /// <summary>Kinematic theorem.</summary>
    public static readonly Basis Basis = new(
        Source: "own rule: covering rules from the mechanisms of limit analysis (kinematic theorem)",
        Assumes: ["what the load factor assumes", "an added fixing does not weaken those near it: keep the distances"],
        Caution: "Look what is behind before a hole is drilled: tank, cable, pipe, outer skin.",
        How: Provenance.OwnRule);

    /// <param name="Throw">Which demand it comes from; the number of demands when it comes from standing at rest.</param>
    /// <param name="Share">For each candidate: the share of the shortfall that it makes up, 0 to 1. The chosen ones must come to 1.</param>
    /// <param name="Outside">Candidates of which one at least must be chosen.</param>
    public sealed record Cut(int Throw, IReadOnlyList<double> Share, IReadOnlyList<int> Outside);

    private readonly Rig _rig;
    private readonly LimitSolver _solver;
    private readonly double[][] _loadsN;
    private readonly int _first;

    /// <param name="held">What is held now.</param>
    /// <param name="candidates">Fixings that could be added.</param>
    /// <param name="throws">What must be held; standing at rest is asked too.</param>
    /// <exception cref="ArgumentException">No demand, or what <see cref="LoadFactor.Of(Held, Vector3D)"/> refuses.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public FixingCuts(Held held, IReadOnlyList<HeldFixing> candidates, IReadOnlyList<Throw> throws)
    {
        if (throws.Count == 0) throw new ArgumentException("name one demand at least", nameof(throws));
        _first = held.Fixings.Count;
        _rig = new(held with { Fixings = [.. held.Fixings, .. candidates] });
        _solver = new(_rig, RegionShape.Smooth);
        _loadsN = [.. throws.Append(new(new(0, 0, -1), 0)).Select(t => _rig.LoadN(new Vector3D(0, 0, -1) + Must.NotBeNegative(t.G) * t.Direction.Unit()))];
    }

    /// <summary>Demands that a choice does not hold, each with its rule; empty when it holds all.</summary>
    /// <param name="chosen">For each candidate.</param>
    /// <param name="fill">Candidates in the order in which a failing set is filled up.</param>
    /// <exception cref="ArgumentException">A list of another length than the candidates.</exception>
    public IReadOnlyList<Cut> Missing(IReadOnlyList<bool> chosen, IReadOnlyList<int> fill)
    {
        if (chosen.Count != _rig.Fixings.Length - _first || fill.Count != chosen.Count) throw new ArgumentException("say of each candidate whether it is chosen", nameof(chosen));
        return [.. Enumerable.Range(0, _loadsN.Length).Select(t => Of(t, chosen, fill)).OfType<Cut>()];
    }

    /// <summary>Whether a choice holds all.</summary>
    /// <param name="chosen">For each candidate.</param>
    public bool Holds(IReadOnlyList<bool> chosen) => Enumerable.Range(0, _loadsN.Length).All(t => Mechanism(t, [.. chosen]) is null);

    private Cut? Of(int demand, IReadOnlyList<bool> chosen, IReadOnlyList<int> fill)
    {
        bool[] set = [.. chosen];
        if (Mechanism(demand, set) is not { } motion) return null;
        var resists = Resists(motion);
        var (sum, work) = (Sum(resists, set), Work(demand, motion));
        foreach (var more in fill)
        {
            if (set[more]) continue;
            set[more] = true;
            if (sum + resists[_first + more] < work)
            {
                sum += resists[_first + more];
                continue;
            }
            if (Mechanism(demand, set) is { } other)
            {
                resists = Resists(other);
                (sum, work) = (Sum(resists, set), Work(demand, other));
            }
            else set[more] = false;
        }
        var shortfall = work;
        for (var i = 0; i < _first; i++) shortfall -= resists[i];
        return new(demand, [.. resists.Skip(_first).Select(r => Math.Min(1, r / shortfall))], [.. Enumerable.Range(0, set.Length).Where(i => !set[i])]);
    }

    /// <summary>A motion that the set does not stop; null when it holds.</summary>
    private double[]? Mechanism(int demand, bool[] set)
    {
        var (pull, shear) = (new double[_rig.Fixings.Length], new double[_rig.Fixings.Length]);
        for (var i = 0; i < pull.Length; i++)
        {
            if (i >= _first && !set[i - _first]) continue;
            (pull[i], shear[i]) = (_rig.Fixings[i].PullN, _rig.Fixings[i].ShearN);
        }
        var solved = new LimitSolver(_solver, _rig.With(pull, shear)).Times(_loadsN[demand], decideAt: 1);
        return solved.HighG < 1 ? solved.Motion : null;
    }

    private double[] Resists(double[] motion) => [.. _rig.Fixings.Select(f => Resisting.To(f, f.Slip(motion)).Power)];

    private double Work(int demand, double[] motion) => motion.Zip(_loadsN[demand], (m, l) => m * l).Sum();

    private double Sum(double[] resists, bool[] set) => resists.Where((_, i) => i < _first || set[i - _first]).Sum();
}
