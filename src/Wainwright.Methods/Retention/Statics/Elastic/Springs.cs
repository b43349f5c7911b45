using Wainwright.Methods.Retention.Limit;

namespace Wainwright.Methods.Retention.Elastic;

/// <summary>Rigid bodies on springs: fixings pull and shear elastically, a pull spring never pushes, a contact is rigid and only pushes.</summary>
/// <remarks>
/// Minimum of a convex, piecewise quadratic energy by Newton's method; contacts by multipliers that are raised until no body
/// enters its support, so no compliance of the contact is left in the answer.
/// </remarks>
sealed class Springs
{
    private const int MostNewton = 60, MostRaises = 40;
    private const double Faint = 1e-10, Settled = 1e-9;

    private readonly Rig _rig;
    private readonly double[] _pull, _shear;
    private readonly (Vector3D First, Vector3D Second)[] _across;
    private readonly double _stiffest, _contact;
    private readonly double[] _gradient, _step, _trial, _hessian;

    public Springs(Rig rig)
    {
        _rig = rig;
        // no strength, no spring: a sheared screw does not help until it breaks
        _pull = [.. rig.Held.Fixings.Select(f => f.Strength.PullN > 0 ? f.Strength.PullStiffnessNPerMm : 0)];
        _shear = [.. rig.Held.Fixings.Select(f => f.Strength.ShearN > 0 ? f.Strength.ShearStiffnessNPerMm : 0)];
        _across = [.. rig.Fixings.Select(f => f.Axis.Across())];
        _stiffest = _pull.Concat(_shear).DefaultIfEmpty(0).Max();
        if (_stiffest <= 0) _stiffest = 1;
        _contact = 1e3 * _stiffest;
        (_gradient, _step, _trial, _hessian) = (new double[rig.Degrees], new double[rig.Degrees], new double[rig.Degrees], new double[rig.Degrees * rig.Degrees]);
    }

    /// <summary>Displacements [mm; turning × reach] and contact forces [N] in one state.</summary>
    public sealed class State(int degrees, int contacts)
    {
        public double[] Moved { get; } = new double[degrees];
        public double[] ContactN { get; } = new double[contacts];
    }

    public State AtEase() => new(_rig.Degrees, _rig.Contacts.Length);

    /// <summary>Finds equilibrium with a load from a nearby state; changes the state.</summary>
    /// <returns>False when springs and contacts cannot hold the load.</returns>
    public bool Settle(State state, double[] loadN)
    {
        var size = loadN.Sum(Math.Abs);
        for (var raise = 0; raise < MostRaises; raise++)
        {
            if (!Newton(state, loadN, size)) return false;
            var off = 0.0;
            for (var c = 0; c < state.ContactN.Length; c++)
            {
                var next = Math.Max(0, state.ContactN[c] - _contact * _rig.Contacts[c].Parting(state.Moved));
                off = Math.Max(off, Math.Abs(next - state.ContactN[c]));
                state.ContactN[c] = next;
            }
            if (off <= Settled * size) return Holds(state, loadN, size);
        }
        return Holds(state, loadN, size);
    }

    /// <summary>How displacements and contact forces change with the load while everything that touches stays touching.</summary>
    public State Rate(State at, double[] loadN)
    {
        var rate = AtEase();
        Hessian(at);
        if (!Cholesky.Factor(_hessian, _rig.Degrees)) throw new InvalidOperationException("the springs lost their rank");
        for (var raise = 0; raise < 8; raise++)
        {
            Array.Copy(loadN, _step, _step.Length);
            for (var c = 0; c < rate.ContactN.Length; c++)
                if (at.ContactN[c] > 0) Add(_step, _rig.Contacts[c], rate.ContactN[c]);
            Cholesky.Solve(_hessian, _rig.Degrees, _step);
            Array.Copy(_step, rate.Moved, _step.Length);
            for (var c = 0; c < rate.ContactN.Length; c++)
                if (at.ContactN[c] > 0) rate.ContactN[c] -= _contact * _rig.Contacts[c].Parting(rate.Moved);
        }
        return rate;
    }

    /// <summary>Pull (below 0: the body is pushed in, the spring is slack) and shear of a fixing [N].</summary>
    public (double PullN, Vector3D ShearN) Force(int fixing, double[] moved)
    {
        var arm = _rig.Fixings[fixing];
        var slip = arm.Slip(moved);
        var outward = arm.Axis.Dot(slip);
        return (_pull[fixing] * outward, _shear[fixing] * (slip - outward * arm.Axis));
    }

