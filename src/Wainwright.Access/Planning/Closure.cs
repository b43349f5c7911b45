using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>What can be done, one item after another, out of those allowed, as far as it matters for some goals.</summary>
/// <remarks>
/// Answers are monotone, so the order of doing does not matter, the largest set that can be done is unique, and allowing more
/// never makes it smaller. Only what a goal still waits for is asked: the goals, what holds them, what holds that. When
/// nothing of it can be done, none ever can: none of it can be the first, since each is held by others of it or by something
/// not allowed.
/// </remarks>
internal sealed class Closure
{
    private readonly Learned learned;
    private readonly ItemSet?[] walls;
    private readonly List<int> waiting = [], unsure = [];

    public Closure(Learned learned, int size)
    {
        this.learned = learned;
        (Done, Stuck) = (new(size), new(size));
        walls = new ItemSet?[size];
    }

    private Closure(Closure other) => (learned, Done, Stuck, walls) = (other.learned, other.Done.Copy(), other.Stuck.Copy(), [.. other.walls]);

    /// <summary>What could be done of what matters.</summary>
    public ItemSet Done { get; }

    /// <summary>What a goal still waits for and cannot be done; empty when all goals are done.</summary>
    public ItemSet Stuck { get; private set; }

    /// <summary>What holds an item that could not be done.</summary>
    public ItemSet Wall(int item) => walls[item]!;

    public Closure Copy() => new(this);

    /// <summary>Whether all goals can be done with those allowed, which may only grow from call to call.</summary>
    public bool Reaches(ItemSet goals, ItemSet allowed)
    {
        var stays = ItemSet.All(Done.Size).Without(allowed);
        while (!goals.IsWithin(Done))
            if (!DoesOne(goals, allowed, stays)) return false;
        Stuck = new(Done.Size);
        return true;
    }

    /// <summary>
    /// Does one item on which a goal waits, one that a stored answer frees if there is any: the more is done before something
    /// new is asked, the less is asked twice.
    /// </summary>
    private bool DoesOne(ItemSet goals, ItemSet allowed, ItemSet stays)
    {
        waiting.Clear();
        unsure.Clear();
        Stuck = new(Done.Size);
        foreach (var goal in goals) Await(goal, allowed);
        var at = 0;
        while (true)
        {
            for (; at < waiting.Count; at++)
            {
                var item = waiting[at];
                if (walls[item] is not { } held || held.Meets(Done))
                {
                    if (!learned.IsKnown(item, Done, stays, out walls[item]))
                    {
                        unsure.Add(item);
                        continue;
                    }
                    if (walls[item] is null) return Did(item);
                }
                foreach (var next in walls[item]!) Await(next, allowed);
            }
            if (unsure.Count == 0) return false;
            if (Saturated(allowed)) return true;
            // one that was often held is likely to be held again: it waits until nothing else helps
            var doubtful = unsure.MinBy(learned.TimesHeld);
            unsure.Remove(doubtful);
            walls[doubtful] = learned.WallOf(doubtful, Done, stays);
            if (walls[doubtful] is null) return Did(doubtful);
            foreach (var next in walls[doubtful]!) Await(next, allowed);
        }
    }

    /// <summary>Does all that stored ways free, whether a goal waits for it or not: what is asked next is asked with as much gone as may be.</summary>
    private bool Saturated(ItemSet allowed)
    {
        var before = Done.Count;
        for (var more = true; more;)
        {
            more = false;
            foreach (var item in allowed)
                if (!Done.Has(item) && learned.IsKnownFree(item, Done))
                {
                    Done.Add(item);
                    more = true;
                }
        }
        return Done.Count > before;
    }

    private bool Did(int item)
    {
        Done.Add(item);
        return true;
    }

    private void Await(int item, ItemSet allowed)
    {
        if (Done.Has(item) || Stuck.Has(item) || !allowed.Has(item)) return;
        Stuck.Add(item);
        waiting.Add(item);
    }
}
