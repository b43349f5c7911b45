namespace Wainwright.Geometry;

/// <summary>Where a moving thing is and how it lies, on its way.</summary>
/// <param name="ShiftMm">Displacement of its middle from where it was found.</param>
/// <param name="TurnedAbout">
/// Quarter turns made so far about the axes 0, 1, 2 through the middle of its bounds, in order; empty while it lies as found.
/// </param>
public sealed record Waypoint(Point ShiftMm, IReadOnlyList<int> TurnedAbout)
{
    /// <summary>
    /// On a tilted way how it is turned in all, from how it was found; then no quarter turns are listed, and from point to point
    /// it turns evenly while its middle goes straight. Absent on an exact way.
    /// </summary>
    public Attitude? Attitude { get; init; }
}

/// <summary>The answer to: does it come out with these things gone?</summary>
public abstract record Answer;

/// <summary>It does. The way stays open when more is gone.</summary>
/// <param name="Path">Straight slides and quarter turns from where it was found to outside.</param>
/// <param name="Through">The gone things whose room it passes through: with these gone the way is open, whatever else stays.</param>
/// <param name="Gap">The gap it leaves by; absent when it was outside already.</param>
public sealed record WayOut(IReadOnlyList<Waypoint> Path, ItemSet Through, Gap? Gap) : Answer
{
    /// <summary>For a probe, its boxes about its point of work, whose places the path's shifts then are; empty for a load.</summary>
    public IReadOnlyList<Box> Shape { get; init; } = [];
}

/// <summary>It does not, by any slides and turns of the kind allowed: proved, not merely not found.</summary>
/// <param name="Wall">As long as all of these stay it is stuck, whatever else is gone. Empty: the fixed structure alone holds it.</param>
public sealed record Stuck(ItemSet Wall) : Answer;

/// <summary>What stops a thing first when it is pushed straight along an axis.</summary>
/// <param name="Heading">Where it is pushed.</param>
/// <param name="Item">What it meets; <see cref="Obstacle.Fixed"/> for the structure.</param>
/// <param name="FreeMm">How far it goes before that.</param>
/// <param name="ShortMm">How much it is too large to pass: the least shift sideways, or trim, that would clear this obstacle.</param>
/// <param name="Dodge">The side to which that shift would be.</param>
public sealed record Hindrance(Heading Heading, int Item, int FreeMm, int ShortMm, Heading Dodge);
