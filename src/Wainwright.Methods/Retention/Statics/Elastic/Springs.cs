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
    private readonly SpringRows[] _pullRows, _contactRows;
    private readonly double _stiffest, _contact;
    private readonly double[] _gradient, _step, _trial, _hessian, _shearOnly;

    public Springs(Rig rig)
    {
        _rig = rig;
        // no strength, no spring: a sheared screw does not help until it breaks
        _pull = [.. rig.Held.Fixings.Select(f => f.Strength.PullN > 0 ? f.Strength.PullStiffnessNPerMm : 0)];
        _shear = [.. rig.Held.Fixings.Select(f => f.Strength.ShearN > 0 ? f.Strength.ShearStiffnessNPerMm : 0)];
        _stiffest = _pull.Concat(_shear).DefaultIfEmpty(0).Max();
        if (_stiffest <= 0) _stiffest = 1;
        // far stiffer than all springs together: few raises of the multipliers
        _contact = 1e3 * (_stiffest + _pull.Sum() + _shear.Sum());
        (_gradient, _step, _trial) = (new double[rig.Degrees], new double[rig.Degrees], new double[rig.Degrees]);
        (_hessian, _shearOnly) = (new double[rig.Degrees * rig.Degrees], new double[rig.Degrees * rig.Degrees]);
        _pullRows = [.. rig.Fixings.Select(f => new SpringRows(f.Axis, f))];
        _contactRows = [.. rig.Contacts.Select(c => new SpringRows(c.Normal, c.Body, c.ArmBody, c.To, c.ArmTo))];
        for (var r = 0; r < rig.Degrees; r++) _shearOnly[r * rig.Degrees + r] = Faint * _stiffest;
        for (var i = 0; i < rig.Fixings.Length; i++)
        {
            var (first, second) = rig.Fixings[i].Axis.Across();
            new SpringRows(first, rig.Fixings[i]).Spread(_shear[i], _shearOnly, rig.Degrees);
            new SpringRows(second, rig.Fixings[i]).Spread(_shear[i], _shearOnly, rig.Degrees);
        }
    }

    /// <summary>Displacements [mm; turning × reach] and contact forces [N] in one state, and what is at work there.</summary>
    public sealed class State(int degrees, int fixings, int contacts)
    {
        public double[] Moved { get; } = new double[degrees];
        public double[] ContactN { get; } = new double[contacts];
        public bool[] Pulls { get; } = new bool[fixings];
        public bool[] Touches { get; } = new bool[contacts];
    }

    public State AtEase() => new(_rig.Degrees, _rig.Fixings.Length, _rig.Contacts.Length);

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

    /// <summary>How displacements and contact forces change with the load while what is at work stays at work.</summary>
    public State Rate(State at, double[] loadN)
    {
        var rate = AtEase();
        Hessian(at);
        if (!Cholesky.Factor(_hessian, _rig.Degrees)) throw new InvalidOperationException("the springs lost their rank");
        for (var raise = 0; raise < MostRaises; raise++)
        {
            Array.Copy(loadN, _step, _step.Length);
            for (var c = 0; c < rate.ContactN.Length; c++)
                if (at.Touches[c]) Add(_step, _rig.Contacts[c], rate.ContactN[c]);
            Cholesky.Solve(_hessian, _rig.Degrees, _step);
            Array.Copy(_step, rate.Moved, _step.Length);
            var (off, most) = (0.0, 0.0);
            for (var c = 0; c < rate.ContactN.Length; c++)
            {
                if (!at.Touches[c]) continue;
                var change = _contact * _rig.Contacts[c].Parting(rate.Moved);
                rate.ContactN[c] -= change;
                (off, most) = (Math.Max(off, Math.Abs(change)), Math.Max(most, Math.Abs(rate.ContactN[c])));
            }
            if (off <= Settled * most) break;
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
        Look(state);
        for (var n = 0; n < MostNewton; n++)
        {
            Gradient(state, loadN);
            if (Largest(_gradient) <= 1e-13 * size) return true;
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
                if (next > energy + 1e-4 * length * slope + 1e-14 * Math.Abs(energy) && length > 1e-6) continue;
                energy = next;
                break;
            }
            Array.Copy(_trial, state.Moved, _trial.Length);
            // the energy is quadratic as long as the same springs work: a full step within one piece is the lowest point
            if (!Look(state) && length == 1) return true;
        }
        return true;
    }

    private bool Holds(State state, double[] loadN, double size)
    {
        Look(state);
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

    /// <summary>Reads off the displacements what pulls and what touches.</summary>
    /// <returns>True when that has changed.</returns>
    private bool Look(State state)
    {
        var changed = false;
        for (var i = 0; i < state.Pulls.Length; i++) changed |= Set(ref state.Pulls[i], _rig.Fixings[i].Axis.Dot(_rig.Fixings[i].Slip(state.Moved)) > 0 && _pull[i] > 0);
        for (var c = 0; c < state.Touches.Length; c++) changed |= Set(ref state.Touches[c], state.ContactN[c] - _contact * _rig.Contacts[c].Parting(state.Moved) > 0);
        return changed;
    }

    private static bool Set(ref bool place, bool value)
    {
        if (place == value) return false;
        place = value;
        return true;
    }

    private void Hessian(State state)
    {
        Array.Copy(_shearOnly, _hessian, _hessian.Length);
        for (var i = 0; i < state.Pulls.Length; i++)
            if (state.Pulls[i]) _pullRows[i].Spread(_pull[i], _hessian, _rig.Degrees);
        for (var c = 0; c < state.Touches.Length; c++)
            if (state.Touches[c]) _contactRows[c].Spread(_contact, _hessian, _rig.Degrees);
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
