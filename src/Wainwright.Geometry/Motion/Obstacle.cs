namespace Wainwright.Geometry;

/// <summary>Something in the way.</summary>
/// <param name="Item">Number of the removable thing it belongs to; <see cref="Fixed"/> when it never moves.</param>
/// <param name="Boxes">Its boxes where it stands.</param>
public sealed record Obstacle(int Item, IReadOnlyList<Box> Boxes)
{
    /// <summary>The item number of what never moves.</summary>
    public const int Fixed = -1;
}

/// <summary>How closely things may pass one another.</summary>
/// <param name="ClearanceMm">
/// Room wanted on every side for fingers, paint and wobble; for each pair and axis never more than the gap in which the two
/// were found, or what stands close could not even stand there.
/// </param>
/// <param name="ShaveMm">An overlap of at most so much in the model is taken for a measuring error: the two count as touching.</param>
public readonly record struct Fit(int ClearanceMm, int ShaveMm)
{
    /// <summary>Contact allowed, the model taken at its word.</summary>
    public static Fit Exact { get; } = new(0, 0);
}
