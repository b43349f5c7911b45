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
    private const int MostKeptIn = 8; // how many parts are tried one by one to be kept in; the rest of the set stays as found

    private readonly Dictionary<int, List<TiltedWay>> ways = [];
    private readonly Dictionary<int, TiltTried?> tried = [];
    private readonly Dictionary<(int Item, int ClearanceMm), Tilter> tilters = [];

    private ItemSet All => ItemSet.All(scene.Items.Count).Without(ItemSet.Of(scene.Items.Count, scene.Options.MustStay.Where(scene.IsStanding).Select(scene.OutItem)));

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

    /// <summary>Looks for a way with just these gone and keeps it; no when there is none to be found.</summary>
    public bool Adds(int item, ItemSet gone)
    {
        var known = WaysOf(item);
        if (known.Any(w => w.Through.IsWithin(gone)) || Found(item, gone, scene.Options.Tilting.Tries) is not { } way) return false;
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
        var (way, tries) = Tried(item, All, scene.Options.Tilting.Tries);
        if (way is not null) known.Add(WithFewest(item, way));
        else if (tries > 0) tried[item] = new(false, tries, null, null, null);
    }

    /// <summary>The same with as many parts kept in as can be: all of them, or else one after another, the dearest first.</summary>
    private TiltedWay WithFewest(int item, TiltedWay way)
    {
        var tries = scene.Options.Tilting.Tries / 2;
        if (!way.Through.IsEmpty && Found(item, new(scene.Items.Count), tries) is { } alone) return alone;
        foreach (var dear in way.Through.OrderByDescending(PriceOf).ThenBy(i => i).Take(MostKeptIn).ToList())
            if (way.Through.Has(dear) && Found(item, way.Through.Without(dear), tries) is { } fewer) way = fewer;
        return way;
    }

    /// <summary>What it costs at least to take out what an item says is out.</summary>
    private long PriceOf(int out_)
    {
        var (part, name) = (IsOut)scene.Items[out_] is var gone ? (gone.Part, gone.Piece) : default;
        return scene.Items.Where(i => i is TakeOut load && load.Load.Contains(part) || i is TakePiece piece && piece.Part == part && piece.Name == name)
            .Select(i => i.Price.Tenths + i.Needs.Sum(n => scene.Items[n].Price.Tenths)).DefaultIfEmpty(0).Min();
    }

    private TiltedWay? Found(int item, ItemSet gone, int tries) => Tried(item, gone, tries).Way;

    /// <summary>First with room to spare, then with hardly any.</summary>
    private (TiltedWay? Way, int Tries) Tried(int item, ItemSet gone, int tries)
    {
        var spent = 0;
        foreach (var clearanceMm in (int[])[Math.Max(scene.Options.ClearanceMm, scene.Options.TightBelowMm), scene.Options.ClearanceMm])
        {
            if (!tilters.TryGetValue((item, clearanceMm), out var tilter)) tilters[(item, clearanceMm)] = tilter = room.TilterOf(item, clearanceMm);
            var share = spent == 0 ? tries / 3 : tries - spent;
            var answer = tilter.Ask(gone, new(share, item), scene.Options.Stop);
            spent += answer.Tries;
            if (answer is TiltedWay way) return (way, spent);
            if (clearanceMm == scene.Options.ClearanceMm) break;
        }
        return (null, spent);
    }

    /// <summary>Whether neither this load nor another that takes the same part out goes by exact moves with everything else gone.</summary>
    private bool IsHeldForGood(int item)
    {
        if (!room.IsStuckWithAllGone(item, All)) return false;
        var part = scene.Items[item] is TakePiece own ? own.Part : ((TakeOut)scene.Items[item]).Part;
        var whole = scene.Items.Index().Where(i => i.Item is TakeOut load && load.Load.Contains(part)).Select(i => i.Index);
        var pieces = scene.Items.Index().Where(i => i.Item is TakePiece piece && piece.Part == part).Select(i => i.Index).ToList();
        if (whole.Any(i => i != item && !room.IsStuckWithAllGone(i, All))) return false;
        // in pieces it goes when all of them do
        return scene.Items[item] is TakePiece || pieces.Count == 0 || pieces.Exists(i => room.IsStuckWithAllGone(i, All));
    }
}
