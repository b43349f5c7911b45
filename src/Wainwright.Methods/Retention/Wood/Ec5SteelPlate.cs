namespace Wainwright.Methods.Retention;

/// <summary>Characteristic strength of a fixing across its axis, steel plate under the head and wood behind it, after Eurocode 5.</summary>
/// <remarks>
/// Thin plate (to half a diameter): the lesser of 0.4·fh·t·d and 1.15·√(2·My·fh·d) + rope. Thick (from one diameter): the least of
/// fh·t·d, fh·t·d·(√(2 + 4·My/(fh·d·t²)) − 1) + rope and 2.3·√(My·fh·d) + rope. Between: a straight line. Van sheet under a 5 mm
/// screw is a thin plate; the sheet's own bearing is checked apart (<see cref="SheetScrewAisi.BearingN"/>).
/// </remarks>
public static class Ec5SteelPlate
{
    /// <summary>Steel-to-timber joints.</summary>
    public static readonly Basis Basis = new(
        Source: "EN 1995-1-1, equations 8.9 and 8.10 (thin plate as eurocode.us quotes it, thick from memory)",
        Assumes: ["single shear, steel on the head side", "hole in the plate close to the fixing"],
        Caution: "A characteristic value of the wood side only. A part screwed *into* sheet from wood is the other way round.",
        How: Provenance.FromMemory);

    /// <param name="DiameterMm">Diameter [mm], above 0.</param>
    /// <param name="PlateMm">Steel plate [mm], above 0.</param>
    /// <param name="PenetrationMm">In the wood [mm], above 0.</param>
    /// <param name="EmbedmentMPa">Embedment strength of the wood [MPa], above 0.</param>
    /// <param name="YieldMomentNmm">Yield moment [N·mm], above 0.</param>
    /// <param name="AxialN">Characteristic withdrawal [N], 0 or more.</param>
    /// <param name="RopeShare">Share of a mode's own part that the rope effect may add [-], 0 to 1.</param>
    public sealed record Input(
        double DiameterMm, double PlateMm, double PenetrationMm, double EmbedmentMPa, double YieldMomentNmm, double AxialN = 0, double RopeShare = 0);

    /// <summary>Characteristic strength of one fixing [N].</summary>
    /// <param name="joint">The joint.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double CharacteristicN(Input joint)
    {
        double d = Must.BePositive(joint.DiameterMm), t = Must.BePositive(joint.PenetrationMm), f = Must.BePositive(joint.EmbedmentMPa), my = Must.BePositive(joint.YieldMomentNmm);
        double Roped(double part) => part + Math.Min(Must.NotBeNegative(joint.AxialN) / 4, Must.BeWithin(joint.RopeShare, 0, 1) * part);
        var thin = Math.Min(0.4 * f * t * d, Roped(1.15 * Math.Sqrt(2 * my * f * d)));
        var once = Roped(f * t * d * (Math.Sqrt(2 + (4 * my / (f * d * t * t))) - 1));
        var thick = Math.Min(f * t * d, Math.Min(once, Roped(2.3 * Math.Sqrt(my * f * d))));
        var between = Math.Clamp((Must.BePositive(joint.PlateMm) / d - 0.5) / 0.5, 0, 1);
        return thin + ((thick - thin) * between);
    }
}
