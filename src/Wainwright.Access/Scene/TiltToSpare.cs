using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Looks, along a plan, for loads that could tilt past a part which is taken out only to let them by.</summary>
internal static class TiltToSpare
{
    /// <summary>Whether a tilted way was found that was not known before; then the plan is to be made anew.</summary>
    /// <param name="scene">The scene; the ways found are kept in it.</param>
    /// <param name="order">What the plan does, in order.</param>
    /// <param name="targets">What is wanted: never spared.</param>
    public static bool Adds(Scene scene, IReadOnlyList<int> order, IReadOnlyList<int> targets)
    {
        var added = false;
        var done = new ItemSet(scene.Items.Count);
        foreach (var item in order)
        {
            if (scene.Items[item] is TakeOut or TakePiece)
                foreach (var inTheWay in done.Where(i => scene.Items[i] is IsOut && !targets.Contains(i)).ToList())
                    if (IsHeldBy(scene, item, done, inTheWay) && scene.Room.Tilts.Adds(item, done.Without(inTheWay))) added = true;
            done.Add(item);
        }
        return added;
    }

    private static bool IsHeldBy(Scene scene, int item, ItemSet done, int inTheWay) =>
        !scene.Items[item].Needs.Contains(inTheWay) && scene.Room.QuestionsOf(item).Any(q => q(done.Without(inTheWay), new(done.Size)) is Stuck);
}
