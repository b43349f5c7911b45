using Wainwright.Methods.Retention.Limit;

namespace Wainwright.Methods.Retention.Doubt;

/// <summary>Answers for one demand whether given strengths hold it, mostly from what earlier answers proved.</summary>
/// <remarks>
/// A mechanism found once bounds every other set of strengths from above; forces found once hold for every set of strengths
/// that they fit into. Only where neither decides is the limit analysis run, and what it finds is kept.
/// </remarks>
sealed class Decider
{
    private const int Kept = 48;

    /// <summary>Slip of each fixing and the work of the load.</summary>
    private sealed record Mechanism(double[] Outward, double[] Sideways, double Work);

    /// <summary>Forces in each fixing that carry the load.</summary>
    private sealed record Pattern(double[] PullN, double[] ShearN);

    private readonly Rig _rig;
    private readonly LimitSolver _solver;
    private readonly double[] _loadN;
    private readonly List<Mechanism> _mechanisms = [];
    private readonly List<Pattern> _patterns = [];

    public Decider(Rig rig, LimitSolver solver, in Throw demand)
    {
        (_rig, _solver) = (rig, solver);
        _loadN = rig.LoadN(new Vector3D(0, 0, -1) + Must.NotBeNegative(demand.G) * demand.Direction.Unit());
    }

    private bool _always;

    public int Asked { get; private set; }

    public int Solved { get; private set; }

    public bool Holds(double[] pullN, double[] shearN)
    {
        Asked++;
        if (_always) return true;
        for (var m = 0; m < _mechanisms.Count; m++)
        {
            if (Resisted(_mechanisms[m], pullN, shearN) >= _mechanisms[m].Work) continue;
            Forward(_mechanisms, m);
            return false;
        }
        for (var p = 0; p < _patterns.Count; p++)
        {
            if (!Fits(_patterns[p], pullN, shearN)) continue;
            Forward(_patterns, p);
            return true;
        }
        Solved++;
        var solver = new LimitSolver(_solver, _rig.With(pullN, shearN));
        var solved = solver.Times(_loadN, decideAt: 1);
        // only pushed against its supports: no strength matters
        if (double.IsInfinity(solved.LowG)) return _always = true;
        if (solved.HighG >= 1)
        {
            // the strongest forces, made smaller: they fit into many other sets of strengths
            var forces = solver.Forces(solved.State);
            if (solved.LowG >= 1) Keep(_patterns, new([.. forces.Select(f => f.PullN / solved.LowG)], [.. forces.Select(f => f.ShearN.Length / solved.LowG)]));
            return true;
        }
        Keep(_mechanisms, Of(solved.Motion));
        return false;
    }

    /// <summary>How many times the load is carried, and how that changes with each strength.</summary>
    public (double Times, double[] ByPull, double[] ByShear) Margin(double[] pullN, double[] shearN)
    {
        (Asked, Solved) = (Asked + 1, Solved + 1);
        var solved = new LimitSolver(_solver, _rig.With(pullN, shearN)).Times(_loadN);
        if (double.IsInfinity(solved.HighG)) return (double.PositiveInfinity, [], []);
        var mechanism = Of(solved.Motion);
        var (byPull, byShear) = (new double[pullN.Length], new double[pullN.Length]);
        for (var i = 0; i < pullN.Length; i++)
        {
            var (o, s) = (mechanism.Outward[i], mechanism.Sideways[i]);
            var (pull, shear) = (o * pullN[i], s * shearN[i]);
            var power = Math.Sqrt(pull * pull + shear * shear);
            (byPull[i], byShear[i]) = _rig.Fixings[i].Sharing switch
            {
                Sharing.Straight => pull > shear ? (o, 0.0) : (0, s),
                Sharing.Round => power > 0 ? (o * pull / power, s * shear / power) : (o, s),
                _ => (o, s),
            };
            (byPull[i], byShear[i]) = (byPull[i] / mechanism.Work, byShear[i] / mechanism.Work);
        }
        return (solved.HighG, byPull, byShear);
    }

    private double Resisted(Mechanism mechanism, double[] pullN, double[] shearN)
    {
        var sum = 0.0;
        for (var i = 0; i < pullN.Length; i++)
        {
            var (pull, shear) = (mechanism.Outward[i] * pullN[i], mechanism.Sideways[i] * shearN[i]);
            sum += _rig.Fixings[i].Sharing switch
            {
                Sharing.Straight => Math.Max(pull, shear),
                Sharing.Round => Math.Sqrt(pull * pull + shear * shear),
                _ => pull + shear,
            };
        }
        return sum;
    }

    private bool Fits(Pattern pattern, double[] pullN, double[] shearN)
    {
        for (var i = 0; i < pullN.Length; i++)
        {
            var (pull, shear) = (Share(pattern.PullN[i], pullN[i]), Share(pattern.ShearN[i], shearN[i]));
            var share = _rig.Fixings[i].Sharing switch
            {
                Sharing.Straight => pull + shear,
                Sharing.Round => pull * pull + shear * shear,
                _ => Math.Max(pull, shear),
            };
            if (!(share <= 1)) return false;
        }
        return true;
    }

    private static double Share(double force, double capacity) => force <= 0 ? 0 : force / capacity;

    private Mechanism Of(double[] motion)
    {
        var (outward, sideways, work) = (new double[_rig.Fixings.Length], new double[_rig.Fixings.Length], 0.0);
        for (var i = 0; i < outward.Length; i++)
        {
            var slip = _rig.Fixings[i].Slip(motion);
            var along = _rig.Fixings[i].Axis.Dot(slip);
            (outward[i], sideways[i]) = (Math.Max(0, along), (slip - along * _rig.Fixings[i].Axis).Length);
        }
        for (var r = 0; r < motion.Length; r++) work += motion[r] * _loadN[r];
        return new(outward, sideways, work);
    }

    /// <summary>What decided last is asked first.</summary>
    private static void Forward<T>(List<T> list, int at)
    {
        if (at > 0) (list[at - 1], list[at]) = (list[at], list[at - 1]);
    }

    private static void Keep<T>(List<T> list, T one)
    {
        if (list.Count == Kept) list.RemoveAt(Kept - 1);
        list.Insert(0, one);
    }
}
