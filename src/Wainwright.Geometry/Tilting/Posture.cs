namespace Wainwright.Geometry;

/// <summary>Where a thing is and how it lies, at any angle.</summary>
/// <param name="ShiftMm">Displacement of its middle from where it was found.</param>
/// <param name="Attitude">How it is turned about that middle, from how it was found.</param>
public readonly record struct Posture(Point ShiftMm, Attitude Attitude)
{
    /// <summary>As found.</summary>
    public static Posture AsFound { get; } = new(default, Attitude.AsFound);
}

/// <summary>A straight shift of the middle and one even turn about it, both at once.</summary>
internal readonly record struct Swing(Posture From, Point ShiftMm, Point UnitAxis, double Radians)
{
    public static Swing Between(Posture from, Posture to)
    {
        var (axis, radians) = from.Attitude.To(to.Attitude);
        return new(from, to.ShiftMm - from.ShiftMm, axis, radians);
    }

    public Posture At(double share) => share <= 0 ? From : new(
        From.ShiftMm + ShiftMm.Times(share), Radians == 0 ? From.Attitude : Attitude.About(UnitAxis, Radians * share).After(From.Attitude));

    /// <summary>No point at this distance from the middle goes farther [mm].</summary>
    public double FarthestMm(double reachMm) => ShiftMm.LengthMm + Radians * reachMm;
}
