using Wainwright.Survey.Damp;

namespace Wainwright.Web;

/// <summary>A damp map with the figures of its pieces drawn out once, so that no screen works them out again.</summary>
/// <param name="Map">The map.</param>
/// <param name="LikelyPercent">Middle of what each piece may hold, in the order of the net [%].</param>
/// <param name="Unread">Whether no reading tells anything of a piece.</param>
/// <param name="InDoubt">Whether a piece is as well wet as dry.</param>
public sealed record DampDay(DampMap Map, IReadOnlyList<double> LikelyPercent, IReadOnlyList<bool> Unread, IReadOnlyList<bool> InDoubt)
{
    /// <summary>Draws them out.</summary>
    public static DampDay Of(DampMap map)
    {
        ArgumentNullException.ThrowIfNull(map);
        var cells = Enumerable.Range(0, map.Net.Cells.Count);
        return new(map, [.. cells.Select(map.LikelyPercent)], [.. cells.Select(map.IsUnread)], [.. cells.Select(c => map.IsAsWellWetAsDry(c))]);
    }
}
