namespace Wainwright.Methods.Retention;

/// <summary>A bracket's leg pulled off its screw bends and levers: the screw is pulled harder than the load.</summary>
/// <remarks>
/// b from the screw to the pulling leg's face, a from the screw to the free edge, p the leg's length for each screw, d the screw, d' its
/// hole. b' = b − d/2, a' = min(a, 1.25·b) + d/2, ρ = b'/a', δ = 1 − d'/p, tc = √(4·B·b'/(p·Fu)) or, in the older form, √(8·B·b'/(p·Fy));
/// α' = ((tc/t)² − 1)/(δ·(1 + ρ)). Load that the pair carries: B when α' is below 0, B·(t/tc)²·(1 + δ·α') up to 1, B·(t/tc)²·(1 + δ) above.
/// </remarks>
public static class BracketPrying
{
    /// <summary>Prying action.</summary>
    public static readonly Basis Basis = new(
        Source: "AISC manual, part 9, prying action (Thornton 1985), as copies and a worked spreadsheet after the 9th edition have it",
        Assumes: ["the leg bends over its whole length p", "the wood or sheet under the free edge does not crush"],
        Caution: "Soft board under the free edge gives way: less prying, more movement. Nominal values; factors of safety come on top.",
        How: Provenance.Quoted);

    /// <param name="FixingN">What the screw carries straight out, B [N], above 0.</param>
    /// <param name="LeverMm">From the screw to the face of the pulling leg, b [mm], above half the screw.</param>
    /// <param name="EdgeMm">From the screw to the free edge, a [mm], above 0.</param>
    /// <param name="LengthMm">Leg for each screw, p [mm], above the hole.</param>
    /// <param name="ThicknessMm">Leg's thickness, t [mm], above 0.</param>
    /// <param name="DiameterMm">Screw, d [mm], above 0.</param>
    /// <param name="HoleMm">Hole, d' [mm], 0 or more.</param>
    /// <param name="SteelMPa">Tensile strength of the bracket; in the older form its yield strength [MPa], above 0.</param>
    /// <param name="IsOlderForm">Yield strength and the older form.</param>
    public sealed record Input(
        double FixingN, double LeverMm, double EdgeMm, double LengthMm, double ThicknessMm, double DiameterMm, double HoleMm, double SteelMPa, bool IsOlderForm = false);

    /// <param name="FullThicknessMm">Thickness from which nothing pries, tc [mm].</param>
    /// <param name="Prying">α' [-]: below 0 none, above 1 the bracket itself gives.</param>
    /// <param name="CarriesN">Load at the pulling leg that bracket and screw carry together [N].</param>
    /// <param name="PullForEachLoad">Pull on the screw for each newton of load at that limit [-], 1 or more.</param>
    public sealed record Result(double FullThicknessMm, double Prying, double CarriesN, double PullForEachLoad);

    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static Result Of(Input bracket)
    {
        double fixing = Must.BePositive(bracket.FixingN), d = Must.BePositive(bracket.DiameterMm), p = Must.BePositive(bracket.LengthMm);
        var lever = Must.BePositive(bracket.LeverMm - (d / 2), nameof(bracket.LeverMm));
        var edge = Math.Min(Must.BePositive(bracket.EdgeMm), 1.25 * bracket.LeverMm) + (d / 2);
        var delta = 1 - (Must.BeWithin(bracket.HoleMm, 0, p) / p);
        var full = Math.Sqrt((bracket.IsOlderForm ? 8 : 4) * fixing * lever / (p * Must.BePositive(bracket.SteelMPa)));
        var thinness = Math.Pow(full / Must.BePositive(bracket.ThicknessMm), 2);
        var prying = (thinness - 1) / (delta * (1 + (lever / edge)));
        var carries = prying < 0 ? fixing : fixing / thinness * (1 + (delta * Math.Min(prying, 1)));
        // above 1 the leg gives before the screw: the screw then carries the load and the moment's lever, not all it could
        var pull = prying < 0 ? 1 : prying <= 1 ? fixing / carries : 1 + (delta * lever / edge / (1 + delta));
        return new(full, prying, carries, pull);
    }
}
