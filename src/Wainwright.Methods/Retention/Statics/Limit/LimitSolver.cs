namespace Wainwright.Methods.Retention.Limit;

/// <summary>What the solver came to in one direction, in flat arrays.</summary>
/// <param name="Motion">The mechanism; empty when nothing can move so.</param>
/// <param name="State">The basis whose values are the forces that hold.</param>
sealed record Solved(double LowG, double HighG, bool CarriesItself, double[] Motion, Tableau State, int Pivots);

/// <summary>Closes the bracket between the static and the kinematic theorem by pricing force patterns that resist the motion of the moment.</summary>
/// <remarks>
/// The strengths of all fixings between two bodies add up to one convex body of forces and moments. The program keeps a few
/// of its corners; its prices are a motion of the bodies; the corner that resists that motion most is the next column.
/// Each round ends with a feasible set of forces and with a mechanism: both bounds are proved before the optimum is found.
/// </remarks>
sealed class LimitSolver
{
    private const double CloseRelative = 1e-8, IntoSupport = 1e-11, Nudge = 1e-9;
    private const int MostPivots = 20_000, StuckAfter = 60;

    private readonly Rig _rig;
    private readonly RegionShape _shape;
    private readonly double _scaleN;
    private readonly double[] _weight;
    private readonly Column[] _contacts;
    private readonly int _rows;
    private Solved? _atRest;

    public LimitSolver(Rig rig, RegionShape shape)
    {
        (_rig, _shape) = (rig, shape);
        _weight = rig.LoadN(new(0, 0, -1));
        _scaleN = Scale();
        _rows = rig.Degrees + rig.Joints;
        _contacts = [.. rig.Contacts.Select((c, i) =>
        {
            var rows = new double[_rows];
            Relative.Add(rows, c.Body, c.ArmBody, c.To, c.ArmTo, -c.Normal);
            return new Column(Kind.Contact, i, rows, []);
        })];
    }

    /// <summary>The same bodies, places and contacts with other strengths.</summary>
    public LimitSolver(LimitSolver other, Rig rig)
    {
        (_rig, _shape, _weight, _contacts, _rows) = (rig, other._shape, other._weight, other._contacts, other._rows);
        _scaleN = Scale();
    }

    /// <summary>At rest under its own weight: the share that it carries, 1 at most.</summary>
    public Solved AtRest => _atRest ??= Climb(new(_rig.Degrees, _rig.Joints), Kind.Weight, _weight);

    public Solved Of(Vector3D direction)
    {
        if (AtRest.LowG < 1) return AtRest with { LowG = AtRest.LowG - 1, HighG = AtRest.HighG - 1, CarriesItself = false };
        return Climb(new(AtRest.State), Kind.Throw, _rig.LoadN(direction));
    }

    /// <summary>How many times a load can be carried, nothing else acting; a bound below <paramref name="decideAt"/> is enough.</summary>
    public Solved Times(double[] loadN, double decideAt = 0) => Climb(new(_rig.Degrees, _rig.Joints), Kind.Throw, loadN, decideAt, alone: true);

    private double Scale()
    {
        var scale = _weight.Sum(Math.Abs);
        foreach (ref readonly var fixing in _rig.Fixings.AsSpan()) scale = Math.Max(scale, Math.Max(fixing.PullN, fixing.ShearN));
        return scale > 0 ? scale : 1;
    }

    /// <summary>What each fixing carries in a state [N]: patterns mixed by their weights.</summary>
    public (double PullN, Vector3D ShearN)[] Forces(Tableau state)
    {
        var forces = new (double PullN, Vector3D ShearN)[_rig.Fixings.Length];
        for (var r = 0; r < state.Basis.Count; r++)
        {
            if (state.Basis[r] is not { Kind: Kind.Pattern } pattern || state.Values[r] <= 0) continue;
            for (var i = 0; i < forces.Length; i++)
            {
                if (_rig.Fixings[i].Joint != pattern.Index) continue;
                var own = Resisting.To(_rig.Fixings[i], _rig.Fixings[i].Slip(pattern.Motion), _shape);
                forces[i] = (forces[i].PullN + state.Values[r] * own.PullN, forces[i].ShearN + state.Values[r] * own.ShearN);
            }
        }
        return forces;
    }

    public double[] ContactN(Tableau state)
    {
        var push = new double[_contacts.Length];
        for (var r = 0; r < state.Basis.Count; r++)
            if (state.Basis[r].Kind == Kind.Contact) push[state.Basis[r].Index] = Math.Max(0, state.Values[r]) * _scaleN;
        return push;
    }

