namespace Wainwright.Methods.Reach;

/// <summary>How far a standing person gets, from a wall behind the back: the small woman and the large man of the US forces.</summary>
public static class StandingReach
{
    /// <summary>NUREG-0700.</summary>
    public static readonly Basis Basis = new(
        Source: "NUREG-0700 rev. 3, table 11.4 (general US forces, after MIL-STD-1472G)",
        Assumes: ["both shoulders on the wall, or one pushed forward for the extended reach", "nothing between person and thing"],
        Caution: "Reach by the small, room by the large. Kneeling, bent or lying people reach less than standing ones.",
        How: Provenance.Read);

    /// <summary>Which end of the range.</summary>
    public enum Person
    {
        /// <summary>5th percentile of women.</summary>
        SmallWoman,

        /// <summary>95th percentile of men.</summary>
        LargeMan,
    }

    /// <param name="StatureMm">Stature [mm].</param>
    /// <param name="EyeMm">Eye above the floor, standing [mm].</param>
    /// <param name="ShoulderMm">Shoulder above the floor, standing [mm].</param>
    /// <param name="ElbowMm">Elbow above the floor, standing [mm].</param>
    /// <param name="FingertipMm">Finger tip above the floor, arm hanging [mm].</param>
    /// <param name="ReachMm">Functional reach from the wall [mm].</param>
    /// <param name="ExtendedReachMm">The same, shoulder pushed forward [mm].</param>
    /// <param name="SittingMm">Height sitting erect [mm].</param>
    /// <param name="ThighMm">Clearance of the thigh [mm].</param>
    /// <param name="KneeMm">Height of the knee, seated [mm].</param>
    public readonly record struct Figures(
        double StatureMm, double EyeMm, double ShoulderMm, double ElbowMm, double FingertipMm,
        double ReachMm, double ExtendedReachMm, double SittingMm, double ThighMm, double KneeMm);

    /// <summary>The figures of one person.</summary>
    /// <param name="person">Whose.</param>
    public static Figures Of(Person person) => person == Person.SmallWoman
        ? new(1612, 1501, 1230, 975, 551, 677, 735, 836, 141, 503)
        : new(1878, 1756, 1553, 1160, 724, 886, 942, 972, 186, 604);

    /// <summary>Whether a thing is within reach.</summary>
    public enum Within
    {
        /// <summary>With both shoulders on the wall.</summary>
        Reach,

        /// <summary>With the shoulder pushed forward.</summary>
        ExtendedReach,

        /// <summary>Not at all.</summary>
        Neither,
    }

    /// <summary>Whether a thing straight ahead at shoulder height is within reach.</summary>
    /// <param name="person">Whose reach.</param>
    /// <param name="fromWallMm">From the wall behind the back [mm], 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A negative distance.</exception>
    public static Within At(Person person, double fromWallMm)
    {
        Must.NotBeNegative(fromWallMm);
        var figures = Of(person);
        return fromWallMm <= figures.ReachMm ? Within.Reach : fromWallMm <= figures.ExtendedReachMm ? Within.ExtendedReach : Within.Neither;
    }
}
