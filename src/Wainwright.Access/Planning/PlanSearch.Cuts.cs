using Wainwright.Geometry;

namespace Wainwright.Access;

internal sealed partial class PlanSearch
{
    /// <summary>
    /// Cuts that a choice violates; their members join the choice until the targets can be done, so that one pass gives many
    /// cuts with little in common. What the choice has become; nothing when it turns out that no plan is cheaper than the best.
    /// </summary>
    private ItemSet? Separated(ItemSet choice)
    {
        var grown = choice.Copy();
        while (true)
        {
            AddNeeds(grown);
            if (targets.Meets(never)) return null;
            var closure = new Closure(learned, puzzle.Count);
            if (closure.Reaches(targets, grown)) return grown;
            foreach (var group in SinkComponents.Of(targets.Where(closure.Stuck.Has), closure.Stuck, closure.Wall))
            {
                var outside = new ItemSet(puzzle.Count);
                foreach (var item in group)
                {
                    var wall = Useful(closure.Wall(item));
                    outside.AddAll(wall);
                    wall = tooDear.Beside(item, wall);
                    if (wall.Count <= ShortWall) Learn(new(item, wall));
                }
                foreach (var item in group) outside.Remove(item);
                // one cut for a group, of a target or of what was seldom held: its walls are few and soon known
                var first = group.OrderByDescending(targets.Has).ThenBy(learned.TimesHeld).ThenBy(i => i).First();
                var cut = Shrunk(first, outside);
                Learn(cut);
                grown.AddAll(cut.OneOf);
                if (cut.OneOf.IsEmpty) GiveUp(first, grown);
            }
        }
    }

    /// <summary>No cheaper plan has the item; a choice may have held it because it was cheap.</summary>
    private void GiveUp(int item, ItemSet choice)
    {
        Learn(new(item, new(puzzle.Count)));
        never.Add(item);
        useful.Remove(item);
        choice.Remove(item);
    }

    /// <summary>What items need in every plan joins a choice; an item that needs what is given up is given up too.</summary>
    private void AddNeeds(ItemSet choice)
    {
        foreach (var item in choice.ToList())
        {
            var all = tooDear.WithNeeds(item);
            foreach (var one in all)
                foreach (var need in puzzle.Needs[one]) Learn(new(one, ItemSet.Of(puzzle.Count, need)));
            if (all.Meets(never)) GiveUp(item, choice);
            else choice.AddAll(all);
        }
    }

    /// <summary>
    /// The same sentence with as few alternatives as possible, among what can be in one cheaper plan with the item. Cheap ones
    /// are left out first: what remains is dear and lifts the bound.
    /// </summary>
    private Cut Shrunk(int item, ItemSet outside)
    {
        var goal = ItemSet.Of(puzzle.Count, item);
        var others = tooDear.Beside(item, useful);
        var oneOf = outside.Copy();
        oneOf.KeepOnly(others);
        others.RemoveAll(oneOf);
        var closure = new Closure(learned, puzzle.Count);
        if (closure.Reaches(goal, others)) throw new InvalidOperationException($"Item {item} passes its own walls.");
        var left = oneOf.Copy();
        foreach (var q in oneOf.OrderBy(i => puzzle.Costs[i]).ThenBy(i => i))
        {
            if (IsSpent) break;
            SayAsked();
            others.Add(q);
            var trial = closure.Copy();
            if (trial.Reaches(goal, others)) others.Remove(q);
            else
            {
                closure = trial;
                left.Remove(q);
            }
        }
        return new(item, left);
    }

    /// <summary>
    /// What every plan as cheap must do is in the best one too; leaving each out in turn shows which. It counts as needed by
    /// the targets from then on, and more becomes too dear.
    /// </summary>
    private void FindNecessities(ItemSet best)
    {
        foreach (var q in Enumerable.Reverse(InOrder(best)))
        {
            if (IsSpent) return;
            SayAsked();
            if (tooDear.IsOwn(q)) continue;
            var closure = new Closure(learned, puzzle.Count);
            if (closure.Reaches(targets, WithGivenUp().Without(q))) continue;
            foreach (var target in targets.Where(closure.Stuck.Has)) Learn(new(target, ItemSet.Of(puzzle.Count, q)));
            necessary.Add(q);
            tooDear.Own(q);
            LeaveTooDear(best);
        }
    }

    /// <summary>
    /// Sentences of a proof made before that hold here too: one closure shows it, where a new one takes a closure for each
    /// alternative that is left out of it. Whether there are any.
    /// </summary>
    private bool Reuse(IReadOnlyList<Cut> before)
    {
        var had = cuts.Count;
        var besides = new Dictionary<int, ItemSet>();
        foreach (var cut in before)
        {
            if (IsSpent) break;
            SayAsked();
            if (!useful.Has(cut.Item)) continue;
            if (!besides.TryGetValue(cut.Item, out var beside)) besides[cut.Item] = beside = tooDear.Beside(cut.Item, useful);
            var oneOf = cut.OneOf.Copy();
            oneOf.KeepOnly(beside);
            var others = beside.Without(oneOf);
            if (new Closure(learned, puzzle.Count).Reaches(ItemSet.Of(puzzle.Count, cut.Item), others)) continue;
            if (oneOf.IsEmpty)
            {
                GiveUp(cut.Item, oneOf);
                besides.Clear(); // one thing less to stand beside
            }
            else Learn(new(cut.Item, oneOf));
        }
        return cuts.Count > had;
    }

    private ItemSet Useful(ItemSet wall)
    {
        var inside = wall.Copy();
        inside.KeepOnly(useful);
        return inside;
    }

    private void Learn(Cut cut)
    {
        if (known.Add(cut)) cuts.Add(cut);
    }
}