    private Solved Climb(Tableau state, Kind worth, double[] loadN, double decideAt = 0, bool alone = false)
    {
        var load = new double[_rows];
        // measured by its own size: a light part on strong fixings would drown in rounding
        var sizeN = loadN.Max(Math.Abs);
        if (sizeN == 0) sizeN = _scaleN;
        for (var r = 0; r < loadN.Length; r++) load[r] = -loadN[r] / sizeN;
        var (low, high, best) = (0.0, double.PositiveInfinity, Array.Empty<double>());
        var left = state.Enter(new(worth, 0, load, [], sizeN / _scaleN));
        if (left is null) return new(double.PositiveInfinity, double.PositiveInfinity, true, [], state, 0);
        if (left.Kind == Kind.Weight) return new(1, double.PositiveInfinity, true, [], state, 0);
        var motion = new double[_rig.Degrees];
        var (reached, stuck, nudged) = (0.0, 0, false);
        for (var pivots = 1; ; pivots++)
        {
            var prices = state.Prices(worth);
            for (var r = 0; r < motion.Length; r++) motion[r] = -prices[r];
            var column = IntoSupportMost(motion) ?? Resist(motion, prices, loadN, worth == Kind.Throw && !alone, ref high, ref best);
            low = state.Value(worth) * _scaleN / sizeN;
            var closed = double.IsFinite(high) && high - low <= CloseRelative * Math.Max(1, high);
            if (column is null || closed || high < decideAt || pivots >= MostPivots)
            {
                if (nudged) state.Steady();
                return new(state.Value(worth) * _scaleN / sizeN, high, true, best, state, pivots);
            }
            if (low > reached + 1e-12 * (1 + low)) (reached, stuck) = (low, 0);
            else if (++stuck % StuckAfter == 0)
            {
                state.Nudge(Nudge, stuck / StuckAfter);
                nudged = true;
            }
            left = state.Enter(column);
            if (left is null) return new(double.PositiveInfinity, double.PositiveInfinity, true, [], worth == Kind.Throw && !alone ? AtRest.State : state, pivots);
            if (left.Kind == Kind.Weight && worth == Kind.Weight) return new(1, double.PositiveInfinity, true, [], state, pivots);
        }
    }

    private Column? IntoSupportMost(double[] motion)
    {
        var size = 0.0;
        foreach (var m in motion) size = Math.Max(size, Math.Abs(m));
        var (most, into) = (-1, -IntoSupport * size);
        for (var c = 0; c < _contacts.Length; c++)
        {
            var parting = _rig.Contacts[c].Parting(motion);
            if (parting < into) (most, into) = (c, parting);
        }
        return most < 0 ? null : _contacts[most];
    }

    /// <summary>Prices the motion: the bound that it proves, and the pattern that resists it most beyond what the program knows.</summary>
    private Column? Resist(double[] motion, ReadOnlySpan<double> prices, double[] loadN, bool weighed, ref double high, ref double[] best)
    {
        var patterns = new double[_rig.Joints][];
        for (var j = 0; j < patterns.Length; j++) patterns[j] = new double[_rows];
        Span<double> power = stackalloc double[_rig.Joints];
        power.Clear();
        foreach (ref readonly var fixing in _rig.Fixings.AsSpan())
        {
            var own = _shape.Corners == 0 ? Resisting.To(fixing, fixing.Slip(motion)) : Resisting.To(fixing, fixing.Slip(motion), _shape);
            power[fixing.Joint] += own.Power;
            Relative.Add(patterns[fixing.Joint], fixing.Body, fixing.ArmBody, fixing.To, fixing.ArmTo, (1 / _scaleN) * (own.PullN * fixing.Axis + own.ShearN));
        }
        var (total, worst, excess) = (0.0, -1, 0.0);
        for (var j = 0; j < patterns.Length; j++)
        {
            var beyond = power[j] / _scaleN - prices[_rig.Degrees + j];
            total += power[j] / _scaleN;
            if (beyond > excess) (worst, excess) = (j, beyond);
        }
        var (work, weight) = (0.0, 0.0);
        for (var r = 0; r < motion.Length; r++)
        {
            work += motion[r] * loadN[r] / _scaleN;
            weight += motion[r] * _weight[r] / _scaleN;
        }
        // the prices make this 1 but for rounding
        var bound = (total - (weighed ? weight : 0)) / work;
        if (bound < high)
        {
            high = bound;
            best = [.. motion];
        }
        if (worst < 0) return null;
        patterns[worst][_rig.Degrees + worst] = 1;
        return new(Kind.Pattern, worst, patterns[worst], [.. motion]);
    }
}
