using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>What was learned of one model of a van carried over to the next, as far as it still holds there.</summary>
/// <remarks>
/// A wall holds as long as its own parts stand: further parts only make it faster. A way holds with the parts out that it
/// passes through; of a part found since nobody knows whether it stands in that way, so the way waits for it to be out too. What
/// was learned of an item whose own question changed is forgotten.
/// </remarks>
internal static class Carryover
{
    public static void From(Scene old, Planner known, ItemSet given, Scene next, Planner learner, IReadOnlySet<string> changed, IReadOnlyList<PartId> found)
    {
        var index = ItemKey.Index(next);
        var oldKeys = ItemKey.Of(old);
        var to = oldKeys.Select(k => index.TryGetValue(k, out var i) ? i : -1).ToArray();
        var alsoOut = found.Select(next.OutItem).ToList();
        for (var item = 0; item < to.Length; item++)
        {
            // of what is done nothing was learned but that
            if (to[item] < 0 || changed.Contains(oldKeys[item]) || given.Has(item)) continue;
            foreach (var reply in known.Known(item))
                if (Moved(reply, to, next.Items.Count, alsoOut) is { } moved) learner.Know(to[item], moved);
        }
    }

    private static Reply? Moved(Reply reply, int[] to, int size, List<int> alsoOut)
    {
        var items = reply is Free free ? free.Way : ((Held)reply).Wall;
        if (items.Any(i => to[i] < 0)) return null;
        var moved = ItemSet.Of(size, items.Select(i => to[i]));
        if (reply is Held) return new Held(moved);
        foreach (var item in alsoOut) moved.Add(item);
        return new Free(moved);
    }
}
