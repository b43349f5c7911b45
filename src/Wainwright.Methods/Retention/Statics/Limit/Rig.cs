namespace Wainwright.Methods.Retention.Limit;

/// <summary>What is held, checked and laid flat for arithmetic: lengths by the reach of the whole, velocities six to a body (moving, then turning × reach).</summary>
sealed class Rig
{
    public const double GravityMPerS2 = 9.80665;

    public Held Held { get; }
    public FixingArm[] Fixings { get; }
    public ContactArm[] Contacts { get; }

    /// <summary>How many pairs of bodies are joined by fixings; the van counts as a body here.</summary>
    public int Joints { get; }

    public double ReachMm { get; }
    public int Degrees { get; }

    /// <summary>Load of 1 g in a direction: force on each body's centre [N].</summary>
    public double[] LoadN(Vector3D direction)
    {
        var load = new double[Degrees];
        for (var b = 0; b < Held.Bodies.Count; b++)
        {
            var weight = Held.Bodies[b].MassKg * GravityMPerS2;
            (load[6 * b], load[6 * b + 1], load[6 * b + 2]) = (weight * direction.X, weight * direction.Y, weight * direction.Z);
        }
        return load;
    }

    public Rig(Held held)
    {
        if (held.Bodies.Count == 0) throw new ArgumentException("nothing is held: name one body at least", nameof(held));
        Held = held;
        Degrees = 6 * held.Bodies.Count;
        foreach (var body in held.Bodies)
        {
            Must.NotBeNegative(body.MassKg);
            Finite(body.CentreMm, body.Name);
        }
        ReachMm = Math.Max(1, held.Fixings.Select(f => Far(f.AtMm, f.Body, f.To, f.Name)).Concat(held.Contacts.Select(c => Far(c.AtMm, c.Body, c.To, c.Name))).DefaultIfEmpty(1).Max());
        var joints = new Dictionary<(int, int), int>();
        Fixings = [.. held.Fixings.Select(f =>
        {
            var (pull, shear) = (Must.NotBeNegative(f.Strength.PullN), Must.NotBeNegative(f.Strength.ShearN));
            Must.NotBeNegative(f.Strength.PullStiffnessNPerMm);
            Must.NotBeNegative(f.Strength.ShearStiffnessNPerMm);
            var pair = (f.Body, f.To ?? -1);
            if (!joints.TryGetValue(pair, out var joint)) joints[pair] = joint = joints.Count;
            return new FixingArm(f.PullAxis.Unit(), Arm(f.AtMm, f.Body), f.To is { } to ? Arm(f.AtMm, to) : default, pull, shear, f.Strength.Sharing, f.Body, f.To ?? -1, joint);
        })];
        Contacts = [.. held.Contacts.Select(c => new ContactArm(c.Normal.Unit(), Arm(c.AtMm, c.Body), c.To is { } to ? Arm(c.AtMm, to) : default, c.Body, c.To ?? -1))];
        Joints = joints.Count;
    }

    private Rig(Rig other, FixingArm[] fixings)
    {
        (Held, Contacts, Joints, ReachMm, Degrees) = (other.Held, other.Contacts, other.Joints, other.ReachMm, other.Degrees);
        Fixings = fixings;
    }

    /// <summary>The same with other strengths [N].</summary>
    public Rig With(ReadOnlySpan<double> pullN, ReadOnlySpan<double> shearN)
    {
        var fixings = Fixings.ToArray();
        for (var i = 0; i < fixings.Length; i++) fixings[i] = fixings[i] with { PullN = pullN[i], ShearN = shearN[i] };
        return new(this, fixings);
    }

    private Vector3D Arm(Vector3D atMm, int body) => (1 / ReachMm) * (atMm - Held.Bodies[body].CentreMm);

    private double Far(Vector3D atMm, int body, int? to, string name)
    {
        Finite(atMm, name);
        if (body < 0 || body >= Held.Bodies.Count) throw new ArgumentException($"{name}: there is no body {body}");
        if (to == body || to < 0 || to >= Held.Bodies.Count) throw new ArgumentException($"{name}: cannot be held to body {to}");
        return Math.Max((atMm - Held.Bodies[body].CentreMm).Length, to is { } other ? (atMm - Held.Bodies[other].CentreMm).Length : 0);
    }

    private static void Finite(Vector3D at, string name)
    {
        if (!at.IsFinite) throw new ArgumentOutOfRangeException(name, at, $"{name}: its place must be finite");
    }
}

/// <summary>A fixing, flat: arms from the centres of its bodies in reaches, capacities in N; body −1 is the van.</summary>
readonly record struct FixingArm(Vector3D Axis, Vector3D ArmBody, Vector3D ArmTo, double PullN, double ShearN, Sharing Sharing, int Body, int To, int Joint)
{
    public Vector3D Slip(ReadOnlySpan<double> motion) => Relative.At(motion, Body, ArmBody, To, ArmTo);
}

/// <summary>A contact, flat.</summary>
readonly record struct ContactArm(Vector3D Normal, Vector3D ArmBody, Vector3D ArmTo, int Body, int To)
{
    /// <summary>How fast the body leaves its support; below 0 it would go into it.</summary>
    public double Parting(ReadOnlySpan<double> motion) => Normal.Dot(Relative.At(motion, Body, ArmBody, To, ArmTo));
}

/// <summary>Velocity of a body's point against what holds it, and the transposed of that: a force spread over the rows of both bodies.</summary>
static class Relative
{
    public static Vector3D At(ReadOnlySpan<double> motion, int body, Vector3D armBody, int to, Vector3D armTo) =>
        to < 0 ? Of(motion, body, armBody) : Of(motion, body, armBody) - Of(motion, to, armTo);

    public static void Add(Span<double> rows, int body, Vector3D armBody, int to, Vector3D armTo, Vector3D force)
    {
        Spread(rows.Slice(6 * body, 6), armBody, force);
        if (to >= 0) Spread(rows.Slice(6 * to, 6), armTo, -force);
    }

    private static Vector3D Of(ReadOnlySpan<double> motion, int body, Vector3D arm)
    {
        var m = motion.Slice(6 * body, 6);
        return new(m[0] + m[4] * arm.Z - m[5] * arm.Y, m[1] + m[5] * arm.X - m[3] * arm.Z, m[2] + m[3] * arm.Y - m[4] * arm.X);
    }

    private static void Spread(Span<double> rows, Vector3D arm, Vector3D force)
    {
        rows[0] += force.X;
        rows[1] += force.Y;
        rows[2] += force.Z;
        rows[3] += arm.Y * force.Z - arm.Z * force.Y;
        rows[4] += arm.Z * force.X - arm.X * force.Z;
        rows[5] += arm.X * force.Y - arm.Y * force.X;
    }
}
