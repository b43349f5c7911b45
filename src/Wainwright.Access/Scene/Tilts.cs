using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>The tilted ways found for the loads of a scene. Each is one more way of its load: what can be done only grows with it.</summary>
/// <remarks>
/// What is found for a load does not depend on what has been asked before, so one scene made like another knows the same ways.
/// A search that found nothing never makes a wall.
/// </remarks>
internal sealed class Tilts(Scene scene, SceneRoom room)
{
    private const int MostKeptIn = 8; // how often a dear part is tried to be kept in; what then is gone stays as found

    private readonly Dictionary<int, List<TiltedWay>> ways = [];
    private readonly Dictionary<int, TiltTried?> tried = [];
    private readonly HashSet<(int Item, int InTheWay, ItemSet Before)> searched = [];
    private readonly Dictionary<(int Item, int ClearanceMm), Tilter> tilters = [];

    private ItemSet All => ItemSet.All(scene.Items.Count).Without(ItemSet.Of(scene.Items.Count, scene.Options.MustStay.Where(scene.IsStanding).Select(scene.OutItem)));

    /// <summary>All that can be out before a load and while a part stays: not what waits for either, as a floor for what stands on it.</summary>
    private ItemSet Before(int item, int? inTheWay)
    {
        var stay = scene.LoadOf(item).Select(p => scene.OutItem(p.Id)).Concat(inTheWay is { } part ? [part] : []).ToList();
        return All.Without(ItemSet.Of(scene.Items.Count, Enumerable.Range(0, scene.Items.Count).Where(i => stay.Contains(i) || scene.AllNeeds(i).Overlaps(stay))));
    }

    /// <summary>Tilted ways of a load, the first one looked for when no exact way takes it out.</summary>
    public IReadOnlyList<TiltedWay> WaysOf(int item)
    {
        if (ways.TryGetValue(item, out var known)) return known;
        ways[item] = known = [];
        tried[item] = null;
        if (scene.Options.Tilting.Tries > 0 && IsHeldForGood(item)) Look(item, known);
        return known;
    }

    /// <summary>What came of trying; nothing where that was no question or a way was found.</summary>
    public TiltTried? TriedFor(int item)
    {
        WaysOf(item);
        return tried[item];
    }

    /// <summary>
    /// Looks for a way past a part, with no more gone than a plan takes out before, or else with as little gone as can be; keeps
    /// it. No when there is none to be found, or nothing new.
    /// </summary>
    /// <param name="item">The load.</param>
    /// <param name="inTheWay">The item that says the part is out.</param>
    /// <param name="before">What the plan takes out before, without that part.</param>
    public bool Spares(int item, int inTheWay, ItemSet before)
    {
        if (!room.IsStiff(item) || WaysOf(item).Any(w => w.Through.IsWithin(before)) || !searched.Add((item, inTheWay, before))) return false;
        var way = Tried(item, before, scene.Options.Tilting.Tries).Way;
        if (way is null && Tried(item, Before(item, inTheWay), scene.Options.Tilting.Tries).Way is { } past) way = WithFewest(item, Before(item, inTheWay), past);
        if (way is null || ways[item].Any(w => w.Through.IsWithin(way.Through))) return false;
        ways[item].Add(way);
        return true;
    }

    private void Look(int item, List<TiltedWay> known)
    {
        if (room.BallOf(item) is { } ball)
        {
            tried[item] = ball;
            return;
        }
        var (way, tries) = Tried(item, Before(item, null), scene.Options.Tilting.Tries);
        if (way is not null) known.Add(WithFewest(item, Before(item, null), way));
        else if (tries > 0 && !scene.Options.Stop.IsCancellationRequested) tried[item] = new(false, tries, null, null, null);
    }

    /// <summary>A way of the same load with as little gone as can be: nothing at all, or else without the dearest parts, one after another.</summary>
    private TiltedWay WithFewest(int item, ItemSet allowed, TiltedWay way)
    {
        if (!way.Through.IsEmpty && Found(item, new(scene.Items.Count)) is { } alone) return alone;
        var wanted = new HashSet<int>();
        for (var n = 0; n < MostKeptIn && way.Through.Where(i => !wanted.Contains(i)).OrderByDescending(PriceOf).ThenBy(i => i).Cast<int?>().FirstOrDefault() is { } dear; n++)
            if (Found(item, allowed.Without(dear)) is { } without) (way, allowed) = (without, allowed.Without(dear));
            else wanted.Add(dear);
        return way;
    }

    /// <summary>What it costs at least to take out what an item says is out, with all that must be done before in every plan.</summary>
    public long PriceOf(int out_)
    {
        var (part, name) = (IsOut)scene.Items[out_] is var gone ? (gone.Part, gone.Piece) : default;
        return scene.Items.Index().Where(i => i.Item is TakeOut load && load.Load.Contains(part) || i.Item is TakePiece piece && piece.Part == part && piece.Name == name)
            .Select(i => i.Item.Price.Tenths + scene.AllNeeds(i.Index).Sum(n => scene.Items[n].Price.Tenths)).DefaultIfEmpty(0).Min();
    }

    /// <summary>First with room to spare, for a third of the tries, then with hardly any.</summary>
    private (TiltedWay? Way, int Tries) Tried(int item, ItemSet gone, int tries)
    {
        var roomyMm = Math.Max(scene.Options.ClearanceMm, scene.Options.TightBelowMm);
        var first = Found(item, gone, roomyMm, tries / 3);
        if (first is TiltedWay easy) return (easy, first.Tries);
        var second = Found(item, gone, scene.Options.ClearanceMm, tries - first.Tries);
        return (second as TiltedWay, first.Tries + second.Tries);
    }

    private TiltAnswer Found(int item, ItemSet gone, int clearanceMm, int tries)
    {
        if (!tilters.TryGetValue((item, clearanceMm), out var tilter)) tilters[(item, clearanceMm)] = tilter = room.TilterOf(item, clearanceMm);
        return tilter.Ask(gone, new(tries, item), scene.Options.Stop);
    }

    private TiltedWay? Found(int item, ItemSet gone) => Found(item, gone, scene.Options.ClearanceMm, scene.Options.Tilting.Tries) as TiltedWay;

    /// <summary>Whether neither this load nor another that takes the same part out goes by exact moves with everything else gone.</summary>
    private bool IsHeldForGood(int item)
    {
        if (!IsStuck(item)) return false;
        var part = scene.Items[item] is TakePiece own ? own.Part : ((TakeOut)scene.Items[item]).Part;
        var whole = scene.Items.Index().Where(i => i.Item is TakeOut load && load.Load.Contains(part)).Select(i => i.Index);
        var pieces = scene.Items.Index().Where(i => i.Item is TakePiece piece && piece.Part == part).Select(i => i.Index).ToList();
        if (whole.Any(i => i != item && !IsStuck(i))) return false;
        // in pieces it goes when all of them do
        return scene.Items[item] is TakePiece || pieces.Count == 0 || pieces.Exists(IsStuck);
    }

    private bool IsStuck(int item) => room.IsStuckWithAllGone(item, Before(item, null));
}
