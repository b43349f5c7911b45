using Wainwright.Geometry;

namespace Wainwright.Access;

public sealed partial class PlanSearch
{
    /// <summary>
    /// Cuts that a choice violates; their members join the choice until the targets can be done, so that one pass gives many
    /// cuts with little in common.
    /// </summary>
    private void Separate(ItemSet choice, out ItemSet reached)
    {
        reached = choice.Copy();
        while (true)
        {
            var closure = Close(reached);
            if (targets.IsWithin(closure.Done)) return;
            var stuck = reached.Without(closure.Done);
            var groups = SinkComponents.Of(targets.Where(stuck.Has), stuck, i => Within(closure.Wall(i)));
            foreach (var group in groups)
            {
                var outside = new ItemSet(puzzle.Count);
                foreach (var item in group)
                {
                    outside.AddAll(Within(closure.Wall(item)));
                    if (closure.Wall(item).Count <= ShortWall) Learn(new(item, Within(closure.Wall(item))));
                }
                foreach (var item in group) outside.Remove(item);
                foreach (var item in group.OrderByDescending(targets.Has).ThenBy(i => i).Take(CutsPerGroup))
                {
                    var cut = Shrunk(item, outside);
                    Learn(cut);
                    reached.AddAll(cut.OneOf);
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
        var allowed = universe.Without(left);
        var closure = new Closure(learned, puzzle.Count).Grow(allowed, until: item);
        foreach (var q in oneOf.OrderBy(i => puzzle.Costs[i]).ThenBy(i => i))
        {
            if (IsSpent) break;
            allowed.Add(q);
            var trial = closure.Copy().Grow(allowed, until: item);
            if (trial.Done.Has(item)) allowed.Remove(q);
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
            var without = Close(universe.Without(q)).Done;
            foreach (var p in plan.Where(p => p != q && !without.Has(p))) Learn(new(p, ItemSet.Of(puzzle.Count, q)));
        }
    }

    private ItemSet Within(ItemSet wall)
    {
        var inside = wall.Copy();
        inside.KeepOnly(universe);
        return inside;
    }

    private void Learn(Cut cut)
    {
        if (known.Add(cut)) cuts.Add(cut);
    }
}
