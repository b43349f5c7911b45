using Wainwright.Fitout;
using Wainwright.Geometry;

namespace Wainwright.Access;

/// <summary>A name for each item that stays the same from one model of a job to the next, for certificates and for planning anew.</summary>
internal static class ItemKey
{
    /// <summary>The names of a scene's items, in their order.</summary>
    public static IReadOnlyList<string> Of(Scene scene) => [.. scene.Items.Select(Of)];

    public static string Of(Item item) => item switch
    {
        MakeSafe safe => $"safe {Word(safe.Medium)}",
        Undo undo => $"undo {undo.Joint.Id}",
        Disconnect end => $"take off {end.Line.Id} {(end.IsFrom ? "from" : "to")}",
        TakeOut load => $"carry {string.Join('+', load.Load.Select(p => p.Id))}",
        TakePiece piece => $"carry {piece.Part.Id}/{piece.Name}",
        IsOut { Piece: { } name } piece => $"out {piece.Part.Id}/{name}",
        IsOut whole => $"out {whole.Part.Id}",
        Spoiled spoiled => $"spoil {spoiled.Part.Id}",
        HandOn hand => $"hand on {hand.Part.Id}",
        EyeOn eye => $"eye on {eye.Part.Id}",
        _ => $"{item.GetType().Name} {Parts(item)}",
    };

    /// <summary>Numbers of the items with these names; the names that no item has.</summary>
    public static (ItemSet Items, IReadOnlyList<string> Unknown) Find(Scene scene, IEnumerable<string> keys)
    {
        var index = Index(scene);
        var (found, unknown) = (new ItemSet(scene.Items.Count), new List<string>());
        foreach (var key in keys)
            if (index.TryGetValue(key, out var item)) found.Add(item);
            else unknown.Add(key);
        return (found, unknown);
    }

    public static Dictionary<string, int> Index(Scene scene) => Of(scene).Select((key, i) => (key, i)).ToDictionary(p => p.key, p => p.i);

    private static string Parts(Item item) =>
        string.Join('+', item.GetType().GetProperties().Select(p => p.GetValue(item)).OfType<Part>().Select(p => p.Id));

    private static string Word(Medium medium)
    {
        var name = medium.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}
