using Wainwright.Fitout;

namespace Wainwright.Paper;

/// <summary>How a face is looked at when it is laid flat: never as in a mirror, so that what is marked by the drawing is marked on the right side.</summary>
/// <remarks>
/// Lying boards from above, the front of the van to the left and its right wall up the page, the ceiling as through the roof. Right walls from inside with the
/// rear to the right, left walls from inside with the front to the right. Boards across the van from behind, the right wall to the right.
/// </remarks>
/// <param name="Across">The axis through the board: 0 x, 1 y, 2 z.</param>
/// <param name="FromTheRight">Looked at from the right: a left wall from inside.</param>
public readonly record struct FlatFrame(int Across, bool FromTheRight)
{
    /// <summary>Where a place comes to lie: u to the right on the page, v down it.</summary>
    public Flat Flat(Place place) => Across switch
    {
        0 => new(place.YMm, -place.ZMm),
        1 => new(FromTheRight ? -place.XMm : place.XMm, -place.ZMm),
        _ => new(place.XMm, -place.YMm),
    };

    /// <summary>What is right and up on the page.</summary>
    public string Says => Across switch
    {
        0 => "looked at from the rear; right is the right wall",
        1 => FromTheRight ? "looked at from its right; right is the front" : "looked at from its left; right is the rear",
        _ => "from above; right is the rear, up the page is the right wall",
    };
}
