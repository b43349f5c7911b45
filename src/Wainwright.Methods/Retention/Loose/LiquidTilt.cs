namespace Wainwright.Methods.Retention;

/// <summary>How the water in a tank climbs its end when the van brakes or leans, and how full the tank may be before a fitting is wetted.</summary>
/// <remarks>
/// Box tank, length L along the throw, height H. Surface angle tan θ = a/(1 − u) with a and u in g. The surface is a plane; where it
/// meets floor or lid it ends there, and the volume stays. Just wetted at a fitting x from the middle and z high: the fill is the mean over
/// the length of the plane through that point, cut to 0..H.
/// </remarks>
public static class LiquidTilt
{
    /// <summary>Steady tilt.</summary>
    public static readonly Basis Basis = new(
        Source: "hydrostatics under steady acceleration: the surface stands square to the apparent gravity",
        Assumes: ["a box-shaped tank without baffles", "steady acceleration, the water at rest in it"],
        Caution: "Sloshing runs higher than the steady surface, to twice and more at the first swing. Fittings low on the tank are wet always: this judges high ones only.",
        How: Provenance.OwnRule);

    /// <param name="LengthMm">Inside length along the throw [mm], above 0.</param>
    /// <param name="HeightMm">Inside height [mm], above 0.</param>
    /// <param name="FittingAtMm">Fitting from the tank's middle, towards the end where the water climbs [mm], within half the length either way.</param>
    /// <param name="FittingHeightMm">Lowest leaking point of the fitting above the tank's floor [mm], 0 to the height.</param>
    /// <param name="AccelerationG">Acceleration along the length [g], 0 or more.</param>
    /// <param name="LiftG">Vertical acceleration that unloads it [g], 0 or more and below 1.</param>
    public sealed record Input(double LengthMm, double HeightMm, double FittingAtMm, double FittingHeightMm, double AccelerationG, double LiftG = 0);

    /// <param name="TiltDegrees">Angle of the surface [°].</param>
    /// <param name="WetsFromFill">Fill from which the fitting is wetted [0–1]; 1 when it never is.</param>
    /// <param name="WetsLevelFill">The same standing level [0–1].</param>
    public sealed record Result(double TiltDegrees, double WetsFromFill, double WetsLevelFill);

    /// <exception cref="ArgumentOutOfRangeException">A value leaves its range.</exception>
    public static Result Of(Input tank)
    {
        double length = Must.BePositive(tank.LengthMm), height = Must.BePositive(tank.HeightMm);
        var at = Must.BeWithin(tank.FittingAtMm, -length / 2, length / 2);
        var fitting = Must.BeWithin(tank.FittingHeightMm, 0, height);
        var slope = Must.NotBeNegative(tank.AccelerationG) / Must.BePositive(1 - Must.NotBeNegative(tank.LiftG), nameof(tank.LiftG));
        var low = fitting - (slope * (at + (length / 2)));
        return new(double.RadiansToDegrees(Math.Atan(slope)), MeanWithin(low, low + (slope * length), height) / height, fitting / height);
    }

    /// <summary>Mean over the length of a straight line from low to high, cut to 0..height.</summary>
    static double MeanWithin(double low, double high, double height) =>
        high - low < 1e-9 ? Math.Clamp(low, 0, height) : (Under(high, height) - Under(low, height)) / (high - low);

    /// <summary>Integral of the cut height from far below up to a level.</summary>
    static double Under(double level, double height) => level <= 0 ? 0 : level <= height ? level * level / 2 : (height * height / 2) + (height * (level - height));
}
