using Wainwright.Methods.Retention.Limit;

namespace Wainwright.Methods.Retention.Elastic;

/// <summary>Raises the throw from 0 until the first fixing reaches its strength, from one change of what touches and what pulls to the next.</summary>
sealed class FirstYield(Rig rig)
{
    private const double Beyond = 1e-7, Noise = 1e-8;
    private const int MostChanges = 2_000;

    private readonly Springs _springs = new(rig);
    private readonly double[] _weight = rig.LoadN(new(0, 0, -1)), _load = new double[rig.Degrees];

    /// <returns>The throw [g], 0 when it yields at rest or the springs do not hold it, infinite when never; and the fixing.</returns>
    public (double G, int? Fixing) Of(Vector3D direction)
    {
        var thrown = rig.LoadN(direction);
        var state = _springs.AtEase();
        if (!_springs.Settle(state, _weight)) return (0, null);
        if (Most(state) is { Share: >= 1, Fixing: var early }) return (0, early);
        var (at, least) = (0.0, Beyond);
        for (var change = 0; change < MostChanges; change++)
        {
            var now = at + Beyond * (1 + at);
            if (!SettleAt(state, thrown, now)) return (at, null);
            var rate = _springs.Rate(state, thrown);
            var (reach, fixing) = Reach(state, rate);
            var next = NextChange(state, rate);
            if (reach <= next) return double.IsInfinity(reach) ? (reach, null) : Sharpen(state, thrown, at, now + reach, fixing);
            // a contact that only just touches opens and closes by rounding: stride on, further each time
            least = next < least ? 2 * least : Beyond;
            next = Math.Max(next, least * (1 + at));
            for (var r = 0; r < state.Moved.Length; r++) state.Moved[r] += next * rate.Moved[r];
            for (var c = 0; c < state.ContactN.Length; c++) state.ContactN[c] = Math.Max(0, state.ContactN[c] + next * rate.ContactN[c]);
            at = now + next;
        }
        throw new InvalidOperationException($"first yield: more than {MostChanges} changes of contact");
    }

    /// <summary>Looks whether the fixing stands at its strength there, and halves the interval where a stride went past a change.</summary>
    private (double G, int? Fixing) Sharpen(Springs.State state, double[] thrown, double low, double high, int? fixing)
    {
        for (var look = 0; look < 60; look++)
        {
            if (!SettleAt(state, thrown, high)) return (low, fixing);
            var (share, worst) = Most(state);
            if (Math.Abs(share - 1) <= 1e-7 || high - low <= 1e-9 * (1 + high)) return (high, worst);
            if (share < 1) (low, high) = (high, high + Math.Max(1e-7 * (1 + high), (1 - share) * (high + 1)));
            else
            {
                var middle = (low + high) / 2;
                if (!SettleAt(state, thrown, middle)) return (low, fixing);
                if (Most(state).Share >= 1) high = middle;
                else low = middle;
            }
        }
        return (high, fixing);
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
            var slack = from.PullN <= 0;
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

    /// <summary>How far until a pull spring wakes or goes slack, or a contact opens or closes. A change by rounding alone is none.</summary>
    private double NextChange(Springs.State state, Springs.State rate)
    {
        var next = double.PositiveInfinity;
        var (moved, moving) = (Noise * Largest(state.Moved), Noise * Largest(rate.Moved));
        var (pushed, pushing) = (Noise * Largest(state.ContactN), Noise * Largest(rate.ContactN));
        foreach (ref readonly var fixing in rig.Fixings.AsSpan())
            next = Math.Min(next, Crossing(fixing.Axis.Dot(fixing.Slip(state.Moved)), fixing.Axis.Dot(fixing.Slip(rate.Moved)), moved, moving));
        for (var c = 0; c < rig.Contacts.Length; c++)
            next = Math.Min(next, state.ContactN[c] > 0
                ? Crossing(state.ContactN[c], rate.ContactN[c], pushed, pushing)
                : Crossing(rig.Contacts[c].Parting(state.Moved), rig.Contacts[c].Parting(rate.Moved), moved, moving));
        return next;
    }

    private static double Crossing(double value, double by, double noise, double noiseBy) =>
        value * by < 0 && Math.Abs(by) > noiseBy ? Math.Max(0, Math.Abs(value) - noise) / Math.Abs(by) : double.PositiveInfinity;

    private static double Largest(double[] values)
    {
        var most = 0.0;
        foreach (var v in values) most = Math.Max(most, Math.Abs(v));
        return most;
    }
}
