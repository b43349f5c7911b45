namespace Wainwright.Methods.Retention;

/// <summary>Self-tapping screw in thin sheet steel, European practice.</summary>
/// <remarks>
/// Pull-through dw·t·fu (half of it under repeated load), pull-out 0.45·d·t_sup·fu where the support is thinner than the thread's
/// pitch, else 0.65; bearing α·fu·d·t with α = 3.2·√(t/d) not above 2.1 for equal sheets, 2.1 when the other sheet is 2.5 times as
/// thick and this one 1 mm or more, straight between. Divide by γM2 (1.25) for a design value.
/// </remarks>
public static class SheetScrewEn
{
    /// <summary>Table 8.2 of the cold-formed steel part.</summary>
    public static readonly Basis Basis = new(
        Source: "EN 1993-1-3:2006, table 8.2 (pull-through and pull-out in part as eurocode.us quotes them; bearing from memory, an open library's later version agrees)",
        Assumes: ["screws of 3 to 8 mm, sheets of 0.5 to 1.5 mm", "end distance three diameters"],
        Caution: "Characteristic values; a second practice beside AISI S100, which gives more for pull-out.",
        How: Provenance.FromMemory);

    /// <summary>Partial factor for a design value [-].</summary>
    public const double PartialFactor = 1.25;

    /// <summary>Pitch of the usual tapping thread (ISO 1478, from memory) [mm]: of the tabled size nearest to the given one.</summary>
    /// <param name="nominalMm">Nominal diameter [mm], above 0.</param>
    public static double UsualPitchMm(double nominalMm)
    {
        Must.BePositive(nominalMm);
        return Pitches.MinBy(p => Math.Abs(p.NominalMm - nominalMm)).PitchMm;
    }

    static readonly (double NominalMm, double PitchMm)[] Pitches =
        [(2.2, 0.8), (2.9, 1.1), (3.3, 1.3), (3.5, 1.3), (3.9, 1.3), (4.2, 1.4), (4.8, 1.6), (5.5, 1.8), (6.3, 1.8), (8, 2.1)];

    /// <summary>Characteristic pull-through of the head [N].</summary>
    /// <param name="headMm">Diameter of head or washer [mm], above 0.</param>
    /// <param name="sheetMm">Sheet under the head [mm], above 0.</param>
    /// <param name="tensileMPa">Its tensile strength [MPa], above 0.</param>
    /// <param name="isRepeated">The load comes again and again (wind; a van's shaking): half.</param>
    public static double PullThroughN(double headMm, double sheetMm, double tensileMPa, bool isRepeated = false) =>
        Must.BePositive(headMm) * Must.BePositive(sheetMm) * Must.BePositive(tensileMPa) * (isRepeated ? 0.5 : 1);

    /// <summary>Characteristic pull-out from the supporting sheet [N].</summary>
    /// <param name="diameterMm">Nominal diameter [mm], above 0.</param>
    /// <param name="supportMm">Supporting sheet [mm], above 0.</param>
    /// <param name="tensileMPa">Its tensile strength [MPa], above 0.</param>
    /// <param name="pitchMm">Pitch of the thread [mm], above 0.</param>
    public static double PullOutN(double diameterMm, double supportMm, double tensileMPa, double pitchMm) =>
        (Must.BePositive(supportMm) / Must.BePositive(pitchMm) < 1 ? 0.45 : 0.65) * Must.BePositive(diameterMm) * supportMm * Must.BePositive(tensileMPa);

    /// <summary>Characteristic bearing across the screw, thinner sheet [N].</summary>
    /// <param name="diameterMm">Nominal diameter [mm], above 0.</param>
    /// <param name="thinnerMm">Thinner sheet [mm], above 0.</param>
    /// <param name="otherMm">Other sheet [mm], not thinner.</param>
    /// <param name="tensileMPa">Tensile strength of the thinner sheet [MPa], above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static double BearingN(double diameterMm, double thinnerMm, double otherMm, double tensileMPa)
    {
        double d = Must.BePositive(diameterMm), t = Must.BePositive(thinnerMm), other = Must.BeWithin(otherMm, thinnerMm, double.MaxValue);
        var equal = Math.Min(3.2 * Math.Sqrt(t / d), 2.1);
        var thick = t < 1 ? equal : 2.1;
        var alpha = equal + ((thick - equal) * Math.Min((other / t) - 1, 1.5) / 1.5);
        return alpha * Must.BePositive(tensileMPa) * d * t;
    }
}
