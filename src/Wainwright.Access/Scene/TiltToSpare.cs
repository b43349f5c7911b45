using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Looks, along a plan, for loads that could tilt past a part which is taken out only to let them by.</summary>
internal static class TiltToSpare
{
    private const int MostSearches = 8; // of one plan

    /// <summary>Whether a tilted way was found that was not known before; then the plan is to be made anew.</summary>
    /// <param name="scene">The scene; the ways found are kept in it.</param>
    /// <param name="order">What the plan does, in order.</param>
    /// <param name="targets">What is wanted: never spared.</param>
    public static bool Adds(Scene scene, IReadOnlyList<int> order, IReadOnlyList<int> targets)
    {
        var worthTrying = Pairs(scene, order, targets)
            .Where(p => !targets.Any(t => scene.AllNeeds(t).Contains(p.InTheWay)))
            .OrderByDescending(p => Suffices(scene, order, targets, p)).ThenByDescending(p => scene.Room.Tilts.PriceOf(p.InTheWay))
            .Take(MostSearches).ToList();
        // every one is looked at: what spares one part may not spare another
        return worthTrying.ConvertAll(p => scene.Room.Tilts.Spares(p.Load, p.InTheWay, p.Before)).Contains(true);
    }

    private readonly record struct Pair(int Load, int InTheWay, ItemSet Before);

    /// <summary>A load, and a part gone before it without which no exact move takes it out.</summary>
    private static IEnumerable<Pair> Pairs(Scene scene, IReadOnlyList<int> order, IReadOnlyList<int> targets)
    {
        var done = new ItemSet(scene.Items.Count);
        foreach (var item in order)
        {
            if (scene.Items[item] is TakeOut or TakePiece)
                foreach (var out_ in done.Where(i => scene.Items[i] is IsOut && !targets.Contains(i)))
                    if (!scene.Items[item].Needs.Contains(out_) && scene.Room.QuestionsOf(item).Any(q => q(done.Without(out_), new(done.Size)) is Stuck))
                        yield return new(item, out_, done.Without(out_));
            done.Add(item);
        }
    }

    /// <summary>Whether the rest of the plan is enough without that part if only this load gets past it; if not, it may take something else instead.</summary>
    private static bool Suffices(Scene scene, IReadOnlyList<int> order, IReadOnlyList<int> targets, Pair pair)
    {
        var done = new ItemSet(scene.Items.Count);
        for (var before = -1; before < done.Count;)
        {
            before = done.Count;
            foreach (var item in order.Where(i => i != pair.InTheWay && !done.Has(i)))
                if (scene.Items[item].Needs.All(done.Has) && scene.Puzzle.Ask(item, item == pair.Load ? done.With(pair.InTheWay) : done, new(done.Size)) is Free) done.Add(item);
        }
        return targets.All(done.Has);
    }
}
