using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>An order a fitter would choose among those that work: what is in the way first, then the fixings, then the part.</summary>
/// <remarks>All orders cost the same. A part's own fixings come undone only when it can leave at once.</remarks>
internal sealed class StepOrder(Scene scene, Planner planner, ItemSet given, IReadOnlyList<int> worksInThisOrder)
{
    private readonly ItemSet done = given.Copy();
    private readonly List<int> order = [];
    private readonly HashSet<int> begun = [];

    public IReadOnlyList<int> Of(IEnumerable<int> targets)
    {
        // made safe before anything is touched
        foreach (var item in worksInThisOrder.Where(i => scene.Items[i] is MakeSafe).OrderBy(i => SafeTurn(((MakeSafe)scene.Items[i]).Medium))) Do(item);
        foreach (var target in targets) Do(target);
        // nothing is left over in a plan without needless items; a wait in a circle falls back on the order that is known to work
        foreach (var item in worksInThisOrder) Do(item);
        return order;
    }

    /// <summary>
    /// A burner first: it cools while the rest is done, and its fan wants current to run down. Then what kills, what burns, what
    /// spills (common practice, no source).
    /// </summary>
    private static int SafeTurn(Medium medium) => medium switch
    {
        Medium.Exhaust => 0,
        Medium.Mains => 1,
        Medium.Dc => 2,
        Medium.Gas => 3,
        Medium.Fuel => 4,
        Medium.Water => 5,
        _ => 6,
    };

    private void Do(int item)
    {
        if (done.Has(item) || !begun.Add(item)) return;
        while (!done.Has(item) && NextFor(item) is { } next)
            if (next == item)
            {
                done.Add(item);
                order.Add(item);
            }
            else if (begun.Contains(next)) AnyThatCan();
            else Do(next);
        begun.Remove(item);
    }

    /// <summary>What to do next so that the item can be done: what stands in its way, then what it needs, then itself.</summary>
    private int? NextFor(int item)
    {
        // asked of the room even where a stored answer would do: which fixings are on trial shows only when they are asked about
        if (scene.Puzzle.Ask(item, done, new(done.Size)) is Held held)
            return First(held.Wall);
        return scene.Items[item].Needs.Where(n => !done.Has(n)).OrderBy(Turn).ThenBy(n => n).Cast<int?>().FirstOrDefault() ?? item;
    }

    /// <summary>Lines come off before fixings: what is unbolted must not hang on its cable or pipe.</summary>
    private int Turn(int need) => scene.Items[need] switch
    {
        MakeSafe => 0,
        IsOut => 1,
        Disconnect => 2,
        Undo undo when undo.Joint.Type is FixingType.Plug or FixingType.Terminal or FixingType.HoseClip or FixingType.PushFit or FixingType.Union => 2,
        Undo => 3,
        _ => 4,
    };

    private int? First(ItemSet wall)
    {
        foreach (var item in worksInThisOrder)
            if (wall.Has(item) && !done.Has(item)) return item;
        return null;
    }

    private void AnyThatCan()
    {
        var next = worksInThisOrder.First(i => !done.Has(i) && planner.WallOf(i, done) is null);
        done.Add(next);
        order.Add(next);
    }
}
