namespace Wainwright.Methods.Weight;

/// <summary>Height of the centre of gravity above the wheel centres, second published route: by turning the wheelbase triangle.</summary>
/// <remarks>
/// Front axle raised by a, S the wheelbase, G axle loads:  X1 = Gf1·S/G,  S2 = √(S² − a²),  X2 = Gf2·S2/G,  u = a·X2/S2,
/// y = X1 − √(u² + X2²),  z = y·tan(acos(a/S)).
/// </remarks>
public static class CentreHeightByTurning
{
    /// <summary>Geometric route of a body-builder guideline.</summary>
    public static readonly Basis Basis = new(
        Source: "Body-builder guideline of a van maker, section 3.5, determining the height of the centre of gravity",
        Assumes: ["suspension locked", "tanks full or empty, never half", "all wheels of one radius"],
        Caution: "Gives the height above the wheel centres: add the loaded wheel radius. The same scale errors apply as in the other route.",
        How: Provenance.Read);

    /// <param name="WheelbaseMm">Wheelbase [mm], above 0.</param>
    /// <param name="FrontLevelKg">Front axle load, level [kg].</param>
    /// <param name="FrontRaisedKg">Front axle load with the front raised [kg].</param>
    /// <param name="TotalKg">Whole vehicle [kg], above 0.</param>
    /// <param name="LiftMm">How far the front axle is raised [mm], above 0 and below the wheelbase.</param>
    public sealed record Input(double WheelbaseMm, double FrontLevelKg, double FrontRaisedKg, double TotalKg, double LiftMm);

    /// <param name="AboveWheelCentresMm">Height of the centre of gravity above the wheel centres [mm].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double AboveWheelCentresMm, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or the lift is not between 0 and the wheelbase.</exception>
    public static Result Of(Input lift)
    {
        double s = Must.BePositive(lift.WheelbaseMm), a = Must.BePositive(lift.LiftMm), g = Must.BePositive(lift.TotalKg);
        if (a >= s) throw new ArgumentOutOfRangeException(nameof(lift), a, "LiftMm: must be below the wheelbase");
        var x1 = Must.NotBeNegative(lift.FrontLevelKg) * s / g;
        var s2 = Math.Sqrt((s * s) - (a * a));
        var x2 = Must.NotBeNegative(lift.FrontRaisedKg) * s2 / g;
        var u = a * x2 / s2;
        var y = x1 - Math.Sqrt((u * u) + (x2 * x2));
        return new(y * Math.Tan(Math.Acos(a / s)), a < CentreHeightByLifting.LeastLiftMm ? ["lift below 600 mm: the scale's error outweighs the change"] : []);
    }
}
