using Wainwright.Geometry;

namespace Wainwright.Access;

internal sealed partial class PlanSearch
{
    /// <summary>
    /// Cuts that a choice violates; their members join the choice until the targets can be done, so that one pass gives many
    /// cuts with little in common. What the choice has become.
    /// </summary>
    private ItemSet Separated(ItemSet choice)
    {
        var grown = choice.Copy();
        while (true)
        {
            var closure = new Closure(learned, puzzle.Count);
            if (closure.Reaches(targets, grown)) return grown;
            foreach (var group in SinkComponents.Of(targets.Where(closure.Stuck.Has), closure.Stuck, closure.Wall))
            {
                var outside = new ItemSet(puzzle.Count);
                foreach (var item in group)
                {
                    var wall = Allowed(closure.Wall(item));
                    outside.AddAll(wall);
                    if (wall.Count <= ShortWall) Learn(new(item, wall));
                }
                foreach (var item in group) outside.Remove(item);
                foreach (var item in group.OrderByDescending(targets.Has).ThenBy(i => i).Take(CutsPerGroup))
                {
                    var cut = Shrunk(item, outside);
                    Learn(cut);
                    grown.AddAll(cut.OneOf);
                    if (!cut.OneOf.IsEmpty) continue;
                    // it can never be done; the choice held it because it was cheap
                    never.Add(item);
                    grown.Remove(item);
                }
            }
        }
    }

    /// <summary>
    /// The same sentence with as few alternatives as possible. Cheap ones are left out first: what remains is dear and lifts
    /// the bound.
    /// </summary>
    private Cut Shrunk(int item, ItemSet oneOf)
    {
        var left = oneOf.Copy();
        var others = allowed.Without(left);
        var goal = ItemSet.Of(puzzle.Count, item);
        var closure = new Closure(learned, puzzle.Count);
        closure.Reaches(goal, others);
        foreach (var q in oneOf.OrderBy(i => puzzle.Costs[i]).ThenBy(i => i))
        {
            if (IsSpent) break;
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

    /// <summary>What has to be done in every plan is in this one too; leaving each out in turn shows which.</summary>
    private void AddNecessities(ItemSet plan)
    {
        foreach (var q in plan.Where(q => !targets.Has(q)).ToList())
        {
            if (IsSpent) return;
            var closure = new Closure(learned, puzzle.Count);
            if (closure.Reaches(targets, allowed.Without(q))) continue;
            foreach (var p in closure.Stuck.Where(plan.Has)) Learn(new(p, ItemSet.Of(puzzle.Count, q)));
        }
    }

    private ItemSet Allowed(ItemSet wall)
    {
        var inside = wall.Copy();
        inside.KeepOnly(allowed);
        inside.RemoveAll(never);
        return inside;
    }

    private void Learn(Cut cut)
    {
        if (known.Add(cut)) cuts.Add(cut);
    }
}