    private bool Newton(State state, double[] loadN, double size)
    {
        var energy = Energy(state, state.Moved, loadN);
        for (var n = 0; n < MostNewton; n++)
        {
            Gradient(state, loadN);
            if (Largest(_gradient) <= 1e-12 * size) return true;
            Hessian(state);
            if (!Cholesky.Factor(_hessian, _rig.Degrees)) return false;
            for (var r = 0; r < _step.Length; r++) _step[r] = -_gradient[r];
            Cholesky.Solve(_hessian, _rig.Degrees, _step);
            var slope = 0.0;
            for (var r = 0; r < _step.Length; r++) slope += _step[r] * _gradient[r];
            var length = 1.0;
            for (; ; length /= 2)
            {
                for (var r = 0; r < _trial.Length; r++) _trial[r] = state.Moved[r] + length * _step[r];
                var next = Energy(state, _trial, loadN);
                if (next <= energy + 1e-4 * length * slope || length < 1e-6)
                {
                    var gained = energy - next;
                    energy = next;
                    Array.Copy(_trial, state.Moved, _trial.Length);
                    if (gained <= 1e-15 * Math.Abs(energy) && length == 1) return true;
                    break;
                }
            }
        }
        return true;
    }

    private bool Holds(State state, double[] loadN, double size)
    {
        Gradient(state, loadN);
        // what the faint spring carries along a free motion is what nothing real carries
        var faint = Faint * _stiffest * Largest(state.Moved);
        return Largest(_gradient) <= 1e-6 * size && faint <= 1e-5 * size;
    }

    private double Energy(State state, double[] moved, double[] loadN)
    {
        var sum = 0.0;
        for (var r = 0; r < moved.Length; r++) sum += (0.5 * Faint * _stiffest * moved[r] - loadN[r]) * moved[r];
        for (var i = 0; i < _rig.Fixings.Length; i++)
        {
            ref readonly var arm = ref _rig.Fixings[i];
            var slip = arm.Slip(moved);
            var outward = arm.Axis.Dot(slip);
            var sideways = slip.Dot(slip) - outward * outward;
            sum += 0.5 * (_shear[i] * Math.Max(0, sideways) + (outward > 0 ? _pull[i] * outward * outward : 0));
        }
        for (var c = 0; c < _rig.Contacts.Length; c++)
        {
            var push = Math.Max(0, state.ContactN[c] - _contact * _rig.Contacts[c].Parting(moved));
            sum += 0.5 * push * push / _contact;
        }
        return sum;
    }

    private void Gradient(State state, double[] loadN)
    {
        for (var r = 0; r < _gradient.Length; r++) _gradient[r] = Faint * _stiffest * state.Moved[r] - loadN[r];
        for (var i = 0; i < _rig.Fixings.Length; i++)
        {
            ref readonly var arm = ref _rig.Fixings[i];
            var (pull, shear) = Force(i, state.Moved);
            Relative.Add(_gradient, arm.Body, arm.ArmBody, arm.To, arm.ArmTo, Math.Max(0, pull) * arm.Axis + shear);
        }
        for (var c = 0; c < _rig.Contacts.Length; c++)
            if (state.ContactN[c] - _contact * _rig.Contacts[c].Parting(state.Moved) is var push and > 0) Add(_gradient, _rig.Contacts[c], -push);
    }

    private void Hessian(State state)
    {
        Array.Clear(_hessian);
        var n = _rig.Degrees;
        for (var r = 0; r < n; r++) _hessian[r * n + r] = Faint * _stiffest;
        for (var i = 0; i < _rig.Fixings.Length; i++)
        {
            ref readonly var arm = ref _rig.Fixings[i];
            var (first, second) = _across[i];
            Spread(first, _shear[i], arm.Body, arm.ArmBody, arm.To, arm.ArmTo);
            Spread(second, _shear[i], arm.Body, arm.ArmBody, arm.To, arm.ArmTo);
            if (arm.Axis.Dot(arm.Slip(state.Moved)) > 0) Spread(arm.Axis, _pull[i], arm.Body, arm.ArmBody, arm.To, arm.ArmTo);
        }
        for (var c = 0; c < _rig.Contacts.Length; c++)
        {
            ref readonly var contact = ref _rig.Contacts[c];
            if (state.ContactN[c] - _contact * contact.Parting(state.Moved) > 0) Spread(contact.Normal, _contact, contact.Body, contact.ArmBody, contact.To, contact.ArmTo);
        }
    }

    private void Spread(Vector3D way, double stiffness, int body, Vector3D armBody, int to, Vector3D armTo)
    {
        if (stiffness == 0) return;
        Span<double> one = stackalloc double[12];
        Span<int> at = stackalloc int[12];
        Relative.Add(one, 0, armBody, to < 0 ? -1 : 1, armTo, way);
        var count = to < 0 ? 6 : 12;
        for (var k = 0; k < count; k++) at[k] = k < 6 ? 6 * body + k : 6 * to + k - 6;
        for (var r = 0; r < count; r++)
            for (var c = 0; c < count; c++) _hessian[at[r] * _rig.Degrees + at[c]] += stiffness * one[r] * one[c];
    }

    private static void Add(double[] rows, in ContactArm contact, double push) =>
        Relative.Add(rows, contact.Body, contact.ArmBody, contact.To, contact.ArmTo, push * contact.Normal);

    private static double Largest(double[] values)
    {
        var most = 0.0;
        foreach (var v in values) most = Math.Max(most, Math.Abs(v));
        return most;
    }
}
