using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>One van asked over and over how its parts are got at: prices first, a plan in words only where it is wanted.</summary>
internal sealed class Inquiry
{
    private readonly AccessOptions options;
    private readonly Lazy<Inquiry> favourable;
    private readonly bool optimistic;
    private readonly Prices prices;
    private readonly Lazy<(Prices Prices, Planner Planner)> fewest;

    public Inquiry(Job job, AccessOptions options, bool optimistic = false)
    {
        (this.options, this.optimistic) = (options, optimistic);
        Scene = new(job, options, optimistic);
        Planner = new(Scene.Puzzle);
        prices = new(Scene, Objective.LeastLabour);
        favourable = new(() => new(job, options, optimistic: true));
        fewest = new(() =>
        {
            var parts = new Prices(Scene, Objective.FewestPartsOut);
            return (parts, Planner.With(parts.Costs, new(Scene.Items.Count)));
        });
    }

    public Scene Scene { get; }

    public Planner Planner { get; }

    /// <summary>The item that says a part is seen, reached or out; absent when it has no measures to see or touch.</summary>
    public int? Target(PartId part, ServiceAccess how) => how switch
    {
        ServiceAccess.See => Scene.EyeItem(part),
        ServiceAccess.Reach => Scene.HandItem(part),
        _ => Scene.OutItem(part),
    };

    public Outcome Ask(IReadOnlyList<int> targets) => Planner.Plan(targets, null, options.Budget, options.Stop);

    /// <summary>An item and all that it needs in every plan.</summary>
    public ItemSet NeededBy(int item)
    {
        var all = ItemSet.Of(Scene.Items.Count, item);
        var open = new Stack<int>([item]);
        while (open.TryPop(out var next))
            foreach (var need in Scene.Puzzle.Needs[next])
            {
                if (all.Has(need)) continue;
                all.Add(need);
                open.Push(need);
            }
        return all;
    }

    /// <summary>What an item costs with all that it needs in every plan [0.1 s].</summary>
    public long Needed(int item) => NeededBy(item).Sum(i => Scene.Puzzle.Costs[i]);

    /// <summary>What it takes to see, reach or take out a part.</summary>
    public AccessMinutes Access(Part part, ServiceAccess how)
    {
        if (part.Solids.Count == 0 && !(part.Outside && how == ServiceAccess.Remove)) return AccessMinutes.NotMeasured(how, part);
        var target = Target(part.Id, how)!.Value;
        var outcome = Ask([target]);
        if (outcome is not Solved solved) return Without(part, how, outcome);
        var low = solved.LowerBound;
        // what every plan needs costs the same whatever the shapes are: no second look can lower it
        if (options.Bracket && low > Needed(target) && Low(part.Id, how) is { } easy) low = Math.Min(low, easy);
        var minutes = solved.Order.Sum(i => Scene.Items[i].Price is var price ? price.Out + price.Back + price.Damage : 0);
        return new()
        {
            How = how,
            Sureness = low >= solved.Cost ? Sureness.Proved : Sureness.Bracket,
            // the search counts in whole tenths of a second; what is proved has one value
            LowMinutes = low >= solved.Cost ? minutes : Math.Min(minutes, low / TenthsOfASecond.InAMinute),
            HighMinutes = minutes,
            PartsOut = Staying.Leaving(Scene, solved.Order),
            Because = low >= solved.Cost ? null : solved.IsProved ? "round and slanting parts may leave an easier way: a trial fit tells" : "the search ended before its proof",
            Outcome = solved,
            Plan = solved.Cost > 0 ? Written(part.Id, how, solved) : null,
        };
    }

    /// <summary>Fewest parts that have to come out before a hand is on a part; absent when there is no way, or it was not found for sure.</summary>
    /// <param name="part">The part.</param>
    /// <param name="reach">How it is reached at the least labour.</param>
    public int? Depth(Part part, AccessMinutes reach)
    {
        if (reach is { HighMinutes: not null, PartsOut.Count: 0 }) return 0;
        if (reach.Outcome is not Solved || Target(part.Id, ServiceAccess.Reach) is not { } target) return null;
        var (parts, planner) = fewest.Value;
        return planner.Plan([target], null, options.Budget, options.Stop) is Solved { IsProved: true } plan ? (int)Math.Ceiling(parts.Of(plan.Cost) - 1e-9) : null;
    }

    private AccessMinutes Without(Part part, ServiceAccess how, Outcome outcome)
    {
        var plan = Written(part.Id, how, outcome);
        var low = options.Bracket ? Low(part.Id, how) : null;
        var doubtful = plan.Proof == Proof.CannotTell || low is not null;
        return new()
        {
            How = how,
            Sureness = doubtful ? Sureness.CannotTell : Sureness.Unreachable,
            LowMinutes = low / TenthsOfASecond.InAMinute,
            Because = AccessMinutes.Stuck(plan, tooClose: low is not null),
            Outcome = outcome,
            Plan = plan,
        };
    }

    /// <summary>No plan costs less if round and slanting parts are as small as they can be [0.1 s]; absent when even then there is none, or nothing is round.</summary>
    private long? Low(PartId part, ServiceAccess how)
    {
        if (optimistic || Scene.Room.IsExact) return null;
        var loose = favourable.Value;
        return loose.Target(part, how) is { } target && loose.Ask([target]) is Solved easy ? easy.LowerBound : null;
    }

    private RemovalPlan Written(PartId part, ServiceAccess how, Outcome outcome) =>
        new PlanWriter(Scene, Planner, prices, new(Scene.Items.Count), [], [part], [Target(part, how)!.Value], ItemSet.All(Scene.Items.Count), how switch
        {
            ServiceAccess.See => AccessKind.See,
            ServiceAccess.Reach => AccessKind.Reach,
            _ => AccessKind.Remove,
        }).Write(outcome);
}
