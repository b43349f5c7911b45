using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>Reads a certificate onto a model of the job made afresh and checks every sentence of it there.</summary>
/// <param name="said">The certificate.</param>
/// <param name="job">The job.</param>
/// <param name="options">What the planner was told: parts out, parts that stay, clearance and aim must be those.</param>
/// <param name="model">A model made afresh; absent to have one made.</param>
/// <param name="given">Names of what was done before; absent for nothing.</param>
/// <param name="answers">The plan that it is to prove: targets and what stays must be its own; absent where only the options are known.</param>
internal sealed class CertificateReading(
    PlanCertificate said, Job job, AccessOptions options, CertificateReading.Afresh? model = null, IReadOnlyList<string>? given = null, RemovalPlan? answers = null)
{
    /// <summary>A model of the van made for checking: nothing of a search is in it.</summary>
    internal sealed class Afresh(Job job, AccessOptions options, Scene? like = null)
    {
        public Scene Scene { get; } = new(job, options, optimistic: false, like);

        public Puzzle Puzzle => puzzle ??= Remembered.Of(Scene.Puzzle);

        private Puzzle? puzzle;
    }

    private readonly List<string> faults = [];

    public IReadOnlyList<string> Faults()
    {
        if (said.Format != 1) return [$"format {said.Format} is not known here"];
        if (said.Model != PlanCertificate.ModelOf(job)) return ["it was made for another van, or the van's record has changed since"];
        if (said.ClearanceMm != options.ClearanceMm || said.Objective != options.Objective || !Same(said.AlreadyOut, Named(options.AlreadyOut)))
            return ["it answers another question: other parts out, another clearance or another aim"];
        // with more to stay or more done before, what it says of all plans would be said of fewer
        if (!Same(said.Stays, Named([.. options.MustStay, .. answers?.Question?.Stays ?? []])) || !Same(said.Given, given ?? []))
            return ["it answers another question: other parts to stay, or other things done before"];
        if (answers is not null && !Same(said.Targets, PlanCertificate.TargetsOf(answers)))
            return ["it answers another question: it has other targets"];
        model ??= new(job, options);
        var scene = model.Scene;
        var puzzle = model.Puzzle.With(new Prices(scene, said.Objective).Costs, Items(scene, said.Given));
        var targets = InOrder(scene, said.Targets);
        var allowed = ItemSet.All(puzzle.Count).Without(Staying.In(scene, [.. said.Stays.Select(s => new PartId(s))]));
        // nothing waits for a hand or an eye on a part: such an item matters only where it is asked for
        foreach (var goal in Enumerable.Range(0, puzzle.Count).Where(i => scene.Items[i] is HandOn or EyeOn && !targets.Contains(i))) allowed.Remove(goal);
        if (targets.Count == 0) faults.Add("it names no target");
        if (faults.Count > 0) return faults;
        if (said.Walls.Count > 0) Unreachable(scene, puzzle, allowed, targets);
        else Solved(scene, puzzle, allowed, targets);
        return faults;
    }

    private void Solved(Scene scene, Puzzle puzzle, ItemSet allowed, IReadOnlyList<int> targets)
    {
        var useful = ItemSet.All(puzzle.Count).Without(Items(scene, said.LeftOut));
        var cuts = said.Cuts.Select(c => new Cut(Item(scene, c.Item), Items(scene, c.OneOf))).ToList();
        var (order, necessary) = (InOrder(scene, said.Order), InOrder(scene, said.Necessary));
        if (faults.Count > 0) return;
        var words = ItemKey.Of(scene);
        var solved = new Solved { Order = order, Cost = said.Cost, LowerBound = said.LowerBound, Proof = new(targets, necessary, useful, said.LowerBound, cuts), Questions = 0, MasterSolves = 0 };
        faults.AddRange(CertificateCheck.Faults(puzzle, allowed, solved, i => $"“{words[i]}”"));
    }

    /// <summary>
    /// None of the listed items can be the first of them to be done, since each stays held when all else that may be done is
    /// done. So none ever is, and a target is among them.
    /// </summary>
    private void Unreachable(Scene scene, Puzzle puzzle, ItemSet allowed, IReadOnlyList<int> targets)
    {
        if (said.Order.Count > 0) faults.Add("it gives a plan and says that there is none");
        var walls = said.Walls.Select(w => (Item: Item(scene, w.Item), By: Items(scene, w.OneOf))).ToList();
        if (faults.Count > 0) return;
        var stuck = ItemSet.Of(puzzle.Count, walls.Select(w => w.Item));
        if (!targets.Any(stuck.Has)) faults.Add("none of the targets is among what it says is held for good");
        var words = ItemKey.Of(scene);
        foreach (var (item, by) in walls)
        {
            if (!allowed.Has(item)) continue;
            if (by.Any(b => allowed.Has(b) && !stuck.Has(b))) faults.Add($"“{words[item]}” waits for something that can be done");
            var done = allowed.Without(by).Without(item);
            if (puzzle.Needs[item].IsWithin(done) && puzzle.Ask(item, done, by) is Free) faults.Add($"“{words[item]}” is not held by what it names");
        }
    }

    private static bool Same(IEnumerable<string> one, IEnumerable<string> other) => one.ToHashSet().SetEquals(other);

    private static IEnumerable<string> Named(IReadOnlyList<PartId> parts) => parts.Select(p => p.Text);

    private int Item(Scene scene, string key) => InOrder(scene, [key]).FirstOrDefault();

    private ItemSet Items(Scene scene, IReadOnlyList<string> keys) => ItemSet.Of(scene.Items.Count, InOrder(scene, keys));

    private List<int> InOrder(Scene scene, IReadOnlyList<string> keys)
    {
        index ??= ItemKey.Index(scene);
        faults.AddRange(keys.Where(k => !index.ContainsKey(k)).Select(k => $"there is no “{k}” in this van"));
        return [.. keys.Where(index.ContainsKey).Select(k => index[k])];
    }

    private Dictionary<string, int>? index;
}
