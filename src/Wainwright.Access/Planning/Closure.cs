using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>What can be done, one item after another, out of those allowed, as far as it matters for some goals.</summary>
/// <remarks>
/// Answers are monotone, so the order of doing does not matter, the largest set that can be done is unique, and allowing more
/// never makes it smaller. Only what a goal waits for is asked: the goals, then what holds them, then what holds that. When
/// nothing new holds anything, what is left cannot be done: none of it can be the first, since each is held by something else
/// that is left or by something not allowed.
/// </remarks>
internal sealed class Closure
{
    private readonly Learned learned;
    private readonly ItemSet?[] walls;
    private readonly ItemSet relevant;

    public Closure(Learned learned, int size)
    {
        this.learned = learned;
        (Done, relevant) = (new(size), new(size));
        walls = new ItemSet?[size];
    }

    private Closure(Closure other) => (learned, Done, relevant, walls) = (other.learned, other.Done.Copy(), other.relevant.Copy(), [.. other.walls]);

    /// <summary>What could be done of what matters.</summary>
    public ItemSet Done { get; }

    /// <summary>What matters and could not be done.</summary>
    public ItemSet Stuck => relevant.Without(Done);

    /// <summary>What holds an item that could not be done.</summary>
    public ItemSet Wall(int item) => walls[item]!;

    public Closure Copy() => new(this);

    /// <summary>Whether all goals can be done with those allowed, which may only grow from call to call.</summary>
    public bool Reaches(ItemSet goals, ItemSet allowed)
    {
        relevant.AddAll(goals);
        relevant.KeepOnly(allowed);
        while (true)
        {
            while (DoWhatCan(goals))
                if (goals.IsWithin(Done)) return true;
            if (goals.IsWithin(Done)) return true;
            var before = relevant.Count;
            foreach (var item in Stuck) relevant.AddAll(walls[item]!);
            relevant.KeepOnly(allowed);
            if (relevant.Count == before) return false;
        }
    }

    private bool DoWhatCan(ItemSet goals)
    {
        var any = false;
        foreach (var item in Stuck)
        {
            if (walls[item] is { } known && !known.Meets(Done)) continue;
            walls[item] = learned.WallOf(item, Done);
            if (walls[item] is not null) continue;
            Done.Add(item);
            any = true;
            if (goals.IsWithin(Done)) break;
        }
        return any;
    }
}
