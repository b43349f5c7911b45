using System.Globalization;

namespace Wainwright.Methods.Retention;

/// <summary>Checks a load factor by its own evidence, in N and mm and without the solver: that its forces hold and that its mechanism lets go.</summary>
public static class LimitCheck
{
    /// <summary>The two limit theorems, read off.</summary>
    public static readonly Basis Basis = new(
        Source: "own rule: static theorem (forces inside every strength and in equilibrium prove a lower bound), kinematic theorem (a mechanism proves an upper bound)",
        Assumes: ["what the load factor itself assumes"],
        Caution: "Proves the arithmetic of the bounds, not the strengths that went in.",
        How: Provenance.OwnRule);

    private const double GravityMPerS2 = 9.80665;

    /// <param name="held">What was asked about.</param>
    /// <param name="factor">What was answered.</param>
    /// <param name="tolerance">Rounding allowed, relative to the largest force or velocity [-].</param>
    /// <returns>What is wrong, a sentence each; empty when both bounds are proved.</returns>
    public static IReadOnlyList<string> Of(Held held, LoadFactor factor, double tolerance = 1e-7) =>
        [.. Forces(held, factor, Must.BePositive(tolerance)), .. Mechanism(held, factor, tolerance)];

    private static IEnumerable<string> Forces(Held held, LoadFactor factor, double tolerance)
    {
        var (weights, thrown) = !factor.CarriesItself ? (1 + factor.LowG, 0.0) : (1.0, double.IsInfinity(factor.LowG) ? 0 : factor.LowG);
        var force = new Vector3D[held.Bodies.Count];
        var moment = new Vector3D[held.Bodies.Count];
        var (largest, longest) = (Math.Max(1e-9, GravityMPerS2 * held.Bodies.Sum(b => b.MassKg)), 1.0);
        void On(int body, Vector3D atMm, Vector3D newtons)
        {
            var arm = atMm - held.Bodies[body].CentreMm;
            force[body] += newtons;
            moment[body] += arm.Cross(newtons);
            (largest, longest) = (Math.Max(largest, newtons.Length), Math.Max(longest, arm.Length));
        }
        for (var b = 0; b < held.Bodies.Count; b++)
            On(b, held.Bodies[b].CentreMm, held.Bodies[b].MassKg * GravityMPerS2 * (weights * new Vector3D(0, 0, -1) + thrown * factor.Direction));
        for (var i = 0; i < held.Fixings.Count; i++)
        {
            var (fixing, own) = (held.Fixings[i], factor.Forces[i]);
            var share = fixing.Strength.ShareOf(own.PullN, own.ShearN.Length);
            if (share > 1 + tolerance) yield return Say($"{fixing.Name}: uses {share} of its strength");
            if (own.PullN < 0) yield return Say($"{fixing.Name}: pushes with {-own.PullN} N");
            if (Math.Abs(own.ShearN.Dot(fixing.PullAxis.Unit())) > tolerance * (1 + own.ShearN.Length)) yield return Say($"{fixing.Name}: its shear is not square to its axis");
            var onBody = -own.PullN * fixing.PullAxis.Unit() - own.ShearN;
            On(fixing.Body, fixing.AtMm, onBody);
            if (fixing.To is { } to) On(to, fixing.AtMm, -onBody);
        }
        for (var c = 0; c < held.Contacts.Count; c++)
        {
            var (contact, push) = (held.Contacts[c], factor.ContactN[c]);
            if (push < 0) yield return Say($"{contact.Name}: pulls with {-push} N");
            On(contact.Body, contact.AtMm, push * contact.Normal.Unit());
            if (contact.To is { } to) On(to, contact.AtMm, -push * contact.Normal.Unit());
        }
        for (var b = 0; b < held.Bodies.Count; b++)
        {
            if (force[b].Length > tolerance * largest) yield return Say($"{held.Bodies[b].Name}: {force[b].Length} N are not in balance");
            if (moment[b].Length > tolerance * largest * longest) yield return Say($"{held.Bodies[b].Name}: {moment[b].Length} N mm are not in balance");
        }
    }

    private static IEnumerable<string> Mechanism(Held held, LoadFactor factor, double tolerance)
    {
        if (double.IsInfinity(factor.HighG)) yield break;
        if (factor.Mechanism.Count != held.Bodies.Count)
        {
            yield return "there is no mechanism for the upper bound";
            yield break;
        }
        Vector3D At(int body, Vector3D atMm) => factor.Mechanism[body].Velocity + factor.Mechanism[body].Spin.Cross(atMm - held.Bodies[body].CentreMm);
        Vector3D Slip(Vector3D atMm, int body, int? to) => At(body, atMm) - (to is { } other ? At(other, atMm) : Vector3D.Zero);
        var fastest = held.Contacts.Select(c => Slip(c.AtMm, c.Body, c.To).Length).Concat(factor.Mechanism.Select(m => m.Velocity.Length)).DefaultIfEmpty(0).Max();
        foreach (var contact in held.Contacts)
            if (Slip(contact.AtMm, contact.Body, contact.To).Dot(contact.Normal.Unit()) < -tolerance * fastest) yield return Say($"{contact.Name}: the mechanism goes into it");
        var (resisted, weight, thrown) = (0.0, 0.0, 0.0);
        foreach (var fixing in held.Fixings)
        {
            var (slip, axis) = (Slip(fixing.AtMm, fixing.Body, fixing.To), fixing.PullAxis.Unit());
            var outward = axis.Dot(slip);
            var (pull, shear) = (Math.Max(0, outward) * fixing.Strength.PullN, (slip - outward * axis).Length * fixing.Strength.ShearN);
            resisted += fixing.Strength.Sharing switch
            {
                Sharing.Straight => Math.Max(pull, shear),
                Sharing.Round => Math.Sqrt(pull * pull + shear * shear),
                _ => pull + shear,
            };
        }
        for (var b = 0; b < held.Bodies.Count; b++)
        {
            var newtons = held.Bodies[b].MassKg * GravityMPerS2;
            weight -= newtons * factor.Mechanism[b].Velocity.Z;
            thrown += newtons * factor.Mechanism[b].Velocity.Dot(factor.Direction);
        }
        var bound = factor.CarriesItself ? (resisted - weight) / thrown : resisted / weight - 1;
        if (!((factor.CarriesItself ? thrown : weight) > 0)) yield return "the mechanism does no work with the load";
        else if (Math.Abs(bound - factor.HighG) > tolerance * (1 + resisted / (factor.CarriesItself ? thrown : weight))) yield return Say($"the mechanism proves {bound} g, not {factor.HighG}");
    }

    private static string Say(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);
}
