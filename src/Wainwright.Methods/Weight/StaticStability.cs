namespace Wainwright.Methods.Weight;

/// <summary>How far a vehicle may be tilted before it tips: the static stability factor.</summary>
/// <remarks>SSF = T/(2h) with track T and height h of the centre of gravity; rigid tilt limit = atan(SSF).</remarks>
public static class StaticStability
{
    /// <summary>The rating agency's ratio.</summary>
    public static readonly Basis Basis = new(
        Source: "US National Highway Traffic Safety Administration, rollover resistance rating, static stability factor T/(2h)",
        Assumes: ["rigid suspension and tyres", "nothing on board shifts or sloshes"],
        Caution: "Real vans tip earlier: springs, tyres and loose loads are left out. The agency's stars were fitted to cars and light trucks: compare before and after, quote no stars.",
        How: Provenance.Read);

    /// <param name="TrackMm">Track [mm], above 0.</param>
    /// <param name="CentreHeightMm">Height of the centre of gravity above the road [mm], above 0.</param>
    public sealed record Input(double TrackMm, double CentreHeightMm);

    /// <param name="Factor">Static stability factor [-].</param>
    /// <param name="TiltLimitDegrees">Side slope at which a rigid vehicle tips [°].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double Factor, double TiltLimitDegrees, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite or not above 0.</exception>
    public static Result Of(Input van)
    {
        var factor = Must.BePositive(van.TrackMm) / (2 * Must.BePositive(van.CentreHeightMm));
        return new(factor, double.RadiansToDegrees(Math.Atan(factor)), []);
    }
}
