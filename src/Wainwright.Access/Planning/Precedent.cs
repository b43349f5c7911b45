using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>A plan of a question like this one and the sentences of its proof: where to begin. Nothing of it is taken for true.</summary>
/// <param name="Plan">What was done, or is done.</param>
/// <param name="Cuts">The sentences; each is looked at afresh before it is used.</param>
internal sealed record Precedent(ItemSet Plan, IReadOnlyList<Cut> Cuts)
{
    /// <summary>The same in the items of another model of the van; a sentence that names what is not there is left out, and one that is met by what is done.</summary>
    /// <param name="solved">The plan and its proof.</param>
    /// <param name="keys">Names of its items.</param>
    /// <param name="next">The other model.</param>
    /// <param name="given">What is done there already.</param>
    public static Precedent Of(Solved solved, IReadOnlyList<string> keys, Scene next, ItemSet given)
    {
        var index = ItemKey.Index(next);
        var to = keys.Select(k => index.TryGetValue(k, out var i) ? i : -1).ToArray();
        var plan = ItemSet.Of(next.Items.Count, solved.Order.Select(i => to[i]).Where(i => i >= 0));
        plan.AddAll(given);
        return new(plan, [.. solved.Proof.Cuts
            .Where(c => to[c.Item] >= 0 && !given.Has(to[c.Item]) && c.OneOf.All(q => to[q] >= 0 && !given.Has(to[q])))
            .Select(c => new Cut(to[c.Item], ItemSet.Of(next.Items.Count, c.OneOf.Select(q => to[q]))))]);
    }
}
