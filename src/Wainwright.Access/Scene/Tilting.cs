using System.Globalization;

namespace Wainwright.Access;

/// <summary>When loads are tried tilted, and how long.</summary>
/// <param name="Tries">Motions tried for one load and one question; 0 tries none. A count, not a time: the answer is the same everywhere.</param>
/// <param name="ToSpare">
/// Whether, once there is a plan, a load is also tried tilted past each part that is taken out only to let it by. Off, a load
/// is tried tilted only when no slide or quarter turn takes it out with everything else gone.
/// </param>
public sealed record Tilting(int Tries, bool ToSpare)
{
    /// <summary>Enough for a tank through a door; about a second where nothing is found.</summary>
    public static Tilting Usual { get; } = new(8000, false);

    /// <summary>Slides and quarter turns only.</summary>
    public static Tilting Off { get; } = new(0, false);
}

/// <summary>Clear ground outside that a load wants and does not have.</summary>
/// <param name="Opening">The opening it would leave by.</param>
/// <param name="ShortMm">How much more clear ground it wants before it [mm].</param>
public sealed record LandingShort(string Opening, int ShortMm)
{
    /// <summary>The same in words.</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture, $"it wants {ShortMm} mm more clear ground before {Opening}");
}

/// <summary>What is known of getting a load out at any angle.</summary>
/// <param name="IsImpossible">Whether it is proved that no motion whatever takes it out: the largest ball in it cannot leave.</param>
/// <param name="Tries">Motions tried without finding a way; that proves nothing. 0 where none needed to be tried.</param>
/// <param name="BallMm">Diameter of the largest ball in it, where that is the proof.</param>
/// <param name="NearestOpening">The opening that the ball comes nearest to passing.</param>
/// <param name="ShortMm">How much the ball is too large for it; 0 when it would pass the opening and only cannot get there.</param>
public sealed record TiltTried(bool IsImpossible, int Tries, double? BallMm, string? NearestOpening, int? ShortMm)
{
    /// <summary>The same in words.</summary>
    public string Words => this switch
    {
        { IsImpossible: true, ShortMm: > 0 and var mm } => string.Create(CultureInfo.InvariantCulture, $"Proved impossible at any angle: what is {BallMm:0} mm thick every way passes no opening; it is {mm} mm too thick for {NearestOpening}"),
        { IsImpossible: true } => "Proved impossible at any angle: the thickest of it cannot get out",
        _ => string.Create(CultureInfo.InvariantCulture, $"Tilting: no way found in {Tries} tries, which proves nothing"),
    };
}
