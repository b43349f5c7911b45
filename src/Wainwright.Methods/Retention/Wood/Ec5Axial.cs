namespace Wainwright.Methods.Retention;

/// <summary>Characteristic withdrawal of screws and smooth nails after Eurocode 5.</summary>
/// <remarks>
/// Screws of 6 to 12 mm, root 0.6 to 0.75 of nominal: fax = 0.52·d^−0.5·lef^−0.1·ρ^0.8, Fax = n^0.9·fax·d·lef·kd/(1.2·cos²α + sin²α),
/// kd = d/8 up to 1, lef at least 6 d. (A public notebook misprints the exponent of ρ as 0.08.) Smooth nails fax = 20e-6·ρ², whole from 12 d of
/// penetration, t/(4·d) − 2 of it down to 8 d, none below.
/// </remarks>
public static class Ec5Axial
{
    /// <summary>Axially loaded screws and nails.</summary>
    public static readonly Basis Basis = new(
        Source: "EN 1995-1-1:2004+A1:2008, equations 8.38 to 8.40 and 8.25, as a public timber notebook has them",
        Assumes: ["characteristic density of the point side", "threaded length in the wood, tip taken off"],
        Caution: "Furniture screws under 6 mm lie outside: their makers declare a value of their own. Smooth nails: no lasting load, and none at all when driven wet.",
        How: Provenance.Quoted);

    /// <param name="DiameterMm">Outer diameter of the thread [mm], above 0.</param>
    /// <param name="RootMm">Root diameter [mm], above 0.</param>
    /// <param name="ThreadMm">Threaded length in the wood [mm], above 0.</param>
    /// <param name="CharacteristicKgPerM3">Characteristic density [kg/m³], above 0.</param>
    /// <param name="DegreesToGrain">Angle between screw and grain [°], 0 to 90.</param>
    /// <param name="Count">Screws acting together, 1 or more.</param>
    public sealed record Screw(double DiameterMm, double RootMm, double ThreadMm, double CharacteristicKgPerM3, double DegreesToGrain = 90, int Count = 1);

    /// <param name="StrengthMPa">Withdrawal parameter fax [MPa].</param>
    /// <param name="CharacteristicN">Characteristic withdrawal of all screws together [N].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double StrengthMPa, double CharacteristicN, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static Result Of(Screw screw)
    {
        double d = Must.BePositive(screw.DiameterMm), length = Must.BePositive(screw.ThreadMm), root = Must.BePositive(screw.RootMm) / d;
        ArgumentOutOfRangeException.ThrowIfLessThan(screw.Count, 1);
        var (sin, cos) = Math.SinCos(double.DegreesToRadians(Must.BeWithin(screw.DegreesToGrain, 0, 90)));
        var strength = 0.52 * Math.Pow(d, -0.5) * Math.Pow(length, -0.1) * Math.Pow(Must.BePositive(screw.CharacteristicKgPerM3), 0.8);
        List<string> outside = [];
        if (d is < 6 or > 12) outside.Add("thread outside 6 to 12 mm");
        if (root is < 0.6 or > 0.75) outside.Add("root outside 0.6 to 0.75 of the thread");
        if (length < 6 * d) outside.Add("thread in the wood below six diameters");
        if (screw.DegreesToGrain < 30) outside.Add("screw within 30° of the grain");
        var together = Math.Pow(screw.Count, 0.9) * strength * d * length * Math.Min(d / 8, 1) / ((1.2 * cos * cos) + (sin * sin));
        return new(strength, together, outside);
    }

    /// <summary>Characteristic withdrawal of a smooth nail [N].</summary>
    /// <param name="diameterMm">Nail [mm], above 0.</param>
    /// <param name="penetrationMm">In the point side [mm], 0 or more.</param>
    /// <param name="characteristicKgPerM3">Characteristic density [kg/m³], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double SmoothNailN(double diameterMm, double penetrationMm, double characteristicKgPerM3)
    {
        var depth = Must.NotBeNegative(penetrationMm) / Must.BePositive(diameterMm);
        return 20e-6 * Math.Pow(Must.BePositive(characteristicKgPerM3), 2) * diameterMm * penetrationMm * Math.Clamp((depth / 4) - 2, 0, 1);
    }
}
