using Wainwright.Methods.Retention.Limit;

namespace Wainwright.Methods.Retention.Elastic;

/// <summary>Raises the throw from 0 until the first fixing reaches its strength.</summary>
/// <remarks>
/// Between two changes of what pulls and what touches all forces go straight, so the way to the edge of each region is known;
/// it is gone in strides of a quarter of the collapse load at most, and a stride that ends outside is narrowed down.
/// A fixing that reached its strength and eased again within one stride would be missed.
/// </remarks>
sealed class FirstYield(Rig rig)
{
    private const double Sharp = 1e-8, NeverG = 1e4;
    private const int MostStrides = 200, MostLooks = 80;

    private readonly Springs _springs = new(rig);
    private readonly double[] _weight = rig.LoadN(new(0, 0, -1)), _load = new double[rig.Degrees];

    /// <param name="direction">Unit vector.</param>
    /// <param name="collapseG">Load factor of the limit analysis: no elastic state within the strengths lies beyond [g].</param>
    /// <returns>The throw [g], 0 when it yields at rest or the springs do not hold it, infinite when never; and the fixing.</returns>
    public (double G, int? Fixing) Of(Vector3D direction, double collapseG)
    {
        var thrown = rig.LoadN(direction);
        var state = _springs.AtEase();
        if (!_springs.Settle(state, _weight)) return (0, null);
        var (share, worst) = Most(state);
        if (share >= 1) return (0, worst);
        var at = 0.0;
        for (var stride = 0; stride < MostStrides; stride++)
        {
            var (reach, _) = Reach(state, _springs.Rate(state, thrown));
            if (at + reach > NeverG && double.IsInfinity(collapseG)) return (double.PositiveInfinity, null);
            var next = at + Math.Min(Math.Max(reach, 1e-6 * (1 + at)), double.IsInfinity(collapseG) ? 10 + at : Math.Max(collapseG, 1e-3) / 4);
            if (!SettleAt(state, thrown, next)) return (at, worst);
            var (nextShare, nextWorst) = Most(state);
            if (Math.Abs(nextShare - 1) <= Sharp) return (next, nextWorst);
            if (nextShare > 1) return Narrow(state, thrown, (at, share), (next, nextShare));
            (at, share, worst) = (next, nextShare, nextWorst);
        }
        throw new InvalidOperationException($"first yield: not reached in {MostStrides} strides");
    }

    /// <summary>Regula falsi after Illinois: the share is below 1 at one end and above at the other.</summary>
    private (double G, int? Fixing) Narrow(Springs.State state, double[] thrown, (double G, double Share) low, (double G, double Share) high)
    {
        var (below, above) = (low.Share - 1, high.Share - 1);
        var fixing = (int?)null;
        for (var look = 0; look < MostLooks && high.G - low.G > Sharp * (1 + high.G); look++)
        {
            // a share of infinity (a fixing that carries nothing one way) has no chord
            var middle = double.IsInfinity(above) || look % 8 == 7 ? (low.G + high.G) / 2 : (high.G * below - low.G * above) / (below - above);
            if (!SettleAt(state, thrown, middle)) return (low.G, fixing);
            (var share, fixing) = Most(state);
            if (Math.Abs(share - 1) <= Sharp) return (middle, fixing);
            if (share < 1) (low, below, above) = ((middle, share), share - 1, above / 2);
            else (high, above, below) = ((middle, share), share - 1, below / 2);
        }
        return (low.G, fixing);
    }

    private bool SettleAt(Springs.State state, double[] thrown, double g)
    {
        for (var r = 0; r < _load.Length; r++) _load[r] = _weight[r] + g * thrown[r];
        return _springs.Settle(state, _load);
    }

    private (double Share, int? Fixing) Most(Springs.State state)
    {
        var (most, fixing) = (0.0, (int?)null);
        for (var i = 0; i < rig.Fixings.Length; i++)
        {
            var (pull, shear) = _springs.Force(i, state.Moved);
            var share = rig.Held.Fixings[i].Strength.ShareOf(pull, shear.Length);
            if (share > most) (most, fixing) = (share, i);
        }
        return (most, fixing);
    }

    private (double Reach, int? Fixing) Reach(Springs.State state, Springs.State rate)
    {
        var (least, fixing) = (double.PositiveInfinity, (int?)null);
        for (var i = 0; i < rig.Fixings.Length; i++)
        {
            var (from, by) = (_springs.Force(i, state.Moved), _springs.Force(i, rate.Moved));
            var slack = !state.Pulls[i];
            var reach = Reach(rig.Fixings[i], slack ? 0 : from.PullN, slack ? 0 : by.PullN, from.ShearN, by.ShearN);
            if (reach < least) (least, fixing) = (reach, i);
        }
        return (least, fixing);
    }

    /// <summary>How far along a straight path of forces until the edge of the region.</summary>
    private static double Reach(in FixingArm fixing, double pull, double pullBy, Vector3D shear, Vector3D shearBy)
    {
        var (p, pb) = fixing.PullN > 0 ? (pull / fixing.PullN, pullBy / fixing.PullN) : (0, 0);
        var over = fixing.ShearN > 0 ? 1 / (fixing.ShearN * fixing.ShearN) : 0;
        var (s0, s1, s2) = (over * shear.Dot(shear), 2 * over * shear.Dot(shearBy), over * shearBy.Dot(shearBy));
        return fixing.Sharing switch
        {
            // s² = (1 − p)²
            Sharing.Straight => FirstRoot(s2 - pb * pb, s1 + 2 * (1 - p) * pb, s0 - (1 - p) * (1 - p)),
            Sharing.Round => FirstRoot(s2 + pb * pb, s1 + 2 * p * pb, s0 + p * p - 1),
            _ => Math.Min(FirstRoot(s2, s1, s0 - 1), pb > 0 ? Math.Max(0, 1 - p) / pb : double.PositiveInfinity),
        };
    }

    /// <summary>Least root of a t² + b t + c above 0, where c is below 0 (inside).</summary>
    private static double FirstRoot(double a, double b, double c)
    {
        if (c >= 0) return 0;
        if (Math.Abs(a) <= 1e-14 * Math.Max(1e-300, b * b)) return b > 0 ? -c / b : double.PositiveInfinity;
        var inside = b * b - 4 * a * c;
        if (inside < 0) return double.PositiveInfinity;
        var q = -0.5 * (b + (b < 0 ? -1 : 1) * Math.Sqrt(inside));
        var (one, two) = (q / a, q == 0 ? double.PositiveInfinity : c / q);
        return Math.Min(one > 0 ? one : double.PositiveInfinity, two > 0 ? two : double.PositiveInfinity);
    }
}
