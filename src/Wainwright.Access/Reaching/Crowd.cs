using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>All that can stand in the way of a hand, an arm or an eye.</summary>
/// <param name="Shell">The van with every opening that a hand or a head comes in by.</param>
/// <param name="Standing">The parts' boxes, by the item that says they are out.</param>
/// <param name="Items">How many items there are.</param>
internal sealed record Crowd(Shell Shell, IReadOnlyList<(Part Part, Obstacle Obstacle)> Standing, int Items)
{
    /// <summary>What can be taken away.</summary>
    public IReadOnlyList<Obstacle> Obstacles { get; } = [.. Standing.Select(s => s.Obstacle)];

    /// <summary>The items that say a part, or a piece of it, is out.</summary>
    public ItemSet ItemsOf(Part part) => ItemSet.Of(Items, Standing.Where(s => s.Part == part).Select(s => s.Obstacle.Item));

    /// <summary>Every box and whose it is; a part's own never goes.</summary>
    public IReadOnlyList<(int Item, Box Box)> Around(Part? part) =>
        [.. Shell.Blocks.Select(b => (Obstacle.Fixed, b)),
         .. Standing.SelectMany(s => s.Obstacle.Boxes.Select(b => (s.Part == part ? Obstacle.Fixed : s.Obstacle.Item, b)))];
}
