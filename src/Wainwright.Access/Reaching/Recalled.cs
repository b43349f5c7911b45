using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>A question of room that keeps what it answered: a way or a wall found once often answers again.</summary>
/// <param name="own">What counts as standing whatever is gone: the thing itself.</param>
/// <param name="work">The question; must be monotone.</param>
internal sealed class Recalled(ItemSet own, RoomQuestion work)
{
    private const int Most = 12;

    private readonly List<ItemSet> ways = [], walls = [];

    public Answer Ask(ItemSet gone, ItemSet stays)
    {
        gone = gone.Without(own);
        if (ways.Find(w => w.IsWithin(gone)) is { } way) return new WayOut([], way, null);
        if ((walls.Find(w => w.IsWithin(stays) && !w.Meets(gone)) ?? walls.Find(w => !w.Meets(gone))) is { } wall) return new Stuck(wall);
        switch (work(gone, stays))
        {
            case WayOut found:
                Keep(ways, found.Through);
                return found;
            case Stuck stuck:
                var held = stuck.Wall.Without(own);
                Keep(walls, held);
                return new Stuck(held);
            default:
                throw new InvalidOperationException("An answer is a way or a wall.");
        }
    }

    private static void Keep(List<ItemSet> stored, ItemSet set)
    {
        stored.Insert(0, set);
        if (stored.Count > Most) stored.RemoveAt(Most);
    }
}
