using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Items that are not done when parts stay in.</summary>
internal static class Staying
{
    public static ItemSet In(Scene scene, IReadOnlyList<PartId> parts)
    {
        var stay = new ItemSet(scene.Items.Count);
        for (var index = 0; index < scene.Items.Count; index++)
            if (scene.Items[index] is TakeOut load && load.Load.Any(p => parts.Contains(p.Id)) || scene.Items[index] is TakePiece piece && parts.Contains(piece.Part.Id))
                stay.Add(index);
        return stay;
    }

    /// <summary>The parts that leave in a plan, whole or in pieces, each once and in order.</summary>
    public static IReadOnlyList<PartId> Leaving(Scene scene, IEnumerable<int> order) => [.. order.SelectMany(i => scene.Items[i] switch
    {
        TakeOut load => load.Load.Select(p => p.Id),
        TakePiece piece => [piece.Part.Id],
        _ => [],
    }).Distinct()];
}
