using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>The largest set that can be done, one item after another, out of those allowed.</summary>
/// <remarks>
/// Answers are monotone, so the order of doing does not matter and the set is unique; allowing more never makes it smaller.
/// </remarks>
internal sealed class Closure
{
    private readonly Learned learned;
    private readonly ItemSet?[] walls;

    public Closure(Learned learned, int size)
    {
        this.learned = learned;
        Done = new(size);
        walls = new ItemSet?[size];
    }

    private Closure(Closure other) => (learned, Done, walls) = (other.learned, other.Done.Copy(), [.. other.walls]);

    /// <summary>What could be done.</summary>
    public ItemSet Done { get; }

    /// <summary>What holds an item that could not be done.</summary>
    public ItemSet Wall(int item) => walls[item]!;

    public Closure Copy() => new(this);

    /// <summary>Does all that can be done out of those allowed; stops early once <paramref name="until"/> is done.</summary>
    public Closure Grow(ItemSet allowed, int? until = null)
    {
        var waiting = allowed.Without(Done).ToList();
        for (var more = true; more && waiting.Count > 0;)
        {
            more = false;
            for (var i = 0; i < waiting.Count; i++)
            {
                var item = waiting[i];
                if (walls[item] is { } known && !known.Meets(Done)) continue;
                walls[item] = learned.WallOf(item, Done);
                if (walls[item] is not null) continue;
                Done.Add(item);
                waiting.RemoveAt(i--);
                more = true;
                if (item == until) return this;
            }
        }
        return this;
    }
}
