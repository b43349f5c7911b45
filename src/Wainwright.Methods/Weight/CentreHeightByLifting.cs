namespace Wainwright.Methods.Weight;

/// <summary>Height of the centre of gravity from weighing one axle level and again with the other axle raised.</summary>
/// <remarks>
/// Axle on the scale reads W level and W' with the other axle raised by H; wheelbase b, mass M, wheel radius r:
/// h = r + b·(W' − W)/(M·tan θ),  sin θ = H/b. The short form b²·(W' − W)/(H·M) takes the sine for the tangent and reads high.
/// </remarks>
public static class CentreHeightByLifting
{
    /// <summary>Scale route: change of one axle's load.</summary>
    public static readonly Basis Basis = new(
        Source: "Axle-lift method, derivations published for road vehicles (scale route and body-builder guideline route agree)",
        Assumes: ["suspension locked", "tanks full or empty, never half", "all wheels of one radius", "the raised end's wheels free to roll"],
        Caution: "A few kilograms on the scale move the height by centimetres: lift at least 600 mm, repeat at several heights, report an interval. Lifting a vehicle is work for a rated lift.",
        How: Provenance.Quoted);

    /// <summary>Least lift that practice asks for [mm].</summary>
    public const double LeastLiftMm = 600;

    /// <param name="WheelbaseMm">Wheelbase [mm], above 0.</param>
    /// <param name="LevelKg">Load of the axle that stays down, level [kg].</param>
    /// <param name="RaisedKg">Load of the same axle with the other raised [kg].</param>
    /// <param name="TotalKg">Whole vehicle [kg], above 0.</param>
    /// <param name="LiftMm">How far the other axle is raised [mm], above 0 and below the wheelbase.</param>
    /// <param name="WheelRadiusMm">Loaded wheel radius [mm], 0 or more; 0 gives the height above the wheel centres.</param>
    public sealed record Input(double WheelbaseMm, double LevelKg, double RaisedKg, double TotalKg, double LiftMm, double WheelRadiusMm);

    /// <param name="CentreHeightMm">Height of the centre of gravity above the road [mm].</param>
    /// <param name="MmPerKgOfScaleError">How far one kilogram of scale error moves it [mm/kg].</param>
    /// <param name="OutsideRange">Limits of the method that the input leaves; empty when it is inside.</param>
    public sealed record Result(double CentreHeightMm, double MmPerKgOfScaleError, IReadOnlyList<string> OutsideRange);

    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or the lift is not between 0 and the wheelbase.</exception>
    public static Result Of(Input lift)
    {
        var b = Must.BePositive(lift.WheelbaseMm);
        var h = Must.BePositive(lift.LiftMm);
        if (h >= b) throw new ArgumentOutOfRangeException(nameof(lift), h, "LiftMm: must be below the wheelbase");
        var tan = h / Math.Sqrt((b * b) - (h * h));
        var perKg = b / (Must.BePositive(lift.TotalKg) * tan);
        var height = Must.NotBeNegative(lift.WheelRadiusMm) + (perKg * (Must.NotBeNegative(lift.RaisedKg) - Must.NotBeNegative(lift.LevelKg)));
        List<string> outside = [];
        if (h < LeastLiftMm) outside.Add("lift below 600 mm: the scale's error outweighs the change");
        if (height <= 0) outside.Add("the height comes out at or below the road: a load was misread");
        return new(height, perKg, outside);
    }
}
