using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Items that steps done before stand for, with what counts as done through them.</summary>
internal static class AlreadyDone
{
    public static ItemSet In(Scene scene, IReadOnlyList<RemovalStep> steps)
    {
        var done = ItemKey.Find(scene, steps.Select(s => s.Key)).Items;
        foreach (var item in done.ToList())
            foreach (var need in scene.Items[item].Needs.Where(n => scene.Items[n] is Spoiled)) done.Add(need);
        // a part counts as out when one of its ways was gone, or all its pieces are out
        for (var before = -1; before != done.Count;)
        {
            before = done.Count;
            for (var i = 0; i < scene.Items.Count; i++)
                if (scene.Items[i] is IsOut && IsSo(scene.Items[i], done)) done.Add(i);
        }
        return done;
    }

    private static bool IsSo(Item item, ItemSet done) =>
        item.AnyOf.Count > 0 ? item.AnyOf.TrueForAll(ways => Array.Exists(ways, done.Has)) : item.Needs.Count > 0 && item.Needs.All(done.Has);
}
